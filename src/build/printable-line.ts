import { uncovered } from '../print/glyph-coverage.js';

/** A text on one line, with nothing in it that the font lacks: `〓` is the printer's own mark for missing type. */
export function printableLine(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  const missing = new Set(uncovered(line).map(({ character }) => character));
  return missing.size === 0
    ? line
    : [...line.normalize('NFC')].map((one) => (missing.has(one) ? '〓' : one)).join('');
}
