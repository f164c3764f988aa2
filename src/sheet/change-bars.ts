/**
 * Change bars: thick black strokes beside the rows that differ from another version of the cut. Each stands in a gutter of
 * its own at the left of the column concerned, which is made wider for it, so that none ever runs through a number.
 */

import type { BlockColumn, Gutters } from './block-columns.js';
import { NO_GUTTERS } from './block-columns.js';
import type { Mark } from './display-list.js';
import type { Box } from './mark-builders.js';
import { polygon } from './mark-builders.js';
import type { BarPlace, MarkedChanges } from './page-look.js';
import type { BlockFrames, PageSide } from './sheet-plan.js';
import { topOf } from './sheet-plan.js';

/** Width of a bar on A4, mm: three times that of the line of a hold, so that it outlives a copy of a copy. */
export const BAR = 0.7;
/** What is left free on both sides of a bar within its gutter, on A4, mm. */
const CLEAR = 0.15;
/** A bar stands this share of a row inside the edges of its rows. */
export const BAR_GAP = 0.06;

const COLUMNS = ['keys', 'cels'] as const;

/** Frames from..to, both included. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The rows that differ, by what they belong to: in order, none touching the next one. */
export interface ChangeBars {
  of(place: BarPlace): readonly Stretch[];
  /** Nothing has a bar. */
  readonly none: boolean;
}

/** Rows after the end of the cut have no place on paper: what is marked there is told in the memo alone. */
export function barsOf(marked: MarkedChanges | undefined, length: number): ChangeBars {
  const byPlace = new Map<string, Stretch[]>();
  for (const { place, from, to } of marked?.rows ?? []) {
    const row = { from: Math.max(1, from), to: Math.min(length, to) };
    if (row.from <= row.to) byPlace.set(keyOf(place), [...(byPlace.get(keyOf(place)) ?? []), row]);
  }
  const joined = new Map([...byPlace].map(([key, rows]) => [key, join(rows)]));
  return { of: (place) => joined.get(keyOf(place)) ?? [], none: joined.size === 0 };
}

const keyOf = (place: BarPlace): string =>
  place.kind === 'level' ? `${place.column} ${place.level}` : place.kind;

function join(rows: readonly Stretch[]): Stretch[] {
  const joined: { from: number; to: number }[] = [];
  for (const { from, to } of [...rows].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && from <= last.to + 1) last.to = Math.max(last.to, to);
    else joined.push({ from, to });
  }
  return joined;
}

/** The gutters that a cut's columns need; `larger` is how much larger print is than on A4. */
export function guttersOf(bars: ChangeBars, levels: readonly string[], larger: number): Gutters {
  if (bars.none) return NO_GUTTERS;
  const width = (BAR + 2 * CLEAR) * larger;
  const has = (place: BarPlace): number => (bars.of(place).length > 0 ? width : 0);
  return {
    levels: Math.max(
      0,
      ...levels.flatMap((level) => COLUMNS.map((column) => has({ kind: 'level', level, column }))),
    ),
    speech: has({ kind: 'speech' }),
    camera: has({ kind: 'camera' }),
    notes: has({ kind: 'notes' }),
  };
}

/** The bars on the rows of one block. */
export function barMarks(side: PageSide, run: BlockFrames): Mark[] {
  const { bars } = side.plan;
  if (bars.none) return [];
  const { columns } = run.block;
  const { gutters } = side.geometry;
  const beside = (place: BarPlace, column: BlockColumn | null | undefined, gutterMm: number): Mark[] =>
    column ? bars.of(place).flatMap((rows) => bar(side, run, rows, column, gutterMm)) : [];
  return [
    ...side.levels.flatMap(({ name: level }, i) =>
      COLUMNS.flatMap((column) =>
        beside({ kind: 'level', level, column }, columns[column][i], gutters.levels),
      ),
    ),
    ...beside({ kind: 'speech' }, columns.dialogue, gutters.speech),
    ...beside({ kind: 'camera' }, columns.camera, gutters.camera),
    // Notes are written on the first side of a page, as the dialogue is.
    ...(columns.dialogue ? beside({ kind: 'notes' }, columns.notes, gutters.notes) : []),
  ];
}

function bar(side: PageSide, run: BlockFrames, rows: Stretch, column: BlockColumn, gutterMm: number): Mark[] {
  const from = Math.max(rows.from, run.first);
  const to = Math.min(rows.to, run.last);
  if (from > to) return [];
  const gap = side.geometry.rowMm * BAR_GAP;
  const y = topOf(side, run, from) + gap;
  const width = gutterMm * (BAR / (BAR + 2 * CLEAR));
  return [
    barMark({
      x: column.x + (gutterMm - width) / 2,
      y,
      width,
      height: topOf(side, run, to + 1) - gap - y,
    }),
  ];
}

/** The sign itself, for the memo's legend too. */
export function barMark({ x, y, width, height }: Box): Mark {
  return polygon(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    'black',
  );
}
