/** Cuts, levels, fields, phrases and marks of an episode, found by a piece of their names. */

import { SymbolKind, type WorkspaceSymbol } from 'vscode-languageserver';
import type { NameKind } from './name-index.js';
import { NameScope } from './name-scope.js';
import type { Analysis, Workspace } from './workspace.js';

const MOST = 500;

const KINDS: Readonly<Record<NameKind, SymbolKind>> = {
  level: SymbolKind.Class,
  field: SymbolKind.Variable,
  phrase: SymbolKind.Function,
  mark: SymbolKind.Event,
};

/** Those that hold every character of the query in its order, as editors search. `analysis`: any open text of the episode. */
export function workspaceSymbols(workspace: Workspace, analysis: Analysis, query: string): WorkspaceSymbol[] {
  const found: WorkspaceSymbol[] = [];
  for (const { path, name: file, text: typed, parsed, index } of new NameScope(
    workspace,
    analysis,
  ).ownNames()) {
    const uri = workspace.uriOf(path);
    const text = workspace.newText(typed);
    const cut = parsed.tree.statements.find(({ kind }) => kind === 'cut');
    const cutName =
      cut?.kind === 'cut' ? [`cut ${cut.number.text}`, cut.title?.text].filter(Boolean).join(' ') : '';
    const put = (
      name: string,
      kind: SymbolKind,
      span: { start: number; end: number },
      containerName: string,
    ) => {
      if (found.length < MOST && matches(name, query))
        found.push({ name, kind, location: { uri, range: text.range(span) }, containerName });
    };
    if (cut) put(cutName, SymbolKind.Module, cut.span, file);
    const said = new Set<string>();
    for (const { kind, name, span, defines } of index.names) {
      if (!defines || said.has(`${kind} ${name}`)) continue;
      said.add(`${kind} ${name}`);
      put(name, KINDS[kind], span, cutName || file);
    }
  }
  return found;
}

function matches(name: string, query: string): boolean {
  let at = 0;
  const letters = name.normalize('NFKC').toLowerCase();
  for (const letter of query.normalize('NFKC').toLowerCase().replaceAll(' ', '')) {
    at = letters.indexOf(letter, at) + 1;
    if (at === 0) return false;
  }
  return true;
}
