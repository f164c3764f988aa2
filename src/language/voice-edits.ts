/** Writes rows into the voice statements of a text, which is left as it is in everything else. */

import { LINE_COLUMNS } from './cels-line.js';
import type { SourceEdit } from './diagnostic.js';
import { displayWidth } from './source.js';
import type { Position, StatementOf } from './tree.js';

type Voice = StatementOf<'voice'>;

/** Where a line and its words are, as somebody has found out. */
export interface VoiceRows {
  readonly from: number;
  readonly to: number;
  /** By their place in the words of the line joined with blanks, in order, rows never falling. */
  readonly words: readonly { readonly start: number; readonly end: number; readonly row: number }[];
}

/** How a row is typed: like the position that stands there. */
export type RowText = (row: number, like: Position) => string;

/** The words of a line as one text: its pieces with a blank between. */
export const lineText = ({ words }: Pick<Voice, 'words'>): string => words.map(({ text }) => text).join(' ');

/** Indent of the lines that a long statement goes on in. */
const INDENT = '  ';

/**
 * What changes of range and ties of a voice statement; comments and line breaks between its pieces stay. A range at marks stays; so does every tie
 * that was typed, unless `again` says that they are to be found anew. Words that begin on the row of the word before them go with it.
 */
export function voiceEdits(
  typed: string,
  { range, words }: Voice,
  rows: VoiceRows,
  rowText: RowText,
  again = false,
): SourceEdit[] {
  const edits: SourceEdit[] = [];
  const put = (start: number, end: number, text: string): void => {
    if (text !== typed.slice(start, end)) edits.push({ span: { file: range.span.file, start, end }, text });
  };
  if (range.from.form !== 'mark' && range.to?.form !== 'mark')
    put(
      range.span.start,
      range.span.end,
      `${rowText(rows.from, range.from)}..${rowText(rows.to, range.from)}`,
    );
  let at = 0;
  let lastRow = 0;
  for (const part of words) {
    const start = at;
    at += part.text.length + 1;
    const keeps = part.at !== null && !again;
    const pieces: { start: number; tie: string | null }[] = [{ start: 0, tie: null }];
    let first = true;
    for (const word of rows.words.filter((one) => one.start >= start && one.start < at)) {
      const later = word.row > lastRow;
      if (first) {
        // The line's own first word stands where the line begins.
        if (!keeps && lastRow > 0 && later) pieces[0]!.tie = rowText(word.row, range.from);
        if (keeps || later) lastRow = word.row;
      } else if (later) {
        pieces.push({ start: word.start - start, tie: rowText(word.row, range.from) });
        lastRow = word.row;
      }
      first = false;
    }
    const written = pieces.map(({ start: from, tie }, i) => {
      const text = quoted(part.text.slice(from, pieces[i + 1]?.start).trim(), typed, part.span.start);
      return tie === null ? text : `@${tie} ${text}`;
    });
    if (pieces.length === 1 && pieces[0]!.tie === null && (keeps || part.at === null)) continue;
    const begins = part.at && again ? signBefore(typed, part.at.span.start) : part.span.start;
    put(
      begins,
      part.span.end,
      folded(written, columnOf(typed, begins), /\r\n|\n|\r/.exec(typed)?.[0] ?? '\n'),
    );
  }
  return edits;
}

/** The `@` of a tie. */
function signBefore(typed: string, at: number): number {
  return Math.max(typed.lastIndexOf('@', at - 1), typed.lastIndexOf('＠', at - 1));
}

function columnOf(typed: string, at: number): number {
  const lineStart = Math.max(typed.lastIndexOf('\n', at - 1), typed.lastIndexOf('\r', at - 1)) + 1;
  return displayWidth(typed.slice(lineStart, at));
}

/** Pieces with blanks between, on indented lines where one would be too long. */
function folded(pieces: readonly string[], column: number, newline: string): string {
  let text = '';
  let width = column;
  for (const piece of pieces) {
    const wide = displayWidth(piece);
    if (text !== '' && width + 1 + wide > LINE_COLUMNS) {
      text += `${newline}${INDENT}${piece}`;
      width = INDENT.length + wide;
    } else {
      text += text === '' ? piece : ` ${piece}`;
      width += (text === piece ? 0 : 1) + wide;
    }
  }
  return text;
}

/** Text in the quotes that stood there. */
function quoted(text: string, typed: string, at: number): string {
  const corner = typed[at] === '「';
  const inner = text
    .replaceAll('\\', '\\\\')
    .replaceAll('\n', '\\n')
    .replace(corner ? /\u300d/g : /"/g, (quote) => `\\${quote}`);
  return corner ? `「${inner}」` : `"${inner}"`;
}
