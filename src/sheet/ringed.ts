/** A text in a ring: how large it is set and how far the ring is drawn out, so that the two never touch. */

import { ring, TO_BASELINE, textAt } from './draw.js';
import { fitLine, NARROWEST } from './fit.js';
import type { Mark, Metrics, Stroke } from './marks.js';

/** Between the corners of the text and the inside of the ring, mm. */
const CLEAR = 0.16;
/** How high one character, and several, may be in a ring, radii. */
const ONE = 1.45;
const SEVERAL = 1.18;

export interface Ringed {
  /** Half the height of the ring, mm. */
  readonly r: number;
  /** Room for the ring, its stroke not counted. */
  readonly widestMm: number;
  readonly mostMm: number;
  readonly leastMm: number;
  readonly stroke: Stroke;
}

export interface RingedSet {
  readonly widthMm: number;
  /** False: the text is narrower than it should be read. */
  readonly fits: boolean;
  /** With its middle at (x, y). */
  at(x: number, y: number): Mark[];
}

/** A text that is too wide for a circle stands in a pill. */
export function ringed(metrics: Metrics, text: string, given: Ringed): RingedSet {
  const { widestMm, mostMm, leastMm, stroke } = given;
  const r = Math.min(given.r, widestMm / 2);
  const inner = r - stroke.widthMm / 2 - CLEAR;
  const most = Math.max(leastMm, Math.min(mostMm, r * (text.length > 1 ? SEVERAL : ONE)));
  /** How far to each side a text of a size may reach within the round ends. */
  const within = (sizeMm: number): number => Math.sqrt(Math.max(0, inner ** 2 - (sizeMm * TO_BASELINE) ** 2));
  const room = (sizeMm: number): number => widestMm - 2 * r + 2 * within(sizeMm);
  const { sizeMm } = fitLine(metrics, text, room(most), { most, least: leastMm, weight: 'bold' });
  const em = metrics.width(text, sizeMm, 'bold');
  const wanted = room(sizeMm) / em;
  const squeeze = Math.max(NARROWEST, Math.min(1, wanted));
  const straight = Math.max(0, (em * squeeze) / 2 - within(sizeMm));
  const widthMm = Math.min(widestMm, 2 * (r + straight));
  return {
    widthMm,
    fits: wanted >= NARROWEST,
    at: (x, y) => [ring(x, y, r, widthMm, stroke), textAt(x, y, text, { sizeMm, weight: 'bold', squeeze })],
  };
}
