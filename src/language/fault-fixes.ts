/**
 * Faults of a statement before they become diagnostics, and the edits that might mend them. Those are tried before they are
 * offered, so that what is offered is valid.
 */

import type { Message } from './catalogue/index.js';
import type { Action, Fix, Note } from './diagnostic.js';
import { foldCharacters, tokenize } from './lexer.js';
import type { TextRange } from './source.js';
import { readsUpTo, type SourceText, withEdits } from './statement-reader.js';
import type { Token } from './tokens.js';

export type FixCandidate = Action & { readonly edits: readonly (TextRange & { readonly text: string })[] };

/** Characters that may be read again for the sake of fixes in one text; a text with more faults than that gets fewer fixes. */
const BUDGET = 4_000_000;

export class FixTester {
  #left = BUDGET;

  constructor(readonly source: SourceText) {}

  /**
   * The first candidate that makes the stretch readable; failing that, the first after which the fault at `fault` is gone, what
   * was typed next fits, and another fault stands behind that. One that cuts a character in two is none.
   */
  choose(candidates: readonly FixCandidate[], within: TextRange, fault: TextRange): FixCandidate | undefined {
    let better: FixCandidate | undefined;
    for (const candidate of candidates) {
      if (candidate.edits.some(({ start, end }) => this.#cuts(start) || this.#cuts(end))) continue;
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
      const gone = fault.end > fault.start && reads >= fault.end - within.start + growth;
      if (!better && gone && reads > startOfNext(mended, Math.max(...edits.map(({ end }) => end)) + growth))
        better = candidate;
    }
    return better;
  }

  #cuts(at: number): boolean {
    return cutsGrapheme(this.source.text, at);
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

/** Where the first token from `at` on begins; infinite where there is none. */
function startOfNext(text: string, at: number): number {
  const folded = foldCharacters(text).text;
  return tokenize(folded, at, folded.length)[0]?.start ?? Number.POSITIVE_INFINITY;
}

/** Made when it is first asked, which is seldom and takes long. */
let graphemes: Intl.Segmenter | null = null;
/** Longer than any flag, family or letter with its marks that is typed. */
const LONGEST_GRAPHEME = 64;

/** The flag, emoji or other character that `at` lies in, as people see it. */
export function graphemeAt(text: string, at: number): TextRange {
  const from = Math.max(0, at - LONGEST_GRAPHEME);
  graphemes ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  const { index, segment } = graphemes
    .segment(text.slice(from, at + LONGEST_GRAPHEME))
    .containing(at - from)!;
  return { start: from + index, end: from + index + segment.length };
}

/** Whether an edit that ends or begins at `at` leaves half a flag or emoji. Marks above and below letters may be taken from them. */
export function cutsGrapheme(text: string, at: number): boolean {
  if (at <= 0 || at >= text.length || text.charCodeAt(at - 1) < 0x80) return false;
  const { start, end } = graphemeAt(text, at);
  return start < at && /[\p{Regional_Indicator}\p{Extended_Pictographic}]/u.test(text.slice(start, end));
}

export interface StatementFault {
  readonly message: Message;
  readonly place: TextRange;
  /** Instead of `message` where a candidate was found to mend it. */
  readonly mended?: Message;
  readonly candidates: readonly FixCandidate[];
  /** Where the candidates are tried, if not in the statement alone. */
  readonly within?: TextRange;
  /** The candidates are guesses: one mends the statement only if all of it can be read then. */
  readonly wholeOnly?: boolean;
  readonly note?: Note;
}

export const placeOf = ({ start, end }: Token): TextRange => ({ start, end });
export const replaceFix = (place: TextRange, text: string, action: Action): FixCandidate => ({
  ...action,
  edits: [{ ...place, text }],
});
export const insertFix = (at: number, text: string, action: Action): FixCandidate =>
  replaceFix({ start: at, end: at }, text, action);

const LONGEST_QUOTED = 24;

/** A token as it was typed, cut where it is long. */
export function typedAt(token: Token, typed: string): string {
  const characters = [...typed.slice(token.start, token.end)];
  if (characters.length <= LONGEST_QUOTED) return characters.join('');
  return `${characters.slice(0, LONGEST_QUOTED - 1).join('')}…`;
}
