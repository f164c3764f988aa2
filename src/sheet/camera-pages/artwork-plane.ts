/** The artwork's plane (mm, y up) and the paper's (mm, y down). */

import type { Settings } from '../../shot/settings.js';
import { clockwise, turnOf } from '../../solve/camera/plane-turns.js';
import type { CameraPageWords } from '../../words/document-words.js';
import type { Mark, Pt } from '../display-list.js';
import { type Box, black, line, textAt } from '../mark-builders.js';
import type { PageLook } from '../page-look.js';
import { smallestTextMm } from '../sheet-geometry.js';
import { fitLine } from '../text-fitting.js';

/** Top left, top right, bottom right, bottom left, as they lie before turning. */
export type Corners = readonly [Pt, Pt, Pt, Pt];

export function rectangle(x: number, y: number, width: number, height: number, turnDeg: number): Corners {
  const turn = turnOf(turnDeg);
  const corner = (sx: number, sy: number): Pt => {
    const v = clockwise(turn, (sx * width) / 2, (sy * height) / 2);
    return [x + v.x, y + v.y];
  };
  return [corner(-1, 1), corner(1, 1), corner(1, -1), corner(-1, -1)];
}

/** What the camera sees with its centre at (x, y). */
export function seen(x: number, y: number, width: number, turnDeg: number, settings: Settings): Corners {
  return rectangle(x, y, width, (width * settings.field.heightMm) / settings.field.widthMm, turnDeg);
}

export interface PlaneBounds {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

export function boundsOf(points: readonly Pt[]): PlaneBounds {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, right, bottom, top };
}

export type Segment = readonly [number, number, number, number];

/** The part of a segment that lies in a box, or null (the rule of Liang and Barsky). */
export function clip(segment: Segment, box: Box): Segment | null {
  // Asked of every line for every place of a label: most lie beside the box, and nothing is made for them.
  const x1 = segment[0];
  const y1 = segment[1];
  const x2 = segment[2];
  const y2 = segment[3];
  const { x: left, y: top } = box;
  const right = left + box.width;
  const bottom = top + box.height;
  if ((x1 < left && x2 < left) || (x1 > right && x2 > right)) return null;
  if ((y1 < top && y2 < top) || (y1 > bottom && y2 > bottom)) return null;
  let from = 0;
  let to = 1;
  const dx = x2 - x1;
  const dy = y2 - y1;
  if (dx !== 0) {
    from = Math.max(from, ((dx > 0 ? left : right) - x1) / dx);
    to = Math.min(to, ((dx > 0 ? right : left) - x1) / dx);
  }
  if (dy !== 0) {
    from = Math.max(from, ((dy > 0 ? top : bottom) - y1) / dy);
    to = Math.min(to, ((dy > 0 ? bottom : top) - y1) / dy);
  }
  return from > to ? null : [x1 + from * dx, y1 + from * dy, x1 + to * dx, y1 + to * dy];
}

export function sides(points: readonly Pt[]): Segment[] {
  return points.map(([x, y], i): Segment => {
    const [x2, y2] = points[(i + 1) % points.length]!;
    return [x, y, x2, y2];
  });
}

/** Between a and b, `share` of the way. */
export const between = (a: Pt, b: Pt, share: number): Pt => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

/** A point inside a corner, `mm` from both sides, for names; outside where it is negative. */
export function inset(corners: Corners, corner: number, mm: number): Pt {
  const [x, y] = corners[corner]!;
  const next = corners[(corner + 1) % 4]!;
  const before = corners[(corner + 3) % 4]!;
  const unit = ([a, b]: Pt): Pt => {
    const length = Math.hypot(a - x, b - y) || 1;
    return [(a - x) / length, (b - y) / length];
  };
  const u = unit(next);
  const v = unit(before);
  return [x + (u[0] + v[0]) * mm, y + (u[1] + v[1]) * mm];
}

const INCH = 25.4;
/** Round hole of 1/4 in, flats of 1/2 by 1/8 in, 4 in from centre to centre. Source: common practice. */
export const PEGS = {
  roundMm: INCH / 4,
  flatMm: { width: INCH / 2, height: INCH / 8 },
  apartMm: 4 * INCH,
  /** From the standard field's centre to the middle hole. Source: recommended 16:9 layout paper of Japan's producers' association. */
  fromCentreMm: 104.775,
};

export interface Hole {
  readonly x: number;
  readonly y: number;
  readonly round: boolean;
}

/** Middles of the holes, mm from the field's centre, y up: at the top in Japan, at the bottom in the west. None unless asked for. */
export function holes({ pegs, convention }: Settings): Hole[] {
  if (pegs === 'none') return [];
  const y = convention === 'japan' ? PEGS.fromCentreMm : -PEGS.fromCentreMm;
  return [-PEGS.apartMm, 0, PEGS.apartMm].map((x) => ({ x, y, round: x === 0 }));
}

export function holeMark(hole: Hole, place: (p: Pt) => Pt, n: number): Mark {
  const stroke = { ink: 'grey', widthMm: 0.2 } as const;
  if (hole.round) {
    const [x, y] = place([hole.x, hole.y]);
    return { kind: 'circle', x, y, r: PEGS.roundMm / 2 / n, stroke, fill: null };
  }
  const { width, height } = PEGS.flatMm;
  const points = rectangle(hole.x, hole.y, width, height, 0).map(place);
  return { kind: 'path', points, closed: true, stroke, fill: null };
}

// ---- the rule that shows whether a page was printed at its true size, and marks to cut and join by

export const RULE_MM = 100;
/** Height that the rule takes at the foot of the body. */
export const RULE_ROOM = 8;

/** At the bottom left of the body. */
export function checkRule(body: Box, look: PageLook, words: CameraPageWords): Mark[] {
  const x = body.x + 2;
  const y = body.y + body.height - 2;
  const marks: Mark[] = [line(x, y, x + RULE_MM, y, black(0.25))];
  for (let mm = 0; mm <= RULE_MM; mm += 10) {
    const high = mm % 50 === 0 ? 3.5 : 2;
    marks.push(line(x + mm, y, x + mm, y - high, black(0.15)));
  }
  const least = smallestTextMm(look.settings.paper);
  const room = body.x + body.width - x - RULE_MM - 4;
  const { sizeMm, squeeze } = fitLine(look.metrics, words.trueSize, room, {
    most: 2.8,
    least,
    weight: 'bold',
  });
  marks.push(
    textAt(x + RULE_MM + 3, y - 1.4, words.trueSize, { sizeMm, squeeze, weight: 'bold', anchor: 'start' }),
  );
  return marks;
}
