import type { Diagnostic } from '../language/diagnostic.js';

/** Two diagnostics of one identity are one. */
export function identity({ code, span, message }: Diagnostic): string {
  return JSON.stringify([code, span.file, span.start, span.end, message]);
}

/** Whether a cut is not to be printed; `strict` makes warnings count. */
export function hasErrors(diagnostics: readonly Diagnostic[], strict = false): boolean {
  return diagnostics.some((one) => one.severity === 'error' || (strict && one.severity === 'warning'));
}
