/** A fault of a statement before it becomes a diagnostic, and what is needed to describe one. */

import type { IToken } from 'chevrotain';
import type { Message } from './catalogue/index.js';
import type { Action, Note } from './diagnostic.js';
import type { Candidate } from './mend.js';
import type { Range } from './normal.js';

export interface Fault {
  readonly message: Message;
  readonly place: Range;
  /** Instead of `message` where a candidate was found to mend it. */
  readonly mended?: Message;
  readonly candidates: readonly Candidate[];
  /** Where the candidates are tried, if not in the statement alone. */
  readonly within?: Range;
  readonly note?: Note;
}

export const placeOf = (token: IToken): Range => ({ start: token.startOffset, end: token.endOffset! + 1 });
export const replace = (place: Range, text: string, action: Action): Candidate => ({
  ...action,
  edits: [{ ...place, text }],
});
export const insert = (at: number, text: string, action: Action): Candidate =>
  replace({ start: at, end: at }, text, action);

const LONGEST_QUOTED = 24;

/** A token as it was typed, cut where it is long. */
export function typedAt(token: IToken, typed: string): string {
  const characters = [...typed.slice(token.startOffset, token.endOffset! + 1)];
  if (characters.length <= LONGEST_QUOTED) return characters.join('');
  return `${characters.slice(0, LONGEST_QUOTED - 1).join('')}…`;
}
