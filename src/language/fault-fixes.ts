/**
 * Faults of a statement before they become diagnostics, and the edits that might mend them. Those are tried before they are
 * offered, so that what is offered is valid.
 */

import type { IToken } from 'chevrotain';
import type { Message } from './catalogue/index.js';
import type { Action, Fix, Note } from './diagnostic.js';
import type { TextRange } from './source.js';
import { readsUpTo, type SourceText, withEdits } from './statement-reader.js';

export type FixCandidate = Action & { readonly edits: readonly (TextRange & { readonly text: string })[] };

/** Characters that may be read again for the sake of fixes in one text; a text with more faults than that gets fewer fixes. */
const BUDGET = 4_000_000;

export class FixTester {
  #left = BUDGET;

  constructor(readonly source: SourceText) {}

  /**
   * The first candidate that makes the stretch readable; failing that, the first after which the fault at `fault` is gone
   * and another one stands behind it.
   */
  choose(candidates: readonly FixCandidate[], within: TextRange, fault: TextRange): FixCandidate | undefined {
    let better: FixCandidate | undefined;
    for (const candidate of candidates) {
      this.#left -= within.end - within.start;
      if (this.#left < 0) return better;
      const text = this.source.text.slice(within.start, within.end);
      const edits = candidate.edits.map((edit) => ({
        ...edit,
        start: edit.start - within.start,
        end: edit.end - within.start,
      }));
      const mended = withEdits(text, edits);
      const reads = readsUpTo(mended);
      if (reads >= mended.length) return candidate;
      const growth = mended.length - text.length;
      if (!better && fault.end > fault.start && reads >= fault.end - within.start + growth)
        better = candidate;
    }
    return better;
  }

  fix(candidate: FixCandidate | undefined): Fix | undefined {
    if (!candidate) return undefined;
    const { file } = this.source;
    return {
      ...candidate,
      edits: candidate.edits.map(({ start, end, text }) => ({ span: { file, start, end }, text })),
    };
  }
}

export interface StatementFault {
  readonly message: Message;
  readonly place: TextRange;
  /** Instead of `message` where a candidate was found to mend it. */
  readonly mended?: Message;
  readonly candidates: readonly FixCandidate[];
  /** Where the candidates are tried, if not in the statement alone. */
  readonly within?: TextRange;
  readonly note?: Note;
}

export const placeOf = (token: IToken): TextRange => ({
  start: token.startOffset,
  end: token.endOffset! + 1,
});
export const replaceFix = (place: TextRange, text: string, action: Action): FixCandidate => ({
  ...action,
  edits: [{ ...place, text }],
});
export const insertFix = (at: number, text: string, action: Action): FixCandidate =>
  replaceFix({ start: at, end: at }, text, action);

const LONGEST_QUOTED = 24;

/** A token as it was typed, cut where it is long. */
export function typedAt(token: IToken, typed: string): string {
  const characters = [...typed.slice(token.startOffset, token.endOffset! + 1)];
  if (characters.length <= LONGEST_QUOTED) return characters.join('');
  return `${characters.slice(0, LONGEST_QUOTED - 1).join('')}…`;
}
