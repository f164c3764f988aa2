/** Cuts a folded text into statements before anything is read, so that a broken one never harms the next. */

import type { Range } from './normal.js';

export interface Pieces {
  /** Each from its first character to the last one before the next statement, trailing blanks left out. */
  readonly statements: readonly Range[];
  /** Indented lines at the top of the text, with no statement to go on with. */
  readonly stray: Range | null;
}

/** A statement starts at column 1 and runs until the next line that does; blank lines end nothing (comments are blanks by now). */
export function split(folded: string): Pieces {
  const starts: number[] = [];
  for (const match of folded.matchAll(/(?<=^|[\n\r])[^\s]/g)) starts.push(match.index);
  const trimmed = (start: number, end: number): Range => {
    let last = end;
    while (last > start && /\s/.test(folded[last - 1]!)) last--;
    return { start, end: last };
  };
  const head = starts[0] ?? folded.length;
  const first = folded.slice(0, head).search(/\S/);
  return {
    statements: starts.map((start, index) => trimmed(start, starts[index + 1] ?? folded.length)),
    stray: first < 0 ? null : trimmed(first, head),
  };
}
