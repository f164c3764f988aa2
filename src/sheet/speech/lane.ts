import { polygon } from '../draw.js';
import type { Geometry } from '../geometry.js';
import type { Mark } from '../marks.js';

/** Where a line of dialogue stands in its column. */
export interface Lane {
  readonly x: number;
  readonly width: number;
  /** Left part, for who speaks. */
  readonly stripX: number;
  readonly stripWidth: number;
  /** Right part, for the words. */
  readonly wordsX: number;
  readonly wordsWidth: number;
}

/** Bars stand off their row's edge, so that one line's end and the next one's start are two bars. */
export const barGap = ({ rowMm }: Geometry): number => Math.min(0.18, rowMm * 0.07);

/** Width that the tick of a tied word takes at the left of the words, mm. */
export const TICK_MM = 1.3;

/**
 * A pointer at the row on which the text says that a word begins, its tip at `tipX`: nothing that is only spread evenly
 * has one.
 */
export function tick(tipX: number, middleMm: number, { rowMm }: Geometry): Mark {
  const half = Math.min(0.6, rowMm * 0.25);
  const points = [
    [tipX - 1, middleMm - half],
    [tipX, middleMm],
    [tipX - 1, middleMm + half],
  ] as const;
  return polygon(points, 'black');
}
