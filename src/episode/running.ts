/** How long cuts run one after the other, by the episode's rule of dissolves. */

import type { Settings } from '../shot/settings.js';

/** A cut's time in frames (handles left out), and the lengths of its dissolves, 0 where it has none. */
export interface Lasting {
  readonly time: number;
  readonly overlapIn: number;
  readonly overlapOut: number;
}

/**
 * Frames that cuts in story order run for together. `half`: each time runs to the middle of its dissolve, so the times simply
 * add up. `full`: the times of both cuts contain the whole dissolve, which the picture shows once. A dissolve counts where both
 * cuts name it, with the shorter length where they differ (an error that is reported elsewhere).
 */
export function runningFrames(cuts: readonly Lasting[], overlap: Settings['overlap']): number {
  const times = cuts.reduce((sum, { time }) => sum + time, 0);
  if (overlap === 'half') return times;
  return cuts.reduce(
    (sum, { overlapIn }, i) => sum - Math.min(overlapIn, cuts[i - 1]?.overlapOut ?? 0),
    times,
  );
}
