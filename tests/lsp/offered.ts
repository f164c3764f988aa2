/** What completion offers at the `|` of a text. */

import { completionsAt } from '../../src/lsp/editor-completion.js';
import { opened } from './opened.js';

interface Asking {
  readonly files?: Readonly<Record<string, string>>;
  readonly blank?: boolean;
}

/** Labels and the text as it would be with each of them. */
export async function offeredIn(typed: string, { files = {}, blank = false }: Asking = {}) {
  const { workspace, analysis, cursor } = await opened(typed, files);
  const { items } = completionsAt(workspace, analysis, cursor, { snippets: false, blank });
  return items.map(({ label, textEdit, detail, sortText }) => {
    const { range, newText } = textEdit as {
      range: Parameters<typeof analysis.text.changed>[0];
      newText: string;
    };
    return { label, detail, sortText: sortText ?? label, text: analysis.text.changed(range, newText).text };
  });
}
export const labelsOffered = async (typed: string, asking?: Asking) =>
  (await offeredIn(typed, asking)).map(({ label }) => label);
