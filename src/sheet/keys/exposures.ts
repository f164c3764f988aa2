/** What key and cel columns have in common: figures in a row, hold lines, what is held over a break. */

import type { SolvedLevel } from '../../solve/solved.js';
import { black, line, textAt } from '../draw.js';
import type { Fitted } from '../fit.js';
import { fitLine } from '../fit.js';
import type { Mark } from '../marks.js';
import type { Run, Side } from '../plan.js';
import { topOf } from '../plan.js';

export const HOLD = black(0.24);
/** A hold line ends above the bottom edge of its last row by this share of a row. */
export const HOLD_GAP = 0.18;

/** How large a number stands in its row. */
export function numberSize(side: Side, text: string, width: number): Fitted {
  const { rowMm, leastTextMm } = side.geometry;
  const most = Math.max(leastTextMm, Math.min(rowMm * 0.74, 3.2));
  return fitLine(side.plan.metrics, text, width, { most, least: leastTextMm });
}

/**
 * Lines down the rows on which a drawing is held: from the top edge of the row after the one that holds its number (or its
 * brackets, at a break) to just above the bottom edge of its last row. None for an empty level. `begins`: the frames on which the
 * column has a number.
 */
export function holdMarks(
  side: Side,
  run: Run,
  level: SolvedLevel,
  x: number,
  begins: (frame: number) => boolean,
): Mark[] {
  const marks: Mark[] = [];
  const gap = side.geometry.rowMm * HOLD_GAP;
  let from = run.first;
  for (let frame = run.first; frame <= run.last; frame++) {
    if (begins(frame)) from = frame;
    const ends = frame === run.last || begins(frame + 1);
    if (!ends || frame === from || level.exposures[frame - 1]!.drawing === null) continue;
    const top = topOf(side, run, from + 1);
    marks.push(line(x, top, x, topOf(side, run, frame + 1) - gap, HOLD));
  }
  return marks;
}

/** What is still held, on the first row after a break: in square brackets. */
export function inBrackets(side: Side, text: string, x: number, y: number, width: number): Mark {
  const bracketed = `[${text}]`;
  const { sizeMm, squeeze } = numberSize(side, bracketed, width - 0.5);
  return textAt(x, y, bracketed, { sizeMm, squeeze });
}
