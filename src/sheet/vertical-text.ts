/** Setting Japanese from top to bottom. */

import { isWide } from '../layout/line-breaking.js';
import type { Ink, Mark, Metrics, Weight } from './display-list.js';
import { textAt } from './mark-builders.js';
import { fitLine, NARROWEST_SQUEEZE, wrap } from './text-fitting.js';

/** One place in a column of characters. */
export interface VerticalCell {
  readonly text: string;
  /** Height, ems. */
  readonly ems: number;
  readonly form: 'upright' | 'turned' | 'raised' | 'small';
  /** Whether it is spoken for a beat of its own, or goes with what stands before or after it. */
  readonly beat: 'own' | 'before' | 'after';
}

/** Signs that lie down when the line stands: long vowels, dashes, brackets, arrows. */
const TURNED = new Set([...'ー－―—–-〜～~…‥＝=：:；;（）()「」『』【】〔〕［］[]｛｝{}〈〉《》→←＜＞<>“”"']);
/** Signs that move to the upper right of their place. */
const RAISED = new Set([...'、。，．,.']);
/** Small kana move a little that way. */
const SMALL = new Set([...'ぁぃぅぇぉっゃゅょゎゕゖァィゥェォッャュョヮヵヶ']);

/** Signs that are not heard: they stay with the character before or after them. */
const AFTER = new Set([...'（(「『【〔［[｛{〈《“']);
const BEFORE = new Set([...'、。，．,.!?！？）)」』】〕］]｝}〉》”']);

/** Up to this many figures or letters in a row stand side by side in one place. */
const SIDE_BY_SIDE = 2;

/** Figures and letters with what joins them: `T.U`, `1+12`, `A,B`, `85%`; pairs of marks; blanks; else one character. */
const RUNS = /[\p{Script=Latin}\p{N}'’%°]+(?:[.,+/:-][\p{Script=Latin}\p{N}'’%°]+)*|[!?！？]{2}|\s+|./gsu;

/** The places of a text; `width` measures at an em of 1. */
export function verticalCells(text: string, width: (text: string) => number): VerticalCell[] {
  const cells: VerticalCell[] = [];
  for (const [run] of text.matchAll(RUNS)) {
    const characters = [...run];
    if (/^\s/u.test(run)) cells.push({ text: '', ems: 0.5, form: 'upright', beat: 'own' });
    else if (characters.length === 1 || characters.every(isWide)) cells.push(...characters.map(oneCell));
    else if (characters.length <= SIDE_BY_SIDE && width(run) * NARROWEST_SQUEEZE <= 1)
      cells.push({ text: run, ems: 1, form: 'upright', beat: /[!?]/u.test(run) ? 'before' : 'own' });
    else cells.push({ text: run, ems: width(run) + 0.2, form: 'turned', beat: 'own' });
  }
  return cells;
}

/** Small kana are heard with the one before, but for the small tsu. */
function oneCell(text: string): VerticalCell {
  const small = SMALL.has(text);
  const beat =
    BEFORE.has(text) || (small && !'っッ'.includes(text)) ? 'before' : AFTER.has(text) ? 'after' : 'own';
  const form = TURNED.has(text) ? 'turned' : RAISED.has(text) ? 'raised' : small ? 'small' : 'upright';
  return { text, ems: 1, form, beat };
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
      return textAt(x + 0.1 * sizeMm, y - 0.06 * sizeMm, cell.text, setting);
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

/** A place to set text downwards in. */
export interface Strip {
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly room: number;
}

export interface Downwards {
  readonly most: number;
  readonly least: number;
  readonly weight: Weight;
}

export interface SetDownwards {
  readonly marks: Mark[];
  readonly fits: boolean;
  /** How far down the text goes. */
  readonly end: number;
}

/** A text down a strip: Japanese upright, other scripts on their side. As much of it as there is room for. */
export function setDownwards(
  text: string,
  strip: Strip,
  { most, least, weight }: Downwards,
  metrics: Metrics,
): SetDownwards {
  const x = strip.x + strip.width / 2;
  if ([...text].some(isWide)) {
    const cells = verticalCells(text, (one) => metrics.width(one, 1, weight));
    const ems = emsOf(cells);
    const sizeMm = Math.max(least, Math.min(most, strip.room / ems));
    const pitch = Math.min(sizeMm * 1.02, strip.room / ems);
    const fits = pitch >= sizeMm * 0.9;
    const some = fits ? cells : whileFitting(cells, strip.room / sizeMm);
    const setting: CellSetting = { sizeMm, weight, ink: 'black' };
    const each = fits ? pitch : sizeMm;
    const marks = columnMarks(some, x, strip.top, each, setting, metrics);
    return { marks, fits, end: strip.top + emsOf(some) * each };
  }
  const fitted = fitLine(metrics, text, strip.room, { most, least, weight });
  if (fitted.fits) {
    const { sizeMm, squeeze } = fitted;
    const mark = textAt(x, strip.top, text, { sizeMm, weight, turn: 90, squeeze, anchor: 'start' });
    const end = strip.top + metrics.width(text, sizeMm, weight) * squeeze;
    return { marks: [mark], fits: true, end };
  }
  const lines = wrap(metrics, text, strip.room / NARROWEST_SQUEEZE, least, weight);
  const room = Math.max(1, Math.floor(strip.width / (least * 1.05)));
  const marks = lines.slice(0, room).map((one, i, all) => {
    const at = x + ((all.length - 1) / 2 - i) * least * 1.05;
    const squeeze = Math.min(1, strip.room / metrics.width(one, least, weight));
    return textAt(at, strip.top, one, { sizeMm: least, weight, turn: 90, squeeze, anchor: 'start' });
  });
  return { marks, fits: lines.length <= room, end: strip.top + strip.room };
}

function whileFitting(cells: readonly VerticalCell[], ems: number): VerticalCell[] {
  let used = 0;
  return cells.filter((cell) => {
    used += cell.ems;
    return used <= ems;
  });
}
