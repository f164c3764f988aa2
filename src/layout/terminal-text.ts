/** Text measured in the columns of a terminal, where a Chinese character or a kana takes two. */

import stringWidth from 'string-width';
import { brokenLines } from './line-breaking.js';

/** Most of a sheet: one column a character, known without asking the library, which takes a thousand times as long. */
const NARROW = /^[\x20-\x7e│┊╮╯┌├└╶×…–“”→←↑↓°]*$/;

export function widthOf(text: string): number {
  return NARROW.test(text) ? text.length : stringWidth(text);
}

/** Lines of at most `width` columns, broken as the printed sheet breaks them; line breaks of the text are kept. */
export function broken(text: string, width: number): string[] {
  return brokenLines(plain(text), Math.max(2, width), widthOf);
}

/** Without what a terminal would obey instead of show. */
export function plain(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}]/gu, (character) => (character === '\n' ? '\n' : ' '));
}

/** Exactly `width` columns: filled with blanks, or cut with `…`. */
export function inWidth(text: string, width: number, side: 'left' | 'right' = 'left'): string {
  const short = shortened(plain(text).replaceAll('\n', ' '), width);
  const blanks = ' '.repeat(width - widthOf(short));
  return side === 'left' ? short + blanks : blanks + short;
}

function shortened(text: string, width: number): string {
  if (widthOf(text) <= width) return text;
  let kept = '';
  for (const { segment } of new Intl.Segmenter().segment(text)) {
    if (widthOf(kept + segment) > width - 1) break;
    kept += segment;
  }
  return `${kept}…`;
}

/** Wrapped, with what follows the first line set in by `indent`. */
export function hanging(text: string, width: number, indent: number): string[] {
  return broken(text, width - indent).map((line, i) => (i === 0 ? line : ' '.repeat(indent) + line));
}
