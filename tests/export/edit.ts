/** Texts of cuts as one edit, for the tests of its writers. */

import { type EpisodeEdit, editOf } from '../../src/export/episode-edit.js';
import type { Diagnostic } from '../../src/language/diagnostic.js';
import { messageOf } from '../../src/language/message.js';
import type { Settings } from '../../src/shot/settings.js';
import { solveText } from '../solve/shown.js';

/** Cuts 1, 2 … of the lines that are given, `A: 1..` in each. */
export function editOfTexts(
  cuts: readonly string[],
  settings: Partial<Settings> = {},
): { edit: EpisodeEdit | null; diagnostics: readonly Diagnostic[] } {
  return editOf(
    cuts.map((lines, i) => {
      const head = lines.startsWith('cut ') ? '' : `cut ${i + 1}\n`;
      return solveText(`${head}${lines}\nA: 1..\n`, {}, settings).solved;
    }),
  );
}

/** The edit of cuts that go together. */
export function soundEdit(cuts: readonly string[], settings: Partial<Settings> = {}): EpisodeEdit {
  const { edit, diagnostics } = editOfTexts(cuts, settings);
  if (!edit) throw new Error(diagnostics.map((one) => messageOf(one, 'en')).join('\n'));
  return edit;
}
