/** Faults of the command line, shown like those of a text: the line itself is the source, with a caret under the word. */

import type { Code, Messages } from '../language/catalogue/index.js';
import { type Diagnostic, diagnose, type Fix } from '../language/diagnostic.js';

/** What messages call the command line. */
export const COMMAND_LINE = 'command line';

/** Thrown by whatever reads the command line; main() prints it and leaves with 2. */
export class LineFault<C extends Code = Code> extends Error {
  override readonly name = 'LineFault';

  /** `word` is the argument to point at; null: the end of the line. */
  constructor(
    readonly code: C,
    readonly word: string | null,
    readonly parameters: Messages[C],
    readonly better?: string,
  ) {
    super(code);
  }

  /** The diagnostic, with the source that its span points into. */
  diagnostic(argv: readonly string[]): { diagnostic: Diagnostic; source: string } {
    const words = ['cutwright', ...argv].map(shown);
    const source = words.join(' ');
    const span = { file: COMMAND_LINE, ...this.place(argv, words) };
    const fix: Fix | undefined = this.better
      ? { title: `write ${this.better}`, edits: [{ span, text: this.better }] }
      : undefined;
    return { diagnostic: diagnose(this.code, span, this.parameters, { fix }), source };
  }

  private place(argv: readonly string[], words: readonly string[]): { start: number; end: number } {
    const end = words.join(' ').length;
    const word = this.word;
    if (word === null) return { start: end, end };
    const exact = argv.lastIndexOf(word);
    const index =
      exact >= 0
        ? exact
        : argv.findLastIndex((one) => one.endsWith(`=${word}`) || one.startsWith(`${word}=`));
    if (index < 0) return { start: end, end };
    const start = words.slice(0, index + 1).reduce((sum, one) => sum + one.length + 1, 0);
    const inner = argv[index]!.endsWith(`=${word}`) ? argv[index]!.length - word.length : 0;
    const quoted = words[index + 1] !== argv[index];
    if (quoted) return { start, end: start + words[index + 1]!.length };
    return { start: start + inner, end: start + inner + word.length };
  }
}

/** A word as it would be typed; control characters must not reach the terminal. */
function shown(word: string): string {
  const safe = word.replace(/\p{Cc}/gu, '?');
  return /^[^\s"'*?$]+$/.test(safe) ? safe : `"${safe}"`;
}
