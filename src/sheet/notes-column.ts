/** The notes column: texts beside their rows, pushed apart where they crowd, each with a pointer to its row. */

import { rowName } from '../shot/time-notation.js';
import { besideGutter } from './block-columns.js';
import type { Mark } from './display-list.js';
import { polygon, textAt } from './mark-builders.js';
import { type BlockFrames, type PageSide, topOf } from './sheet-plan.js';
import { wrap } from './text-fitting.js';

interface Note {
  readonly frame: number;
  readonly text: string;
  /** A cut point is ruled at the top or the bottom edge of its row, heavily: the note keeps off. */
  readonly ruled: 'above' | 'below' | null;
}

interface SetNote extends Note {
  readonly lines: readonly string[];
  /** The row's name at the head of the first line, or ''. */
  readonly named: string;
}

/** How the notes of a block are set. */
interface Setting {
  readonly sizeMm: number;
  /** From line to line. */
  readonly pitch: number;
}

const LEADING = 1.16;
/** What a bold character is wider than a regular one, ems, at most. */
const NAMED = 0.05;
/** How far a note keeps off a cut point, rows. */
const OFF = 0.18;
/** Left part of the column: pointers to the rows. */
const POINTERS = 1.7;

export function noteMarks(side: PageSide, run: BlockFrames): Mark[] {
  const notes = notesOf(side, run);
  if (notes.length === 0) return [];
  const { geometry } = side;
  const most = Math.max(geometry.leastTextMm, Math.min(2.1 * geometry.scale, geometry.rowMm * 0.84));
  // A line of a note stands on a row where there is room for that; else closer, else smaller.
  let setting: Setting = { sizeMm: most, pitch: Math.max(geometry.rowMm, most * LEADING) };
  let placed = placeNotes(side, run, notes, setting);
  while (!placed && setting.sizeMm > geometry.leastTextMm) {
    const sizeMm = Math.max(geometry.leastTextMm, setting.sizeMm * 0.93);
    setting = { sizeMm, pitch: sizeMm * LEADING };
    placed = placeNotes(side, run, notes, setting);
  }
  let left = notes;
  // Too much for the column: the longest are told in the memo, each with a pointer on its row.
  while (!placed) {
    const longest = left.reduce((so, note) => (note.text.length > so.text.length ? note : so));
    const pointer = `→ ${side.plan.words.memo}`;
    side.plan.leftOver.add(inMemo(side, longest));
    left = left.flatMap((note) =>
      note !== longest ? [note] : note.text.length > pointer.length ? [{ ...note, text: pointer }] : [],
    );
    placed = placeNotes(side, run, left, setting);
  }
  return placed.flatMap(({ note, top }) => drawn(side, run, note, top, setting));
}

const columnOf = (side: PageSide, run: BlockFrames) =>
  besideGutter(run.block.columns.notes, side.geometry.gutters.notes);

interface PlacedNote {
  readonly note: SetNote;
  readonly top: number;
}

/**
 * Notes in order, as near to their rows as they can stand. One that does not begin on its row names it. Null where there is
 * not room for all.
 */
function placeNotes(
  side: PageSide,
  run: BlockFrames,
  notes: readonly Note[],
  { sizeMm, pitch }: Setting,
): PlacedNote[] | null {
  const { geometry, plan } = side;
  const width = columnOf(side, run).width - POINTERS - 0.5;
  const top = geometry.top;
  const bottom = top + geometry.rowMm * run.block.rows;
  const off = OFF * geometry.rowMm;
  // Above a cut point the last line stands on the row, else the first.
  const wish = ({ frame, ruled, lines }: SetNote): number => {
    const first = topOf(side, run, frame) + (geometry.rowMm - pitch) / 2;
    if (ruled === 'below') return Math.max(top, first - (lines.length - 1) * pitch - off);
    return ruled === 'above' ? first + off : first;
  };
  const apart = new Set<Note>();
  for (;;) {
    const set = notes.map((note): SetNote => {
      const named = apart.has(note) ? rowOf(side, note) : '';
      const text = `${named} ${note.text}`.trim();
      return {
        ...note,
        named,
        lines: wrap(plan.metrics, text, width - NAMED * named.length * sizeMm, sizeMm),
      };
    });
    if (set.reduce((so, note) => so + note.lines.length * pitch, 0) > bottom - top + 1e-6) return null;
    const tops: number[] = [];
    let free = -Infinity;
    for (const note of set) {
      tops.push(Math.max(wish(note), free));
      free = tops.at(-1)! + note.lines.length * pitch;
    }
    let floor = bottom + (pitch > geometry.rowMm ? (pitch - geometry.rowMm) / 2 : 0);
    for (let i = set.length - 1; i >= 0; i--) {
      tops[i] = Math.min(tops[i]!, floor - set[i]!.lines.length * pitch);
      floor = tops[i]!;
    }
    const before = apart.size;
    set.forEach((note, i) => {
      if (Math.abs(tops[i]! - wish(note)) > geometry.rowMm * 0.4) apart.add(notes[i]!);
    });
    if (apart.size === before) return set.map((note, i) => ({ note, top: tops[i]! }));
  }
}

const rowOf = (side: PageSide, note: Note): string =>
  rowName(note.frame, side.geometry.unit, side.plan.convention === 'west');

function drawn(
  side: PageSide,
  run: BlockFrames,
  note: SetNote,
  top: number,
  { sizeMm, pitch }: Setting,
): Mark[] {
  const { x } = columnOf(side, run);
  const row = topOf(side, run, note.frame) + side.geometry.rowMm / 2;
  return [
    polygon(
      [
        [x + 1.1, row - 0.5],
        [x + 1.1, row + 0.5],
        [x + 0.25, row],
      ],
      'black',
    ),
    ...note.lines.flatMap((text, i): Mark[] => {
      const y = top + (i + 0.5) * pitch;
      const setting = { sizeMm, anchor: 'start' } as const;
      if (i > 0 || note.named === '') return [textAt(x + POINTERS, y, text, setting)];
      const { metrics } = side.plan;
      const after =
        x + POINTERS + metrics.width(note.named, sizeMm, 'bold') + metrics.width(' ', sizeMm, 'regular');
      const rest = text.slice(note.named.length).trimStart();
      return [
        textAt(x + POINTERS, y, note.named, { ...setting, weight: 'bold' }),
        ...(rest === '' ? [] : [textAt(after, y, rest, setting)]),
      ];
    }),
  ];
}

const inMemo = (side: PageSide, note: Note): string => `${rowOf(side, note)}: ${note.text}`;

/** The cut's notes on these rows, and the words beside its cut points; several on one row are one. */
function notesOf(side: PageSide, run: BlockFrames): Note[] {
  const { shot } = side.plan.solved;
  const { cutPoint } = side.plan.words;
  const { head, tail } = shot.handles;
  const all = shot.notes.map(({ frame, text }) => ({ frame, text }));
  const first = head > 0 ? head + 1 : null;
  const last = tail > 0 ? shot.length - tail : null;
  if (first !== null) all.push({ frame: first, text: neighbour(side, 'in', cutPoint) });
  if (last !== null) all.push({ frame: last, text: neighbour(side, 'out', cutPoint) });
  const byFrame = new Map<number, string[]>();
  for (const { frame, text } of all)
    if (frame >= run.first && frame <= run.last) byFrame.set(frame, [...(byFrame.get(frame) ?? []), text]);
  return [...byFrame]
    .sort(([a], [b]) => a - b)
    .map(([frame, texts]) => ({
      frame,
      text: texts.join(' / '),
      ruled: frame === first ? 'above' : frame === last ? 'below' : null,
    }));
}

/** The words beside a cut point: with which cut it overlaps, where that is known. */
function neighbour({ plan }: PageSide, way: 'in' | 'out', cutPoint: string): string {
  const { words, neighbour: cutOf } = plan.camera.telling;
  const cut = cutOf(way);
  return cut === null ? cutPoint : words.atCutPoint(cutPoint, words.overlap('O.L', way, cut));
}
