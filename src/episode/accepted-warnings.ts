/** `accept CODE "reason"`: warnings and hints of one cut that somebody has looked at. */

import { type Code, catalogue } from '../language/catalogue/index.js';
import { type Diagnostic, diagnose, hasErrors } from '../language/diagnostic.js';
import type { StatementOf, Tree } from '../language/tree.js';

/**
 * What is left of a cut's messages. `whole`: all stages have said what they had to say; only then an `accept` that silences
 * nothing is worth a hint, and not beside errors, which keep later stages from finding more.
 */
export function withoutAccepted(
  diagnostics: readonly Diagnostic[],
  tree: Tree,
  whole: boolean,
): Diagnostic[] {
  const accepts = tree.statements.filter((statement) => statement.kind === 'accept');
  if (accepts.length === 0) return [...diagnostics];
  const accepted = new Set(accepts.map(({ code }) => code.text));
  const silent = ({ code, severity }: Diagnostic): boolean => severity !== 'error' && accepted.has(code);
  const left = diagnostics.filter((one) => !silent(one));
  const silenced = new Set<string>(diagnostics.filter(silent).map(({ code }) => code));
  if (whole && !hasErrors(diagnostics)) {
    const idle = accepts.filter(
      ({ code }) => Object.hasOwn(catalogue, code.text) && !silenced.has(code.text),
    );
    const others = idle.filter(({ code }) => code.text !== UNUSED);
    // Who accepts idle lines has an idle line of his own where there is no other.
    if (others.length === 0) return [...left, ...idle.map(hint)];
    if (!accepted.has(UNUSED)) return [...left, ...others.map(hint)];
  }
  return left;
}

const UNUSED: Code = 'accept-unused';

function hint({ code: { text }, span }: StatementOf<'accept'>): Diagnostic {
  const fix = { action: 'leave-out', edits: [{ span, text: '' }] } as const;
  return diagnose(UNUSED, span, { accepted: text }, { fix });
}
