/** Columns of the sheet on a terminal: dialogue and sounds, notes, moves and light, levels; and how ranges lie on its rows. */

import { broken, inWidth, type TextColumn, widthOf } from '../../layout/text-table.js';
import type { Shot, Spoken } from '../../shot/shot.js';
import { wordStretches } from '../../shot/word-stretches.js';
import type { SolvedCycle, SolvedLevel, SolvedShot } from '../../solve/solved-shot.js';
import { POINTS_A_ROW } from '../../sound/track-sound.js';
import type { SheetWords } from '../../words/sheet-words.js';
import { type CameraItem, type CameraPlan, saidOn } from '../camera/camera-plan.js';
import { type KeySign, keySigns } from '../column-entries.js';
import { speakerOf, speechOf, wholeText } from '../speech/speech-lanes.js';

/** The frames that have a row, rising; each row tells what is seen on that very frame. */
export type Rows = readonly number[];

/** `texts`: one a row, of any width: what is too wide is cut. `least`: the narrowest that makes sense. */
export function sheetColumn(
  heads: readonly string[],
  least: number,
  wanted: number,
  texts: (width: number) => readonly string[],
): TextColumn {
  return { heads, least, wanted, cells: (width) => texts(width).map((text) => [text]) };
}

/** The rows that show frames of a range: first and last index, or null for none. */
export function rowsWithin(
  rows: Rows,
  { from, to }: { readonly from: number; readonly to: number },
): { readonly first: number; readonly last: number } | null {
  const first = rows.findIndex((frame) => frame >= from);
  const last = rows.findLastIndex((frame) => frame <= to);
  return first < 0 || last < first ? null : { first, last };
}

const WORDS_LEAST = 10;
const WORDS_MOST = 24;

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
      const wanted = Math.min(WORDS_MOST, Math.max(WORDS_LEAST, ...said));
      return sheetColumn([head, ''], WORDS_LEAST, wanted, (width) => linesOn(lines, rows, width, words));
    });
}

function headOf(lines: readonly Spoken[], { sound, music }: SheetWords): string {
  const kinds = new Set(lines.map(({ kind }) => kind));
  return [kinds.has('sound') ? sound : '', kinds.has('music') ? music : ''].filter(Boolean).join(', ');
}

function linesOn(lines: readonly Spoken[], rows: Rows, width: number, words: SheetWords): string[] {
  const cells = rows.map(() => '');
  for (const line of lines) {
    const within = rowsWithin(rows, line.frames);
    if (!within) continue;
    const texts = new Map<number, string>();
    for (const [i, { from, to, text }] of wordStretches(line).entries()) {
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

/** Cells of a bar, and the eighths of one. */
const BAR_CELLS = 4;
const EIGHTHS = ['', '▏', '▎', '▍', '▌', '▋', '▊', '▉'];

/** How loud the recording is on each row, as a bar; null where the cut has none that could be read. */
export function trackColumn({ track, shot }: SolvedShot, rows: Rows, words: SheetWords): TextColumn | null {
  const peaks = track?.sound?.peaks;
  if (!peaks) return null;
  const loudest = peaks.reduce((most, one) => Math.max(most, one), 0);
  const bars = rows.map((frame, i) => {
    const until = rows[i + 1] ?? Math.min(shot.length + 1, frame + 1);
    const here = peaks.subarray((frame - 1) * POINTS_A_ROW, (until - 1) * POINTS_A_ROW);
    const peak = here.reduce((most, one) => Math.max(most, one), 0);
    const eighths = loudest === 0 ? 0 : Math.round((peak / loudest) * BAR_CELLS * 8);
    return '█'.repeat(Math.floor(eighths / 8)) + EIGHTHS[eighths % 8]!;
  });
  const width = Math.max(BAR_CELLS, widthOf(words.track));
  return sheetColumn([words.track, ''], width, width, () => bars);
}

/** Null where no note stands beside these rows. */
export function notesColumn({ notes }: Shot, rows: Rows, words: SheetWords): TextColumn | null {
  const placed = notes.flatMap(({ frame, text }) => {
    const row = rows.findIndex((one) => one >= frame);
    return row < 0 || (row === 0 && rows[0] !== frame) ? [] : [{ row, text }];
  });
  if (placed.length === 0) return null;
  const wanted = Math.min(WORDS_MOST, Math.max(WORDS_LEAST, ...placed.map(({ text }) => widthOf(text))));
  return sheetColumn([words.notes, ''], WORDS_LEAST, wanted, (width) => {
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

const MOVES_LEAST = 8;
const MOVES_MOST = 22;

/** One column for each move that runs at the same time as another. */
export function cameraColumns({ placed }: CameraPlan, rows: Rows, words: SheetWords): TextColumn[] {
  const lanes = new Map<number, CameraItem[]>();
  for (const { item, lane } of placed) {
    if (rowsWithin(rows, { from: item.from, to: item.last }))
      lanes.set(lane, [...(lanes.get(lane) ?? []), item]);
  }
  return [...lanes]
    .sort(([a], [b]) => a - b)
    .map(([, items]) => {
      const names = items.map((item) => `${saidOn(item, item.from - 1, item.from)} ${item.names[0]}`);
      const numbers = items.flatMap((item) => [...item.numbers.keys()].map((at) => saidOn(item, at - 1, at)));
      const widest = (texts: readonly string[], least: number, most: number): number =>
        Math.min(most, Math.max(least, ...texts.map((text) => widthOf(text) + 2)));
      const least = widest(numbers, MOVES_LEAST, MOVES_MOST);
      return sheetColumn([words.camera, ''], least, widest(names, least, MOVES_MOST), (width) =>
        itemsOn(items, rows, width),
      );
    });
}

function itemsOn(items: readonly CameraItem[], rows: Rows, width: number): string[] {
  const cells = rows.map(() => '');
  for (const item of items) {
    const range = { from: item.from, to: item.last };
    const within = rowsWithin(rows, range)!;
    const beside = new Map<number, string>();
    for (let row = within.first; row <= within.last; row++) {
      const since = row === 0 ? rows[row]! - 1 : rows[row - 1]!;
      const said = saidOn(item, since, rows[row]!);
      if (said !== '') beside.set(row, said);
    }
    nameOn(item, beside, within, width);
    for (let row = within.first; row <= within.last; row++) {
      // A move may leave on the row on which the one before it has arrived.
      const text = `${barOn(rows, range, row, within)} ${beside.get(row) ?? ''}`.trimEnd();
      cells[row] = cells[row] && row === within.first ? text.replace(/^┌/, '├') : text;
    }
  }
  return cells;
}

/** The move's name on the first row, behind what stands there, or on the first rows that are free. */
function nameOn(
  item: CameraItem,
  beside: Map<number, string>,
  { first, last }: { readonly first: number; readonly last: number },
  width: number,
): void {
  const room = width - 2;
  const name = item.names.find((one) => widthOf(one) <= room) ?? item.names[0] ?? '';
  const there = beside.get(first) ?? '';
  if (widthOf(`${there} ${name}`.trim()) <= room || last === first) {
    beside.set(first, `${there} ${name}`.trim());
    return;
  }
  const lines = broken(name, room);
  for (let row = first + 1; row + lines.length - 1 <= last; row++) {
    if (lines.some((_, i) => beside.has(row + i))) continue;
    lines.forEach((line, i) => void beside.set(row + i, line));
    return;
  }
  beside.set(first, `${there} ${name}`.trim());
}

// ----
// A level's column: what the key animator typed, the finished number beside it, and brackets for what is played again.

/** Marks longer than that are cut. */
const WIDEST_MARK = 12;

export function levelColumn(level: SolvedLevel, rows: Rows): TextColumn {
  const signs = keySigns(level, 'japan');
  const marks = rows.map((frame, i) => markOn(level, signs, frame, rows[i - 1] ?? null));
  const numbers = rows.map((frame, i) => {
    const cel = level.exposures[frame - 1]?.cel ?? null;
    return cel === null || marks[i] === HELD ? '' : String(cel);
  });
  const brackets = bracketsOf(level, rows);
  const widest = (texts: readonly string[], least: number): number => Math.max(least, ...texts.map(widthOf));
  const markWidth = Math.min(WIDEST_MARK, widest(marks, 3));
  const numberWidth = widest(numbers, 2);
  const texts = rows.map((_, i) =>
    [inWidth(marks[i]!, markWidth), inWidth(numbers[i]!, numberWidth, 'right'), brackets[i]!]
      .join(' ')
      .trimEnd(),
  );
  const least = widest([...texts, level.name], 1);
  const wanted = Math.max(least, Math.min(16, widthOf(level.title)));
  return sheetColumn([level.name, level.title], least, wanted, () => texts);
}

const HELD = ' │';

/** What stands on a row; `before` is the frame of the row above it, null for the first. */
function markOn(
  level: SolvedLevel,
  signs: readonly (KeySign | null)[],
  frame: number,
  before: number | null,
): string {
  const since = before ?? frame - 1;
  const sign = signs.slice(since, frame).findLast((one) => one !== null);
  if (sign) return markOf(sign);
  if (before !== null) return level.exposures[frame - 1]!.drawing === null ? '' : HELD;
  // Held since before the first row that is shown.
  const held = signs.slice(0, frame).findLast((one) => one !== null);
  return held
    ? `[${markOf(held)
        .trim()
        .replace(/^\((.*)\)$/, '$1')}]`
    : '';
}

function markOf(sign: KeySign): string {
  switch (sign.form) {
    case 'key':
      return `(${sign.text})`;
    case 'dash':
      return ' -';
    case 'breakdown':
      return ' =';
    case 'again':
    case 'reused breakdown':
      return ' o';
    case 'empty':
      return ' ×';
    default:
      return sign.text;
  }
}

/** For each row the brackets of the cycles that run there, the innermost first. */
function bracketsOf(level: SolvedLevel, rows: Rows): string[] {
  const depths = Math.max(0, ...level.cycles.map(({ depth }) => depth + 1));
  const lanes = Array.from({ length: depths }, (_, i) => {
    const depth = depths - 1 - i;
    const cells = rows.map(() => '');
    for (const cycle of level.cycles.filter((one) => one.depth === depth)) {
      const within = rowsWithin(rows, { from: cycle.firstFrame, to: cycle.lastFrame });
      if (!within) continue;
      const { first, last } = within;
      for (let row = first; row <= last; row++) cells[row] = '┊';
      if (rows[last]! === cycle.lastFrame || rows[last + 1] !== undefined) cells[last] = '╯';
      if (first > 0 || rows[first] === cycle.firstFrame) cells[first] = `╮${timesOf(cycle)}`;
    }
    const width = Math.max(1, ...cells.map(widthOf));
    return cells.map((cell) => inWidth(cell, width));
  });
  return rows.map((_, row) => lanes.map((cells) => cells[row]).join(''));
}

/** As it is typed: `*3`, `<>*2`, `..`. */
function timesOf({ bounce, times }: SolvedCycle): string {
  return `${bounce ? '<>' : ''}${times === null ? '..' : `*${times}`}`;
}
