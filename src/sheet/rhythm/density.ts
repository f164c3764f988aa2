/** How many drawings a cut brings in a second, stretch by stretch: the load of those who draw. */

import type { CutRow } from '../../count/row.js';
import type { Placed } from '../../count/running.js';

/** New drawings a second up to which each step reaches; the last has no end. On ones a single level brings 24, on twos 12. */
export const STEPS = [2, 4, 8, 12] as const;
export const HIGHEST = STEPS.length + 1;

/** 0 for nothing new, up to HIGHEST. */
export function stepOf(aSecond: number): number {
  if (aSecond <= 0) return 0;
  const step = STEPS.findIndex((most) => aSecond <= most + 1e-9);
  return step < 0 ? HIGHEST : step + 1;
}

export interface Stretch {
  /** Running time, frames of the episode. */
  readonly from: number;
  readonly to: number;
  readonly fresh: number;
  readonly step: number;
}

/**
 * The cut's share of the running time in stretches of about `wanted` frames, equally long. A drawing that is first seen under
 * a dissolve, outside that share, counts in the stretch beside it: every drawing counts once.
 */
export function stretchesOf({ counted }: CutRow, placed: Placed, fps: number, wanted: number): Stretch[] {
  const { start, frames, before, frameOfRow } = placed;
  if (!counted || frames <= 0) return [];
  const count = Math.max(1, Math.round(frames / wanted));
  const length = frames / count;
  const fresh = new Array<number>(count).fill(0);
  for (const row of counted.rhythm.fresh) {
    const at = (row - 1) * frameOfRow - before;
    fresh[Math.max(0, Math.min(count - 1, Math.floor(at / length + 1e-9)))]! += 1;
  }
  return fresh.map((drawings, i) => ({
    from: start + i * length,
    to: start + (i + 1) * length,
    fresh: drawings,
    step: stepOf((drawings * fps) / length),
  }));
}
