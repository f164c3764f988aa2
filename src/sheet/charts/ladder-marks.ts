/**
 * One ladder: an upright line from key to key, a stroke across it for each drawing at its true share of the way, and
 * one line of print for each stroke: finished number, drawing, way, frames. Where strokes crowd, the lines of print are
 * pushed apart and joined to their strokes by leaders.
 */

import type { Convention } from '../../shot/settings.js';
import type { Mark, Metrics, Weight } from '../display-list.js';
import { black, line, polyline, ring, textAt } from '../mark-builders.js';
import { cutToFit, fitLine } from '../text-fitting.js';
import { exposureText, type Ladder, type Step, wayText } from './chart-ladders.js';

/** From line to line of print where there is room, and where there is none to spare, mm. */
const PITCH = 4.8;
const LEAST_PITCH = 3.6;
const LEAST_LENGTH = 34;
/** A ladder grows up to this length so that its closest strokes stand a pencil's width apart. */
const CROWDED_LENGTH = 64;
const PENCIL = 1.6;
/** Above a ladder's first stroke: its title and the headings. */
export const TITLE_HEIGHT = 14.5;

const NUMBER_SIZE = 3.5;
const NAME_SIZE = 3.1;
const SMALL_SIZE = 2.6;
/** 5.5 pt: no print of a ladder is smaller, mm. */
const LEAST_SIZE = (5.5 * 25.4) / 72;
const AXIS = 4.5;
const PRINT = 13;
const BETWEEN_COLUMNS = 2.4;
const WIDEST_NAME = 26;

const LEADER = black(0.12);
const MARK = black(0.25);

/** A whole ladder, or one of the pieces of a very long one: steps `first` to `last`, drawn to a scale of its own. */
export interface LadderPiece {
  readonly ladder: Ladder;
  readonly steps: readonly Step[];
  /** 1 of 1 for a whole ladder. */
  readonly piece: number;
  readonly pieces: number;
}

/** Widths that all ladders of a page have in common, mm. */
export interface LadderColumns {
  readonly number: number;
  readonly name: number;
  readonly way: number;
  readonly frames: number;
  readonly width: number;
}

export interface Headings {
  readonly number: string;
  readonly drawing: string;
  readonly way: string;
  readonly frames: string;
}

export function columnsFor(steps: readonly Step[], headings: Headings, metrics: Metrics): LadderColumns {
  const widest = (texts: readonly string[], sizeMm: number, weight: Weight, heading: string) =>
    texts.reduce(
      (most, text) => Math.max(most, metrics.width(text, sizeMm, weight)),
      metrics.width(heading, SMALL_SIZE, 'regular'),
    );
  const number =
    widest(
      steps.map((step) => celText(step)),
      NUMBER_SIZE,
      'bold',
      headings.number,
    ) + 2;
  const name = Math.min(
    WIDEST_NAME,
    widest(
      steps.map((step) => (step.kind === 'breakdown' ? `(${step.drawing})` : step.drawing)),
      NAME_SIZE,
      'regular',
      headings.drawing,
    ) + 2,
  );
  const way = widest(
    steps.map((step) => wayOf(step)),
    SMALL_SIZE,
    'regular',
    headings.way,
  );
  const frames = widest(
    steps.map((step) => exposureText(step.exposed)),
    NAME_SIZE,
    'regular',
    headings.frames,
  );
  return { number, name, way, frames, width: PRINT + number + name + way + frames + 3 * BETWEEN_COLUMNS };
}

/** Cuts a ladder that a page cannot hold into as few pieces as will do; neighbours have one drawing in common. */
export function piecesOf(ladder: Ladder, longestMm: number): LadderPiece[] {
  const room = Math.max(2, Math.floor(longestMm / LEAST_PITCH));
  const gaps = ladder.steps.length - 1;
  const pieces = Math.ceil(gaps / room);
  return Array.from({ length: pieces }, (_, i) => {
    const first = Math.floor((gaps * i) / pieces);
    const last = Math.floor((gaps * (i + 1)) / pieces);
    return { ladder, steps: ladder.steps.slice(first, last + 1), piece: i + 1, pieces };
  });
}

/** How long a piece would like its line to be, mm; never more than `longestMm`. */
export function lengthOf({ steps }: LadderPiece, longestMm: number): number {
  const way = steps.at(-1)!.way - steps[0]!.way;
  const closest = Math.min(...steps.slice(1).map((step, i) => step.way - steps[i]!.way));
  const crowded = closest > 0 ? Math.min(CROWDED_LENGTH, (PENCIL * way) / closest) : CROWDED_LENGTH;
  return Math.min(longestMm, Math.max(LEAST_LENGTH, (steps.length - 1) * PITCH, crowded));
}

export interface LadderPlace {
  /** Left top corner of the cell, mm. */
  readonly x: number;
  readonly y: number;
  readonly lengthMm: number;
  readonly columns: LadderColumns;
}

export interface LadderWords {
  readonly title: string;
  readonly remark: string;
  readonly headings: Headings;
  readonly convention: Convention;
}

export function ladderMarks(
  piece: LadderPiece,
  place: LadderPlace,
  words: LadderWords,
  metrics: Metrics,
): Mark[] {
  const { steps } = piece;
  const { x, columns, lengthMm } = place;
  const top = place.y + TITLE_HEIGHT;
  const axis = x + AXIS;
  const pitch = Math.min(PITCH, lengthMm / (steps.length - 1));
  const edges = columnEdges(x + PRINT, columns);
  const marks = titleMarks(place, words, metrics, edges);
  marks.push(line(axis, top, axis, top + lengthMm, black(0.4)));

  const first = steps[0]!.way;
  const way = steps.at(-1)!.way - first;
  const strokes = steps.map((step, i) =>
    way > 0 ? top + ((step.way - first) / way) * lengthMm : top + (i / (steps.length - 1)) * lengthMm,
  );
  const between = spreadLabels(strokes.slice(1, -1), pitch, top + pitch, top + lengthMm - pitch);
  const lines = [top, ...between, top + lengthMm];

  steps.forEach((step, i) => {
    const stroke = strokes[i]!;
    const y = lines[i]!;
    const half = step.kind === 'key' ? 4 : step.kind === 'breakdown' ? 3.2 : 2.3;
    marks.push(line(axis - half, stroke, axis + half, stroke, black(step.kind === 'key' ? 0.4 : 0.22)));
    if (step.kind === 'breakdown')
      marks.push({
        kind: 'circle',
        x: axis,
        y: stroke,
        r: Math.min(0.9, pitch / 2.6),
        stroke: null,
        fill: 'black',
      });
    marks.push(
      polyline(
        [
          [axis + half, stroke],
          [axis + 4.4, stroke],
          [x + PRINT - 1.6, y],
          [x + PRINT - 0.4, y],
        ],
        LEADER,
      ),
      ...printMarks(step, y, pitch, edges, columns, words.convention, metrics),
    );
  });
  return marks;
}

/** Title and headings above a ladder. */
function titleMarks(place: LadderPlace, words: LadderWords, metrics: Metrics, edges: Edges): Mark[] {
  const { x, y, columns } = place;
  const setIn = (y: number, text: string, most: number, weight: Weight): Mark => {
    const set = cutToFit(metrics, text, columns.width, { most, least: LEAST_SIZE, weight });
    return textAt(x, y, set.text, { sizeMm: set.sizeMm, squeeze: set.squeeze, weight, anchor: 'start' });
  };
  const heading = { sizeMm: 2.1, ink: 'grey' } as const;
  return [
    setIn(y + 2, words.title, 4.2, 'bold'),
    setIn(y + 6.4, words.remark, SMALL_SIZE, 'regular'),
    textAt(edges.number, y + 10.4, words.headings.number, { ...heading, anchor: 'end' }),
    textAt(edges.drawing, y + 10.4, words.headings.drawing, heading),
    textAt(edges.way, y + 10.4, words.headings.way, { ...heading, anchor: 'end' }),
    textAt(edges.frames, y + 10.4, words.headings.frames, { ...heading, anchor: 'end' }),
  ];
}

/** A step's line of print, its middle at `y`. */
function printMarks(
  step: Step,
  y: number,
  pitch: number,
  edges: Edges,
  columns: LadderColumns,
  convention: Convention,
  metrics: Metrics,
): Mark[] {
  const west = convention === 'west';
  const scale = pitch / PITCH;
  const small = SMALL_SIZE * scale;
  const name = NAME_SIZE * scale;
  const size = NUMBER_SIZE * scale;
  const number = celText(step);
  const drawing = step.kind === 'breakdown' && !west ? `(${step.drawing})` : step.drawing;
  const nameFit = fitLine(metrics, drawing, columns.name - 2, { most: name, least: LEAST_SIZE });
  const nameWidth = metrics.width(drawing, nameFit.sizeMm, 'regular') * nameFit.squeeze;
  const numberWidth = metrics.width(number, size, 'bold');
  const marks = [
    textAt(edges.number, y, number, { sizeMm: size, weight: 'bold', anchor: 'end' }),
    textAt(edges.drawing, y, drawing, { sizeMm: nameFit.sizeMm, squeeze: nameFit.squeeze }),
    textAt(edges.frames, y, exposureText(step.exposed), { sizeMm: name, anchor: 'end' }),
  ];
  if (step.kind !== 'key')
    marks.push(textAt(edges.way, y, wayOf(step), { sizeMm: small, ink: 'grey', anchor: 'end' }));
  const middle = west ? edges.number - numberWidth / 2 : edges.drawing;
  const width = west ? numberWidth : nameWidth;
  if (step.kind === 'key') {
    const r = pitch * 0.47;
    marks.push(ring(middle, y, r, width > r * 1.3 ? width + r * 1.3 : 2 * r, MARK));
  }
  if (step.kind === 'breakdown' && west) {
    const under = y + size * 0.36 + 0.5 * scale;
    marks.push(line(middle - width / 2 - 0.3, under, middle + width / 2 + 0.3, under, MARK));
  }
  return marks;
}

interface Edges {
  readonly number: number;
  readonly drawing: number;
  readonly way: number;
  readonly frames: number;
}

/** Where the columns' texts are anchored: ends, but the drawings' middles. */
function columnEdges(left: number, columns: LadderColumns): Edges {
  const number = left + columns.number;
  const name = number + BETWEEN_COLUMNS;
  const way = name + columns.name + BETWEEN_COLUMNS + columns.way;
  return { number, drawing: name + columns.name / 2, way, frames: way + BETWEEN_COLUMNS + columns.frames };
}

function celText(step: Step): string {
  return step.cel === null ? '–' : String(step.cel);
}

function wayOf(step: Step): string {
  return step.kind === 'key' ? '' : wayText(step.way, step.parts);
}

/**
 * Places for labels that would like to stand at `wanted` (rising) but must be `gap` apart, between `low` and `high`:
 * in order, as near to their wishes as can be (least squares). There must be room: (n − 1) × gap ≤ high − low.
 */
export function spreadLabels(wanted: readonly number[], gap: number, low: number, high: number): number[] {
  // With the gaps taken out, "gap apart" becomes "not falling": neighbours that fall are pooled at their mean.
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((wish, i) => {
    let pool = { sum: wish - i * gap, count: 1 };
    for (
      let last = pools.at(-1);
      last && last.sum / last.count > pool.sum / pool.count;
      last = pools.at(-1)
    ) {
      pools.pop();
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
    }
    pools.push(pool);
  });
  const top = high - (wanted.length - 1) * gap;
  return pools
    .flatMap(({ sum, count }) => Array<number>(count).fill(Math.min(Math.max(sum / count, low), top)))
    .map((place, i) => place + i * gap);
}
