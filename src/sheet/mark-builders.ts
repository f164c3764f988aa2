/** Short hands for marks. Millimetres, y down. */

import type { Ink, Mark, Stroke, Weight } from './display-list.js';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The box cut into boxes from left to right, each as wide as its share of all. */
export function inShares(box: Box, shares: readonly number[]): Box[] {
  const all = shares.reduce((sum, share) => sum + share, 0);
  let { x } = box;
  return shares.map((share) => {
    const own = { ...box, x, width: (box.width * share) / all };
    x += own.width;
    return own;
  });
}

/** From the middle of a line of figures, capitals or kanji down to its baseline, in ems (half the cap height of the font). */
export const TO_BASELINE = 0.37;

export const black = (widthMm: number): Stroke => ({ ink: 'black', widthMm });
export const pale = (widthMm: number): Stroke => ({ ink: 'form', widthMm });

export interface TextSetting {
  readonly sizeMm: number;
  readonly weight?: Weight;
  readonly ink?: Ink;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly turn?: number;
  readonly squeeze?: number;
}

/** A text whose capitals and figures have their middle at `y`. */
export function textAt(x: number, y: number, text: string, setting: TextSetting): Mark {
  const { sizeMm, weight = 'regular', ink = 'black', anchor = 'middle', turn, squeeze } = setting;
  const down = TO_BASELINE * sizeMm;
  const squeezed = squeeze !== undefined && squeeze < 1;
  if (!turn) {
    const base = y + down;
    return squeezed
      ? { kind: 'text', x, y: base, text, sizeMm, weight, ink, anchor, squeeze }
      : { kind: 'text', x, y: base, text, sizeMm, weight, ink, anchor };
  }
  const angle = (turn * Math.PI) / 180;
  const ax = x - down * Math.sin(angle);
  const ay = y + down * Math.cos(angle);
  const turned = { kind: 'text', x: ax, y: ay, text, sizeMm, weight, ink, anchor, turn } as const;
  return squeezed ? { ...turned, squeeze } : turned;
}

export function line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke): Mark {
  return { kind: 'line', x1, y1, x2, y2, stroke };
}

export function polygon(points: readonly (readonly [number, number])[], fill: Ink | 'paper'): Mark {
  return { kind: 'path', points, closed: true, stroke: null, fill };
}

export function polyline(points: readonly (readonly [number, number])[], stroke: Stroke): Mark {
  return { kind: 'path', points, closed: false, stroke, fill: null };
}

export function frame({ x, y, width, height }: Box, stroke: Stroke): Mark {
  return {
    kind: 'path',
    points: [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    closed: true,
    stroke,
    fill: null,
  };
}

/** Steps of a half circle of a pill's end. */
const ARC = 10;

/** A ring about (x, y), `2r` high: a circle where `width` is no more than that, else drawn out to a pill. */
export function ring(x: number, y: number, r: number, width: number, stroke: Stroke): Mark {
  if (width <= 2 * r + 1e-9) return { kind: 'circle', x, y, r, stroke, fill: null };
  const straight = width / 2 - r;
  const points: [number, number][] = [];
  for (const side of [1, -1]) {
    for (let i = 0; i <= ARC; i++) {
      const angle = Math.PI * (i / ARC - 0.5) + (side < 0 ? Math.PI : 0);
      points.push([x + side * straight + r * Math.cos(angle), y + r * Math.sin(angle)]);
    }
  }
  return { kind: 'path', points, closed: true, stroke, fill: null };
}
