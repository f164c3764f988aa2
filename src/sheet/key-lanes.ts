/**
 * What stands at the right of the numbers of a key column: brackets beside cycles (how often they are played, or that they run on), a
 * lane for each depth; and, where no bracket needs the room, words beside the line of a hold.
 */

import { rowName } from '../shot/time-notation.js';
import type { SolvedCycle, SolvedLevel } from '../solve/solved-shot.js';
import type { BlockColumn } from './block-columns.js';
import type { Hold } from './column-entries.js';
import type { Mark } from './display-list.js';
import { black, line, polygon } from './mark-builders.js';
import { type BlockFrames, type PageSide, topOf } from './sheet-plan.js';
import { NARROWEST_SQUEEZE } from './text-fitting.js';
import { setDownwards } from './vertical-text.js';

const BRACKET = black(0.2);
const TICK = 0.55;
/** The word of a bracket that has fewer rows goes on beside the rows below it, mm as of so many. */
const ROWS_OF_WORD = 3;

/** Room that the brackets of a level take beside its numbers, mm: one lane a depth. */
export function bracketRoom(levels: readonly SolvedLevel[], leastTextMm: number): number {
  const depths = levels.flatMap((level) => level.cycles.map((cycle) => cycle.depth + 1));
  return Math.max(0, ...depths) * laneMm(leastTextMm);
}

const laneMm = (leastTextMm: number): number => leastTextMm * 1.15;

export function cycleMarks(
  side: PageSide,
  run: BlockFrames,
  level: SolvedLevel,
  column: BlockColumn,
): Mark[] {
  return level.cycles.flatMap((cycle) => bracket(side, run, level, cycle, column));
}

function bracket(
  side: PageSide,
  run: BlockFrames,
  level: SolvedLevel,
  cycle: SolvedCycle,
  column: BlockColumn,
): Mark[] {
  const from = Math.max(cycle.firstFrame, run.first);
  const to = Math.min(cycle.lastFrame, run.last);
  if (from > to) return [];
  const { leastTextMm, rowMm, unit } = side.geometry;
  const { plan } = side;
  const lane = laneMm(leastTextMm);
  const x = column.x + column.width - (cycle.depth + 1) * lane + 0.1;
  const gap = rowMm * 0.08;
  const top = topOf(side, run, from) + gap;
  const bottom = topOf(side, run, to + 1) - gap;
  const marks = [line(x, top, x, bottom, BRACKET)];
  const begins = from === cycle.firstFrame;
  if (begins) marks.push(line(x - TICK, top, x, top, BRACKET));
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
  const text = cycle.times === null ? plan.words.runsOn : plan.words.passes(cycle.times);
  // At the head of the bracket, and again after a break where there is room; a short one's word goes on beside the next rows.
  const within = bottom - top - 0.4;
  const free = topOf(side, run, lastFree(level, cycle, run) + 1) - gap - top - 0.4;
  const room = begins ? Math.max(within, Math.min(free, ROWS_OF_WORD * rowMm)) : within;
  const strip = { x: x + 0.12, width: lane - 0.2, top: top + 0.3, room };
  const size = { most: leastTextMm, least: leastTextMm, weight: 'regular' } as const;
  const word = setDownwards(text, strip, size, plan.metrics);
  if (word.fits) marks.push(...word.marks);
  else if (begins)
    plan.leftOver.add(`${level.name} ${rowName(from, unit, plan.convention === 'west')}: ${text}`);
  return marks;
}

/** The last row of a block before the next bracket in the lane of a cycle. */
function lastFree(level: SolvedLevel, cycle: SolvedCycle, run: BlockFrames): number {
  const next = level.cycles.find(
    ({ depth, firstFrame }) => depth === cycle.depth && firstFrame > cycle.lastFrame,
  );
  return next ? Math.min(run.last, next.firstFrame - 1) : run.last;
}

/** Rows below a key that its word may reach in the lowest rows. */
const LONGEST_WORD_ROWS = 6;
/** Between the line of a hold and its word, mm. */
const BESIDE_HOLD = 0.4;

/**
 * Beside the line of a hold, reading downwards, once a hold, in the block in which it begins: that no in-betweens are meant before the
 * next key (where there is no room the memo tells it), or else that a key is held for more than a second (where there is no room the line
 * alone tells it).
 */
export function holdWords(
  side: PageSide,
  run: BlockFrames,
  level: SolvedLevel,
  column: { readonly x: number; readonly width: number },
  holds: readonly Hold[],
): Mark[] {
  const { plan, geometry } = side;
  const { words, solved } = plan;
  const { direct } = solved.shot.levels.find(({ name }) => name === level.name)!.timeline!;
  const { handles, length } = solved.shot;
  // Without handles, these lie outside of the rows after a key.
  const cutPoints = [handles.head + 1, length - handles.tail + 1];
  const marks: Mark[] = [];
  for (const { from: frame, to } of holds) {
    const { drawing, kind } = level.exposures[frame - 1]!;
    if (frame < run.first || drawing === null) continue;
    const next = to + 1;
    const follows = level.exposures[to]?.drawing;
    const isDirect = direct.some(({ from, to }) => from === drawing && to === follows);
    const isLong = kind === 'key' && next - frame > solved.shot.fps;
    const text = isDirect ? words.noInbetweens : isLong ? words.held : '';
    if (text === '') continue;
    const last = Math.min(to, run.last);
    // It is ruled across: the word begins below it.
    const point = cutPoints.find((one) => one > frame && one <= Math.min(frame + LONGEST_WORD_ROWS, last));
    const top = topOf(side, run, point ?? frame + 1) + (point ? 0.5 : 0.2);
    const room = topOf(side, run, last + 1) - top - 0.3;
    // The lanes of brackets are free where no cycle has one beside the hold, nor the word of a short one that ends above it.
    const beside = level.cycles.some(
      ({ firstFrame, lastFrame }) =>
        firstFrame <= last &&
        (lastFrame >= frame || (firstFrame >= run.first && firstFrame + ROWS_OF_WORD > frame)),
    );
    const least = geometry.leastTextMm;
    const half = column.width / 2 - BESIDE_HOLD;
    const width = beside ? half : Math.max(half, Math.min(half + geometry.bracketMm, least * 1.1));
    const strip = { x: column.x + BESIDE_HOLD, width, top, room };
    const most = Math.max(least, Math.min(least * 1.1, width));
    const set = setDownwards(text, strip, { most, least, weight: 'regular' }, plan.metrics);
    if (isDirect && !set.fits) {
      const row = rowName(next, geometry.unit, plan.convention === 'west');
      plan.leftOver.add(`${level.name} ${row}: ${drawing}→${follows} ${text}`);
    } else if (set.fits && (isDirect || (!beside && width >= least * NARROWEST_SQUEEZE))) {
      const squeeze = Math.max(NARROWEST_SQUEEZE, width / most);
      const narrows = (mark: Mark): boolean => mark.kind === 'text' && !mark.turn && squeeze < 1;
      marks.push(...set.marks.map((mark) => (narrows(mark) ? { ...mark, squeeze } : mark)));
    }
  }
  return marks;
}
