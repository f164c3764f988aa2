/** Pieces that several English sentences are made of. */

import type { Wanted } from '../terms.js';
import { expected } from './terms.js';

/** `1 row`, `8 rows`. */
export const plural = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;

/** The end of a sentence that says there is no such thing; `otherwise`: what stands there where nothing is like it. */
export const meant = (guess: string | null, otherwise = '.'): string =>
  guess === null ? otherwise : `; did you mean \`${guess}\`?`;

/** A statement by its first word, '' for a timeline. */
export const statementName = (word: string): string => (word === '' ? 'timeline' : `\`${word}\` statement`);

/** `a size such as 100%@1 or a name`: what could stand at one place. */
export const anyOf = (wanted: readonly Wanted[]): string =>
  wanted
    .map((one) => (Object.hasOwn(expected, one) ? expected[one as keyof typeof expected] : one))
    .join(' or ');

/** What leads back to itself. */
export const around = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(' → ');

/** `120`, or `96 + 12 handle`: the frames of a cut and the rows that dissolves add. */
export const sheetRows = (time: number, rows: number): string =>
  rows === time ? String(rows) : `${time} + ${rows - time} handle`;
