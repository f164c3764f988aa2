/**
 * Diagnostics for people: the sentence first, then the place with the code, the line with the fault underlined, remarks, what mends it.
 *
 *     Error: Seconds and frames are written with no blanks between: 5+0.
 *     c012.cut:2:6: spaced-number
 *         time 5 + 0
 *              ^^^^^
 *         to mend: leave the blanks out
 *         time 5+0
 *
 * A place at the start of a line, in this form, is what terminals and editors find by themselves.
 */

import colours from 'picocolors';
import type { ReportTexts } from '../catalogue/catalogue-entry.js';
import type { Diagnostic, Fix, Severity, Span } from '../diagnostic.js';
import { actionOf, messageOf, noteOf, reportTexts } from '../message.js';
import { displayWidth, type Lines, lines, lineText, placeAt, withoutMark, withoutTabs } from '../source.js';
import type { UserLanguage } from '../user-language.js';
import { limited, type Sources, saidOfLeftOut, tableOf } from './report-order.js';

/** Columns of a source line that are shown; longer lines are cut around the fault. */
const WIDEST = 100;
/** Characters on either side of a fault of which the width is measured: more than can be shown, unless most have no width. */
const MEASURED = 4 * WIDEST;
const INDENT = '    ';

type Paint = ReturnType<typeof colours.createColors>;

/** Ends with a line end unless there is nothing to say. */
export function human(
  diagnostics: readonly Diagnostic[],
  sources: Sources,
  { colour, language }: { readonly colour: boolean; readonly language: UserLanguage },
): string {
  const paint = colours.createColors(colour);
  const table = tableOf(sources, (text) => lines(withoutMark(text)));
  const { shown, leftOut } = limited(diagnostics, sources);
  const blocks = shown.map((diagnostic) => block(diagnostic, table, paint, language));
  return [...blocks, ...leftOut.map((one) => `${paint.bold(saidOfLeftOut(one, language))}\n`)].join('');
}

const painted = (severity: Severity, paint: Paint): ((text: string) => string) =>
  ({ error: paint.red, warning: paint.yellow, hint: paint.cyan })[severity];

function place(span: Span, source: Lines | undefined, { places }: ReportTexts): string {
  const file = places[span.file] ?? span.file;
  if (!source) return file;
  const { line, column } = placeAt(source, span.start);
  return `${file}:${line}:${column}`;
}

function block(
  { code, severity, span, parameters, notes, fix, rows }: Diagnostic,
  table: (file: string) => Lines | undefined,
  paint: Paint,
  language: UserLanguage,
): string {
  const tint = painted(severity, paint);
  const source = table(span.file);
  const words = reportTexts(language);
  const out = [
    `${tint(`${words.severity[severity]}:`)} ${paint.bold(visible(messageOf({ code, parameters, ...(rows ? { rows } : {}) }, language)))}`,
    `${place(span, source, words)}: ${paint.dim(code)}`,
  ];
  // Of an empty line there is nothing to show.
  if (source && lineText(source, placeAt(source, span.start).line).trim() !== '')
    out.push(...pointed(source, span).map((line, index) => INDENT + (index === 1 ? tint(line) : line)));
  for (const note of notes) {
    const where = note.span ? `${place(note.span, table(note.span.file), words)}: ` : '';
    out.push(`${INDENT}${words.note}: ${where}${visible(noteOf(note, language))}`);
  }
  if (fix) out.push(...mendOf(fix, source, paint, language));
  return `${out.join('\n')}\n`;
}

/** Controls would move the cursor or worse; they are shown as a mark. */
function visible(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
  return text.replace(/[\u0000-\u0008\u000a-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\ufeff]/g, '�');
}

/** The line of a span's start and the line that underlines it, carets below what the span covers of that line. */
function pointed(source: Lines, span: Span): [string, string] {
  const { line, column } = placeAt(source, span.start);
  const whole = lineText(source, line);
  const fault = Math.min(column - 1, whole.length);
  const cutOff = Math.max(0, fault - MEASURED);
  const typed = whole.slice(cutOff, fault + MEASURED);
  const from = fault - cutOff;
  const to = Math.min(from + Math.max(0, span.end - span.start), typed.length);
  const before = withoutTabs(visible(typed.slice(0, from)));
  const start = displayWidth(before);
  const all = withoutTabs(visible(typed));
  const wide = Math.max(1, displayWidth(visible(typed.slice(from, to)), start));
  const cut = window(all, start, wide);
  return [cut.text, ' '.repeat(cut.start) + '^'.repeat(Math.max(1, Math.min(wide, WIDEST - cut.start)))];
}

/** The stretch of a line around some columns; what is left out is marked by `…`. Where the columns start in it is given too. */
function window(line: string, start: number, wide: number): { text: string; start: number } {
  const whole = Math.max(displayWidth(line), start + 1);
  if (whole <= WIDEST) return { text: line, start };
  const lead = Math.max(4, Math.floor((WIDEST - Math.min(wide, WIDEST)) / 2));
  const from = Math.max(0, Math.min(start - lead, whole - WIDEST));
  let at = 0;
  let text = '';
  let skipped = 0;
  for (const { segment: character } of new Intl.Segmenter().segment(line)) {
    const next = at + displayWidth(character);
    if (at < from + Number(from > 0)) skipped = next;
    else if (next <= from + WIDEST - Number(from + WIDEST < whole)) text += character;
    at = next;
  }
  const head = from > 0 ? '…' : '';
  const tail = from + WIDEST < whole ? '…' : '';
  return { text: head + text + tail, start: start - skipped + head.length };
}

/** The edit in words and, where it stays in one short line, that line as it would be, below the line as it is. */
function mendOf(fix: Fix, source: Lines | undefined, paint: Paint, language: UserLanguage): string[] {
  const out = [`${INDENT}${paint.green(reportTexts(language).mend)}: ${visible(actionOf(fix, language))}`];
  const [first] = fix.edits;
  if (!source || !first) return out;
  const { line } = placeAt(source, first.span.start);
  const start = source.starts[line - 1]!;
  const typed = lineText(source, line);
  const inLine = fix.edits.every(
    ({ span, text }) =>
      span.file === first.span.file &&
      span.start >= start &&
      span.end <= start + typed.length &&
      !/[\r\n]/.test(text),
  );
  if (!inLine) return out;
  let mended = typed;
  for (const { span, text } of [...fix.edits].sort((a, b) => b.span.start - a.span.start)) {
    mended = mended.slice(0, span.start - start) + text + mended.slice(span.end - start);
  }
  if (mended.length > MEASURED) return out;
  const shown = withoutTabs(visible(mended));
  if (displayWidth(shown) <= WIDEST) out.push(`${INDENT}${shown}`);
  return out;
}
