/** How a leg's way is spread over its steps: the share p of the way done after i of T steps, p(0) = 0 and p(T) = 1. */

import { evenSteps } from '../../shot/camera/bind-spacing.js';
import type { Spacing } from '../../shot/camera/camera-model.js';
import { bezier } from './bezier.js';
import { power } from './power.js';

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
