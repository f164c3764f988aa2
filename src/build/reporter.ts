/** Where a run says what it finds; each way of showing it is somebody else's. */

import type { DiagnosticSink } from '../episode/batch.js';
import type { RunTexts } from '../language/catalogue/catalogue-entry.js';
import type { Code } from '../language/catalogue/index.js';

export interface Reporter extends DiagnosticSink {
  /** What a run says of itself, in the user's language. */
  readonly words: RunTexts;
  /** A line for people; whoever reads JSON gets none. */
  say(line: string): void;
  /** "1 error, 2 warnings" of what was reported so far, or "nothing wrong". */
  tally(): string;
  /** Shows what was kept back; the exit status of the run. */
  finish(): number;
}

/** Faults of the call and of the disk, not of the text: they leave with 2. */
const WRONG_USE: ReadonlySet<Code> = new Set<Code>([
  'file-missing',
  'file-unreadable',
  'no-cuts',
  'same-output',
  'output-is-input',
  'output-unwritable',
  'unknown-command',
  'unknown-option',
  'option-value',
  'wrong-arguments',
  'watch-impossible',
  'internal-fault',
  'canvas-missing',
  'film-failed',
]);

export const isWrongUse = (code: Code): boolean => WRONG_USE.has(code);
