/** Finds the ruled form on a printed page: blocks of rows, groups of columns, and what the form says of them. */

import type { Paper, PaperText } from '../pdf.js';

export interface Band {
  readonly from: number;
  readonly to: number;
}

export interface GridRow extends Band {
  /** The row's number within its second or foot, as printed. */
  readonly number: number;
}

export type Group = 'keys' | 'dialogue' | 'cels' | 'camera' | 'notes';

export interface Grid {
  readonly left: number;
  readonly right: number;
  /** Top of the heads over the columns. */
  readonly headTop: number;
  /** Edges of the rows, one more than there are rows. */
  readonly edges: readonly number[];
  readonly rows: readonly GridRow[];
  /** The bands of the columns of a group, left to right. */
  readonly groups: ReadonlyMap<Group, readonly Band[]>;
  /** The column of the running frame numbers. */
  readonly labels: Band;
}

const GROUPS: Readonly<Record<string, Group>> = {
  'key drawings': 'keys',
  // Over narrow columns; over a single one there is room for `key` only.
  keys: 'keys',
  key: 'keys',
  dialogue: 'dialogue',
  'finished cels': 'cels',
  cels: 'cels',
  camera: 'camera',
  notes: 'notes',
  原画: 'keys',
  原: 'keys',
  セリフ: 'dialogue',
  動画: 'cels',
  動: 'cels',
  カメラ: 'camera',
  指示: 'notes',
};

/** Places that differ by less are the same, mm. */
const SAME = 0.02;

export class Unreadable extends Error {
  override readonly name = 'Unreadable';
}

/** Middle of a line of print: figures and capitals of the font are 0.74 em high. */
export function middleOf(text: PaperText): readonly [x: number, y: number] {
  const up = 0.37 * text.sizeMm;
  const angle = (text.angle * Math.PI) / 180;
  return [(text.x + text.endX) / 2 + up * Math.sin(angle), (text.y + text.endY) / 2 - up * Math.cos(angle)];
}

export const inside = (value: number, band: Band): boolean => value >= band.from && value <= band.to;

/** The blocks of a sheet page, left to right. */
export function gridsOf(paper: Paper): Grid[] {
  const level = paper.lines.filter((line) => line.form && Math.abs(line.y1 - line.y2) < SAME);
  const upright = paper.lines.filter((line) => line.form && Math.abs(line.x1 - line.x2) < SAME);
  const spans = new Map<string, { left: number; right: number; ys: number[] }>();
  for (const line of level) {
    const left = Math.min(line.x1, line.x2);
    const right = Math.max(line.x1, line.x2);
    const key = `${left.toFixed(1)} ${right.toFixed(1)}`;
    const span = spans.get(key) ?? { left, right, ys: [] };
    span.ys.push(line.y1);
    spans.set(key, span);
  }
  // The rules of rows are the widest; those in the heads lie within them.
  return [...spans.values()]
    .filter(
      (span, _, all) =>
        !all.some(
          (other) => other !== span && other.left < span.left + SAME && other.right > span.right - SAME,
        ),
    )
    .sort((a, b) => a.left - b.left)
    .map((span) => gridOf(paper, span.left, span.right, distinct(span.ys), upright));
}

function gridOf(
  paper: Paper,
  left: number,
  right: number,
  ys: readonly number[],
  upright: Paper['lines'],
): Grid {
  const bottom = ys.at(-1)!;
  const columnsLines = upright
    .map((line) => ({ x: line.x1, top: Math.min(line.y1, line.y2), bottom: Math.max(line.y1, line.y2) }))
    .filter((line) => line.x > left - SAME && line.x < right + SAME && Math.abs(line.bottom - bottom) < SAME);
  const headTop = ys[0]!;
  const xs = distinct(columnsLines.map((line) => line.x));
  const edgesOfGroups = distinct(
    columnsLines.filter((line) => line.top < headTop + SAME).map((line) => line.x),
  );

  const printed = paper.texts.filter((text) => text.form && text.x > left && text.endX < right);
  const rows: GridRow[] = [];
  const figures = printed
    .filter((text) => /^\d+$/.test(text.text))
    .map((text) => ({ text, y: middleOf(text)[1] }));
  for (let i = 0; i + 1 < ys.length; i++) {
    const band = { from: ys[i]!, to: ys[i + 1]! };
    const numbers = figures.filter(({ y }) => inside(y, band)).map(({ text }) => text.text);
    if (numbers.length === 0) continue;
    if (numbers.length !== 2 || numbers[0] !== numbers[1])
      throw new Unreadable(`a row is numbered ${numbers.join(', ')}`);
    rows.push({ ...band, number: Number(numbers[0]) });
  }
  if (rows.length === 0) throw new Unreadable('a block has no numbered rows');
  rows.forEach((row, i) => {
    if (i > 0 && Math.abs(row.from - rows[i - 1]!.to) > SAME) throw new Unreadable('the rows have a gap');
  });

  const groups = new Map<Group, Band[]>();
  let labels: Band | null = null;
  for (let i = 0; i + 1 < edgesOfGroups.length; i++) {
    const band = { from: edgesOfGroups[i]!, to: edgesOfGroups[i + 1]! };
    const heading = printed
      .filter((text) => text.weight === 'bold' && inside(middleOf(text)[0], band))
      .filter((text) => inside(middleOf(text)[1], { from: headTop, to: ys[1]! }))
      .sort((a, b) => a.y - b.y)
      .map((text) => text.text)
      .join(' ');
    const edges = xs.filter((x) => x > band.from - SAME && x < band.to + SAME);
    const bands = edges.slice(1).map((to, j): Band => ({ from: edges[j]!, to }));
    if (heading === '') {
      labels ??= bands[0]!;
      continue;
    }
    const group = GROUPS[heading];
    if (!group) throw new Unreadable(`a group of columns is headed “${heading}”`);
    groups.set(group, bands);
  }
  if (!labels) throw new Unreadable('a block has no column of frame numbers');
  return { left, right, headTop, edges: [rows[0]!.from, ...rows.map((row) => row.to)], rows, groups, labels };
}

function distinct(values: readonly number[]): number[] {
  return [...values].sort((a, b) => a - b).filter((value, i, all) => i === 0 || value - all[i - 1]! > SAME);
}
