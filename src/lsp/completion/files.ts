import { dirname, join, relative } from 'node:path';
import { type CompletionItem, CompletionItemKind } from 'vscode-languageserver';
import { filesOf } from '../../episode/file-patterns.js';
import { readText } from '../../episode/read-text.js';
import { plainNumber } from '../../episode/scan-statements.js';
import type { Analysis, Workspace } from '../workspace.js';

/** Files that a cut may `use`: shared ones of its folder and of its episode, as it would write them. */
export function filesOffered(workspace: Workspace, { open, episode }: Analysis): CompletionItem[] {
  if (open.path === null) return [];
  const folder = dirname(open.path);
  const { world } = workspace;
  const own = filesOf(world, folder, '*.cut', true).map((name) => join(folder, name));
  const all =
    episode.folder === null
      ? []
      : filesOf(world, episode.folder, '**/*.cut', true).map((name) => join(episode.folder!, name));
  return [...new Set([...own, ...all])]
    .filter((path) => path !== open.path && isShared(path))
    .map((path) => ({ label: relative(folder, path), kind: CompletionItemKind.File }));

  function isShared(path: string): boolean {
    const { ok, text } = readText(world, path, path);
    return ok && plainNumber(text) === null;
  }
}
