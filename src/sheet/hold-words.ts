/** Words beside the line of a hold: that nothing is drawn before the next key, or that a key is held for long. */

import { rowName } from '../shot/time-notation.js';
import type { SolvedLevel } from '../solve/solved-shot.js';
import type { Hold } from './column-entries.js';
import type { Mark } from './display-list.js';
import { type BlockFrames, type PageSide, topOf } from './sheet-plan.js';
import { NARROWEST_SQUEEZE } from './text-fitting.js';
import { setDownwards } from './vertical-text.js';

/** Rows below a key that its word may reach in the lowest rows. */
const LONGEST_WORD_ROWS = 6;

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
  const direct = solved.shot.levels.find(({ name }) => name === level.name)?.timeline?.direct ?? [];
  if (direct.length === 0 && words.held === '') return [];
  const { handles, length } = solved.shot;
  const points = [
    ...(handles.head > 0 ? [handles.head + 1] : []),
    ...(handles.tail > 0 ? [length - handles.tail + 1] : []),
  ];
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
    const last = Math.min(next - 1, run.last);
    // A cut point is ruled across: the word begins below it.
    const point = points.find((one) => one > frame + 1 && one <= Math.min(frame + LONGEST_WORD_ROWS, last));
    const top = topOf(side, run, point ?? Math.min(frame + 1, last + 1)) + (point ? 0.5 : 0.2);
    const room = topOf(side, run, last + 1) - top - 0.3;
    // The lanes of brackets are free where no cycle has one beside the hold, nor the word of a short one.
    const beside = level.cycles.some(
      ({ firstFrame, lastFrame }) =>
        firstFrame <= last && (lastFrame >= frame || (firstFrame >= run.first && firstFrame + 3 >= frame)),
    );
    const free = column.width / 2 + (beside ? 0 : geometry.bracketMm) - 0.4;
    const width = Math.max(column.width / 2 - 0.4, Math.min(free, geometry.leastTextMm * 1.1));
    const strip = { x: column.x + 0.4, width, top, room };
    const least = geometry.leastTextMm;
    const most = Math.max(least, Math.min(least * 1.1, width));
    const size = { most, least, weight: 'regular' } as const;
    const set = setDownwards(text, strip, size, plan.metrics);
    const squeeze = Math.max(NARROWEST_SQUEEZE, Math.min(1, width / most));
    const narrowed = (mark: Mark): Mark =>
      mark.kind === 'text' && !mark.turn && squeeze < 1 ? { ...mark, squeeze } : mark;
    if (isDirect && !set.fits) {
      const row = rowName(next, geometry.unit, plan.convention === 'west');
      plan.leftOver.add(`${level.name} ${row}: ${drawing}→${follows} ${text}`);
    } else if (set.fits && (isDirect || (!beside && width >= least * NARROWEST_SQUEEZE)))
      marks.push(...set.marks.map(narrowed));
  }
  return marks;
}
