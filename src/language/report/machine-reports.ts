/** Printers of diagnostics for programs. */

import type { Diagnostic, Severity, Span } from '../diagnostic.js';
import { actionOf, messageOf, noteOf, reportTexts } from '../message.js';
import { type Lines, lines, placeAt, withoutMark } from '../source.js';
import type { UserLanguage } from '../user-language.js';
import { type LeftOut, limited, type Sources, saidOfLeftOut, tableOf } from './report-order.js';

const COMMANDS: Readonly<Record<Severity, string>> = { error: 'error', warning: 'warning', hint: 'notice' };

/** Escaping as GitHub's documentation of workflow commands has it, from memory. */
const data = (text: string): string =>
  text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
const property = (text: string): string => data(text).replaceAll(':', '%3A').replaceAll(',', '%2C');

/** One line a diagnostic. */
export function github(diagnostics: readonly Diagnostic[], sources: Sources, language: UserLanguage): string {
  const table = tableOf(sources, (text) => lines(withoutMark(text)));
  const { shown, leftOut } = limited(diagnostics, sources);
  const words = reportTexts(language);
  const told = shown.map(({ code, severity, parameters, span, notes, fix, rows }) => {
    const source = table(span.file);
    const properties = [`file=${property(span.file)}`];
    if (source) {
      const start = placeAt(source, span.start);
      const end = placeAt(source, Math.max(span.start, span.end));
      properties.push(`line=${start.line}`, `endLine=${end.line}`);
      if (start.line === end.line) properties.push(`col=${start.column}`, `endColumn=${end.column}`);
    }
    properties.push(`title=${property(code)}`);
    const sentences = [
      messageOf({ code, parameters, ...(rows ? { rows } : {}) }, language),
      ...notes.map((note) => `${words.note}: ${noteOf(note, language)}`),
    ];
    if (fix) sentences.push(`${words.mend}: ${actionOf(fix, language)}`);
    return `::${COMMANDS[severity]} ${properties.join(',')}::${data(sentences.join('\n'))}\n`;
  });
  const rest = leftOut.map(
    (one) =>
      `::${COMMANDS[one.severity]} file=${property(one.file)}::${data(saidOfLeftOut(one, language))}\n`,
  );
  return [...told, ...rest].join('');
}

// ---- diagnostics for programs

/**
 * One JSON document, version 1. Fields may be added to it; none will change its meaning or go without a new version.
 *
 *     { "version": 1,
 *       "diagnostics": [
 *         { "code": "spaced-number", "severity": "error" | "warning" | "hint", "message": "…",
 *           "place": PLACE,
 *           "notes": [ { "message": "…", "place": PLACE | null } ],
 *           "fix": null | { "title": "…", "edits": [ { "place": PLACE, "text": "…" } ] } } ],
 *       "leftOut": [ { "file": "…", "severity": "error", "count": 57 } ] }
 *
 *     PLACE = { "file": "…", "start": POINT | null, "end": POINT | null }
 *     POINT = { "offset": 0, "line": 1, "column": 1 }
 *
 * An offset counts UTF-16 units from 0 after the byte-order mark; lines and columns count from 1, columns in UTF-16 units; `end`
 * is the first place after. Both points are null where the text of the file is not known (a missing file). An edit replaces
 * what stands at its place by its text. Sorted by file and place; at most a hundred of a severity a file, the others are
 * counted in `leftOut`. Messages and titles are English, whatever the user's language: a program goes by the codes, and gets the same
 * bytes everywhere.
 */
export interface JsonReport {
  readonly version: 1;
  readonly diagnostics: readonly {
    readonly code: string;
    readonly severity: string;
    readonly message: string;
    readonly place: JsonPlace;
    readonly notes: readonly { readonly message: string; readonly place: JsonPlace | null }[];
    readonly fix: {
      readonly title: string;
      readonly edits: readonly { readonly place: JsonPlace; readonly text: string }[];
    } | null;
  }[];
  readonly leftOut: readonly LeftOut[];
}

export interface JsonPoint {
  readonly offset: number;
  readonly line: number;
  readonly column: number;
}

export interface JsonPlace {
  readonly file: string;
  readonly start: JsonPoint | null;
  readonly end: JsonPoint | null;
}

/** The report as data; `json` is its text. */
export function jsonReport(diagnostics: readonly Diagnostic[], sources: Sources): JsonReport {
  const table = tableOf(sources, (text) => lines(withoutMark(text)));
  const point = (source: Lines | undefined, offset: number): JsonPoint | null =>
    source ? { offset, ...placeAt(source, offset) } : null;
  const place = ({ file, start, end }: Span): JsonPlace => {
    const source = table(file);
    return { file, start: point(source, start), end: point(source, end) };
  };
  const { shown, leftOut } = limited(diagnostics, sources);
  return {
    version: 1,
    diagnostics: shown.map(({ code, severity, parameters, span, notes, fix, rows }) => ({
      code,
      severity,
      message: messageOf({ code, parameters, ...(rows ? { rows } : {}) }, 'en'),
      place: place(span),
      notes: notes.map((note) => ({
        message: noteOf(note, 'en'),
        place: note.span ? place(note.span) : null,
      })),
      fix: fix
        ? {
            title: actionOf(fix, 'en'),
            edits: fix.edits.map((edit) => ({ place: place(edit.span), text: edit.text })),
          }
        : null,
    })),
    leftOut,
  };
}

export function json(diagnostics: readonly Diagnostic[], sources: Sources): string {
  return `${JSON.stringify(jsonReport(diagnostics, sources), null, 2)}\n`;
}
