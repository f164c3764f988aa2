/** Diagnostics as the page shows them. */

import type { Diagnostic } from '../language/diagnostic.js';
import { actionOf, messageOf, noteOf } from '../language/message.js';
import { lines, lineText, placeAt, withoutMark, withoutTabs } from '../language/source.js';
import type { PageProblem } from './shown-cut.js';

/** Lines of the text before and after the one that is wrong. */
const AROUND = 2;
/** Characters of a line that are shown. */
const WIDEST = 400;
const MOST = 100;

/** The first hundred, in their order. `sources`: the texts by the names that spans give. */
export function problemsOf(
  diagnostics: readonly Diagnostic[],
  sources: ReadonlyMap<string, string>,
): readonly PageProblem[] {
  const tables = new Map<string, ReturnType<typeof lines>>();
  const tableOf = (file: string) => {
    const text = sources.get(file);
    if (text === undefined) return null;
    const known = tables.get(file) ?? lines(withoutMark(text));
    tables.set(file, known);
    return known;
  };
  return diagnostics.slice(0, MOST).map(({ severity, code, parameters, notes, fix, span }) => {
    const table = tableOf(span.file);
    const place = table && placeAt(table, span.start);
    const excerpt = [];
    if (table && place) {
      const last = Math.min(table.starts.length, place.line + AROUND);
      for (let line = Math.max(1, place.line - AROUND); line <= last; line++)
        excerpt.push({ line, text: withoutTabs(lineText(table, line)).slice(0, WIDEST) });
    }
    const before = table && place ? lineText(table, place.line).slice(0, place.column - 1) : '';
    return {
      severity,
      code,
      message: messageOf({ code, parameters }, 'en'),
      notes: notes.map((note) => noteOf(note, 'en')),
      fix: fix ? actionOf(fix, 'en') : null,
      file: span.file,
      line: place?.line ?? null,
      column: place ? withoutTabs(before).length + 1 : null,
      excerpt,
    };
  });
}
