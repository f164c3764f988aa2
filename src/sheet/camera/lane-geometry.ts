/** Where a move stands in the camera column. */

import { besideGutter } from '../block-columns.js';
import type { BlockFrames, PageSide } from '../sheet-plan.js';

export interface Lane {
  readonly x: number;
  readonly width: number;
  /** The line of the move. */
  readonly lineX: number;
  /** Labels and numbers stand from here to `zoneEnd`. */
  readonly zoneX: number;
  readonly zoneEnd: number;
  /** Left and right ends of bars and signs. */
  readonly barX: number;
  readonly barEnd: number;
  /** At the right, for words that run down. */
  readonly strip: { readonly x: number; readonly width: number };
}

/** A lane is never narrower, ems of the smallest print; a move for which there is no such lane is told in the memo. */
const NARROWEST_LANE = 2.5;

/** How many lanes of the cut stand on a side, from the left. */
export function lanesShown(widths: readonly number[], columnMm: number, leastTextMm: number): number {
  let units = 0;
  let shown = 0;
  for (const width of widths) {
    units += width;
    if (units * NARROWEST_LANE * leastTextMm > columnMm + 1e-9 && shown > 0) break;
    shown++;
  }
  return shown;
}

/** The lane of a run, or null where there is no room for it. */
export function laneOf(side: PageSide, run: BlockFrames, index: number): Lane | null {
  const column = besideGutter(run.block.columns.camera!, side.geometry.gutters.camera);
  const { lanes } = side.plan.camera;
  const shown = lanesShown(lanes, column.width, side.geometry.leastTextMm);
  if (index >= shown) return null;
  const sum = (several: readonly number[]): number => several.reduce((so, one) => so + one, 0);
  const { scale, leastTextMm } = side.geometry;
  // What is left at the right is the pencil's.
  const unit = Math.min(column.width / sum(lanes.slice(0, shown)), 9 * scale);
  const x = column.x + unit * sum(lanes.slice(0, index));
  const width = unit * lanes[index]!;
  const stripWidth = Math.max(leastTextMm * 1.1, Math.min(width * 0.3, 2.5 * scale));
  const strip = { x: x + width - stripWidth - 0.15, width: stripWidth };
  const lineX = x + Math.min(0.95, width * 0.18);
  const zoneEnd = strip.x - 0.15;
  return {
    x,
    width,
    lineX,
    zoneX: lineX + 0.25,
    zoneEnd,
    barX: x + Math.min(0.4, width * 0.08),
    barEnd: Math.min(zoneEnd, x + 6 * scale),
    strip,
  };
}
