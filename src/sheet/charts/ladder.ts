/**
 * One ladder: an upright line from key to key, a stroke across it for each drawing at its true share of the way, and
 * one line of print for each stroke: finished number, drawing, way, frames. Where strokes crowd, the lines of print are
 * pushed apart and joined to their strokes by leaders.
 */

import type { Convention } from '../../shot/settings.js';
import type { Mark, Metrics, Stroke, Weight } from '../marks.js';
import { spread } from './spread.js';
import { exposureText, type Ladder, type Step, wayText } from './steps.js';

/** From line to line of print where there is room, and where there is none to spare, mm. */
const PITCH = 4.8;
const LEAST_PITCH = 3.3;
const LEAST_LENGTH = 34;
/** A ladder grows up to this length so that its closest strokes stand a pencil's width apart. */
const CROWDED_LENGTH = 64;
const PENCIL = 1.6;
/** Above a ladder's first stroke: its title and the headings. */
export const TITLE_HEIGHT = 14.5;

const NUMBER_SIZE = 3.5;
const NAME_SIZE = 3.1;
const SMALL_SIZE = 2.6;
const AXIS = 4.5;
const PRINT = 13;
const BETWEEN_COLUMNS = 2.4;
const WIDEST_NAME = 26;

const solid = (widthMm: number): Stroke => ({ ink: 'black', widthMm });
const LEADER: Stroke = { ink: 'black', widthMm: 0.12 };

/** A whole ladder, or one of the pieces of a very long one: steps `first` to `last`, drawn to a scale of its own. */
export interface Piece {
  readonly ladder: Ladder;
  readonly steps: readonly Step[];
  /** 1 of 1 for a whole ladder. */
  readonly piece: number;
  readonly pieces: number;
}

/** Widths that all ladders of a page have in common, mm. */
export interface Columns {
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

export function columnsFor(steps: readonly Step[], headings: Headings, metrics: Metrics): Columns {
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
      steps.map((step) => step.drawing),
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
export function piecesOf(ladder: Ladder, longestMm: number): Piece[] {
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
export function lengthOf({ steps }: Piece, longestMm: number): number {
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
  readonly columns: Columns;
}

export interface LadderWords {
  readonly title: string;
  readonly remark: string;
  readonly headings: Headings;
  readonly convention: Convention;
}

export function ladderMarks(piece: Piece, place: LadderPlace, words: LadderWords, metrics: Metrics): Mark[] {
  const marks: Mark[] = [];
  const { steps } = piece;
  const { x, columns, lengthMm } = place;
  const top = place.y + TITLE_HEIGHT;
  const axis = x + AXIS;
  const pitch = Math.min(PITCH, lengthMm / (steps.length - 1));
  const scale = pitch / PITCH;
  const edges = columnEdges(x + PRINT, columns);
  const put = (
    text: string,
    at: number,
    y: number,
    sizeMm: number,
    anchor: 'start' | 'middle' | 'end',
    more: { weight?: Weight; ink?: 'black' | 'grey'; room?: number } = {},
  ) => {
    const weight = more.weight ?? 'regular';
    const width = metrics.width(text, sizeMm, weight);
    const squeeze = more.room !== undefined && width > more.room ? { squeeze: more.room / width } : {};
    const ink = more.ink ?? 'black';
    marks.push({ kind: 'text', x: at, y, text, sizeMm, weight, ink, anchor, ...squeeze });
  };

  put(words.title, x, place.y + 3.6, 4.2, 'start', { weight: 'bold', room: columns.width });
  put(words.remark, x, place.y + 7.4, SMALL_SIZE, 'start', { room: columns.width });
  for (const column of ['number', 'drawing', 'way', 'frames'] as const)
    put(words.headings[column], edges[column], place.y + 11.2, 2.1, column === 'drawing' ? 'middle' : 'end', {
      ink: 'grey',
    });

  marks.push({ kind: 'line', x1: axis, y1: top, x2: axis, y2: top + lengthMm, stroke: solid(0.4) });
  const first = steps[0]!.way;
  const way = steps.at(-1)!.way - first;
  const strokes = steps.map((step, i) =>
    way > 0 ? top + ((step.way - first) / way) * lengthMm : top + (i / (steps.length - 1)) * lengthMm,
  );
  const between = spread(strokes.slice(1, -1), pitch, top + pitch, top + lengthMm - pitch);
  const lines = [top, ...between, top + lengthMm];

  steps.forEach((step, i) => {
    const stroke = strokes[i]!;
    const line = lines[i]!;
    const half = step.kind === 'key' ? 4 : step.kind === 'breakdown' ? 3.2 : 2.3;
    marks.push({
      kind: 'line',
      x1: axis - half,
      y1: stroke,
      x2: axis + half,
      y2: stroke,
      stroke: solid(step.kind === 'key' ? 0.4 : 0.22),
    });
    if (step.kind === 'breakdown')
      marks.push({
        kind: 'circle',
        x: axis,
        y: stroke,
        r: Math.min(0.9, pitch / 2.6),
        stroke: null,
        fill: 'black',
      });
    marks.push({
      kind: 'path',
      points: [
        [axis + half, stroke],
        [axis + 4.4, stroke],
        [x + PRINT - 1.6, line],
        [x + PRINT - 0.4, line],
      ],
      closed: false,
      stroke: LEADER,
      fill: null,
    });
    const base = (sizeMm: number) => line + sizeMm * scale * 0.36;
    const number = celText(step);
    put(number, edges.number, base(NUMBER_SIZE), NUMBER_SIZE * scale, 'end', { weight: 'bold' });
    put(step.drawing, edges.drawing, base(NAME_SIZE), NAME_SIZE * scale, 'middle', {
      room: columns.name - 2,
    });
    if (step.kind !== 'key')
      put(wayOf(step), edges.way, base(SMALL_SIZE), SMALL_SIZE * scale, 'end', { ink: 'grey' });
    put(exposureText(step.exposed), edges.frames, base(NAME_SIZE), NAME_SIZE * scale, 'end');
    const west = words.convention === 'west';
    const marked = west ? number : step.drawing;
    const markedSize = (west ? NUMBER_SIZE : NAME_SIZE) * scale;
    const width = Math.min(metrics.width(marked, markedSize, west ? 'bold' : 'regular'), columns.name - 2);
    const middle = west ? edges.number - width / 2 : edges.drawing;
    if (step.kind === 'key') marks.push(ring(middle, line, width, pitch));
    if (step.kind === 'breakdown') marks.push(...breakdown(middle, line, width, markedSize, west));
  });
  return marks;
}

/** Where the columns' texts are anchored: ends, but the drawings' middles. */
function columnEdges(left: number, columns: Columns) {
  const number = left + columns.number;
  const name = number + BETWEEN_COLUMNS;
  const way = name + columns.name + BETWEEN_COLUMNS + columns.way;
  return { number, drawing: name + columns.name / 2, way, frames: way + BETWEEN_COLUMNS + columns.frames };
}

/** A key's ring: round for short names, drawn out for long ones. */
function ring(x: number, y: number, width: number, pitch: number): Mark {
  const r = pitch * 0.47;
  if (width <= r * 1.3) return { kind: 'circle', x, y, r, stroke: solid(0.25), fill: null };
  const straight = (width - r * 0.7) / 2;
  const points: [number, number][] = [];
  for (let i = 0; i <= 8; i++) points.push(around(x + straight, y, r, -90 + i * 22.5));
  for (let i = 0; i <= 8; i++) points.push(around(x - straight, y, r, 90 + i * 22.5));
  return { kind: 'path', points, closed: true, stroke: solid(0.25), fill: null };
}

function around(x: number, y: number, r: number, degrees: number): [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
}

/** Brackets about the name in Japan, a stroke under the number in the west. */
function breakdown(x: number, y: number, width: number, sizeMm: number, west: boolean): Mark[] {
  const half = width / 2;
  if (west) {
    const under = y + sizeMm * 0.36 + 0.5;
    return [
      { kind: 'line', x1: x - half - 0.3, y1: under, x2: x + half + 0.3, y2: under, stroke: solid(0.25) },
    ];
  }
  return [-1, 1].map((side): Mark => {
    const out = x + side * (half + 0.8);
    const back = out - side * 0.6;
    const high = sizeMm * 0.5;
    return {
      kind: 'path',
      points: [
        [back, y - high],
        [out, y - high],
        [out, y + high],
        [back, y + high],
      ],
      closed: false,
      stroke: solid(0.25),
      fill: null,
    };
  });
}

function celText(step: Step): string {
  return step.cel === null ? '–' : String(step.cel);
}

function wayOf(step: Step): string {
  return step.kind === 'key' ? '' : wayText(step.way, step.parts);
}
