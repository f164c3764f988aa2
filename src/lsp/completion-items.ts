/** What can be offered at a place: words, names, cuts, files. */

import { type CompletionItem, CompletionItemKind, InsertTextFormat } from 'vscode-languageserver';
import { exampleParts } from '../language/grammar-queries.js';
import { byWord } from '../language/statements/statement-table.js';
import type { Item } from '../language/tree.js';
import { statementPages } from '../reference/statement-pages.js';
import type { NameKind } from './name-index.js';
import type { Analysis } from './workspace.js';

export const CHARTS = ['even', 'early', 'late', 'both'];

const KINDS: Readonly<Record<NameKind, CompletionItemKind>> = {
  level: CompletionItemKind.Class,
  field: CompletionItemKind.Variable,
  phrase: CompletionItemKind.Function,
  mark: CompletionItemKind.Event,
};

/** Every name of a kind that the cut knows, with what defines it as its detail. */
export function namesOffered({ compiled, index, text }: Analysis, kind: NameKind): CompletionItem[] {
  const details = new Map<string, string>();
  if (kind === 'field') details.set('full', 'the standard field');
  for (const one of index.names) {
    if (one.kind !== kind) continue;
    const detail = one.defines ? line(text.text.slice(one.statement.span.start, one.statement.span.end)) : '';
    details.set(one.name, details.get(one.name) || detail);
  }
  for (const draft of compiled?.shot && kind === 'level' ? compiled.shot.levels : []) {
    if (!details.has(draft.name)) details.set(draft.name, draft.title);
  }
  return [...details].map(([label, detail]) => ({ label, kind: KINDS[kind], ...(detail ? { detail } : {}) }));
}

/** A statement in one line, cut where it is long. */
export function line(typed: string): string {
  const plain = typed.replace(/\s+/g, ' ').trim();
  return plain.length > 60 ? `${plain.slice(0, 59)}…` : plain;
}

export function keyword(word: string): CompletionItem {
  return { label: word, kind: CompletionItemKind.Keyword };
}

/** The words that begin a statement, each with its example as a snippet where the editor can take one. */
export function statementWords(snippets: boolean): CompletionItem[] {
  return [...byWord.values()].map(({ word, example }) => ({
    label: word,
    kind: CompletionItemKind.Keyword,
    detail: example,
    ...(statementPages[word] ? { documentation: statementPages[word].title } : {}),
    ...(snippets
      ? { insertText: snippet(example), insertTextFormat: InsertTextFormat.Snippet }
      : { insertText: word }),
  }));
}

function snippet(example: string): string {
  let stop = 0;
  return exampleParts(example)
    .map(({ text, fixed }) => {
      const plain = text.replace(/[\\$}]/g, '\\$&');
      return fixed ? plain : `\${${++stop}:${plain}}`;
    })
    .join('');
}

/** Levels that have no timeline yet, each as the beginning of one. */
export function headings(analysis: Analysis): CompletionItem[] {
  const { compiled } = analysis;
  return (compiled?.shot?.levels ?? [])
    .filter(({ timeline, name }) => timeline === null && name !== 'BG')
    .map(({ name }) => ({
      label: name,
      kind: CompletionItemKind.Class,
      detail: 'the timeline of this level',
      insertText: `${name}: `,
    }));
}

/** What an item shows, in a word. */
export function itemLabel(item: Item): string {
  if (item.kind === 'key') return item.name;
  if (item.kind === 'reference')
    return `${item.key}${item.to ? `>${item.to}` : ''}.${item.index}${item.letter}`;
  if (item.kind === 'between') return 'the in-between';
  if (item.kind === 'empty') return 'the empty level';
  return item.kind === 'phrase' ? item.name : 'the group';
}
