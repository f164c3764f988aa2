/** Sharing out the levels of a cut over the sides of a page: `1`, `1-b`, `1-c`. */

import type { SolvedLevel } from '../solve/solved-shot.js';
import { mostCameraLanes, mostLevels, type WantedColumns } from './block-columns.js';
import { bracketRoom } from './key-lanes.js';

export interface LevelsOfSide {
  readonly levels: readonly SolvedLevel[];
  readonly wanted: WantedColumns;
}

/** At least one side; no more levels a side than its narrowest columns hold, and about as many on each. */
export function sidesOf(
  levels: readonly SolvedLevel[],
  asked: Pick<WantedColumns, 'levelMm' | 'labelsMm' | 'voices' | 'sounds' | 'cameraLanes' | 'gutters'>,
  widthMm: number,
  leastTextMm: number,
): LevelsOfSide[] {
  const bracketMm = bracketRoom(levels, leastTextMm);
  const heard = { ...asked, bracketMm };
  const room = { ...heard, cameraLanes: mostCameraLanes(heard, widthMm) };
  const first = mostLevels({ ...room, main: true }, widthMm);
  const further = mostLevels({ ...room, main: false }, widthMm);
  const sides = levels.length <= first ? 1 : 1 + Math.ceil((levels.length - first) / further);
  const counts: number[] = [];
  let left = levels.length;
  for (let i = 0; i < sides; i++) {
    const even = Math.ceil(left / (sides - i));
    const count = i === 0 ? Math.min(even, first) : even;
    counts.push(count);
    left -= count;
  }
  let from = 0;
  return counts.map((count, i) => {
    const here = levels.slice(from, from + count);
    from += count;
    return {
      levels: here,
      wanted: {
        ...room,
        levels: Math.max(1, count),
        main: i === 0,
        bracketMm: bracketRoom(here, leastTextMm),
      },
    };
  });
}

/** The label of a side, from 0: `3`, `3-b` … `3-z`, `3-27`. */
export function sideLabel(page: number, side: number): string {
  if (side === 0) return String(page);
  return `${page}-${side < 26 ? String.fromCharCode(97 + side) : side + 1}`;
}
