/** What sentences about a change say in the same way in every language. */

import type { Frames, SeenThing } from '../compare/change.js';

export const isLater = (frames: { old: Frames; now: Frames }): number | null => {
  const by = frames.now.from - frames.old.from;
  return frames.now.to - frames.old.to === by ? by : null;
};

export const lasts = ({ from, to }: Frames): number => to - from + 1;

/** Runs of numbers that all move by the same: `4 to 12 → 5 to 13`. */
export function numberRuns(
  numbers: readonly { old: number; now: number }[],
): { old: readonly [number, number]; now: readonly [number, number] }[] {
  const runs: { old: [number, number]; now: [number, number] }[] = [];
  for (const { old, now } of numbers) {
    const last = runs.at(-1);
    if (last && old === last.old[1] + 1 && now === last.now[1] + 1) {
      last.old[1] = old;
      last.now[1] = now;
    } else runs.push({ old: [old, old], now: [now, now] });
  }
  return runs;
}

/** Whether two ends name a stretch of drawings that a reader finds in this order: one thing, or two rising numbers. */
export function rises(first: SeenThing, last: SeenThing): boolean {
  if (first.form !== 'drawing' || last.form !== 'drawing') return first === last || first.form === last.form;
  return first.cel <= last.cel;
}
