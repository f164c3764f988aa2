/** What the live view shows, as it is given by whoever watches. */

import type { Diagnostic, Severity } from '../language/diagnostic.js';
import { actionOf, messageOf, noteOf } from '../language/message.js';
import { lines, lineText, placeAt, withoutMark, withoutTabs } from '../language/source.js';
import type { UserLanguage } from '../language/user-language.js';
import type { Page } from '../sheet/display-list.js';
import type { CutPlay } from './play-data.js';

export interface ShownPage {
  readonly page: Page;
  /** Equal where the same stands on the paper, but for the stamp. */
  readonly hash: string;
}

/** A problem with the lines of the text around it. */
interface PageProblem {
  readonly severity: Severity;
  readonly code: string;
  readonly message: string;
  readonly notes: readonly string[];
  /** What would mend it; null: nothing is offered. */
  readonly fix: string | null;
  readonly file: string;
  /** Both from 1; null where the file as a whole is meant. */
  readonly line: number | null;
  readonly column: number | null;
  readonly excerpt: readonly { readonly line: number; readonly text: string }[];
}

/** A file that a cut names, as it is handed to the browser. */
export interface ServedFile {
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** Frames from..to, both included. */
export interface FrameStretch {
  readonly from: number;
  readonly to: number;
}

/** Rows of a sheet; `level`: of a drawing of this level, null: of what stands in no level's column. */
export interface ShownRows extends FrameStretch {
  readonly level: string | null;
}

/** What stands at a place of a text: item by item, and as the frames of all of them, joined where they meet. */
export interface TextRows {
  readonly frames: readonly FrameStretch[];
  readonly items: readonly ShownRows[];
}

/** Where a text says what is seen on a row. */
export interface TextPlace {
  /** As messages call it. */
  readonly file: string;
  /** Both from 1. */
  readonly line: number;
  readonly column: number;
  /** The whole line. */
  readonly text: string;
}

export interface ShownCut {
  /** Names it in addresses; letters and digits. */
  readonly id: string;
  /** What messages call its file. */
  readonly file: string;
  /** '' where it cannot be read. */
  readonly number: string;
  readonly title: string;
  /** `broken`: its pages are those of the last text that could be printed. */
  readonly state: 'good' | 'broken';
  /** `1 error`, as the terminal says it; '' where there is none. */
  readonly fault: string;
  readonly problems: readonly PageProblem[];
  /** As it stands at the foot of the pages. */
  readonly stamp: string;
  /** Made at the first question. [] where there were none yet. */
  pages(): readonly ShownPage[];
  /**
   * The rows of what stands at a column of a line of a file (both from 1), of the whole line where nothing stands there or no column
   * is given; null: the cut has nothing to do with that file.
   */
  rowsAt(file: string, line: number, column: number | null): TextRows | null;
  /** Where the text says what is seen on a row, in the column of a level or (null) in none; null: nowhere. */
  placeOf(frame: number, level: string | null): TextPlace | null;
  /** What the player shows, of the last text that could be printed; null: there was none yet. */
  play(): CutPlay | null;
  /** The scan of a drawing that is shown; null: there is none, or it is no picture. */
  scan(level: number, number: number | null): ServedFile | null;
  /** What is heard from row 1 to the last one; null: nothing. */
  sound(): ServedFile | null;
}

// ---- diagnostics as the page shows them

/** Lines of the text before and after the one that is wrong. */
const AROUND = 2;
/** Characters of a line that are shown. */
const WIDEST = 400;
const MOST = 100;

/** The first hundred, in their order. `sources`: the texts by the names that spans give. */
export function problemsOf(
  diagnostics: readonly Diagnostic[],
  sources: ReadonlyMap<string, string>,
  language: UserLanguage,
): readonly PageProblem[] {
  const tables = new Map<string, ReturnType<typeof lines>>();
  const tableOf = (file: string) => {
    const text = sources.get(file);
    if (text === undefined) return null;
    const known = tables.get(file) ?? lines(withoutMark(text));
    tables.set(file, known);
    return known;
  };
  return diagnostics.slice(0, MOST).map(({ severity, code, parameters, notes, fix, span, rows }) => {
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
      message: messageOf({ code, parameters, ...(rows ? { rows } : {}) }, language),
      notes: notes.map((note) => noteOf(note, language)),
      fix: fix ? actionOf(fix, language) : null,
      file: span.file,
      line: place?.line ?? null,
      column: place ? withoutTabs(before).length + 1 : null,
      excerpt,
    };
  });
}
