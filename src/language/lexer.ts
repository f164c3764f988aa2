/** A folded text → its statements; one statement → tokens, their offsets counted in the whole text. */

import { type IToken, Lexer } from 'chevrotain';
import type { TextRange } from './source.js';
import { Close, Glued, languageWords, lexed, Word } from './tokens.js';

let lexer: Lexer | null = null;

/** `×3` after a group, as a Japanese keyboard types it: the sign of a repeat, not the name of a phrase. */
const TIMES = /^x\d+$/;

/** A lexer of its own; `validate` looks for faults in the kinds themselves, for the tests. */
export function newLexer({ validate = false } = {}): Lexer {
  return new Lexer(lexed(), {
    positionTracking: 'onlyOffset',
    ensureOptimizations: validate,
    skipValidations: !validate,
  });
}

/** Reads `text` from `start` to `end`; every character ends up in a token or in a blank. */
export function tokenize(text: string, start: number, end: number): IToken[] {
  lexer ??= newLexer();
  const { tokens } = lexer.tokenize(text.slice(start, end));
  const words = languageWords();
  let before: IToken | null = null;
  for (const token of tokens) {
    token.startOffset += start;
    token.endOffset = token.startOffset + token.image.length - 1;
    if (token.tokenType === Word) {
      const known = words.get(token.image.normalize('NFC'));
      if (known) retype(token, known);
      else if (
        before?.tokenType === Close &&
        before.endOffset! + 1 === token.startOffset &&
        TIMES.test(token.image)
      ) {
        retype(token, Glued);
      }
    }
    before = token;
  }
  return tokens;
}

function retype(token: IToken, to: IToken['tokenType']): void {
  token.tokenType = to;
  token.tokenTypeIdx = to.tokenTypeIdx!;
}

// ---- Cuts a folded text into statements before anything is read, so that a broken one never harms the next

export interface StatementRanges {
  /** Each from its first character to the last one before the next statement, trailing blanks left out. */
  readonly statements: readonly TextRange[];
  /** Indented lines at the top of the text, with no statement to go on with. */
  readonly stray: TextRange | null;
}

/** A statement starts at column 1 and runs until the next line that does; blank lines end nothing (comments are blanks by now). */
export function splitStatements(folded: string): StatementRanges {
  const starts: number[] = [];
  for (const match of folded.matchAll(/(?<=^|[\n\r])[^\s]/g)) starts.push(match.index);
  const trimmed = (start: number, end: number): TextRange => {
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
