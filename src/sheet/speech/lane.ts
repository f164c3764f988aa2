import type { Geometry } from '../geometry.js';

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
