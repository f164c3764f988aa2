/** How a leg's way is spread over its steps: the share p of the way done after i of T steps, p(0) = 0 and p(T) = 1. */

import type { Spacing } from '../../shot/camera/camera-model.js';
import { evenSteps } from '../../shot/camera/move-parameters.js';

export type EasingFunction = (i: number) => number;

/**
 * `steps` is T, at least 1. `start` is the leg's frame of rest (a fairing mark is a frame). Numbers that make no sense
 * (the checks report them) give constant speed, never NaN.
 */
export function progress(spacing: Spacing, steps: number, start: number): EasingFunction {
  const inside = (spread: EasingFunction): EasingFunction => {
    return (i) => (i <= 0 ? 0 : i >= steps ? 1 : spread(i));
  };
  const linear: EasingFunction = (i) => i / steps;
  switch (spacing.form) {
    case 'linear':
      return inside(linear);
    case 'ease':
      return inside(easeFits(spacing, steps) ? ease(spacing, steps) : linear);
    case 'curve': {
      if (!curveFits(spacing)) return inside(linear);
      const curve = bezier(spacing.x1, spacing.y1, spacing.x2, spacing.y2);
      return inside((i) => curve(i / steps));
    }
    case 'steps':
      return inside(byHand(spacing.mm) ?? linear);
    case 'fair': {
      const cushion = cushionOf(spacing, start, start + steps);
      return inside(cushion ? fairing(cushion) : linear);
    }
  }
}

export function easeFits(spacing: { leave: number; arrive: number }, steps: number): boolean {
  const { leave, arrive } = spacing;
  return leave >= 0 && arrive >= 0 && leave + arrive <= steps;
}

export function curveFits(c: { x1: number; y1: number; x2: number; y2: number }): boolean {
  const time = (x: number) => x >= 0 && x <= 1;
  const way = (y: number) => Math.abs(y) <= 10;
  return time(c.x1) && time(c.x2) && way(c.y1) && way(c.y2);
}

type Ease = Spacing & { readonly form: 'ease' };

function ease(spacing: Ease, steps: number): EasingFunction {
  const { leave, arrive } = spacing;
  const v = 1 / evenSteps(spacing, steps);
  return (i) => {
    if (i < leave) return (v * i * i) / (2 * leave);
    if (i <= steps - arrive) return v * (i - leave / 2);
    return 1 - (v * (steps - i) * (steps - i)) / (2 * arrive);
  };
}

function byHand(mm: readonly number[]): EasingFunction | null {
  const sums = [0];
  let total = 0;
  for (const step of mm) {
    total += step;
    sums.push(total);
  }
  if (!(Math.abs(total) >= 1e-6) || !mm.every((step) => Math.abs(step) <= 1e6)) return null;
  return (i) => (sums[Math.min(i, mm.length)] ?? total) / total;
}

/** Share p of the way in T₁ steps, T₂ steps of cushion; `power` is k = v·T₂/(1 − p) with v = p/T₁. */
export interface Cushion {
  readonly share: number;
  readonly before: number;
  readonly left: number;
  readonly power: number;
}

/** Null where the mark is not inside the leg or the share not inside (0, 1). `power` may be below 1, which no cushion is. */
export function cushionOf(
  fair: { readonly frame: number; readonly share: number },
  start: number,
  end: number,
): Cushion | null {
  const before = fair.frame - start;
  const left = end - fair.frame;
  const { share } = fair;
  if (!(before > 0 && left > 0 && share > 0 && share < 1)) return null;
  return { share, before, left, power: ((share / before) * left) / (1 - share) };
}

function fairing({ share, before, left, power: k }: Cushion): EasingFunction {
  return (i) => {
    if (i <= before) return (share * i) / before;
    return share + (1 - share) * (1 - power(1 - (i - before) / left, k));
  };
}

/** Steps into the leg from which the cushion has done 99.5 % of what was left to it. */
export const asGoodAsStill = (c: Cushion) => c.before + c.left * (1 - power(0.005, 1 / c.power));

/**
 * The step that frame `i` of a leg shows when it is sampled every `on` frames. What stands on a frame (`@`) holds from there;
 * what moves during a range (`a..b`) has moved on its first frame. The last frame always shows the end.
 */
export function sampled(i: number, steps: number, on: number, manner: 'rests' | 'moved'): number {
  if (i >= steps) return steps;
  if (on <= 1) return i;
  return manner === 'rests' ? Math.floor(i / on) * on : Math.min(steps, Math.ceil(i / on) * on);
}

export function between(a: number, b: number, p: number): number {
  return p === 1 ? b : a + (b - a) * p;
}

/** By equal ratios. */
export function byRatio(a: number, b: number, p: number): number {
  if (p === 0) return a;
  return p === 1 ? b : a * power(b / a, p);
}

/**
 * Cubic Bézier timing with end points (0, 0) and (1, 1) as W3C CSS Easing Level 1 defines it: the share of the way y at the
 * share of the time x. With x1 and x2 in [0, 1] the curve's x never runs back, so there is one y for each x.
 */
export function bezier(x1: number, y1: number, x2: number, y2: number): (x: number) => number {
  const xs = coefficients(x1, x2);
  const ys = coefficients(y1, y2);
  return (x) => {
    if (x <= 0) return 0;
    if (x >= 1) return 1;
    return value(ys, parameter(xs, x));
  };
}

type Cubic = readonly [number, number, number];

/** Of a t³ + b t² + c t. */
function coefficients(p1: number, p2: number): Cubic {
  const c = 3 * p1;
  const b = 3 * (p2 - p1) - c;
  return [1 - c - b, b, c];
}

const value = ([a, b, c]: Cubic, t: number) => ((a * t + b) * t + c) * t;
const slope = ([a, b, c]: Cubic, t: number) => (3 * a * t + 2 * b) * t + c;

/** Newton's method inside a bracket that is halved wherever a step would leave it; full precision in both regions. */
function parameter(xs: Cubic, x: number): number {
  let low = 0;
  let high = 1;
  let t = x;
  for (let round = 0; round < 80; round++) {
    const off = value(xs, t) - x;
    if (off === 0) return t;
    if (off > 0) high = t;
    else low = t;
    const s = slope(xs, t);
    const newton = t - off / s;
    const next = s > 1e-9 && newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - t) < 1e-16) return next;
    t = next;
  }
  return t;
}

// ----
// Powers that are the same number on every machine. ECMAScript leaves the last digits of `**` and Math.pow to the engine, and
// Node 24 gives others than Node 20 and 22; sums, products and quotients are exact to the bit by IEEE 754.

/**
 * A number as the sum of two doubles, the second at most half a unit of the first one's last digit: some 100 bits. Source of
 * the sums and products without error: T. J. Dekker, “A floating-point technique for extending the available precision”, 1971.
 */
type Pair = readonly [high: number, low: number];

/**
 * e^(exponent · ln base), rounded once at the end. `base` at least 0; a negative one, which has no real power, and NaN give
 * NaN. 0 to the power of 0 is 1.
 */
export function power(base: number, exponent: number): number {
  if (exponent === 0 || base === 1) return 1;
  if (exponent === 1) return base;
  if (!(base >= 0) || Number.isNaN(exponent)) return Number.NaN;
  if (base === 0 || base === Infinity) return (base === 0) === exponent > 0 ? 0 : Infinity;
  const logarithm = ln(base);
  // Beyond the largest and the smallest double, e^709.8 and e^-745.1.
  const rough = logarithm[0] * exponent;
  if (Math.abs(rough) > 750) return rough < 0 ? 0 : Infinity;
  return exp(times(logarithm, [exponent, 0]));
}

const LN_2: Pair = [Math.LN2, 2.3190468138462996e-17];
const SQRT_2 = Math.SQRT2;

/** 1, 1/2, 1/3 … 1/9. What comes behind them in the series below is so small that a double holds enough of it: some 75 bits of the sum. */
const RECIPROCALS: readonly Pair[] = Array.from({ length: 9 }, (_, i) => over([1, 0], [i + 1, 0]));

/** With m = base / 2^k near 1: ln m = 2 artanh s = 2 (s + s³/3 + s⁵/5 + …), s = (m − 1) / (m + 1), at most 0.172. */
function ln(base: number): Pair {
  let m = base;
  let k = 0;
  for (; m > SQRT_2; k++) m /= 2;
  for (; m < SQRT_2 / 2; k--) m *= 2;
  const s = over([m - 1, 0], sumOf(m, 1));
  const square = times(s, s);
  let tail = 0;
  for (let n = 31; n >= 11; n -= 2) tail = tail * square[0] + 1 / n;
  let series: Pair = [tail, 0];
  for (let n = 9; n >= 1; n -= 2) series = plus(times(series, square), RECIPROCALS[n - 1]!);
  return plus(times([2 * s[0], 2 * s[1]], series), times(LN_2, [k, 0]));
}

/** With x = k ln 2 + f, f at most 0.35: 2^k (1 + f (1 + f/2 (1 + f/3 (…)))). */
function exp(x: Pair): number {
  const k = Math.round(x[0] / LN_2[0]);
  const f = plus(x, times(LN_2, [-k, 0]));
  let tail = 1;
  for (let n = 19; n >= 10; n--) tail = 1 + (f[0] / n) * tail;
  let series: Pair = [tail, 0];
  for (let n = 9; n >= 1; n--) series = plus(times(times(f, RECIPROCALS[n - 1]!), series), [1, 0]);
  let [result] = series;
  for (let i = 0; i < k; i++) result *= 2;
  for (let i = 0; i > k; i--) result /= 2;
  return result;
}

function plus(a: Pair, b: Pair): Pair {
  const [sum, rest] = sumOf(a[0], b[0]);
  return normal(sum, rest + a[1] + b[1]);
}

function times(a: Pair, b: Pair): Pair {
  const [product, rest] = productOf(a[0], b[0]);
  return normal(product, rest + a[0] * b[1] + a[1] * b[0]);
}

function over(a: Pair, b: Pair): Pair {
  const quotient = a[0] / b[0];
  const [taken, rest] = times(b, [quotient, 0]);
  return normal(quotient, (a[0] - taken - rest + a[1]) / b[0]);
}

/** Of a high part and a low one that may reach into it. */
function normal(high: number, low: number): Pair {
  const sum = high + low;
  return [sum, low - (sum - high)];
}

/** The sum, and what is lost of it by rounding. */
function sumOf(a: number, b: number): Pair {
  const sum = a + b;
  const second = sum - a;
  return [sum, a - (sum - second) + (b - second)];
}

/** The product, and what is lost of it by rounding: from halves whose products are exact. */
function productOf(a: number, b: number): Pair {
  const product = a * b;
  const [c, d] = halved(a);
  const [e, f] = halved(b);
  return [product, c * e - product + c * f + d * e + d * f];
}

/** The upper 26 bits and the rest. */
function halved(a: number): Pair {
  const scaled = 134217729 * a; // 2^27 + 1
  const upper = scaled - (scaled - a);
  return [upper, a - upper];
}
