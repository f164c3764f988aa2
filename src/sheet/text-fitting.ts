/** Text on paper: measured once, then made to fit, smaller first, down to the paper's smallest print, then narrower; what does not fit comes back. */

import { brokenLines } from '../layout/line-breaking.js';
import type { Ink, Mark, Metrics, Stroke, Weight } from './display-list.js';
import { type Box, ring, TO_BASELINE, textAt } from './mark-builders.js';

/** How many widths are kept before starting again; a cut has some hundred different texts. */
const MOST = 50_000;

const known = new WeakMap<Metrics, Metrics>();

/** The same metrics with each text measured once. Widths grow in step with the em, so one measure serves all sizes. */
export function cachedMetrics(metrics: Metrics): Metrics {
  let found = known.get(metrics);
  if (!found) {
    const ems: Record<Weight, Map<string, number>> = { regular: new Map(), bold: new Map() };
    found = {
      width(text, sizeMm, weight) {
        const widths = ems[weight];
        let em = widths.get(text);
        if (em === undefined) {
          if (widths.size > MOST) widths.clear();
          em = metrics.width(text, 1, weight);
          widths.set(text, em);
        }
        return em * sizeMm;
      },
    };
    known.set(metrics, found);
    known.set(found, found);
  }
  return found;
}

/** The narrowest that text is set, as a share of its own width. */
export const NARROWEST_SQUEEZE = 0.8;
/** From line to line, ems. */
const LEADING = 1.18;

export interface FittedText {
  readonly sizeMm: number;
  readonly squeeze: number;
  readonly fits: boolean;
}

/** One line in `width`: at most `most`, at least `least` high. */
export function fitLine(
  metrics: Metrics,
  text: string,
  width: number,
  { most, least, weight = 'regular' }: { most: number; least: number; weight?: Weight },
): FittedText {
  const em = metrics.width(text, 1, weight);
  const largest = Math.max(most, least);
  if (em * largest <= width) return { sizeMm: largest, squeeze: 1, fits: true };
  // A slight squeeze reads better than a much smaller size.
  const sizeMm = Math.max(least, Math.min(largest, width / em / 0.85));
  const squeeze = Math.min(1, width / (em * sizeMm));
  return { sizeMm, squeeze, fits: squeeze >= NARROWEST_SQUEEZE };
}

/** A text in one line of `width`, at its smallest with its end cut off where it is too long: `…` says so. */
export function cutToFit(
  metrics: Metrics,
  text: string,
  width: number,
  size: { most: number; least: number; weight?: Weight },
): FittedText & { readonly text: string } {
  const whole = fitLine(metrics, text, width, size);
  if (whole.fits) return { ...whole, text };
  const letters = [...text];
  let [low, high] = [0, letters.length - 1];
  const cut = (count: number): string => `${letters.slice(0, count).join('').trimEnd()}…`;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fitLine(metrics, cut(middle), width, size).fits) low = middle;
    else high = middle - 1;
  }
  const { sizeMm, squeeze } = fitLine(metrics, cut(low), width, size);
  return { text: cut(low), sizeMm, squeeze: Math.max(NARROWEST_SQUEEZE, squeeze), fits: false };
}

/** Breaks a text into lines no wider than `width`; words that are wider than a line are cut. Line breaks of the text are kept. */
export function wrap(
  metrics: Metrics,
  text: string,
  width: number,
  sizeMm: number,
  weight: Weight = 'regular',
): string[] {
  return brokenLines(text, width, (part) => metrics.width(part, sizeMm, weight));
}

export interface BoxSetting {
  readonly most: number;
  readonly least: number;
  readonly weight?: Weight;
  readonly ink?: Ink;
  /** Where in the box the lines stand. */
  readonly across?: 'start' | 'middle' | 'end';
  readonly down?: 'top' | 'middle';
  /** Set reading upwards, lines from left to right. */
  readonly upwards?: boolean;
}

export interface BoxSet {
  readonly marks: Mark[];
  /** False: some of the text is not in `marks`. */
  readonly fits: boolean;
}

/** Sets a text in a box: in one line if it can be, in several, smaller. Where even the smallest does not fit, as much as fits. */
export function setInBox(metrics: Metrics, text: string, box: Box, setting: BoxSetting): BoxSet {
  const { least, weight = 'regular', ink = 'black', across = 'middle', down = 'middle' } = setting;
  const most = Math.max(setting.most, least);
  if (text === '') return { marks: [], fits: true };
  const along = setting.upwards ? box.height : box.width;
  const against = setting.upwards ? box.width : box.height;
  let sizeMm = Math.min(most, Math.max(least, against / 0.95));
  let lines = [text];
  let squeeze = 1;
  let fits = false;
  for (; ; sizeMm = Math.max(least, sizeMm * 0.93)) {
    squeeze = sizeMm === least ? NARROWEST_SQUEEZE : 0.88;
    lines = wrap(metrics, text, along / squeeze, sizeMm, weight);
    const room = Math.max(1, Math.floor((against - sizeMm * 0.9) / (sizeMm * LEADING) + 1 + 1e-6));
    fits = lines.length <= room;
    if (fits || sizeMm === least) {
      if (!fits) lines = lines.slice(0, room);
      break;
    }
  }
  const pitch = sizeMm * LEADING;
  const block = (lines.length - 1) * pitch;
  const first = down === 'top' ? sizeMm * 0.5 : (against - block) / 2;
  const from = across === 'start' ? 0 : across === 'middle' ? along / 2 : along;
  const marks = lines.map((one, i): Mark => {
    const narrow = Math.min(1, along / metrics.width(one, sizeMm, weight));
    const at = first + i * pitch;
    return setting.upwards
      ? textAt(box.x + at, box.y + box.height - from, one, {
          ...{ sizeMm, weight, ink, anchor: across, squeeze: narrow },
          turn: -90,
        })
      : textAt(box.x + from, box.y + at, one, { sizeMm, weight, ink, anchor: across, squeeze: narrow });
  });
  return { marks, fits };
}

/** Between the corners of the text and the inside of the ring, mm. */
const CLEAR = 0.16;
/** How high one character, and several, may be in a ring, radii. */
const ONE = 1.45;
const SEVERAL = 1.18;

export interface RingedText {
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
export function ringed(metrics: Metrics, text: string, given: RingedText): RingedSet {
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
  const squeeze = Math.max(NARROWEST_SQUEEZE, Math.min(1, wanted));
  const straight = Math.max(0, (em * squeeze) / 2 - within(sizeMm));
  const widthMm = Math.min(widestMm, 2 * (r + straight));
  return {
    widthMm,
    fits: wanted >= NARROWEST_SQUEEZE,
    at: (x, y) => [ring(x, y, r, widthMm, stroke), textAt(x, y, text, { sizeMm, weight: 'bold', squeeze })],
  };
}
