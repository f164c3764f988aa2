/** Places in a text for people: lines, columns and how wide characters stand on a terminal. */

/** Start offsets of the lines of a text; a line ends at LF, CR LF or a lone CR. */
export interface Lines {
  readonly text: string;
  readonly starts: readonly number[];
}

/** Both count from 1; the column counts UTF-16 units, as editors do. */
export interface Place {
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

export function placeAt({ text, starts }: Lines, offset: number): Place {
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
export function offsetAt(source: Lines, place: Place): number {
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
const NO_WIDTH = /^[\p{Mn}\p{Me}\p{Cf}]$/u;
/** Code points that the Unicode East Asian Width property calls W or F, in ranges; from memory of UAX 11, rounded outwards to blocks. */
const WIDE: readonly (readonly [number, number])[] = [
  [0x1100, 0x115f],
  [0x2e80, 0x303e],
  [0x3041, 0x33ff],
  [0x3400, 0x4dbf],
  [0x4e00, 0x9fff],
  [0xa000, 0xa4cf],
  [0xa960, 0xa97f],
  [0xac00, 0xd7a3],
  [0xf900, 0xfaff],
  [0xfe30, 0xfe6f],
  [0xff01, 0xff60],
  [0xffe0, 0xffe6],
  [0x1b000, 0x1b2ff],
  [0x1f300, 0x1f64f],
  [0x1f680, 0x1f6ff],
  [0x1f900, 0x1f9ff],
  [0x20000, 0x3fffd],
];

function characterWidth(character: string): number {
  const code = character.codePointAt(0)!;
  if (code < 0x300) return 1;
  if (NO_WIDTH.test(character)) return 0;
  return WIDE.some(([from, to]) => code >= from && code <= to) ? 2 : 1;
}

/** The columns that a text takes on a terminal; a tab goes to the next multiple of 8, counted from `from` columns before the text. */
export function displayWidth(text: string, from = 0): number {
  let width = from;
  for (const character of text) {
    width += character === '\t' ? TAB_STOP - (width % TAB_STOP) : characterWidth(character);
  }
  return width - from;
}

/** Tabs written out as blanks, so that what follows stands where `displayWidth` says. */
export function withoutTabs(text: string): string {
  let out = '';
  let width = 0;
  for (const character of text) {
    const wide = displayWidth(character, width);
    out += character === '\t' ? ' '.repeat(wide) : character;
    width += wide;
  }
  return out;
}
