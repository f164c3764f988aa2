import { entries } from './entry.js';

export const timelines = entries({});
