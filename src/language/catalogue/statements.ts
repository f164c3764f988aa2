import { entries } from './entry.js';

export const statements = entries({});
