/** Offers to make a phrase of the items that are selected in a timeline. */

import { type CodeAction, CodeActionKind } from 'vscode-languageserver';
import { hasErrors } from '../language/diagnostic.js';
import type { TextRange } from '../language/source.js';
import { withEdits } from '../language/statement-reader.js';
import type { Item } from '../language/tree.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { Analysis, Workspace } from './workspace.js';

/** What is offered shows the same drawings on the same frames. The phrase stands above the timeline; its name waits to be renamed. */
export function phraseActions(workspace: Workspace, analysis: Analysis, selected: TextRange): CodeAction[] {
  const { compiled, text, index, open, name: file } = analysis;
  const typed = text.text;
  const selection = trimmed(typed, selected);
  const solved = compiled?.solved;
  if (!selection || !solved) return [];
  const { start, end } = selection;
  const timeline = compiled.tree?.statements.find(
    ({ kind, span }) => kind === 'timeline' && span.start <= start && end <= span.end,
  );
  if (timeline?.kind !== 'timeline') return [];
  const items = itemsIn(timeline.items, selection);
  // One drawing alone is no phrase.
  if (!items || (items.length < 2 && items[0]?.kind !== 'group')) return [];
  const names = new Set(index.names.filter(({ kind }) => kind === 'phrase').map(({ name }) => name));
  let number = 1;
  while (names.has(`part${number}`)) number++;
  const name = `part${number}`;
  const blank = (at: number): string => (/[\p{L}\p{N}_]/u.test(typed[at] ?? '') ? ' ' : '');
  const above = timeline.span.start;
  const edits = [
    { span: { file, start: above, end: above }, text: `phrase ${name} = ${typed.slice(start, end)}\n` },
    { span: { file, start, end }, text: `${blank(start - 1)}${name}${blank(end)}` },
  ];
  const trial = workspace.tried(
    analysis,
    withEdits(
      typed,
      edits.map(({ span, text: one }) => ({ ...span, text: one })),
    ),
  );
  const after = trial.compiled?.solved;
  if (!after || shownBy(after) !== shownBy(solved)) return [];
  if (hasErrors(trial.compiled!.diagnostics) && !hasErrors(compiled.diagnostics)) return [];
  return [
    {
      title: `Make a phrase of this: ${name}`,
      kind: CodeActionKind.RefactorExtract,
      edit: { changes: { [open.uri]: edits.map((edit) => text.textEdit(edit)) } },
    },
  ];
}

/** Without the blanks around it; null where nothing is left. */
function trimmed(text: string, { start, end }: TextRange): TextRange | null {
  const inside = text.slice(start, end);
  const first = start + inside.length - inside.trimStart().length;
  return inside.trim() === '' ? null : { start: first, end: first + inside.trim().length };
}

/** The items that begin and end where the selection does, at whatever depth; null where it cuts one apart. */
function itemsIn(items: readonly Item[], { start, end }: TextRange): readonly Item[] | null {
  const from = items.findIndex(({ span }) => span.start === start);
  const to = items.findIndex(({ span }) => span.end === end);
  if (from >= 0 && to >= from) return items.slice(from, to + 1);
  for (const item of items) {
    if (item.kind !== 'group' || item.span.start > start || item.span.end < end) continue;
    return itemsIn(item.items, { start, end });
  }
  return null;
}

function shownBy({ levels }: SolvedShot): string {
  return JSON.stringify(levels.map(({ name, exposures }) => [name, exposures]));
}
