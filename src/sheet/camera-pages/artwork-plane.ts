/** The artwork's plane (mm, y up) and the paper's (mm, y down). */

import type { Settings } from '../../shot/settings.js';
import { clockwise, turnOf } from '../../solve/camera/plane-turns.js';
import type { Pt } from '../display-list.js';
import type { Box } from '../mark-builders.js';

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
export function clip([x1, y1, x2, y2]: Segment, { x, y, width, height }: Box): Segment | null {
  let from = 0;
  let to = 1;
  const dx = x2 - x1;
  const dy = y2 - y1;
  const sides: readonly (readonly [number, number])[] = [
    [-dx, x1 - x],
    [dx, x + width - x1],
    [-dy, y1 - y],
    [dy, y + height - y1],
  ];
  for (const [along, room] of sides) {
    if (along === 0) {
      if (room < 0) return null;
    } else if (along < 0) from = Math.max(from, room / along);
    else to = Math.min(to, room / along);
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
