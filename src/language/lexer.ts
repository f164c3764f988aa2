/** One statement's folded text → tokens, their offsets counted in the whole text. */

import { type IToken, Lexer } from 'chevrotain';
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
