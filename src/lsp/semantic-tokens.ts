/** Semantic tokens: what each piece of the text is, as the grammar and the names of the cut have it. */

import { type SemanticTokens, SemanticTokensBuilder, type SemanticTokensLegend } from 'vscode-languageserver';
import type { TextRange } from '../language/source.js';
import type { Item, Statement } from '../language/tree.js';
import type { NameKind } from './name-index.js';
import type { Analysis } from './workspace.js';

const TYPES = [
  'keyword',
  'class',
  'variable',
  'function',
  'event',
  'enumMember',
  'property',
  'number',
  'string',
  'comment',
  'operator',
] as const;
type SemanticType = (typeof TYPES)[number];

export const LEGEND: SemanticTokensLegend = { tokenTypes: [...TYPES], tokenModifiers: ['definition'] };

const OF_NAMES: Readonly<Record<NameKind, SemanticType>> = {
  level: 'class',
  field: 'variable',
  phrase: 'function',
  mark: 'event',
};
const KEY: SemanticType = 'enumMember';
const BETWEEN: SemanticType = 'property';
/** The code of a message, hyphens and all. */
const MESSAGE: SemanticType = 'enumMember';

interface TypedRange extends TextRange {
  readonly type: SemanticType;
  readonly defines: boolean;
}

export function semanticTokensIn(
  { parsed, index, text, compiled }: Analysis,
  within: TextRange | null = null,
): SemanticTokens {
  const known = new Map<number, TypedRange>();
  const mark = (span: TextRange, type: SemanticType, defines = false): void => {
    known.set(span.start, { start: span.start, end: span.end, type, defines });
  };
  for (const statement of (compiled?.tree ?? parsed.tree).statements) {
    for (const span of drawn(statement)) mark(span.at, span.type);
  }
  for (const statement of (compiled?.tree ?? parsed.tree).statements) {
    if (statement.kind !== 'accept') continue;
    const { start, end } = statement.code.span;
    for (const { span } of parsed.tokens) if (span.start >= start && span.end <= end) mark(span, MESSAGE);
  }
  for (const { span, kind, defines } of index.names) mark(span, OF_NAMES[kind], defines);
  const pieces: TypedRange[] = parsed.comments.map(({ start, end }) => ({
    start,
    end,
    type: 'comment',
    defines: false,
  }));
  let before = '';
  for (const { kind, span } of parsed.tokens) {
    const { start, end } = span;
    const own = known.get(start);
    // The only name that follows a brace is that of a chart.
    const type = own?.type ?? (kind === 'Word' && before === 'OpenBrace' ? 'keyword' : typeOf(kind));
    before = kind;
    if (type) pieces.push({ start, end, type, defines: own?.defines ?? false });
  }
  const builder = new SemanticTokensBuilder();
  for (const { start, end, type, defines } of pieces.sort((a, b) => a.start - b.start)) {
    if (within && (end < within.start || start > within.end)) continue;
    const { line, character } = text.position(start);
    const length = text.position(end).character - character;
    if (length > 0) builder.push(line, character, length, TYPES.indexOf(type), defines ? 1 : 0);
  }
  return builder.build();
}

/** What a token is by its kind alone. */
function typeOf(kind: string): SemanticType | null {
  if (kind.startsWith("'")) return 'keyword';
  switch (kind) {
    case 'Text':
    case 'UnclosedText':
      return 'string';
    case 'Word':
    case 'Glued':
    case 'Dots':
    case 'Unknown':
      return null;
    case 'BetweenName':
      return BETWEEN;
    case 'KeyName':
      return KEY;
    default:
      return SIGNS.has(kind) ? 'operator' : 'number';
  }
}

const SIGNS = new Set([
  'DotDot',
  'Bounce',
  'Colon',
  'Dash',
  'Equals',
  'Open',
  'Close',
  'OpenBrace',
  'CloseBrace',
  'Star',
  'Greater',
  'At',
  'Comma',
  'Slash',
  'Plus',
  'Underscore',
]);

/** The drawings that a statement names: their places begin with the drawing's own token. */
function drawn(statement: Statement): { at: TextRange; type: SemanticType }[] {
  if (statement.kind === 'cels')
    return statement.names.flatMap((one) =>
      one.form === 'unused' ? [] : [{ at: one.span, type: one.form === 'key' ? KEY : BETWEEN }],
    );
  if (statement.kind === 'mouth') return statement.drawings.map(({ key }) => ({ at: key.span, type: KEY }));
  const found: { at: TextRange; type: SemanticType }[] = [];
  const visit = (items: readonly Item[]): void => {
    for (const item of items) {
      if (item.kind === 'key') found.push({ at: item.span, type: KEY });
      else if (item.kind === 'between' || item.kind === 'reference')
        found.push({ at: item.span, type: BETWEEN });
      else if (item.kind === 'group') visit(item.items);
    }
  };
  if (statement.kind === 'timeline' || statement.kind === 'phrase') visit(statement.items);
  return found;
}
