/** What a selection grows to: a name or number, the item or part around it, groups, the statement, the text. */

import type { SelectionRange } from 'vscode-languageserver';
import type { TextRange } from '../language/source.js';
import type { Analysis } from './workspace.js';

export function selectionRangeAt({ text, parsed, compiled }: Analysis, offset: number): SelectionRange {
  const holds = ({ start, end }: TextRange): boolean => start <= offset && offset <= end;
  const found: TextRange[] = [{ start: 0, end: text.text.length }];
  const visit = (value: unknown): void => {
    if (value === null || typeof value !== 'object') return;
    const { span } = value as { span?: TextRange };
    if (span && typeof span.start === 'number') {
      if (!holds(span)) return;
      found.push(span);
    }
    for (const [key, one] of Object.entries(value)) if (key !== 'span') visit(one);
  };
  for (const statement of compiled?.tree?.statements ?? parsed.tree.statements) visit(statement);
  const token = parsed.tokens.find(({ span }) => holds(span));
  if (token) found.push(token.span);
  const nested = found
    .map(({ start, end }) => ({ start, end }))
    .sort((a, b) => b.end - b.start - (a.end - a.start))
    .filter((one, i, all) => i === 0 || one.end - one.start < all[i - 1]!.end - all[i - 1]!.start);
  return nested.reduce<SelectionRange | undefined>(
    (parent, one) => ({ range: text.range(one), ...(parent ? { parent } : {}) }),
    undefined,
  )!;
}
