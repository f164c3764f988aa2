/** The notes column: texts beside their rows, pushed apart where they crowd and led back to their rows. */

import { black, polygon, polyline, textAt } from './draw.js';
import { wrap } from './fit.js';
import type { Mark } from './marks.js';
import type { Run, Side } from './plan.js';
import { topOf } from './plan.js';
import { rowName } from './times.js';

interface Note {
  readonly frame: number;
  readonly text: string;
}

interface SetNote extends Note {
  readonly lines: readonly string[];
}

const LEADING = 1.16;
const BETWEEN = 0.5;
/** Left part of the column: arrowheads and leaders. */
const LEADERS = 2;

export function noteMarks(side: Side, run: Run): Mark[] {
  const notes = notesOf(side, run);
  if (notes.length === 0) return [];
  const { plan, geometry } = side;
  const column = run.block.columns.notes;
  const width = column.width - LEADERS - 0.6;
  const room = geometry.rowMm * run.block.rows;
  const most = Math.max(geometry.leastTextMm, Math.min(2.1 * geometry.scale, geometry.rowMm * 0.85));
  let sizeMm = most;
  let set = setNotes(notes);
  while (heightOf(set, sizeMm) > room && sizeMm > geometry.leastTextMm) {
    sizeMm = Math.max(geometry.leastTextMm, sizeMm * 0.93);
    set = setNotes(notes);
  }
  // Too much for the column: the longest are told in the memo, each with a pointer on its row.
  while (heightOf(set, sizeMm) > room) {
    const longest = set.reduce((so, note) => (note.lines.length > so.lines.length ? note : so));
    if (longest.lines.length <= 1) {
      plan.leftOver.add(inMemo(side, longest));
      set = set.filter((note) => note !== longest);
      continue;
    }
    plan.leftOver.add(inMemo(side, longest));
    set = set.map((note) => (note === longest ? { ...note, lines: [`→ ${plan.words.memo}`] } : note));
  }
  return place(side, run, set, sizeMm);

  function setNotes(all: readonly Note[]): SetNote[] {
    return all.map((note) => ({ ...note, lines: wrap(plan.metrics, note.text, width, sizeMm) }));
  }
}

function inMemo(side: Side, note: Note): string {
  return `${rowName(note.frame, side.geometry.unit, side.plan.convention === 'west')}: ${note.text}`;
}

/** The cut's notes on these rows, and the words beside its cut points; several on one row are one. */
function notesOf(side: Side, run: Run): Note[] {
  const { shot } = side.plan.solved;
  const { cutPoint } = side.plan.words;
  const all: Note[] = shot.notes.map(({ frame, text }) => ({ frame, text }));
  if (shot.handles.head > 0) all.push({ frame: shot.handles.head + 1, text: cutPoint });
  if (shot.handles.tail > 0) all.push({ frame: shot.length - shot.handles.tail, text: cutPoint });
  const byFrame = new Map<number, string[]>();
  for (const { frame, text } of all)
    if (frame >= run.first && frame <= run.last) byFrame.set(frame, [...(byFrame.get(frame) ?? []), text]);
  return [...byFrame].sort(([a], [b]) => a - b).map(([frame, texts]) => ({ frame, text: texts.join(' / ') }));
}

function heightOf(notes: readonly SetNote[], sizeMm: number): number {
  return notes.reduce((so, note) => so + note.lines.length * sizeMm * LEADING + BETWEEN, -BETWEEN);
}

function place(side: Side, run: Run, notes: readonly SetNote[], sizeMm: number): Mark[] {
  const { geometry } = side;
  const column = run.block.columns.notes;
  const heights = notes.map((note) => note.lines.length * sizeMm * LEADING);
  const middle = (note: Note): number => topOf(side, run, note.frame) + geometry.rowMm / 2;
  const tops: number[] = [];
  notes.forEach((note, i) => {
    const wish = middle(note) - (sizeMm * LEADING) / 2;
    tops.push(i === 0 ? wish : Math.max(wish, tops[i - 1]! + heights[i - 1]! + BETWEEN));
  });
  let floor = geometry.top + geometry.rowMm * run.block.rows;
  for (let i = notes.length - 1; i >= 0; i--) {
    tops[i] = Math.min(tops[i]!, floor - heights[i]!);
    floor = tops[i]! - BETWEEN;
  }
  const x = column.x + LEADERS;
  return notes.flatMap((note, i): Mark[] => {
    const row = middle(note);
    const first = tops[i]! + (sizeMm * LEADING) / 2;
    const marks: Mark[] = [
      polygon(
        [
          [column.x + 1.1, row - 0.5],
          [column.x + 1.1, row + 0.5],
          [column.x + 0.2, row],
        ],
        'black',
      ),
    ];
    if (Math.abs(first - row) > 0.35)
      marks.push(
        polyline(
          [
            [column.x + 1.1, row],
            [column.x + 1.45, row],
            [x - 0.3, first],
          ],
          black(0.12),
        ),
      );
    note.lines.forEach((text, n) => {
      marks.push(textAt(x, first + n * sizeMm * LEADING, text, { sizeMm, anchor: 'start' }));
    });
    return marks;
  });
}
