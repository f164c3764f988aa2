import type { Diagnostic } from '../language/diagnostic.js';

/** Two diagnostics of one identity are one. */
export function identity({ code, span, parameters }: Diagnostic): string {
  return JSON.stringify([code, span.file, span.start, span.end, parameters]);
}

/** Whether a cut is not to be printed; `strict` makes warnings count. */
export function hasErrors(diagnostics: readonly Diagnostic[], strict = false): boolean {
  return diagnostics.some((one) => one.severity === 'error' || (strict && one.severity === 'warning'));
}
