/** A text in its one canonical layout. Pure. */

import { displayWidth, withoutMark } from '../source.js';
import type { Item, Statement } from '../tree.js';
import { type FormatPiece, piecesOf } from './format-pieces.js';
import { type FrameRate, ItemTiming } from './item-frames.js';
import { headingWidth, type Line, linesOf } from './statement-lines.js';

export interface Formatted {
  readonly text: string;
  /** Statements that cannot be read: they stand as they were, to the byte. */
  readonly left: number;
}

/** Headings of timelines wider than this do not move the items of those around them. */
const WIDEST_HEADING = 40;
/** Where comments behind a line start, columns counted from 0, and how far behind its text at least. */
const COMMENT_COLUMN = 42;
const COMMENT_GAP = 2;
/** A comment behind blanks and below a statement that cannot be read. */
const INDENT = '    ';

/**
 * Only blanks, line breaks and the width of characters change, and names become NFC: it means what it meant. `speed` is that of the
 * episode, where it says another one; it only decides at which seconds long lines are broken.
 */
export function format(file: string, text: string, speed: Partial<FrameRate> = {}): Formatted {
  const read = piecesOf(file, withoutMark(text));
  const statements = read.flatMap((piece): Statement[] =>
    piece.kind === 'statement' ? [piece.statement] : [],
  );
  const phrases = new Set(statements.flatMap((one) => (one.kind === 'phrase' ? [one.name.text] : [])));
  const pieces = read.map((piece): FormatPiece => {
    const doubtful = piece.kind === 'statement' && isDoubtful(piece.statement, phrases);
    return doubtful ? { kind: 'left', text: piece.typed } : piece;
  });
  // With a file that is used, nobody knows here whether the phrase stands there.
  const uses = statements.some(({ kind }) => kind === 'use');
  const timing = new ItemTiming(statements, { fps: 24, on: 2, ...speed });
  const columns = itemColumns(pieces);
  const lines: (Line | 'left')[] = [];
  const kept = new Map<number, string>();
  let indent = '';
  let left = 0;
  for (const [i, piece] of pieces.entries()) {
    if (piece.kind === 'statement') {
      const laid = linesOf(piece, timing, columns.get(i) ?? null);
      lines.push(...laid.lines);
      indent = laid.indent;
    } else if (piece.kind === 'left') {
      kept.set(lines.length, piece.text);
      lines.push('left');
      indent = INDENT;
      if (!uses || read[i]!.kind === 'left') left++;
    } else lines.push({ text: (piece.indented ? indent : '') + piece.text, comment: null });
  }
  const out = withComments(lines).map((line, i) => line ?? kept.get(i)!);
  while (out.length > 0 && out[0] === '') out.shift();
  while (out.length > 0 && out.at(-1) === '') out.pop();
  return { text: out.length > 0 ? `${out.join('\n')}\n` : '', left };
}

/**
 * Whether a line of it may be the timeline of another level that was indented by a slip: it reads as a phrase of that name, and this
 * text has none. Put behind the line before, nobody would see the slip any more.
 */
function isDoubtful(statement: Statement, phrases: ReadonlySet<string>): boolean {
  const doubtful = (items: readonly Item[]): boolean =>
    items.some((item) =>
      item.kind === 'group'
        ? doubtful(item.items)
        : item.kind === 'phrase' && Boolean(item.margin) && !phrases.has(item.name),
    );
  return (statement.kind === 'timeline' || statement.kind === 'phrase') && doubtful(statement.items);
}

/** Where the items of timelines that stand line under line start, by the piece's index. */
function itemColumns(pieces: readonly FormatPiece[]): Map<number, number> {
  const columns = new Map<number, number>();
  let block: { readonly index: number; readonly width: number }[] = [];
  const close = (): void => {
    const widest = block.reduce(
      (most, { width }) => (width <= WIDEST_HEADING ? Math.max(most, width) : most),
      0,
    );
    for (const { index, width } of block) if (width <= widest) columns.set(index, widest + 1);
    block = [];
  };
  for (const [index, piece] of pieces.entries()) {
    if (piece.kind === 'statement' && piece.statement.kind === 'timeline') {
      block.push({ index, width: headingWidth(piece) });
    } else close();
  }
  close();
  return columns;
}

/** The lines with their comments, those on lines under each other in one column; null for a line that is kept. */
function withComments(lines: readonly (Line | 'left')[]): (string | null)[] {
  const out: (string | null)[] = [];
  for (let i = 0; i < lines.length; ) {
    const run: Line[] = [];
    for (let at = i; at < lines.length; at++) {
      const line = lines[at]!;
      if (line === 'left' || line.comment === null) break;
      run.push(line);
    }
    const widest = run.reduce((most, { text }) => Math.max(most, displayWidth(text)), 0);
    const column = Math.max(COMMENT_COLUMN, widest + COMMENT_GAP);
    for (const { text, comment } of run) out.push(text + ' '.repeat(column - displayWidth(text)) + comment);
    i += run.length;
    const line = lines[i];
    if (line === undefined) break;
    out.push(line === 'left' ? null : line.text);
    i++;
  }
  return out;
}
