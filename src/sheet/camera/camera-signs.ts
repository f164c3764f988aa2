/** Lanes of the camera column, and the signs that are drawn in them over their rows. Each gets the rows of one block. */

import { besideGutter } from '../block-columns.js';
import type { Mark, Stroke } from '../display-list.js';
import { black, line, polygon, polyline } from '../mark-builders.js';
import { type BlockFrames, type PageSide, topOf } from '../sheet-plan.js';
import { barGap } from '../speech/speech-lanes.js';
import type { CameraItem } from './camera-plan.js';
import type { CameraSign } from './move-labels.js';

export interface Lane {
  readonly x: number;
  readonly width: number;
  /** The line of the move. */
  readonly lineX: number;
  /** Labels and numbers stand from here to `zoneEnd`. */
  readonly zoneX: number;
  readonly zoneEnd: number;
  /** Left and right ends of bars and signs. */
  readonly barX: number;
  readonly barEnd: number;
  /** At the right, for words that run down. */
  readonly strip: { readonly x: number; readonly width: number };
}

/** A lane is never narrower, ems of the smallest print; a move for which there is no such lane is told in the memo. */
const NARROWEST_LANE = 2.5;

/** How many lanes of the cut stand on a side, from the left. */
export function lanesShown(widths: readonly number[], columnMm: number, leastTextMm: number): number {
  let units = 0;
  let shown = 0;
  for (const width of widths) {
    units += width;
    if (units * NARROWEST_LANE * leastTextMm > columnMm + 1e-9 && shown > 0) break;
    shown++;
  }
  return shown;
}

/** The lane of a run, or null where there is no room for it. */
export function laneOf(side: PageSide, run: BlockFrames, index: number): Lane | null {
  const column = besideGutter(run.block.columns.camera!, side.geometry.gutters.camera);
  const { lanes, wishes } = side.plan.camera;
  const shown = lanesShown(lanes, column.width, side.geometry.leastTextMm);
  if (index >= shown) return null;
  const sum = (several: readonly number[]): number => several.reduce((so, one) => so + one, 0);
  const { scale, leastTextMm } = side.geometry;
  // What is left at the right is the pencil's.
  const unit = Math.min(column.width / sum(lanes.slice(0, shown)), 9 * scale);
  const wished = sum(wishes.slice(0, shown));
  const spare = column.width / unit - sum(lanes.slice(0, shown));
  const granted = wished > 0 ? Math.max(0, Math.min(1, spare / wished)) : 0;
  const x = column.x + unit * (sum(lanes.slice(0, index)) + granted * sum(wishes.slice(0, index)));
  const width = unit * (lanes[index]! + granted * wishes[index]!);
  const stripWidth = Math.max(leastTextMm * 1.1, Math.min(width * 0.3, 2.5 * scale));
  const strip = { x: x + width - stripWidth - 0.15, width: stripWidth };
  const lineX = x + Math.min(0.95, width * 0.18);
  const zoneEnd = strip.x - 0.15;
  return {
    x,
    width,
    lineX,
    zoneX: lineX + 0.25,
    zoneEnd,
    barX: x + Math.min(0.4, width * 0.08),
    barEnd: Math.min(zoneEnd, x + 6 * scale),
    strip,
  };
}

// ---- signs of the camera column that are drawn over their rows. Each gets the rows of one block

/** The rows of an item in one block, with the heights between which it is drawn. */
export interface SignSpan {
  readonly from: number;
  readonly to: number;
  readonly begins: boolean;
  readonly ends: boolean;
  readonly top: number;
  readonly bottom: number;
}

export function partOf(side: PageSide, run: BlockFrames, item: CameraItem): SignSpan {
  const from = Math.max(item.first, run.first);
  const to = Math.min(item.last, run.last);
  const begins = from === item.first;
  const ends = to === item.last;
  const gap = barGap(side.geometry);
  return {
    from,
    to,
    begins,
    ends,
    top: topOf(side, run, from) + (begins ? gap : 0),
    bottom: topOf(side, run, to + 1) - (ends ? gap : 0),
  };
}

const THIN = black(0.2);

export const barStroke = (side: PageSide): Stroke => black(Math.min(0.35, side.geometry.rowMm * 0.12));

type Drawer<S extends CameraSign = CameraSign> = (
  side: PageSide,
  run: BlockFrames,
  item: CameraItem,
  lane: Lane,
  part: SignSpan,
  sign: S,
) => Mark[];

type SignOf<F extends CameraSign['form']> = CameraSign & { readonly form: F };

/** A bar at the start, one at the end. */
function bars(side: PageSide, lane: Lane, part: SignSpan): Mark[] {
  const bar = (y: number): Mark => line(lane.barX, y, lane.barEnd, y, barStroke(side));
  return [...(part.begins ? [bar(part.top)] : []), ...(part.ends ? [bar(part.bottom)] : [])];
}

const upright: Drawer = (side, _, __, lane, part) => [
  line(lane.lineX, part.top, lane.lineX, part.bottom, black(0.26)),
  ...bars(side, lane, part),
];

interface Shape {
  readonly middle: number;
  readonly half: number;
}

const shapeOf = (lane: Lane): Shape => ({
  middle: (lane.barX + lane.barEnd) / 2,
  half: (lane.barEnd - lane.barX) / 2,
});

/** Two lines from a point to a base or the other way, cut off where the block ends. */
function wedge(side: PageSide, item: CameraItem, lane: Lane, part: SignSpan, opens: boolean): Mark[] {
  const { middle, half } = shapeOf(lane);
  const rows = item.last - item.first + 1;
  const share = (way: number): number => half * (opens ? way : 1 - way);
  const above = share((part.from - item.first) / rows);
  const below = share((part.to + 1 - item.first) / rows);
  const stroke = black(0.24);
  const base = barStroke(side);
  const across = (y: number): Mark => line(middle - half, y, middle + half, y, base);
  return [
    polyline(
      [
        [middle - above, part.top],
        [middle - below, part.bottom],
      ],
      stroke,
    ),
    polyline(
      [
        [middle + above, part.top],
        [middle + below, part.bottom],
      ],
      stroke,
    ),
    ...(part.begins && !opens ? [across(part.top)] : []),
    ...(part.ends && opens ? [across(part.bottom)] : []),
  ];
}

/** A swing a row (or every `on` rows), smaller where the shake dies away. */
const zigzag: Drawer<SignOf<'zigzag'>> = (side, run, item, lane, part, { fromMm, toMm }) => {
  const { on } = item.solved!.move;
  const { middle, half } = shapeOf(lane);
  const widest = Math.max(fromMm, toMm);
  const swings = Math.max(1, Math.ceil((item.last - item.first + 1) / on));
  const points: [number, number][] = [[middle, part.top]];
  for (let i = 0; i < swings; i++) {
    const frame = item.first + i * on;
    if (frame < part.from || frame > part.to) continue;
    const size = (fromMm + ((toMm - fromMm) * i) / swings) / widest;
    const rows = Math.min(on, item.last + 1 - frame);
    const y = topOf(side, run, frame) + (rows * side.geometry.rowMm) / 2;
    points.push([middle + (i % 2 === 0 ? 1 : -1) * half * 0.8 * size, Math.min(y, part.bottom)]);
  }
  points.push([middle, part.bottom]);
  return [polyline(points, THIN), ...bars(side, lane, part)];
};

const POINTS_A_PERIOD = 16;

/** The sway itself: a period on paper is a period in time. */
const wave: Drawer<SignOf<'wave'>> = (side, run, item, lane, part, { periodFrames }) => {
  const { middle, half } = shapeOf(lane);
  const step = Math.max(periodFrames / POINTS_A_PERIOD, 0.125);
  const points: [number, number][] = [];
  const at = (frame: number): [number, number] => [
    middle + half * 0.8 * Math.sin((2 * Math.PI * (frame - item.first)) / periodFrames),
    Math.min(part.bottom, Math.max(part.top, topOf(side, run, frame))),
  ];
  for (let frame = part.from; frame < part.to + 1; frame += step) points.push(at(frame));
  points.push(at(part.to + 1));
  return [polyline(points, THIN), ...bars(side, lane, part)];
};

/** Two lines close together, shut at both ends. */
const box: Drawer = (side, _, __, lane, part) => {
  const right = lane.lineX + Math.min(0.9, lane.barEnd - lane.lineX);
  return [
    line(lane.lineX, part.top, lane.lineX, part.bottom, THIN),
    line(right, part.top, right, part.bottom, THIN),
    ...bars(side, lane, part),
  ];
};

/** Shut on all sides, with a line from corner to corner: on the side that is left of the line the picture is seen. */
function slant(side: PageSide, item: CameraItem, lane: Lane, part: SignSpan, opens: boolean): Mark[] {
  const { middle, half } = shapeOf(lane);
  const rows = item.last - item.first + 1;
  const at = (frames: number): number => middle + half * (opens ? -1 : 1) * (1 - (2 * frames) / rows);
  return [
    line(middle - half, part.top, middle - half, part.bottom, THIN),
    line(middle + half, part.top, middle + half, part.bottom, THIN),
    line(at(part.from - item.first), part.top, at(part.to + 1 - item.first), part.bottom, black(0.24)),
    ...bars(side, lane, part),
  ];
}

/** A wedge, and a ring where the picture is whole. */
function irisSign(side: PageSide, item: CameraItem, lane: Lane, part: SignSpan, opens: boolean): Mark[] {
  const { middle, half } = shapeOf(lane);
  const r = Math.min(half * 0.6, side.geometry.rowMm * 0.36);
  const there = opens ? part.ends : part.begins;
  const y = opens ? part.bottom - r - 0.2 : part.top + r + 0.2;
  const ring: Mark = { kind: 'circle', x: middle, y, r, stroke: black(0.24), fill: null };
  return [...wedge(side, item, lane, part, opens), ...(there ? [ring] : [])];
}

const SIGNS: { readonly [F in CameraSign['form']]: Drawer<SignOf<F>> } = {
  line: upright,
  zigzag,
  wave,
  box,
  wedge: (side, _, item, lane, part, { opens }) => wedge(side, item, lane, part, opens),
  slant: (side, _, item, lane, part, { opens }) => slant(side, item, lane, part, opens),
  iris: (side, _, item, lane, part, { opens }) => irisSign(side, item, lane, part, opens),
  cross: (side, _, item, lane, part) => [
    ...wedge(side, item, lane, part, false),
    ...wedge(side, item, lane, part, true),
  ],
};

/** The sign of an item over its rows of one block. */
export function signMarks(side: PageSide, run: BlockFrames, item: CameraItem, lane: Lane): Mark[] {
  const draw = SIGNS[item.sign.form] as Drawer;
  return draw(side, run, item, lane, partOf(side, run, item), item.sign);
}

/** An arrow of a direction on screen, its middle at (x, y). */
export function arrow(x: number, y: number, lengthMm: number, degrees: number): Mark[] {
  const angle = (-degrees * Math.PI) / 180;
  const at = (along: number, across: number): [number, number] => [
    x + along * Math.cos(angle) - across * Math.sin(angle),
    y + along * Math.sin(angle) + across * Math.cos(angle),
  ];
  const half = lengthMm / 2;
  const head = Math.min(0.8, lengthMm * 0.45);
  return [
    polyline([at(-half, 0), at(half - head, 0)], black(0.26)),
    polygon([at(half, 0), at(half - head, -head * 0.5), at(half - head, head * 0.5)], 'black'),
  ];
}
