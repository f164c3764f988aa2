/** Fixes are offered only where they mend: each is tried on the whole cut, and left out where it breaks something else. */

import type { Code } from '../language/catalogue/index.js';
import type { Diagnostic, Fix } from '../language/diagnostic.js';
import { cutsGrapheme } from '../language/fault-fixes.js';
import type { TextRange } from '../language/source.js';
import { withEdits } from '../language/statement-reader.js';
import type { Tree } from '../language/tree.js';

/** What a fix is judged by: a text that was compiled, and what was found in it. */
export interface CheckedFix {
  readonly tree: Tree;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Characters that may be compiled again for the sake of fixes in one cut; of a cut with more faults than that, only the first have
 * fixes.
 */
const BUDGET = 100_000;

/**
 * The diagnostics of a cut, without the fixes that do not keep what they promise. Fixes in other files are left as they are: they
 * concern other cuts as well. `text`: without its byte-order mark. `compiled` compiles another text of the same cut.
 */
export function withTestedFixes(
  before: CheckedFix,
  text: string,
  compiled: (text: string) => CheckedFix | null,
): Diagnostic[] {
  let left = BUDGET;
  return before.diagnostics.map((one) => {
    if (!one.fix || one.fix.edits.some(({ span }) => span.file !== before.tree.file)) return one;
    left -= text.length;
    const edits = editsOf(one.fix);
    const whole = edits.every(({ start, end }) => !cutsGrapheme(text, start) && !cutsGrapheme(text, end));
    const after = whole && left >= 0 ? compiled(withEdits(text, edits)) : null;
    if (after && mends(one, edits, before, after)) return one;
    const { fix: _, ...rest } = one;
    return rest;
  });
}

type TextEdit = TextRange & { readonly text: string };

const editsOf = (fix: Fix): TextEdit[] =>
  fix.edits.map(({ span, text }) => ({ start: span.start, end: span.end, text }));

/**
 * Whether a fix keeps its promise:
 * - its diagnostic is gone from where it was;
 * - no error stands at an edit, unless it speaks of more than what was written there;
 * - a fix of a timeline brings no fault of the order of its items;
 * - the statements that were edited have no more errors than before, and no other statement becomes unreadable. What could not be
 *   read before and can be read now may have any: nobody looked at its names and numbers until now;
 * - the cut has no more errors than before. Only a statement that could not be read before may bring out errors elsewhere: they
 *   were hidden by it.
 */
function mends(of: Diagnostic, edits: readonly TextEdit[], before: CheckedFix, after: CheckedFix): boolean {
  const { file } = before.tree;
  const written = edits.map(({ start, text }) => {
    const from = moved(start, edits, 'start');
    return { start: from, end: from + text.length };
  });
  const mapped = (range: TextRange): TextRange => ({
    start: moved(range.start, edits, 'start'),
    end: moved(range.end, edits, 'end'),
  });
  const own = (ds: readonly Diagnostic[]) => ds.filter(({ span }) => span.file === file);
  const place = of.span.file === file ? mapped(of.span) : null;
  if (place && own(after.diagnostics).some(({ code, span }) => code === of.code && touch(span, place)))
    return false;
  const wereErrors = errorsOf(before.diagnostics);
  const errors = errorsOf(after.diagnostics);
  const stood = ({ code, span }: Diagnostic): boolean =>
    own(wereErrors).some((one) => one.code === code && touch(mapped(one.span), span));
  const made = own(errors).some(
    (one) => !stood(one) && written.some((edit) => touch(one.span, edit) && !holdsMore(one.span, edit)),
  );
  if (made || after.tree.broken.length > before.tree.broken.length) return false;
  const edited = [
    ...statementsOf(after.tree).filter((one) => written.some((edit) => touch(one, edit))),
    ...statementsOf(before.tree)
      .filter((one) => edits.some((edit) => touch(one, edit)))
      .map(mapped),
    ...(place ? [place] : []),
  ];
  const inEdited = (place: TextRange): boolean => edited.some((one) => touch(place, one));
  const stoodReadable = before.tree.statements.map(({ span }) => mapped(span));
  const nowReadable = after.tree.statements
    .map(({ span }) => span)
    .filter((one) => !stoodReadable.some((other) => touch(one, other)));
  if (own(errors).some((one) => OF_ORDER.has(one.code) && !stood(one) && inEdited(one.span))) return false;
  const uncovered = (place: TextRange): boolean =>
    nowReadable.some(({ start, end }) => place.start >= start && place.end <= end);
  const were = own(wereErrors).filter(({ span }) => inEdited(mapped(span))).length;
  const are = own(errors).filter(({ span }) => inEdited(span) && !uncovered(span)).length;
  if (are > were) return false;
  const unread =
    after.tree.broken.length < before.tree.broken.length ||
    of.code === 'indented-start' ||
    before.tree.broken.some(({ span }) => touch(span, of.span));
  return unread || errors.length <= wereErrors.length;
}

/** Faults of what stands beside what in a timeline: where a fix brings one, it was another drawing that was meant. */
const OF_ORDER: ReadonlySet<Code> = new Set([
  'after-open',
  'at-backwards',
  'at-in-group',
  'between-from',
  'between-to',
  'group-empty',
  'length-and-open',
  'open-in-group',
  'trade-word',
]);

const errorsOf = (diagnostics: readonly Diagnostic[]): Diagnostic[] =>
  diagnostics.filter(({ severity }) => severity === 'error');
const touch = (a: TextRange, b: TextRange): boolean => a.start <= b.end && b.start <= a.end;
const holdsMore = (a: TextRange, b: TextRange): boolean =>
  a.start <= b.start && a.end >= b.end && a.end - a.start > b.end - b.start;
const statementsOf = ({ statements, broken }: Tree): TextRange[] =>
  [...statements, ...broken].map(({ span }) => span);

/** Where an offset of the text is after the edits; inside or at the edge of one: its start or end as it is written then. */
function moved(at: number, edits: readonly TextEdit[], side: 'start' | 'end'): number {
  let by = 0;
  for (const { start, end, text } of edits) {
    if (end < at || (end === at && (side === 'end' || start < end))) by += text.length - (end - start);
    else if (start < at) by += (side === 'start' ? start : start + text.length) - at;
  }
  return at + by;
}
