/** Spreading words of Latin and other level scripts over rows: one word a row where it fits. */

import type { Metrics } from '../marks.js';

/** The narrowest that a word is set. */
const SQUEEZE = 0.66;

/** Groups of vowels: near enough to the beats of a word to share out rows by. */
export function beats(word: string): number {
  return Math.max(1, word.match(/[aeiouyàâäåæéèêëíîïóôöøœúûüý]+/giu)?.length ?? 1);
}

/** Pieces of a word that may stand on rows of their own, hyphens included; cut between a vowel and the next consonant. */
export function syllables(word: string): string[] {
  const parts = word.match(/[^aeiouy]*[aeiouy]+(?:[^aeiouy]+$|[^aeiouy](?=[^aeiouy]))?/giu) ?? [word];
  const left = word.slice(parts.join('').length);
  const all = left === '' ? [...parts] : [...parts.slice(0, -1), parts.at(-1)! + left];
  // A last syllable of a consonant and e is silent.
  if (all.length > 1 && /^[^aeiouy]+e[^a-z]*$/iu.test(all.at(-1)!))
    all.splice(-2, 2, all.at(-2)! + all.at(-1)!);
  return all.map((part, i) => (i < all.length - 1 ? `${part}-` : part));
}

export interface RowOfWords {
  /** From 0, within the stretch. */
  readonly row: number;
  readonly text: string;
}

export interface SpreadWords {
  readonly sizeMm: number;
  readonly rows: readonly RowOfWords[];
}

/** Words on at most `rows` rows of `width`, in step with their beats; null where even the smallest print does not fit. */
export function spreadWords(
  text: string,
  rows: number,
  width: number,
  { most, least }: { most: number; least: number },
  metrics: Metrics,
): SpreadWords | null {
  const words = text.split(' ');
  // Whole words, even if small, read better than large syllables.
  for (const split of [false, true])
    for (let sizeMm = most; ; sizeMm = Math.max(least, sizeMm * 0.92)) {
      const fits = (one: string): boolean => metrics.width(one, sizeMm, 'regular') * SQUEEZE <= width;
      const pieces = split ? words.flatMap((word) => (fits(word) ? [word] : syllables(word))) : words;
      const set = pieces.every(fits) ? (inStep(pieces, rows, fits) ?? packed(pieces, rows, fits)) : null;
      if (set) return { sizeMm, rows: set };
      if (sizeMm === least) break;
    }
  return null;
}

const join = (text: string, piece: string): string =>
  text === '' ? piece : /[^-]-$/.test(text) ? text.slice(0, -1) + piece : `${text} ${piece}`;

/** Each piece on the row where its beat falls, or on the next one that is free. */
function inStep(
  pieces: readonly string[],
  rows: number,
  fits: (text: string) => boolean,
): RowOfWords[] | null {
  const all = pieces.reduce((so, piece) => so + beats(piece), 0);
  const set: { row: number; text: string }[] = [];
  const roomy = pieces.length <= rows;
  let before = 0;
  for (const [i, piece] of pieces.entries()) {
    let row = Math.floor((rows * before) / all);
    before += beats(piece);
    const last = set.at(-1);
    if (roomy) {
      row = Math.min(rows - (pieces.length - i), Math.max(row, last ? last.row + 1 : 0));
      set.push({ row, text: piece });
    } else if (last && row <= last.row) {
      const joined = join(last.text, piece);
      if (fits(joined)) last.text = joined;
      else set.push({ row: last.row + 1, text: piece });
    } else set.push({ row, text: piece });
  }
  return set.at(-1)!.row < rows ? set : null;
}

/** As many pieces a row as it holds, the rows spread evenly. */
function packed(
  pieces: readonly string[],
  rows: number,
  fits: (text: string) => boolean,
): RowOfWords[] | null {
  const lines: string[] = [];
  for (const piece of pieces) {
    const joined = join(lines.at(-1) ?? '', piece);
    if (lines.length > 0 && fits(joined)) lines[lines.length - 1] = joined;
    else lines.push(piece);
  }
  if (lines.length > rows) return null;
  return lines.map((text, i) => ({ row: Math.floor((i * rows) / lines.length), text }));
}
