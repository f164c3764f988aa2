/** Beside a move's line: places by name, and graduations with their steps. */

import { figure } from '../../words/number-format.js';
import type { Mark } from '../display-list.js';
import { black, textAt } from '../mark-builders.js';
import { type BlockFrames, type PageSide, topOf } from '../sheet-plan.js';
import { fitLine, NARROWEST_SQUEEZE, ringed } from '../text-fitting.js';
import type { CameraItem, LaneItem } from './camera-plan.js';
import type { Lane } from './camera-signs.js';

interface Set {
  readonly marks: Mark[];
  readonly end: number;
}

/** A text in a ring that begins at `x`; null where it is too long for `width`. */
function named(side: PageSide, text: string, x: number, y: number, width: number): Set | null {
  const { rowMm, scale, leastTextMm } = side.geometry;
  const set = ringed(side.plan.metrics, text, {
    r: Math.min(rowMm * 0.43, 1.9 * scale),
    widestMm: width,
    mostMm: rowMm * 0.72,
    leastMm: leastTextMm,
    stroke: ringStroke(side),
  });
  return set.fits ? { marks: set.at(x + set.widthMm / 2, y), end: x + set.widthMm } : null;
}

const ringStroke = (side: PageSide) => black(Math.min(0.22, side.geometry.rowMm * 0.08));

/** The first of several texts for which there is room, from `x` on. */
function firstFitting(
  side: PageSide,
  texts: readonly string[],
  x: number,
  y: number,
  width: number,
  weight: 'bold' | 'regular' = 'regular',
): Set | null {
  const { plan, geometry } = side;
  const most = Math.max(geometry.leastTextMm, Math.min(geometry.rowMm * 0.62, 2.2 * geometry.scale));
  for (const text of texts) {
    const fitted = fitLine(plan.metrics, text, width, { most, least: geometry.leastTextMm, weight });
    if (!fitted.fits) continue;
    const { sizeMm, squeeze } = fitted;
    const end = x + plan.metrics.width(text, sizeMm, weight) * squeeze;
    return { marks: [textAt(x, y, text, { sizeMm, squeeze, weight, anchor: 'start' })], end };
  }
  return null;
}

/** How wide the numbers of a move are with their rings. */
function numberWidth(side: PageSide, item: CameraItem): number {
  const { geometry, plan } = side;
  const digits = String(item.solved?.graduations.at(-1)?.number ?? 0).length;
  const printed = plan.metrics.width('8'.repeat(digits), numberSize(side), 'bold');
  const ring = 2 * Math.min(geometry.rowMm * 0.43, 2 * geometry.scale);
  return Math.max(ring, printed * 0.85 + 0.7 * ring + 0.4);
}

const numberSize = ({ geometry: { leastTextMm, rowMm, scale } }: PageSide): number =>
  Math.max(leastTextMm, Math.min(rowMm * 0.66, 2.1 * scale));

/** Names that need the whole width of a lane on their row, with the words' strip. */
export function isWideName(side: PageSide, item: CameraItem, label: string, lane: Lane): boolean {
  return (
    label !== '' && !item.graduated && named(side, label, lane.zoneX, 0, lane.zoneEnd - lane.zoneX) === null
  );
}

/** A ring nearly fills its row: it may move by so much of what a bare name does. */
const RINGED_SHARE = 0.4;

/** How far a bare name keeps off the bar of its move on low rows, mm. */
function offBars({ geometry }: PageSide, item: CameraItem, frame: number): number {
  if (geometry.rowMm > 1.4 * geometry.leastTextMm) return 0;
  return frame === item.first ? 0.2 : frame === item.last ? -0.2 : 0;
}

/** Labels and numbers on the rows of one block. */
export function besideLine(side: PageSide, run: BlockFrames, { item, goesOn }: LaneItem, lane: Lane): Mark[] {
  const marks: Mark[] = [];
  const first = Math.max(item.from, run.first);
  const last = Math.min(item.last, run.last);
  const continues = run.first > item.from;
  const numbersEnd = item.graduated
    ? Math.min(lane.zoneX + numberWidth(side, item), lane.zoneX + (lane.zoneEnd - lane.zoneX) * 0.6)
    : lane.zoneX;
  const nameEnd = (label: string): number =>
    isWideName(side, item, label, lane) ? lane.x + lane.width - 0.2 : lane.zoneEnd;
  let said: string | null = null;
  for (let frame = first; frame <= last; frame++) {
    const y = topOf(side, run, frame) + side.geometry.rowMm / 2;
    const label = goesOn && frame === item.first ? '' : (item.labels.get(frame) ?? '');
    const graduation = item.numbers.get(frame);
    const key = item.keys.get(frame) ?? '';
    let x = item.graduated ? numbersEnd + 0.25 : lane.zoneX;
    const step =
      graduation && (graduation.beside !== said || frame === run.first) ? besideTexts(graduation.beside) : [];
    // A row without a step is read as the step before it: names and keys leave room for one that is new.
    const changed =
      step.some((text) => text !== '') && graduation?.beside !== item.numbers.get(frame - 1)?.beside;
    const stepMm = changed ? leastWidth(side, step) + 0.3 : 0;
    if (graduation) {
      const circled = label !== '' || key !== '' || frame === item.from || frame === item.last;
      marks.push(...numberMarks(side, String(graduation.number), lane.zoneX, numbersEnd, y, circled));
    }
    const name =
      label !== ''
        ? (nameMarks(side, label, x, y, nameEnd(label) - x - stepMm, item, frame) ??
          nameMarks(side, label, x, y, nameEnd(label) - x, item, frame))
        : continues && frame === run.first
          ? firstFitting(side, heldNames(item, frame), x, y, lane.zoneEnd - x - stepMm, 'bold')
          : null;
    if (name) {
      marks.push(...name.marks);
      x = name.end + 0.3;
    }
    const keyed =
      key === '' ? null : firstFitting(side, keyTexts(key), x, y, lane.zoneEnd - x - stepMm, 'bold');
    if (keyed) {
      marks.push(...keyed.marks);
      x = keyed.end + 0.3;
    }
    if (!graduation || graduation.beside === '' || step.length === 0) continue;
    const room = side.geometry.scale * 3;
    const at = Math.max(x, Math.min(numbersEnd + room, lane.zoneEnd - room));
    const set =
      firstFitting(side, step, at, y, lane.zoneEnd - at) ?? firstFitting(side, step, x, y, lane.zoneEnd - x);
    if (set) {
      marks.push(...set.marks);
      said = graduation.beside;
    }
  }
  return marks;
}

/** A name in a ring, or bare where only that fits, or its beginning. */
function nameMarks(
  side: PageSide,
  label: string,
  x: number,
  y: number,
  width: number,
  item: CameraItem,
  frame: number,
): Set | null {
  if (!item.graduated) {
    const set = named(side, label, x, y + offBars(side, item, frame) * RINGED_SHARE, width);
    if (set) return set;
  }
  const letters = [...label];
  const shorter = letters.map((_, i) => `${letters.slice(0, letters.length - 1 - i).join('')}…`).slice(0, -1);
  return firstFitting(side, [label, ...shorter], x, y + offBars(side, item, frame), width, 'bold');
}

/** What the move is on its way from and to, after a break. */
function heldNames(item: CameraItem, frame: number): string[] {
  const before = [...item.labels].filter(([at]) => at < frame).at(-1)?.[1];
  const after = [...item.labels].find(([at]) => at > frame)?.[1];
  if (before === undefined) return [];
  return after === undefined ? [`[${before}]`] : [`[${before}→${after}]`, `[${before}]`];
}

/** New keys of several levels, as many as there is room for; the key columns have all of them on the row. */
function keyTexts(keys: string): string[] {
  const all = keys.split(' ');
  return all.map((_, i) => (i === 0 ? keys : `${all.slice(0, all.length - i).join(' ')}…`));
}

/** The least that one of the texts takes. */
const leastWidth = ({ plan, geometry }: PageSide, texts: readonly string[]): number =>
  Math.min(...texts.map((text) => plan.metrics.width(text, geometry.leastTextMm, 'regular'))) *
  NARROWEST_SQUEEZE;

/** As exact as there is room for. */
function besideTexts(text: string): string[] {
  const value = /^-?\d+\.\d\d$/.test(text) ? Number(text) : null;
  return value === null ? [text] : [text, figure(value, { decimals: 1, zeros: 'always' })];
}

function numberMarks(
  side: PageSide,
  text: string,
  from: number,
  to: number,
  y: number,
  circled: boolean,
): Mark[] {
  const { geometry, plan } = side;
  const width = to - from;
  const x = (from + to) / 2;
  const { rowMm, leastTextMm } = geometry;
  // Where there is no room for a ring a bold number must do: a ring through its figures would be worse.
  const set = ringed(plan.metrics, text, {
    r: rowMm * 0.43,
    widestMm: width,
    mostMm: numberSize(side),
    leastMm: leastTextMm,
    stroke: ringStroke(side),
  });
  if (circled && set.fits) return set.at(x, y);
  const weight = circled ? 'bold' : 'regular';
  const sizeMm = Math.max(
    leastTextMm,
    Math.min(numberSize(side), (width - 0.7) / plan.metrics.width(text, 1, weight)),
  );
  const printed = plan.metrics.width(text, sizeMm, weight);
  const squeeze = Math.max(NARROWEST_SQUEEZE, Math.min(1, (width - 0.6) / printed));
  return [textAt(x, y, text, { sizeMm, weight, squeeze })];
}
