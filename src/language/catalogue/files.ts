import { entries } from './entry.js';

export const files = entries({});
