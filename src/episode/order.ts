/** Diagnostics as a whole: their order, and which of them are the same. */

import type { Diagnostic } from '../language/diagnostic.js';

/** By place: the manifest's first, then the cut's, then those of used files; what is said twice is said once. */
export function inOrder(diagnostics: readonly Diagnostic[], file: string): Diagnostic[] {
  const seen = new Set<string>();
  const unique = diagnostics.filter((one) => {
    const key = identity(one);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
  const rank = (name: string) => (/\.ya?ml$/.test(name) ? 0 : name === file ? 1 : 2);
  return unique.sort(
    (a, b) =>
      rank(a.span.file) - rank(b.span.file) ||
      compare(a.span.file, b.span.file) ||
      a.span.start - b.span.start ||
      a.span.end - b.span.end ||
      compare(a.code, b.code) ||
      compare(a.message, b.message),
  );
}

/** Two diagnostics of one identity are one. */
export function identity({ code, span, message }: Diagnostic): string {
  return JSON.stringify([code, span.file, span.start, span.end, message]);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Whether a cut is not to be printed; `strict` makes warnings count. */
export function hasErrors(diagnostics: readonly Diagnostic[], strict = false): boolean {
  return diagnostics.some((one) => one.severity === 'error' || (strict && one.severity === 'warning'));
}
