/** Words of the language that have another name now. They are still read, and a hint says what they are called. */

import type { Code } from './catalogue/index.js';
import { diagnose, guessFix } from './diagnostic.js';
import type { ParsingDsl } from './shared-rules.js';
import type { Token } from './tokens.js';

/** From the word that may have been typed to the one that the language has. */
export const RETIRED_WORDS: ReadonlyMap<string, string> = new Map([
  ['roll', 'sway'],
  ['ticks', 'graduated'],
]);

/** The same of codes that `accept` may name. */
export const RETIRED_CODES: ReadonlyMap<string, Code> = new Map([
  ['cels-way', 'cels-passage'],
  ['cushion-short', 'fairing-short'],
]);

/** The code as messages have it now; any other text as it is. */
export const currentCode = (typed: string): string => RETIRED_CODES.get(typed) ?? typed;

/** The word as the language has it now; any other word as it is. In NFC. */
export function currentWord(typed: string): string {
  const word = typed.normalize('NFC');
  return RETIRED_WORDS.get(word) ?? word;
}

/** Tells of a word of the language, just read, that was typed under its old name. */
export function reportRetired(dsl: ParsingDsl, token: Token): void {
  dsl.ACTION(() => {
    const written = RETIRED_WORDS.get(token.image.normalize('NFC'));
    if (written === undefined) return;
    const span = dsl.place(token);
    dsl.report(diagnose('word-renamed', span, { word: token.image, written }, guessFix(written, span)));
  });
}
