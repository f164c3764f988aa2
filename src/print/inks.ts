import type { Ink } from '../sheet/display-list.js';

/** Red, green and blue, 0 to 1. */
export type Colour = readonly [number, number, number];

/**
 * The colours on paper. The form is a warm grey-brown: pale enough to write over with a pencil, dark enough
 * to come through a copier, which is blind to pale blue rather than to brown, as a grey line.
 */
export const INKS: Readonly<Record<Ink | 'paper' | 'tint', Colour>> = {
  form: [0.62, 0.52, 0.42],
  black: [0, 0, 0],
  grey: [0.3, 0.3, 0.3],
  light: [0.5, 0.5, 0.5],
  paper: [1, 1, 1],
  tint: [0.9, 0.9, 0.9],
};
