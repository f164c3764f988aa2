/** A text that an editor has open, in a world in memory. */

import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import type { UserLanguage } from '../../src/language/user-language.js';
import { DocumentText, type Encoding } from '../../src/lsp/document-text.js';
import { type Analysis, Workspace } from '../../src/lsp/workspace.js';

export interface Opened {
  readonly host: MemoryHost;
  readonly workspace: Workspace;
  readonly analysis: Analysis;
  /** Where `|` stood in the text, which is taken out; 0 without one. */
  readonly cursor: number;
  /** The place of a piece of the text, the last one where there are several. */
  readonly at: (piece: string) => number;
}

export const uri = (name: string): string => `file:///work/${name}`;

/** Opens `name` with a text; `files` lie on the disk beside it. Messages and reference of another language than English have to be loaded. */
export async function opened(
  typed: string,
  files: Readonly<Record<string, string | Uint8Array>> = {},
  {
    name = 'c1.cut',
    encoding = 'utf-16',
    language = 'en',
  }: { name?: string; encoding?: Encoding; language?: UserLanguage } = {},
): Promise<Opened> {
  const host = memoryHost(files);
  const workspace = new Workspace(host);
  workspace.encoding = encoding;
  workspace.language = language;
  const bar = typed.indexOf('|');
  const text = bar < 0 ? typed : typed.slice(0, bar) + typed.slice(bar + 1);
  workspace.put(uri(name), 1, new DocumentText(text, encoding));
  const analysis = (await workspace.analysis(uri(name)))!;
  return {
    host,
    workspace,
    analysis,
    cursor: Math.max(0, bar),
    at: (piece) => {
      const place = text.lastIndexOf(piece);
      if (place < 0) throw new Error(`the text has no ${piece}`);
      return place;
    },
  };
}
