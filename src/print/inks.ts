import type { Ink } from '../sheet/marks.js';

/** Red, green and blue, 0 to 1. */
export type Colour = readonly [number, number, number];

/**
 * The colours on paper. The form is a slate blue: pale enough to write over with a pencil, dark enough (luminance about
 * 0.6) to come through a copier as a grey line.
 */
export const INKS: Readonly<Record<Ink | 'paper' | 'tint', Colour>> = {
  form: [0.49, 0.63, 0.72],
  black: [0, 0, 0],
  grey: [0.42, 0.42, 0.42],
  paper: [1, 1, 1],
  tint: [0.9, 0.9, 0.9],
};
