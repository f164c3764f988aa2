/** Names that a cut knows, as an editor offers them. */

import { type CompletionItem, CompletionItemKind } from 'vscode-languageserver';
import { type NameKind, spanTouches } from './name-index.js';
import { sharedNames } from './name-scope.js';
import type { Analysis, Workspace } from './workspace.js';

const KINDS: Readonly<Record<NameKind, CompletionItemKind>> = {
  level: CompletionItemKind.Class,
  field: CompletionItemKind.Variable,
  phrase: CompletionItemKind.Function,
  mark: CompletionItemKind.Event,
};

/**
 * Every name of a kind that the cut knows, its own and those of the files that it uses, with what defines each as its detail. What is
 * being typed at the cursor is no name yet.
 */
export function namesOffered(
  workspace: Workspace,
  { compiled, index, text, open, episode }: Analysis,
  kind: NameKind,
  cursor: number,
): CompletionItem[] {
  const details = new Map<string, string>();
  if (kind === 'field') details.set('full', 'the standard field');
  const begun = new Set<string>();
  for (const one of index.names) {
    if (one.kind !== kind) continue;
    if (spanTouches(one.span, cursor)) {
      begun.add(one.name);
      continue;
    }
    const { start, end } = one.statement.span;
    const detail = one.defines ? oneLine(text.text.slice(start, end)) : '';
    details.set(one.name, details.get(one.name) || detail);
  }
  const used = open.path === null ? null : workspace.namesOf(open.path, episode.folder)?.used;
  for (const tree of used?.trees ?? []) {
    const source = used!.sources.get(tree.file)!;
    for (const one of sharedNames(tree, source)) {
      if (one.kind !== kind || !one.defines) continue;
      const { start, end } = one.statement.span;
      details.set(one.name, details.get(one.name) || oneLine(source.slice(start, end)));
    }
  }
  for (const draft of compiled?.shot && kind === 'level' ? compiled.shot.levels : []) {
    if (!details.has(draft.name) && !begun.has(draft.name)) details.set(draft.name, draft.title);
  }
  return [...details].map(([label, detail]) => ({ label, kind: KINDS[kind], ...(detail ? { detail } : {}) }));
}

/** A statement in one line, cut where it is long. */
export function oneLine(typed: string): string {
  const plain = typed.replace(/\s+/g, ' ').trim();
  return plain.length > 60 ? `${plain.slice(0, 59)}…` : plain;
}

export function keyword(word: string): CompletionItem {
  return { label: word, kind: CompletionItemKind.Keyword };
}
