/**
 * Running time under the two rules for dissolves (common practice). `half`: a cut's time runs to the middle of the dissolve,
 * so the times add up as they are. `full`: both times hold the whole dissolve, which runs once; each cut gives up the part
 * that lies beyond the middle, the outgoing one the smaller part of an odd length, as with handles.
 */

import type { CutCount } from './cut-row.js';

/** What the rule looks at; null where it is not known. */
export interface Timed {
  readonly counted: Pick<CutCount, 'fps' | 'time' | 'handles' | 'overlap'> | null;
}

/** Where a cut lies in the running time, in frames of the episode. */
export interface PlacedCut {
  /** Frames that have run when it begins. */
  readonly start: number;
  /** Its share of the running time, 0 while its time is not known. */
  readonly frames: number;
  /** The same before it is rounded to whole frames of the episode. */
  readonly lasts: number;
  /** Frames of its picture before that share and behind it, under dissolves. */
  readonly before: number;
  readonly after: number;
  /** Frames of the episode that one row of its sheet takes: not 1 where the cut has an `fps` of its own. */
  readonly frameOfRow: number;
}

/** A dissolve of full times is one where both cuts name it; where they differ, as far as they agree. */
function dissolved(out: Timed | undefined, next: Timed | undefined): number {
  return Math.min(out?.counted?.overlap.out ?? 0, next?.counted?.overlap.in ?? 0);
}

/**
 * `rows` in story order. `fps`: of the episode. Times add up exactly and each cut point is rounded by itself, so that five cuts of
 * ten frames at 25 a second run for 48 frames of 24, not for 50.
 */
export function placeCuts(rows: readonly Timed[], rule: 'half' | 'full', fps: number): PlacedCut[] {
  let run = 0;
  return rows.map((row, i): PlacedCut => {
    const { counted } = row;
    const start = Math.round(run);
    if (!counted) return { start, frames: 0, lasts: 0, before: 0, after: 0, frameOfRow: 1 };
    const frameOfRow = fps / counted.fps;
    const given =
      rule === 'half'
        ? { head: 0, tail: 0 }
        : {
            head: Math.ceil(dissolved(rows[i - 1], row) / 2),
            tail: Math.floor(dissolved(row, rows[i + 1]) / 2),
          };
    const before = rule === 'half' ? counted.handles.head : given.head;
    const after = rule === 'half' ? counted.handles.tail : given.tail;
    const lasts = Math.max(0, ((counted.time - given.head - given.tail) * fps) / counted.fps);
    run += lasts;
    return {
      ...{ start, frames: Math.round(run) - start, lasts },
      ...{ before: before * frameOfRow, after: after * frameOfRow, frameOfRow },
    };
  });
}
