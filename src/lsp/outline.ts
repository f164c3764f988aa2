/** The outline of a cut, what can be folded away, and the same name elsewhere in it. */

import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type DocumentSymbol,
  type FoldingRange,
  FoldingRangeKind,
  SymbolKind,
} from 'vscode-languageserver';
import type { Statement } from '../language/tree.js';
import { secondsAndFrames } from '../shot/time-notation.js';
import type { DocumentText } from './document-text.js';
import { nameAtOffset } from './name-index.js';
import type { Analysis } from './workspace.js';

interface OutlineEntry {
  readonly name: string;
  readonly kind: SymbolKind;
  readonly detail?: string;
}

export function symbolsOf(analysis: Analysis): DocumentSymbol[] {
  const { text, compiled } = analysis;
  return (compiled?.tree?.statements ?? []).map((statement) => {
    const { name, kind, detail } = entryOf(statement, analysis);
    const selection = 'level' in statement ? statement.level.span : statement.word;
    return {
      name: name || '…',
      kind,
      ...(detail ? { detail } : {}),
      range: text.range(statement.span),
      selectionRange: text.range(selection),
    };
  });
}

function entryOf(one: Statement, { text, compiled }: Analysis): OutlineEntry {
  const typed = text.text.slice(one.span.start, one.span.end).replace(/\s+/g, ' ');
  const short = typed.length > 70 ? `${typed.slice(0, 69)}…` : typed;
  switch (one.kind) {
    case 'cut':
      return { name: short, kind: SymbolKind.Module };
    case 'time': {
      const { shot } = compiled ?? {};
      return {
        name: short,
        kind: SymbolKind.Number,
        detail: shot ? `${secondsAndFrames(shot.length, shot.fps)} on the sheet` : '',
      };
    }
    case 'timeline':
      return { name: one.level.text, kind: SymbolKind.Class, detail: one.title?.text ?? '' };
    case 'mouth':
      return { name: one.level.text, kind: SymbolKind.Class, detail: `mouth of ${one.speaker.text}` };
    case 'phrase':
      return { name: one.name.text, kind: SymbolKind.Function, detail: 'phrase' };
    case 'field':
      return { name: one.name.text, kind: SymbolKind.Variable, detail: 'field' };
    case 'mark':
      return { name: one.name.text, kind: SymbolKind.Event, detail: 'mark' };
    case 'use':
      return { name: short, kind: SymbolKind.File };
    case 'level':
    case 'stack':
    case 'cels':
      return { name: short, kind: SymbolKind.Struct };
    case 'voice':
    case 'sound':
    case 'music':
    case 'note':
    case 'memo':
      return { name: short, kind: SymbolKind.String };
    default:
      return {
        name: short,
        kind: 'range' in one || 'legs' in one ? SymbolKind.Operator : SymbolKind.Property,
      };
  }
}

/** Statements that go on over lines, and comments that stand under each other. */
export function foldsOf({ text, compiled, parsed }: Analysis): FoldingRange[] {
  const folds: FoldingRange[] = [];
  const tree = compiled?.tree ?? parsed.tree;
  for (const { span } of [...tree.statements, ...tree.broken]) fold(text, span.start, span.end, null, folds);
  let first: number | null = null;
  let last = 0;
  for (const { start, end } of parsed.comments) {
    const line = text.lineAt(start);
    const alone = text.text.slice(text.line(line).start, start).trim() === '';
    if (alone && first !== null && line === text.lineAt(last) + 1) last = end;
    else {
      if (first !== null) fold(text, first, last, FoldingRangeKind.Comment, folds);
      first = alone ? start : null;
      last = end;
    }
  }
  if (first !== null) fold(text, first, last, FoldingRangeKind.Comment, folds);
  return folds.sort((a, b) => a.startLine - b.startLine);
}

function fold(
  text: DocumentText,
  start: number,
  end: number,
  kind: FoldingRangeKind | null,
  folds: FoldingRange[],
): void {
  const startLine = text.lineAt(start);
  const endLine = text.lineAt(end);
  if (endLine > startLine) folds.push({ startLine, endLine, ...(kind ? { kind } : {}) });
}

export function highlightsAt({ index, text }: Analysis, offset: number): DocumentHighlight[] {
  const here = nameAtOffset(index, offset);
  if (!here) return [];
  return index.names
    .filter(({ kind, name }) => kind === here.kind && name === here.name)
    .map(({ span, defines }) => ({
      range: text.range(span),
      kind: defines ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
    }));
}
