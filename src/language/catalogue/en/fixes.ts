import type { Fixes } from '../fixes.js';
import type { ShortTexts } from '../texts.js';

export const fixes: ShortTexts<Fixes> = {
  write: ({ written }) => `write \`${written}\``,
};
