/** Faults of the command line, shown like those of a text: the line itself is the source, with a caret under the word. */

import { COMMAND_LINE, type UsageError } from '../build/usage-error.js';
import { type Diagnostic, diagnose, type Fix } from '../language/diagnostic.js';

/** The diagnostic, with the source that its span points into. */
export function usageDiagnostic(
  error: UsageError,
  argv: readonly string[],
): { diagnostic: Diagnostic; source: string } {
  const words = ['cutwright', ...argv].map(shown);
  const source = words.join(' ');
  const span = { file: COMMAND_LINE, ...placeOf(error.word, argv, words) };
  const fix: Fix | undefined = error.better
    ? { action: 'write-plain', written: error.better, edits: [{ span, text: error.better }] }
    : undefined;
  return { diagnostic: diagnose(error.code, span, error.parameters, { fix }), source };
}

function placeOf(
  word: string | null,
  argv: readonly string[],
  words: readonly string[],
): { start: number; end: number } {
  const end = words.join(' ').length;
  if (word === null) return { start: end, end };
  const exact = argv.lastIndexOf(word);
  const index =
    exact >= 0 ? exact : argv.findLastIndex((one) => one.endsWith(`=${word}`) || one.startsWith(`${word}=`));
  if (index < 0) return { start: end, end };
  const start = words.slice(0, index + 1).reduce((sum, one) => sum + one.length + 1, 0);
  const inner = argv[index]!.endsWith(`=${word}`) ? argv[index]!.length - word.length : 0;
  const quoted = words[index + 1] !== argv[index];
  if (quoted) return { start, end: start + words[index + 1]!.length };
  return { start: start + inner, end: start + inner + word.length };
}

/** A word as it would be typed; control characters must not reach the terminal. */
function shown(word: string): string {
  const safe = word.replace(/\p{Cc}/gu, '?');
  return /^[^\s"'*?$]+$/.test(safe) ? safe : `"${safe}"`;
}
