/** Setting Japanese from top to bottom. */

import { textAt } from '../draw.js';
import { isWide } from '../fit.js';
import type { Ink, Mark, Metrics, Weight } from '../marks.js';

/** One place in a column of characters. */
export interface VerticalCell {
  readonly text: string;
  /** Height, ems. */
  readonly ems: number;
  readonly form: 'upright' | 'turned' | 'raised' | 'small';
}

/** Signs that lie down when the line stands: long vowels, dashes, brackets, arrows. */
const TURNED = new Set([...'ー－―—–-〜～~…‥＝=：:；;（）()「」『』【】〔〕［］[]｛｝{}〈〉《》→←＜＞<>“”"']);
/** Signs that move to the upper right of their place. */
const RAISED = new Set([...'、。，．,.']);
/** Small kana move a little that way. */
const SMALL = new Set([...'ぁぃぅぇぉっゃゅょゎゕゖァィゥェォッャュョヮヵヶ']);

/** Up to this many figures or letters in a row stand side by side in one place. */
const SIDE_BY_SIDE = 2;

/** The places of a text; `width` measures at an em of 1. */
export function verticalCells(text: string, width: (text: string) => number): VerticalCell[] {
  const cells: VerticalCell[] = [];
  for (const [run] of text.matchAll(/[\p{Script=Latin}\p{N}'’]+|[!?！？]{2}|\s+|./gsu)) {
    const characters = [...run];
    if (/^\s/u.test(run)) cells.push({ text: '', ems: 0.5, form: 'upright' });
    else if (characters.length === 1) {
      const form = TURNED.has(run)
        ? 'turned'
        : RAISED.has(run)
          ? 'raised'
          : SMALL.has(run)
            ? 'small'
            : 'upright';
      cells.push({ text: run, ems: 1, form });
    } else if (characters.length <= SIDE_BY_SIDE) cells.push({ text: run, ems: 1, form: 'upright' });
    else if (characters.every(isWide))
      for (const one of characters) cells.push({ text: one, ems: 1, form: 'upright' });
    else cells.push({ text: run, ems: width(run) + 0.2, form: 'turned' });
  }
  return cells;
}

export interface CellSetting {
  readonly sizeMm: number;
  readonly weight: Weight;
  readonly ink: Ink;
}

/** A cell with its middle at (x, y). */
export function cellMark(
  cell: VerticalCell,
  x: number,
  y: number,
  setting: CellSetting,
  metrics: Metrics,
): Mark | null {
  if (cell.text === '') return null;
  const { sizeMm } = setting;
  switch (cell.form) {
    case 'turned':
      return textAt(x, y, cell.text, { ...setting, turn: 90 });
    case 'raised':
      return textAt(x + 0.6 * sizeMm, y - 0.55 * sizeMm, cell.text, setting);
    case 'small':
      return textAt(x + 0.1 * sizeMm, y - 0.1 * sizeMm, cell.text, setting);
    case 'upright': {
      const squeeze = Math.min(1, sizeMm / metrics.width(cell.text, sizeMm, setting.weight));
      return textAt(x, y, cell.text, { ...setting, squeeze });
    }
  }
}

/** Cells one under the other from `y` down, as high as `pitch` ems of `sizeMm` say. */
export function columnMarks(
  cells: readonly VerticalCell[],
  x: number,
  y: number,
  pitchMm: number,
  setting: CellSetting,
  metrics: Metrics,
): Mark[] {
  let at = y;
  return cells.flatMap((cell) => {
    const height = cell.ems * pitchMm;
    const mark = cellMark(cell, x, at + height / 2, setting, metrics);
    at += height;
    return mark ? [mark] : [];
  });
}

export const emsOf = (cells: readonly VerticalCell[]): number => cells.reduce((so, cell) => so + cell.ems, 0);
