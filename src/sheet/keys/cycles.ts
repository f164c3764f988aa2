/** Brackets beside cycles: how often they are played, or that they run on. */

import { rowName } from '../../shot/time.js';
import type { SolvedCycle, SolvedLevel } from '../../solve/solved.js';
import type { Column } from '../columns.js';
import { black, line, polygon } from '../draw.js';
import type { Mark } from '../marks.js';
import type { Run, Side } from '../plan.js';
import { topOf } from '../plan.js';
import { setDownwards } from '../vertical.js';

const BRACKET = black(0.2);
const TICK = 0.55;

/** Room that the brackets of a level take beside its numbers, mm: one lane a depth. */
export function bracketRoom(levels: readonly SolvedLevel[], leastTextMm: number): number {
  const depths = levels.flatMap((level) => level.cycles.map((cycle) => cycle.depth + 1));
  return Math.max(0, ...depths) * laneMm(leastTextMm);
}

const laneMm = (leastTextMm: number): number => leastTextMm * 1.15;

export function cycleMarks(side: Side, run: Run, level: SolvedLevel, column: Column): Mark[] {
  return level.cycles.flatMap((cycle) => bracket(side, run, level, cycle, column));
}

function bracket(side: Side, run: Run, level: SolvedLevel, cycle: SolvedCycle, column: Column): Mark[] {
  const from = Math.max(cycle.firstFrame, run.first);
  const to = Math.min(cycle.lastFrame, run.last);
  if (from > to) return [];
  const { leastTextMm, rowMm } = side.geometry;
  const lane = laneMm(leastTextMm);
  const x = column.x + column.width - (cycle.depth + 1) * lane + 0.1;
  const gap = rowMm * 0.08;
  const feet = side.plan.convention === 'west';
  const top = topOf(side, run, from) + gap;
  const bottom = topOf(side, run, to + 1) - gap;
  const marks = [line(x, top, x, bottom, BRACKET)];
  if (from === cycle.firstFrame) marks.push(line(x - TICK, top, x, top, BRACKET));
  if (to === cycle.lastFrame) {
    if (cycle.times === null)
      marks.push(
        polygon(
          [
            [x - 0.6, bottom - 1.3],
            [x + 0.6, bottom - 1.3],
            [x, bottom],
          ],
          'black',
        ),
      );
    else marks.push(line(x - TICK, bottom, x, bottom, BRACKET));
  }
  const text = cycle.times === null ? side.plan.words.runsOn : side.plan.words.passes(cycle.times);
  // At the head of the bracket, and again after a break where there is room; a short one's word goes on beside the next rows.
  const begins = from === cycle.firstFrame;
  const free = topOf(side, run, run.last + 1) - gap - top - 0.4;
  const room = begins ? Math.min(free, Math.max(bottom - top - 0.4, 3 * rowMm)) : bottom - top - 0.4;
  const strip = { x: x + 0.12, width: lane - 0.2, top: top + 0.3, room };
  const size = { most: leastTextMm, least: leastTextMm, weight: 'regular' } as const;
  const word = setDownwards(text, strip, size, side.plan.metrics);
  if (word.fits) marks.push(...word.marks);
  else if (begins)
    side.plan.leftOver.add(`${level.name} ${rowName(from, side.geometry.unit, feet)}: ${text}`);
  return marks;
}
