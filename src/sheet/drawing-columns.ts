/** Draws the key and cel columns: what the key animator decided; and the finished number on each row where it changes. */

import type { SolvedLevel } from '../solve/solved-shot.js';
import { type BlockColumn, besideGutter } from './block-columns.js';
import { type Hold, heldText, type KeySign } from './column-entries.js';
import type { Mark } from './display-list.js';
import { cycleMarks, holdWords } from './key-lanes.js';
import { black, line, textAt } from './mark-builders.js';
import type { SheetGeometry } from './sheet-geometry.js';
import { type BlockFrames, type PageSide, type SheetPlan, topOf } from './sheet-plan.js';
import { type FittedText, fitLine, NARROWEST_SQUEEZE, ringed } from './text-fitting.js';

export function keyMarks(side: PageSide, run: BlockFrames): Mark[] {
  return side.levels.flatMap((level, i) => {
    const column = besideGutter(run.block.columns.keys[i]!, side.geometry.gutters.levels);
    return [...levelMarks(side, run, level, column), ...cycleMarks(side, run, level, column)];
  });
}

function levelMarks(side: PageSide, run: BlockFrames, level: SolvedLevel, column: BlockColumn): Mark[] {
  const marks: Mark[] = [];
  const { signs, keyHolds } = side.plan.entries.get(level)!;
  const holds = holdsOn(run, keyHolds);
  const width = column.width - side.geometry.bracketMm;
  const x = column.x + width / 2;
  for (const { from } of holds) {
    const frame = Math.max(from, run.first);
    const y = topOf(side, run, frame) + side.geometry.rowMm / 2;
    const sign = signs[frame - 1];
    if (sign) marks.push(...signMarks(side, sign, x, y, width));
    else marks.push(inBrackets(side, heldText(signs, frame), x, y, width));
  }
  addHoldLines(marks, side, run, level, x, holds);
  marks.push(...holdWords(side, run, level, { x, width }, holds));
  return marks;
}

/** What a sign needs to know of the page that it stands on. */
export interface SignPaper {
  readonly geometry: Pick<SheetGeometry, 'rowMm' | 'leastTextMm'>;
  readonly plan: Pick<SheetPlan, 'metrics'>;
}

/** A sign with its middle at (x, y), in a column of `width`. */
export function signMarks(side: SignPaper, sign: KeySign, x: number, y: number, width: number): Mark[] {
  const { rowMm } = side.geometry;
  switch (sign.form) {
    case 'key':
      return inRing(side, sign.text, x, y, width);
    case 'dash':
      return [dash(x, y, Math.min(1.5, rowMm * 0.5))];
    case 'breakdown':
    case 'reused breakdown': {
      const half = Math.min(1.5, rowMm * 0.38, width * 0.38);
      const sizeMm = Math.max(side.geometry.leastTextMm, Math.min(rowMm * 0.66, width * 0.62, 2.6));
      const inside = half - 0.17 * sizeMm - 0.18;
      return [
        sign.form === 'breakdown'
          ? dash(x, y, 2 * inside)
          : openRing(x, y, Math.min(0.55, rowMm * 0.2, inside)),
        textAt(x - half, y, '(', { sizeMm }),
        textAt(x + half, y, ')', { sizeMm }),
      ];
    }
    case 'again':
      return [openRing(x, y, Math.min(0.55, rowMm * 0.2))];
    case 'named':
    case 'number':
    case 'underlined':
    case 'empty': {
      const text = sign.form === 'empty' ? '×' : sign.text;
      const { sizeMm, squeeze } = numberSize(side, text, width - BESIDE_NUMBERS);
      const marks = [textAt(x, y, text, { sizeMm, squeeze })];
      if (sign.form === 'underlined') {
        const half = (side.plan.metrics.width(text, sizeMm, 'regular') * squeeze) / 2 + 0.15;
        const under = y + Math.max(sizeMm * 0.37 + 0.22, Math.min(rowMm * 0.42, sizeMm * 0.37 + 0.35));
        marks.push(line(x - half, under, x + half, under, black(0.24)));
      }
      return marks;
    }
  }
}

const dash = (x: number, y: number, length: number): Mark =>
  line(x - length / 2, y, x + length / 2, y, black(0.34));

const openRing = (x: number, y: number, r: number): Mark => ({
  kind: 'circle',
  x,
  y,
  r,
  stroke: black(0.22),
  fill: null,
});

/** A ring stays inside its row and column, so that no two ever touch. */
function inRing(side: SignPaper, text: string, x: number, y: number, width: number): Mark[] {
  const { geometry, plan } = side;
  return ringed(plan.metrics, text, {
    r: Math.min(geometry.rowMm * 0.455, 2.1),
    widestMm: width - 0.3,
    mostMm: geometry.rowMm * 0.74,
    leastMm: geometry.leastTextMm,
    stroke: black(Math.min(0.25, geometry.rowMm * 0.08)),
  }).at(x, y);
}

export function celMarks(side: PageSide, run: BlockFrames): Mark[] {
  return side.levels.flatMap((level, i) => {
    const column = besideGutter(run.block.columns.cels[i]!, side.geometry.gutters.levels);
    const x = column.x + column.width / 2;
    const marks: Mark[] = [];
    const holds = holdsOn(run, side.plan.entries.get(level)!.celHolds);
    for (const { from } of holds) {
      const frame = Math.max(from, run.first);
      const { starts, cel } = level.exposures[frame - 1]!;
      const y = topOf(side, run, frame) + side.geometry.rowMm / 2;
      const text = cel === null ? '×' : String(cel);
      if (starts) {
        const { sizeMm, squeeze } = numberSize(side, text, column.width - BESIDE_NUMBERS);
        marks.push(textAt(x, y, text, { sizeMm, squeeze }));
      } else marks.push(inBrackets(side, text, x, y, column.width));
    }
    addHoldLines(marks, side, run, level, x, holds);
    return marks;
  });
}

export const HOLD = black(0.24);
/** A hold line ends above the bottom edge of its last row by this share of a row. */
export const HOLD_GAP = 0.18;

/** How large a number stands in its row. */
export function numberSize(side: SignPaper, text: string, width: number): FittedText {
  const { rowMm, leastTextMm } = side.geometry;
  const most = Math.max(leastTextMm, Math.min(rowMm * 0.74, 3.2));
  return fitLine(side.plan.metrics, text, width, { most, least: leastTextMm });
}

/**
 * Lines down the rows on which a drawing is held: from the top edge of the row after the one that holds its number (or its
 * brackets, at a break) to just above the bottom edge of its last row. None for an empty level. `holds`: those on the rows.
 */
function addHoldLines(
  marks: Mark[],
  side: PageSide,
  run: BlockFrames,
  level: SolvedLevel,
  x: number,
  holds: readonly Hold[],
): void {
  const gap = side.geometry.rowMm * HOLD_GAP;
  for (const hold of holds) {
    const from = Math.max(hold.from, run.first);
    const to = Math.min(hold.to, run.last);
    if (from === to || level.exposures[to - 1]!.drawing === null) continue;
    marks.push(line(x, topOf(side, run, from + 1), x, topOf(side, run, to + 1) - gap, HOLD));
  }
}

/** Those that have rows on a block. */
const holdsOn = ({ first, last }: BlockFrames, holds: readonly Hold[]): readonly Hold[] =>
  holds.filter(({ from, to }) => from <= last && to >= first);

/** What is still held, on the first row after a break: in square brackets. */
export function inBrackets(side: SignPaper, text: string, x: number, y: number, width: number): Mark {
  const bracketed = `[${text}]`;
  const { sizeMm, squeeze } = numberSize(side, bracketed, width - BESIDE_NUMBERS);
  return textAt(x, y, bracketed, { sizeMm, squeeze });
}

/** From a column's edges to its numbers, mm, both together. */
const BESIDE_NUMBERS = 0.5;
/** A level's name is shortened where its column would have to be wider than this for it, mm; the memo has it whole. */
const WIDEST_NAME = 11;

/** What the levels of a cut need for their numbers and names in the smallest print, mm: no level's columns are narrower. */
export function levelRoom({ levels, entries, metrics }: SheetPlan, leastTextMm: number): number {
  const room = (text: string, weight: 'regular' | 'bold'): number =>
    metrics.width(text, leastTextMm, weight) * NARROWEST_SQUEEZE + BESIDE_NUMBERS;
  return levels.reduce((most, level) => {
    const texts = new Set<string>(level.exposures.map(({ cel }) => (cel === null ? '×' : String(cel))));
    for (const sign of entries.get(level)!.signs) if (sign && 'text' in sign) texts.add(sign.text);
    // What is held stands in brackets, which take more room than a ring does.
    const numbers = [...texts].map((text) => room(`[${text}]`, 'bold'));
    return Math.max(most, ...numbers, Math.min(WIDEST_NAME, room(level.name, 'bold')));
  }, 0);
}
