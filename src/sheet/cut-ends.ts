/** Where a cut begins and ends on its rows: running numbers, handles, the double line and what is hatched out after it. */

import type { Settings } from '../shot/settings.js';
import type { Mark, Metrics } from './display-list.js';
import { black, line, textAt } from './mark-builders.js';
import { rowsOfBlocks, unitOf } from './sheet-geometry.js';
import { type BlockFrames, type PageSide, topOf } from './sheet-plan.js';
import { fitLine, NARROWEST_SQUEEZE } from './text-fitting.js';

/** Between the two lines under the last row, mm. */
export const DOUBLE_LINE = 0.7;

/** Second (foot) and running frame number, at the heavy lines and at the top of each block. */
export function runningMarks(side: PageSide, run: BlockFrames): Mark[] {
  const { unit, rowMm, scale, leastTextMm } = side.geometry;
  const column = run.block.columns.labels;
  const x = column.x + column.width / 2;
  const marks: Mark[] = [];
  const feet = side.plan.convention === 'west';
  const width = column.width - 0.4;
  const put = (text: string, frame: number, most: number, weight: 'bold' | 'regular', share = 1): void => {
    const size = { most: Math.min(most, rowMm * 0.82), least: leastTextMm, weight };
    const { sizeMm, squeeze } = fitLine(side.plan.metrics, text, width * share, size);
    const y = topOf(side, run, frame) + rowMm / 2;
    const set = { sizeMm, weight, squeeze } as const;
    if (share === 1) marks.push(textAt(x, y, text, set));
    else if (weight === 'bold') marks.push(textAt(column.x + 0.2, y, text, { ...set, anchor: 'start' }));
    else marks.push(textAt(column.x + column.width - 0.2, y, text, { ...set, anchor: 'end' }));
  };
  for (let frame = run.first; frame <= run.last; frame++) {
    if ((frame - 1) % unit !== 0 && frame !== run.first) continue;
    const second = wholeText(frame, unit, feet);
    // The frame number names its own row; the second goes for all its rows and can stand one lower.
    if (frame < run.last) {
      put(String(frame), frame, 1.8 * scale, 'regular');
      put(second, frame + 1, 2.7 * scale, 'bold');
      continue;
    }
    const widths = [
      side.plan.metrics.width(second, 1, 'bold'),
      side.plan.metrics.width(String(frame), 1, 'regular'),
    ];
    const [left, right] = widths as [number, number];
    const share = (part: number): number => (part / (left + right)) * (1 - BETWEEN_LABELS / width);
    put(second, frame, 2.7 * scale, 'bold', share(left));
    put(String(frame), frame, 1.8 * scale, 'regular', share(right));
  }
  return marks;
}

/** Between second and frame number where both stand on one row, mm. */
const BETWEEN_LABELS = 0.35;

/** The second (foot) of a frame as it stands at its rows. */
const wholeText = (frame: number, unit: number, feet: boolean): string =>
  `${Math.floor((frame - 1) / unit)}${feet ? "'" : '+'}`;

/** What the column of running numbers needs for those of a cut in the smallest print, mm. */
export function labelsRoom(
  length: number,
  settings: Settings,
  fps: number,
  metrics: Metrics,
  leastTextMm: number,
): number {
  const unit = unitOf(settings, fps);
  const blocks = rowsOfBlocks(settings, fps);
  const onPage = (length - 1) % blocks.reduce((so, rows) => so + rows, 0);
  const alone = (length - 1) % unit === 0 || onPage === 0 || onPage === blocks[0];
  const second = metrics.width(wholeText(length, unit, settings.convention === 'west'), leastTextMm, 'bold');
  const number = metrics.width(String(length), leastTextMm, 'regular');
  const widest = alone ? second + number : Math.max(second, number);
  return widest * NARROWEST_SQUEEZE + 0.45 + (alone ? BETWEEN_LABELS : 0);
}

/** The double line under the last row and the hatching after it. */
export function endMarks(side: PageSide, run: BlockFrames): Mark[] {
  const { block } = run;
  const right = block.x + block.width;
  const { length } = side.plan.solved.shot;
  const marks: Mark[] = [];
  if (run.last === length && run.first <= length)
    for (const down of [0, DOUBLE_LINE]) {
      const y = topOf(side, run, length + 1) + down;
      marks.push(line(block.x, y, right, y, black(0.35)));
    }
  const after = topOf(side, run, Math.max(run.first, run.last + 1));
  const bottom = topOf(side, run, run.first + block.rows);
  if (bottom - after > 1e-6)
    marks.push({
      kind: 'hatch',
      x: block.x,
      y: after,
      width: block.width,
      height: bottom - after,
      gapMm: 3,
      stroke: black(0.14),
    });
  return marks;
}

/** Rows of the handles in a tone, and the cut points ruled. A column with a waveform, which is of the same tone, stays white. */
export function handleMarks(side: PageSide, run: BlockFrames): Mark[] {
  const { length, handles } = side.plan.solved.shot;
  const { block } = run;
  const marks: Mark[] = [];
  const tone = (from: number, to: number): void => {
    const first = Math.max(from, run.first);
    const last = Math.min(to, run.last);
    if (first > last) return;
    const y = topOf(side, run, first);
    const height = topOf(side, run, last + 1) - y;
    const wave = side.plan.solved.track?.sound ? block.columns.dialogue : undefined;
    const right = block.x + block.width;
    const parts = wave
      ? [
          [block.x, wave.x],
          [wave.x + wave.width, right],
        ]
      : [[block.x, right]];
    for (const [x, end] of parts as [number, number][])
      marks.push({ kind: 'tint', x, y, width: end - x, height });
  };
  const rule = (frame: number, edge: number): void => {
    if (frame < run.first || frame > run.last) return;
    const y = topOf(side, run, edge);
    const stroke = { ...black(0.5), dash: [2.4, 0.8] as const };
    marks.push(line(block.x, y, block.x + block.width, y, stroke));
  };
  if (handles.head > 0) {
    tone(1, handles.head);
    rule(handles.head + 1, handles.head + 1);
  }
  if (handles.tail > 0) {
    tone(length - handles.tail + 1, length);
    rule(length - handles.tail, length - handles.tail + 1);
  }
  return marks;
}
