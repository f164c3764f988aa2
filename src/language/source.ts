/** Places in a text for people: lines, columns and how wide characters stand on a terminal. */

import stringWidth from 'string-width';

/** A part of one text: UTF-16 offsets after the byte-order mark, `start` included, `end` excluded. */
export interface TextRange {
  readonly start: number;
  readonly end: number;
}

/** Start offsets of the lines of a text; a line ends at LF, CR LF or a lone CR. */
export interface Lines {
  readonly text: string;
  readonly starts: readonly number[];
}

/** Both count from 1; the column counts UTF-16 units, as editors do. */
export interface LineColumn {
  readonly line: number;
  readonly column: number;
}

/** Leaves out a byte-order mark: every offset of the program counts the text after it. */
export function withoutMark(text: string): string {
  return text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
}

export function lines(text: string): Lines {
  const starts = [0];
  for (const end of text.matchAll(/\r\n|\n|\r/g)) starts.push(end.index + end[0].length);
  return { text, starts };
}

export function placeAt({ text, starts }: Lines, offset: number): LineColumn {
  const bounded = Math.max(0, Math.min(offset, text.length));
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[middle]! <= bounded) low = middle;
    else high = middle - 1;
  }
  return { line: low + 1, column: bounded - starts[low]! + 1 };
}

/** The offset of a place; a place beyond the text or its line is moved to the nearest one inside. */
export function offsetAt(source: Lines, place: LineColumn): number {
  const line = Math.max(1, Math.min(place.line, source.starts.length));
  const start = source.starts[line - 1]!;
  return Math.max(start, Math.min(start + place.column - 1, start + lineText(source, line).length));
}

/** A line's text without its end; lines count from 1. */
export function lineText({ text, starts }: Lines, line: number): string {
  const start = starts[line - 1] ?? text.length;
  return text.slice(start, starts[line] ?? text.length).replace(/[\r\n]+$/, '');
}

const TAB_STOP = 8;
/** One column a character, known without asking the library, which takes a thousand times as long. */
const NARROW = /^[\x20-\x7e]*$/;

/**
 * The columns that a text takes on a terminal, by the Unicode East Asian Width property; a tab goes to the next multiple of 8,
 * counted from `from` columns before the text.
 */
export function displayWidth(text: string, from = 0): number {
  if (NARROW.test(text)) return text.length;
  let width = from;
  for (const [i, part] of text.split('\t').entries()) {
    if (i > 0) width += TAB_STOP - (width % TAB_STOP);
    width += NARROW.test(part) ? part.length : stringWidth(part);
  }
  return width - from;
}

/** Tabs written out as blanks, so that what follows stands where `displayWidth` says. */
export function withoutTabs(text: string): string {
  const [first = '', ...rest] = text.split('\t');
  return rest.reduce(
    (out, part) => `${out}${' '.repeat(displayWidth('\t', displayWidth(out)))}${part}`,
    first,
  );
}

/** A text as the language quotes it: quotes, backslashes and line breaks escaped. */
export function quote(text: string): string {
  return `"${text.replace(/[\\"]/g, '\\$&').replace(/\n/g, '\\n')}"`;
}
