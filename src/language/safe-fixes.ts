/** Fixes that cannot change what a text means: those that `check --fix` applies, and editors when they are asked to fix all. */

import { catalogue } from './catalogue/index.js';
import type { Diagnostic, Fix } from './diagnostic.js';
import { withEdits } from './statement-reader.js';

/** The fix of a diagnostic where it says the same in another way and nothing in it is a guess; else null. */
export function safeFix({ code, parameters, fix }: Diagnostic): Fix | null {
  if (!fix || !catalogue[code].safeFix) return null;
  if (code !== 'trade-word') return fix;
  // One word for one other: where more was written, more than the word was made up.
  const { variant } = parameters as { readonly variant: string };
  if (variant === 'left-out') return fix;
  const { here } = parameters as { readonly here: string };
  return fix.action === 'write' && fix.written === here && fix.edits.length === 1 ? fix : null;
}

/** The safe fixes of one text that do not touch each other, in the order of the diagnostics. */
export function safeFixes(diagnostics: readonly Diagnostic[], file: string): Fix[] {
  const taken: { readonly start: number; readonly end: number }[] = [];
  const found: Fix[] = [];
  for (const one of diagnostics) {
    const fix = safeFix(one);
    if (!fix || fix.edits.some(({ span }) => span.file !== file)) continue;
    const spans = fix.edits.map(({ span }) => span);
    if (spans.some(({ start, end }) => taken.some((other) => start <= other.end && other.start <= end)))
      continue;
    taken.push(...spans);
    found.push(fix);
  }
  return found;
}

/** A text with fixes applied. Offsets count it without its byte-order mark. */
export function withFixes(text: string, fixes: readonly Fix[]): string {
  return withEdits(
    text,
    fixes.flatMap(({ edits }) => edits.map(({ span, text: written }) => ({ ...span, text: written }))),
  );
}

/** Texts within texts: a fix may uncover a fault with another one. */
const MOST_ROUNDS = 20;

/**
 * Applies safe fixes until none is left. `look` says what is wrong with a text. A round after which there are more errors is taken
 * back, and only its first fix is applied; if that does not help, the text stays as it was before. `count`: fixes that were applied.
 */
export function applySafeFixes(
  text: string,
  file: string,
  look: (text: string) => readonly Diagnostic[],
): { readonly text: string; readonly count: number } {
  const errors = (found: readonly Diagnostic[]): number =>
    found.filter(({ severity }) => severity === 'error').length;
  let now = { text, found: look(text), count: 0 };
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const fixes = safeFixes(now.found, file);
    const tried = [fixes, fixes.slice(0, 1)].find((some) => {
      if (some.length === 0) return false;
      const mended = withFixes(now.text, some);
      const found = look(mended);
      if (errors(found) > errors(now.found)) return false;
      now = { text: mended, found, count: now.count + some.length };
      return true;
    });
    if (!tried) break;
  }
  return now;
}
