/** Where a cut begins and ends on its rows: running numbers, handles, the double line and what is hatched out after it. */

import { black, line, textAt } from './draw.js';
import type { Mark } from './marks.js';
import { type Run, type Side, topOf } from './plan.js';

/** Between the two lines under the last row, mm. */
export const DOUBLE_LINE = 0.7;

/** Second (foot) and running frame number, at the heavy lines and at the top of each block. */
export function runningMarks(side: Side, run: Run): Mark[] {
  const { unit, rowMm, scale, leastTextMm } = side.geometry;
  const column = run.block.columns.labels;
  const x = column.x + column.width / 2;
  const marks: Mark[] = [];
  const feet = side.plan.convention === 'west';
  const width = column.width - 0.4;
  const put = (text: string, frame: number, most: number, weight: 'bold' | 'regular', half = 0): void => {
    const sizeMm = Math.max(leastTextMm, Math.min(most, rowMm * 0.82));
    const room = half === 0 ? width : width / 2 - 0.2;
    const squeeze = Math.min(1, room / side.plan.metrics.width(text, sizeMm, weight));
    const y = topOf(side, run, frame) + rowMm / 2;
    marks.push(textAt(x + (half * column.width) / 4, y, text, { sizeMm, weight, squeeze }));
  };
  for (let frame = run.first; frame <= run.last; frame++) {
    if ((frame - 1) % unit !== 0 && frame !== run.first) continue;
    const whole = Math.floor((frame - 1) / unit);
    const second = feet ? `${whole}'` : `${whole}+`;
    // The frame number names its own row; the second goes for all its rows and can stand one lower.
    const alone = frame === run.last;
    put(String(frame), frame, 1.8 * scale, 'regular', alone ? 1 : 0);
    put(second, alone ? frame : frame + 1, 2.7 * scale, 'bold', alone ? -1 : 0);
  }
  return marks;
}

/** The double line under the last row and the hatching after it. */
export function endMarks(side: Side, run: Run): Mark[] {
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

/** Rows of the handles in a tone, and the cut points ruled. */
export function handleMarks(side: Side, run: Run): Mark[] {
  const { length, handles } = side.plan.solved.shot;
  const { block } = run;
  const marks: Mark[] = [];
  const tone = (from: number, to: number): void => {
    const first = Math.max(from, run.first);
    const last = Math.min(to, run.last);
    if (first > last) return;
    const y = topOf(side, run, first);
    const height = topOf(side, run, last + 1) - y;
    marks.push({ kind: 'tint', x: block.x, y, width: block.width, height });
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
