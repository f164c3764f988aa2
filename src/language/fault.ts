/** A fault of a statement before it becomes a diagnostic, and what is needed to describe one. */

import type { IToken } from 'chevrotain';
import type { Code } from './catalogue/index.js';
import type { Candidate } from './mend.js';
import type { Range } from './normal.js';
import type { StatementRule } from './statements/index.js';

export interface Fault {
  readonly code: Code;
  readonly place: Range;
  readonly message: string;
  /** Instead of `message` where a candidate was found to mend it. */
  readonly mended?: string;
  readonly candidates: readonly Candidate[];
  /** Where the candidates are tried, if not in the statement alone. */
  readonly within?: Range;
  readonly note?: string;
}

export const placeOf = (token: IToken): Range => ({ start: token.startOffset, end: token.endOffset! + 1 });
export const replace = (place: Range, text: string, title: string): Candidate => ({
  title,
  edits: [{ ...place, text }],
});
export const insert = (at: number, text: string, title: string): Candidate =>
  replace({ start: at, end: at }, text, title);

const LONGEST_QUOTED = 24;

/** A token as it was typed, cut where it is long. */
export function quoted(token: IToken, typed: string): string {
  const characters = [...typed.slice(token.startOffset, token.endOffset! + 1)];
  if (characters.length <= LONGEST_QUOTED) return `\`${characters.join('')}\``;
  return `\`${characters.slice(0, LONGEST_QUOTED - 1).join('')}…\``;
}

/** What a statement is called in a message. */
export function subject(entry: StatementRule): string {
  return entry.word === '' ? 'timeline' : `\`${entry.word}\` statement`;
}
