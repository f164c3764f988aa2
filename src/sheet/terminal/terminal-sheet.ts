/** The sheet of a solved cut as text for a terminal: the facts of the cut, then a table with one row a frame. Pure. */

import { cellByCell } from '../../layout/table.js';
import {
  BOXED,
  hanging,
  inWidth,
  layTextTable,
  type TextColumn,
  tableLines,
  widthOf,
} from '../../layout/text-table.js';
import { lineLength } from '../../shot/line-length.js';
import type { Shot } from '../../shot/shot.js';
import { feetAndFrames, rowName, secondsAndFrames, secondsText } from '../../shot/time-notation.js';
import type { SolvedLevel, SolvedShot } from '../../solve/solved-shot.js';
import type { LabelLanguage } from '../../words/labels.js';
import type { SheetWords } from '../../words/sheet-words.js';
import { wordsOf } from '../../words/words.js';
import { type CameraPlan, cameraMemo, cameraPlan } from '../camera/camera-plan.js';
import { relationLines } from '../level-relations.js';
import type { LentLevel, Neighbours } from '../page-look.js';
import { unitOf } from '../sheet-geometry.js';
import { speakerOf, wholeText } from '../speech/speech-lanes.js';
import {
  cameraColumns,
  levelColumn,
  notesColumn,
  type Rows,
  sheetColumn,
  speechColumns,
  trackColumn,
} from './terminal-columns.js';

/** The narrowest terminal that a sheet is laid out for. */
export const NARROWEST_TERMINAL = 40;

export interface TerminalLook {
  /** Columns of the terminal, NARROWEST at least. */
  readonly width: number;
  readonly labels: LabelLanguage;
  /** Where there is room, the seconds (feet) that follow stand beside the first ones, as on paper: for eyes, not for comparing. */
  readonly beside?: boolean | undefined;
  /** Only these frames, both included, and of them every so many. */
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly every?: number | undefined;
  /** Only the levels for which it holds. */
  readonly shows?: ((level: string) => boolean) | undefined;
  readonly neighbours?: Neighbours | undefined;
  readonly lent?: readonly LentLevel[] | undefined;
}

/** What the marks of a level's column mean. */
export const TERMINAL_LEGEND: readonly string[] = [
  '(1)  key drawing 1; beside it, here and below, the finished number',
  ' -   in-between      =  breakdown      o  in-between of a cycle, seen before',
  '1.2  in-between that does not stand in its turn, by its name',
  ' │   held            ×  the level is empty from here on      [1]  held since before',
  ' ╮*3 a cycle begins, played three times (<> there and back, .. until further notice); ╯ it ends',
  ' ┌   a line, a sound or a move begins; └ it ends; (A) the camera stands on A',
  '██▌  how loud the recording is there',
  '═══  the cut point: what lies beyond it is handle',
];

/** Lines without their ends; none is wider than the look says. */
export function terminalSheet(solved: SolvedShot, look: TerminalLook): string[] {
  const { shot } = solved;
  const feet = shot.settings.convention === 'west';
  const unit = unitOf(shot.settings, shot.fps);
  const words = wordsOf({ labels: look.labels, convention: shot.settings.convention }).sheet;
  const camera = cameraPlan(solved, { ...shot.settings, labels: look.labels }, look.neighbours);
  const head = headLines({ solved, words, camera, lent: look.lent ?? [], unit, feet }, look.width);
  const rows = rowsOf(shot.length, look);
  if (rows.length === 0) return head;
  const track = trackColumn(solved, rows, words);
  const notes = notesColumn(shot, rows, words);
  const columns = [
    ...levelsOf(solved, look, feet).map((level) => levelColumn(level, rows)),
    ...speechColumns(shot, rows, words),
    ...(track ? [track] : []),
    ...cameraColumns(camera, rows, words),
    ...(notes ? [notes] : []),
  ];
  const rules = rulesOf(rows, unit, look.every ?? 1, [shot.handles.head, shot.length - shot.handles.tail]);
  const { pages } = layTextTable({
    columns: [namesColumn(rows, unit, feet, words), ...columns],
    names: 1,
    rows: rows.length,
    sharing: cellByCell,
    border: BOXED,
    width: look.width,
  });
  const tables = pages
    .flatMap(({ sets }) => sets)
    .map((table) => tableLines(table, BOXED, (row) => rules.get(row) ?? null));
  const [only] = tables;
  if (look.beside && only && tables.length === 1)
    return [...head, ...besideEachOther(only, rules, rows, Math.ceil(unit / (look.every ?? 1)), look.width)];
  return [...head, ...tables.flatMap((lines, i) => [...(i > 0 ? [''] : []), ...lines])];
}

/** Columns between two parts of a table that stand beside each other. */
const GUTTER = 2;

/** The lines of a table with one line a row, cut at whole seconds into as many parts as the width has room for. */
function besideEachOther(
  lines: readonly string[],
  rules: ReadonlyMap<number, unknown>,
  rows: Rows,
  second: number,
  width: number,
): readonly string[] {
  const wide = widthOf(lines[0]!);
  const parts = Math.floor((width + GUTTER) / (wide + GUTTER));
  const each = Math.ceil(Math.ceil(rows.length / second) / parts) * second;
  if (parts < 2 || each >= rows.length) return lines;
  const head = lines.slice(0, lines.length - 1 - rows.length - rules.size);
  const body = lines.slice(head.length, -1);
  const foot = lines.at(-1)!;
  // A rule over a row moves it, and all behind it, one line down.
  const lineOf = (row: number): number => row + [...rules.keys()].filter((one) => one <= row).length;
  const blocks: string[][] = [];
  for (let first = 0; first < rows.length; first += each) {
    const next = first + each;
    const end = next < rows.length ? lineOf(next) - (rules.has(next) ? 1 : 0) : body.length;
    blocks.push([...head, ...body.slice(lineOf(first), end), foot]);
  }
  const height = Math.max(...blocks.map(({ length }) => length));
  return Array.from({ length: height }, (_, i) =>
    blocks
      .map((block) => block[i] ?? ' '.repeat(wide))
      .join(' '.repeat(GUTTER))
      .trimEnd(),
  );
}

function rowsOf(length: number, { from = 1, to = length, every = 1 }: TerminalLook): Rows {
  const rows: number[] = [];
  for (let frame = from; frame <= Math.min(to, length); frame += every) rows.push(frame);
  return rows;
}

/** Bottom first in Japan, top first in the west. */
function levelsOf({ levels }: SolvedShot, { shows }: TerminalLook, west: boolean): SolvedLevel[] {
  const shown = levels.filter(({ name, timed }) => timed && (shows?.(name) ?? true));
  return west ? shown.reverse() : shown;
}

/** Each row by its second (or foot) and the frame within it, and by its number from the first row of the sheet. */
function namesColumn(rows: Rows, unit: number, feet: boolean, words: SheetWords): TextColumn {
  const whole = (frame: number): number => Math.floor((frame - 1) / unit);
  const last = rows.at(-1)!;
  const [left, right] = [String(whole(last)).length, Math.max(3, String(last).length)];
  const digits = String(unit).length;
  const names = rows.map((frame) => {
    const within = String(frame - whole(frame) * unit).padStart(digits, '0');
    const named = `${inWidth(String(whole(frame)), left, 'right')}${feet ? "'" : '+'}${within}`;
    return `${named} ${inWidth(String(frame), right, 'right')}`;
  });
  const width = left + 1 + digits + 1 + right;
  const [time, number] = words.rowHeads(feet);
  const heads = [`${inWidth(time, left + 1 + digits)} ${inWidth(number, right, 'right')}`, ''];
  return sheetColumn(heads, width, width, () => names);
}

/** A line over each whole second (or foot) where that leaves rows between, and a double one where a handle ends or begins. */
function rulesOf(
  rows: Rows,
  unit: number,
  every: number,
  cutPoints: readonly number[],
): Map<number, 'light' | 'double'> {
  const rules = new Map<number, 'light' | 'double'>();
  rows.forEach((frame, i) => {
    const above = rows[i - 1];
    if (above === undefined) return;
    const crosses = (after: number): boolean => above <= after && after < frame;
    if (cutPoints.some(crosses)) rules.set(i, 'double');
    else if (every * 3 <= unit && Math.floor((above - 1) / unit) < Math.floor((frame - 1) / unit))
      rules.set(i, 'light');
  });
  return rules;
}

// ---- what stands over the rows: a fact a line, so that two versions can be compared line by line

export interface TerminalHead {
  readonly solved: SolvedShot;
  readonly words: SheetWords;
  readonly camera: CameraPlan;
  readonly lent: readonly LentLevel[];
  /** Rows of a second or foot, and whether they are feet. */
  readonly unit: number;
  readonly feet: boolean;
}

const INDENT = 4;

export function headLines(headed: TerminalHead, width: number): string[] {
  return facts(headed)
    .filter((line) => line !== '')
    .flatMap((line) => hanging(line, width, INDENT));
}

function facts({ solved, words, camera, lent, unit, feet }: TerminalHead): string[] {
  const { shot, levels, counts } = solved;
  const { settings } = shot;
  const labelled = (label: string, value: string): string => (value === '' ? '' : `${label} ${value}`);
  const name = (frame: number): string => rowName(frame, unit, feet);
  return [
    [words.cutNumber(shot.cut), shot.title && words.quoted(shot.title)].filter(Boolean).join(' '),
    [
      `${words.time} ${secondsText(shot.time, shot.fps)}`,
      feet ? feetAndFrames(shot.time) : '',
      words.frames(shot.time),
      words.framesASecond(shot.fps),
    ]
      .filter(Boolean)
      .join(' · '),
    handles(shot, words),
    [settings.title, settings.episode].filter(Boolean).join(' '),
    labelled(words.scene, shot.scene),
    labelled(words.take, shot.take),
    labelled(words.artist, shot.artists.join(', ')),
    [`${words.drawings} ${counts.drawings}`, words.drawingCounts(counts)].filter(Boolean).join(': '),
    `${words.stack} ${levels.map((level) => level.name).join(' < ')}`,
    ...levels.filter(({ timed }) => timed).map((level) => levelFacts(level, words)),
    ...relationLines(shot.levels, words),
    ...levels.flatMap(({ name: level, reuse }) =>
      reuse ? [words.reuse(level, reuse.cut, reuse.level)] : [],
    ),
    ...[...new Set(lent.map(({ level }) => level))].map((level) =>
      words.lent(
        level,
        lent.filter((one) => one.level === level),
      ),
    ),
    ...(solved.camera.flashes ? [words.flashCaution] : []),
    ...shot.lineUps.map(({ cut, text }) => words.lineUp(cut, text)),
    ...shot.memos.map(({ text }) => `${words.memo} ${text.replace(/\s+/gu, ' ')}`),
    ...cameraMemo(camera).map((line) => `${words.camera} ${line}`),
    ...shot.spoken.map((line) => {
      const kind = { voice: '', sound: words.sound, music: words.music }[line.kind];
      const rows = `${name(line.frames.from)}–${name(line.frames.to)}`;
      const long = lineLength(line, shot.fps);
      const wanted =
        long && words.lineLength(long.unit, long.count, secondsAndFrames(long.wantedFrames, shot.fps));
      return [rows, kind, speakerOf(line, words), words.quoted(wholeText(line)), wanted]
        .filter(Boolean)
        .join(' ');
    }),
    ...shot.notes.map(({ frame, text }) => `${name(frame)} ${words.notes} ${text.replace(/\s+/gu, ' ')}`),
  ];
}

function handles({ handles: { head, tail }, length, fps }: Shot, words: SheetWords): string {
  if (head === 0 && tail === 0) return '';
  const long = (frames: number): string => (frames === 0 ? '' : secondsAndFrames(frames, fps));
  return words.handlesLine(long(head), long(tail), secondsAndFrames(length, fps));
}

/** `A “Pim”: drawings 11, last no. 12, no 7`. */
function levelFacts(
  { name, title, background, drawings, lastCel, missing }: SolvedLevel,
  words: SheetWords,
): string {
  const own = drawings.filter(({ reused }) => !reused).length;
  const gone = missing.map(({ cel }) => cel).join(' ');
  return [
    `${name}${title && ` ${words.quoted(title)}`}: ${background ? words.backgroundCount(own) : `${words.drawings} ${own}`}`,
    `${words.last} ${lastCel}`,
    gone && `${words.missing} ${gone}`,
  ]
    .filter(Boolean)
    .join(', ');
}
