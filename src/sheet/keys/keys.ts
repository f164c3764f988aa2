/** The key columns: what the key animator decided, in the marks of the trade. */

import type { SolvedLevel } from '../../solve/solved.js';
import type { Column } from '../columns.js';
import { besideGutter } from '../columns.js';
import { black, line, textAt } from '../draw.js';
import type { Mark } from '../marks.js';
import type { Run, Side } from '../plan.js';
import { topOf } from '../plan.js';
import { ringed } from '../ringed.js';
import { cycleMarks } from './cycles.js';
import { holdMarks, inBrackets, numberSize } from './exposures.js';
import type { Sign } from './signs.js';
import { heldText, keyBegins } from './signs.js';

export function keyMarks(side: Side, run: Run): Mark[] {
  return side.levels.flatMap((level, i) => {
    const column = besideGutter(run.block.columns.keys[i]!, side.geometry.gutters.levels);
    return [...levelMarks(side, run, level, column), ...cycleMarks(side, run, level, column)];
  });
}

function levelMarks(side: Side, run: Run, level: SolvedLevel, column: Column): Mark[] {
  const marks: Mark[] = [];
  const signs = side.plan.signs.get(level)!;
  const width = column.width - side.geometry.bracketMm;
  const x = column.x + width / 2;
  for (let frame = run.first; frame <= run.last; frame++) {
    const y = topOf(side, run, frame) + side.geometry.rowMm / 2;
    const sign = signs[frame - 1];
    if (sign) marks.push(...signMarks(side, sign, x, y, width));
    else if (frame === run.first) marks.push(inBrackets(side, heldText(signs, frame), x, y, width));
  }
  marks.push(...holdMarks(side, run, level, x, keyBegins(level)));
  return marks;
}

function signMarks(side: Side, sign: Sign, x: number, y: number, width: number): Mark[] {
  const { rowMm } = side.geometry;
  switch (sign.form) {
    case 'key':
      return inRing(side, sign.text, x, y, width);
    case 'dash':
      return [dash(x, y, Math.min(1.5, rowMm * 0.5))];
    case 'breakdown': {
      const half = Math.min(1.5, rowMm * 0.38, width * 0.38);
      const sizeMm = Math.max(side.geometry.leastTextMm, Math.min(rowMm * 0.66, width * 0.62, 2.6));
      return [
        dash(x, y, 2 * (half - 0.17 * sizeMm - 0.18)),
        textAt(x - half, y, '(', { sizeMm }),
        textAt(x + half, y, ')', { sizeMm }),
      ];
    }
    case 'again':
      return [{ kind: 'circle', x, y, r: Math.min(0.55, rowMm * 0.2), stroke: black(0.22), fill: null }];
    case 'named':
    case 'number':
    case 'underlined':
    case 'empty': {
      const text = sign.form === 'empty' ? '×' : sign.text;
      const { sizeMm, squeeze } = numberSize(side, text, width - 0.5);
      const marks = [textAt(x, y, text, { sizeMm, squeeze })];
      if (sign.form === 'underlined') {
        const half = (side.plan.metrics.width(text, sizeMm, 'regular') * squeeze) / 2 + 0.15;
        const under = y + Math.min(rowMm * 0.42, sizeMm * 0.37 + 0.35);
        marks.push(line(x - half, under, x + half, under, black(0.24)));
      }
      return marks;
    }
  }
}

const dash = (x: number, y: number, length: number): Mark =>
  line(x - length / 2, y, x + length / 2, y, black(0.34));

/** A ring stays inside its row and column, so that no two ever touch. */
function inRing(side: Side, text: string, x: number, y: number, width: number): Mark[] {
  const { geometry, plan } = side;
  return ringed(plan.metrics, text, {
    r: Math.min(geometry.rowMm * 0.455, 2.1),
    widestMm: width - 0.3,
    mostMm: geometry.rowMm * 0.74,
    leastMm: geometry.leastTextMm,
    stroke: black(Math.min(0.25, geometry.rowMm * 0.08)),
  }).at(x, y);
}
