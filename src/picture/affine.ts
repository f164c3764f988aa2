/** Matrices of the plane, in the order of a canvas: `[a, b, c, d, e, f]`. */

import type { Matrix } from './frame-picture.js';

/** First `inner`, then `outer`. */
export function after(outer: Matrix, inner: Matrix): Matrix {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

export function applied([a, b, c, d, e, f]: Matrix, x: number, y: number): { x: number; y: number } {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

/** Null where everything falls on a line. */
export function inverse([a, b, c, d, e, f]: Matrix): Matrix | null {
  const by = a * d - b * c;
  if (!(Math.abs(by) > 1e-12)) return null;
  return [d / by, -b / by, -c / by, a / by, (c * f - d * e) / by, (b * e - a * f) / by];
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** The smallest upright box that holds what a matrix makes of another. */
export function boxAfter(matrix: Matrix, { left, right, bottom, top }: Box): Box {
  const corners = [left, right].flatMap((x) => [bottom, top].map((y) => applied(matrix, x, y)));
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}
