/** The recording's waveform behind the dialogue column: pale, so that words and pencil stay readable over it. */

import { POINTS_A_ROW } from '../../sound/track-sound.js';
import { besideGutter } from '../block-columns.js';
import type { Mark } from '../display-list.js';
import { type BlockFrames, type PageSide, topOf } from '../sheet-plan.js';

/** Share of the column that the loudest place takes. */
const WIDEST = 0.92;
/** Quiet places are drawn wider than they are against the loudest one: what is a tenth of it can still be seen. */
const POWER = 0.6;
/** Widths nearer than this are drawn as one, mm. */
const SAME_MM = 0.12;
/** What is narrower is not drawn: silence leaves the paper white. */
const LEAST_MM = 0.25;

/** A bar about the column's middle for each quarter of a row, equal neighbours joined. */
export function waveformMarks(side: PageSide, run: BlockFrames): Mark[] {
  const { track } = side.plan.solved;
  const peaks = track?.sound?.peaks;
  if (!peaks || run.last < run.first) return [];
  const loudest = loudestOf(peaks);
  if (loudest === 0) return [];
  const column = besideGutter(run.block.columns.dialogue!, side.geometry.gutters.speech);
  const middle = column.x + column.width / 2;
  const stepMm = side.geometry.rowMm / POINTS_A_ROW;
  const top = topOf(side, run, run.first);
  const first = (run.first - 1) * POINTS_A_ROW;
  const count = (run.last - run.first + 1) * POINTS_A_ROW;
  const marks: Mark[] = [];
  let from = 0;
  let width = 0;
  const close = (to: number): void => {
    if (width >= LEAST_MM)
      marks.push({
        kind: 'tint',
        x: middle - width / 2,
        y: top + from * stepMm,
        width,
        height: (to - from) * stepMm,
      });
  };
  for (let i = 0; i <= count; i++) {
    const next = i < count ? WIDEST * column.width * (peaks[first + i]! / loudest) ** POWER : -1;
    if (Math.abs(next - width) <= SAME_MM) continue;
    close(i);
    from = i;
    width = next;
  }
  return marks;
}

const loudestOf = (peaks: Float32Array): number => {
  let most = 0;
  for (const peak of peaks) if (peak > most) most = peak;
  return most;
};
