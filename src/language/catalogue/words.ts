import { entries } from './entry.js';

export const words = entries({});
