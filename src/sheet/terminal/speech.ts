/** Columns for what is said and heard, and for notes beside rows. */

import { broken, widthOf } from '../../layout/terminal-text.js';
import type { TextColumn } from '../../layout/text-table.js';
import type { Shot, Spoken } from '../../shot/shot.js';
import type { SheetWords } from '../../words/sheet-words.js';
import { speechOf, stretches, wholeText } from '../speech/plan.js';
import { type Rows, rowsWithin, sheetColumn } from './column.js';

const LEAST = 10;
const MOST = 24;

/** One column for each voice that speaks at the same time as another, then those of the sounds. Only those with words on these rows. */
export function speechColumns(shot: Shot, rows: Rows, words: SheetWords): TextColumn[] {
  const { placed, voices } = speechOf(shot);
  const lanes = new Map<number, Spoken[]>();
  for (const { spoken, lane } of placed) {
    if (rowsWithin(rows, spoken.frames)) lanes.set(lane, [...(lanes.get(lane) ?? []), spoken]);
  }
  return [...lanes]
    .sort(([a], [b]) => a - b)
    .map(([lane, lines]) => {
      const head = lane < voices ? words.dialogue : headOf(lines, words);
      const said = lines.map((line) => widthOf(`${speakerOf(line, words)} ${wholeText(line)}`) + 2);
      const wanted = Math.min(MOST, Math.max(LEAST, ...said));
      return sheetColumn([head, ''], LEAST, wanted, (width) => linesOn(lines, rows, width, words));
    });
}

function headOf(lines: readonly Spoken[], { sound, music }: SheetWords): string {
  const kinds = new Set(lines.map(({ kind }) => kind));
  return [kinds.has('sound') ? sound : '', kinds.has('music') ? music : ''].filter(Boolean).join(', ');
}

export function speakerOf({ speaker, manner }: Spoken, { off, mono }: SheetWords): string {
  const how = { on: '', off: ` ${off}`, mono: ` ${mono}` }[manner];
  return speaker + how === '' ? '' : `${speaker}${how}:`;
}

function linesOn(lines: readonly Spoken[], rows: Rows, width: number, words: SheetWords): string[] {
  const cells = rows.map(() => '');
  for (const line of lines) {
    const within = rowsWithin(rows, line.frames);
    if (!within) continue;
    const texts = new Map<number, string>();
    for (const [i, { from, to, text }] of stretches(line).entries()) {
      const place = rowsWithin(rows, { from, to });
      if (!place) continue;
      const speaker = i === 0 ? speakerOf(line, words) : '';
      const said = broken(`${speaker} ${text}`.trim(), width - 2);
      const room = place.last - place.first + 1;
      // What finds no room is cut there; the head of the sheet has the whole of it.
      if (said.length > room) said.splice(room - 1, said.length, said.slice(room - 1).join(' '));
      said.forEach((one, row) => void texts.set(place.first + row, one));
    }
    for (let row = within.first; row <= within.last; row++) {
      cells[row] = `${barOn(rows, line.frames, row, within)} ${texts.get(row) ?? ''}`.trimEnd();
    }
  }
  return cells;
}

/** A line down the rows with a foot at both of its ends, where these have a row. */
export function barOn(
  rows: Rows,
  { from, to }: { readonly from: number; readonly to: number },
  row: number,
  { first, last }: { readonly first: number; readonly last: number },
): string {
  const begins = row === first && (row > 0 || rows[row] === from);
  const ends = row === last && (row < rows.length - 1 || rows[row] === to);
  return begins && ends ? '╶' : begins ? '┌' : ends ? '└' : '│';
}

/** Null where no note stands beside these rows. */
export function notesColumn({ notes }: Shot, rows: Rows, words: SheetWords): TextColumn | null {
  const placed = notes.flatMap(({ frame, text }) => {
    const row = rows.findIndex((one) => one >= frame);
    return row < 0 || (row === 0 && rows[0] !== frame) ? [] : [{ row, text }];
  });
  if (placed.length === 0) return null;
  const wanted = Math.min(MOST, Math.max(LEAST, ...placed.map(({ text }) => widthOf(text))));
  return sheetColumn([words.notes, ''], LEAST, wanted, (width) => {
    const cells = rows.map(() => '');
    placed.forEach(({ row, text }, i) => {
      const lines = broken(text, width);
      const room = Math.max(1, (placed[i + 1]?.row ?? rows.length) - row);
      if (lines.length > room) lines.splice(room - 1, lines.length, lines.slice(room - 1).join(' '));
      lines.slice(0, rows.length - row).forEach((line, j) => {
        cells[row + j] = cells[row + j] ? `${cells[row + j]} / ${line}` : line;
      });
    });
    return cells;
  });
}
