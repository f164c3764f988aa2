/** The cel columns: the finished number on each row where it changes. */

import { besideGutter } from '../columns.js';
import { textAt } from '../draw.js';
import type { Mark } from '../marks.js';
import type { Run, Side } from '../plan.js';
import { topOf } from '../plan.js';
import { holdMarks, inBrackets, numberSize } from './exposures.js';

export function celMarks(side: Side, run: Run): Mark[] {
  return side.levels.flatMap((level, i) => {
    const column = besideGutter(run.block.columns.cels[i]!, side.geometry.gutters.levels);
    const x = column.x + column.width / 2;
    const marks: Mark[] = [];
    for (let frame = run.first; frame <= run.last; frame++) {
      const { starts, cel } = level.exposures[frame - 1]!;
      if (!starts && frame !== run.first) continue;
      const y = topOf(side, run, frame) + side.geometry.rowMm / 2;
      const text = cel === null ? '×' : String(cel);
      if (starts) {
        const { sizeMm, squeeze } = numberSize(side, text, column.width - 0.5);
        marks.push(textAt(x, y, text, { sizeMm, squeeze }));
      } else marks.push(inBrackets(side, text, x, y, column.width));
    }
    return [...marks, ...holdMarks(side, run, level, x, (frame) => level.exposures[frame - 1]!.starts)];
  });
}
