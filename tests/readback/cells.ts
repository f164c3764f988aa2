/** Reads the cells of a column: one short word a row, written the same way by the reader and by what is expected. */

import type { Paper, PaperLine, PaperText } from '../pdf.js';
import { type Band, type Grid, inside, middleOf, Unreadable } from './grid.js';

/**
 * What stands in a row of a column:
 * `''` nothing; `|` the line of a hold; `12` a number; `×`; `[12]` held over a break; `(1a)` a number in a ring;
 * `-` a dash; `(-)` a dash in round brackets; `o` a small open ring; `(o)` that in round brackets; `12_` a number with a stroke under it.
 * Where things meet that must not, all are there, joined by `&`.
 */
export type Cell = string;

/** A mark on the paper that gave a word of a cell, for whoever wants to meddle with it. */
export interface Source {
  readonly row: number;
  readonly cell: Cell;
  readonly x: number;
  readonly y: number;
}

export interface HoldLine {
  readonly firstRow: number;
  readonly lastRow: number;
  readonly line: PaperLine;
}

/** A bracket beside a cycle, as far as it stands in this block. */
export interface Bracket {
  readonly firstRow: number;
  readonly lastRow: number;
  /** A stroke at its top: the cycle begins here. */
  readonly begins: boolean;
  /** A stroke at its bottom: it ends here. */
  readonly ends: boolean;
  /** An arrow at its bottom: it runs on. */
  readonly arrow: boolean;
  readonly words: string;
}

/** What is written beside the line of a hold, and the rows of the line in this block. */
export interface HoldWord {
  readonly firstRow: number;
  readonly lastRow: number;
  readonly text: string;
  /** Middles of its letters, on the paper. */
  readonly letters: readonly (readonly [x: number, y: number])[];
}

export interface ReadColumn {
  readonly cells: readonly Cell[];
  readonly sources: readonly Source[];
  readonly holds: readonly HoldLine[];
  readonly holdWords: readonly HoldWord[];
  readonly brackets: readonly Bracket[];
}

const BLACK = '#000000';

/** The row whose band holds `y`. */
export function rowAt(grid: Grid, y: number): number | null {
  const row = grid.rows.findIndex((band) => inside(y, band));
  return row < 0 ? null : row;
}

/** The number of the edge that is nearest to `y`; Unreadable when it is half a row away or more. */
export function edgeAt(grid: Grid, y: number): number {
  let nearest = 0;
  grid.edges.forEach((edge, i) => {
    if (Math.abs(edge - y) < Math.abs(grid.edges[nearest]! - y)) nearest = i;
  });
  const rowMm = grid.edges[1]! - grid.edges[0]!;
  if (Math.abs(grid.edges[nearest]! - y) >= rowMm / 2) throw new Unreadable('a line ends outside the rows');
  return nearest;
}

/** A line over the whole block: the end of the cut, or a cut point. */
export function isAcross(line: PaperLine, grid: Grid): boolean {
  const near = (a: number, b: number) => Math.abs(a - b) < 0.05;
  return (
    near(line.y1, line.y2) &&
    near(Math.min(line.x1, line.x2), grid.left) &&
    near(Math.max(line.x1, line.x2), grid.right)
  );
}

export function readColumn(paper: Paper, grid: Grid, column: Band): ReadColumn {
  const rowsBand = { from: grid.edges[0]!, to: grid.edges.at(-1)! };
  const here = (x: number, y: number) => inside(x, column) && inside(y, rowsBand);
  const texts = paper.texts
    .filter((text) => !text.form && text.ink === BLACK)
    .map((text) => ({ text, middle: middleOf(text) }))
    .filter(({ middle }) => here(...middle));
  const wide = { from: column.from - 0.05, to: column.to + 0.05 };
  const lines = paper.lines.filter(
    (line) =>
      !line.form &&
      line.pen.ink === BLACK &&
      !isAcross(line, grid) &&
      here((line.x1 + line.x2) / 2, (line.y1 + line.y2) / 2),
  );
  if (lines.some((line) => !inside(line.x1, wide) || !inside(line.x2, wide)))
    throw new Unreadable('a line runs from column to column');
  const upright = lines.filter((line) => Math.abs(line.x1 - line.x2) < 0.01);
  const flat = lines.filter((line) => Math.abs(line.y1 - line.y2) < 0.01);
  if (upright.length + flat.length !== lines.length)
    throw new Unreadable('a slanting line in a column of levels');
  const rings = ringsOf(paper, here);
  const rowMm = grid.edges[1]! - grid.edges[0]!;

  const axis = axisOf(texts, rings, flat, grid);
  const level = texts.filter(({ text, middle }) => text.angle === 0 && isOn(axis, text, middle[0]));
  const besideTexts = texts.filter((one) => !level.includes(one));
  const words = new Map<number, Source[]>();
  const say = (cell: Cell, x: number, y: number): void => {
    const row = rowAt(grid, y);
    if (row === null) throw new Unreadable(`“${cell}” stands outside the rows`);
    words.set(row, [...(words.get(row) ?? []), { row, cell, x, y }]);
  };
  const used = new Set<unknown>();
  const strokes = flat.filter((line) => axis !== null && Math.abs((line.x1 + line.x2) / 2 - axis) < 0.25);

  for (const { text, middle } of level) {
    if (text.text === '(' || text.text === ')') continue;
    const [x, y] = middle;
    const ring = rings.find((one) => Math.hypot(one.x - x, one.y - y) < Math.min(0.3, rowMm / 4));
    if (ring) {
      used.add(ring);
      say(`(${text.text})`, x, y);
      continue;
    }
    const under = strokes.find((line) => line.y1 > y && line.y1 - y < rowMm * 0.5 && longerThan(line, text));
    if (under) used.add(under);
    say(under ? `${text.text}_` : text.text, x, y);
  }
  /** `sign`, in round brackets where they stand about it. */
  const bracketed = (sign: string, x: number, y: number): void => {
    const brackets = level.filter(
      ({ text, middle }) => /^[()]$/.test(text.text) && Math.abs(middle[1] - y) < rowMm / 4,
    );
    if (
      brackets.length !== 0 &&
      brackets
        .map(({ text }) => text.text)
        .sort()
        .join('') !== '()'
    )
      throw new Unreadable('a bracket without its other half');
    for (const bracket of brackets) used.add(bracket);
    say(brackets.length > 0 ? `(${sign})` : sign, x, y);
  };
  for (const stroke of strokes) if (!used.has(stroke)) bracketed('-', (stroke.x1 + stroke.x2) / 2, stroke.y1);
  for (const ring of rings) {
    if (used.has(ring)) continue;
    if (ring.width > 1.3) throw new Unreadable('a ring with nothing in it');
    bracketed('o', ring.x, ring.y);
  }
  for (const bracket of level)
    if (/^[()]$/.test(bracket.text.text) && !used.has(bracket))
      throw new Unreadable('a bracket about nothing');

  const holds: HoldLine[] = [];
  const beside: PaperLine[] = [];
  for (const line of upright) {
    if (axis === null) throw new Unreadable('a line in a column where nothing stands');
    if (Math.abs(line.x1 - axis) > 0.2) beside.push(line);
    else
      holds.push({
        firstRow: edgeAt(grid, Math.min(line.y1, line.y2)),
        lastRow: edgeAt(grid, Math.max(line.y1, line.y2)) - 1,
        line,
      });
  }
  for (const { firstRow, lastRow, line } of holds)
    for (let row = firstRow; row <= lastRow; row++)
      words.set(row, [...(words.get(row) ?? []), { row, cell: '|', x: line.x1, y: line.y1 }]);

  const { brackets, others } = bracketsOf(
    beside,
    grid,
    flat.filter((one) => !strokes.includes(one)),
    besideTexts,
    paper,
  );
  const holdWords = holdWordsOf(holds, others, column);
  return {
    cells: grid.rows.map((_, row) =>
      (words.get(row) ?? [])
        .map((word) => word.cell)
        .sort()
        .join('&'),
    ),
    sources: [...words.values()].flat().filter((word) => word.cell !== '|'),
    holds,
    holdWords,
    brackets,
  };
}

/**
 * The words at the right of hold lines, letter under letter. Each begins at the head of its line, ends beside it and touches neither the
 * line nor the edge of the column. No other text may stand there.
 */
function holdWordsOf(holds: readonly HoldLine[], texts: readonly Placed[], column: Band): HoldWord[] {
  const found = new Map<HoldLine, Placed[]>();
  for (const one of texts) {
    const { text, middle } = one;
    const half = text.sizeMm / 2;
    const wide = Math.abs(text.endX - text.x) / 2;
    const [x, y] = middle;
    const hold = holds.find(
      ({ line }) =>
        y - half > Math.min(line.y1, line.y2) - 0.05 && y + half < Math.max(line.y1, line.y2) + half,
    );
    if (!hold || text.angle !== 0 || x - wide < hold.line.x1 + 0.1 || x + wide > column.to + 0.05)
      throw new Unreadable(`“${text.text}” stands in a column of levels, off its line`);
    found.set(hold, [...(found.get(hold) ?? []), one]);
  }
  return [...found].map(([{ firstRow, lastRow, line }, letters]): HoldWord => {
    const sorted = letters.toSorted((a, b) => a.middle[1] - b.middle[1]);
    sorted.forEach(({ text, middle: [x, y] }, i) => {
      const before = sorted[i - 1]?.middle;
      const above = before ? before[1] : Math.min(line.y1, line.y2) - text.sizeMm / 2;
      if ((before && Math.abs(before[0] - x) > 0.05) || y - above > text.sizeMm * 1.5)
        throw new Unreadable(`“${text.text}” stands apart from the head of its hold`);
    });
    const text = sorted.map((one) => one.text.text).join('');
    return { firstRow, lastRow, text, letters: sorted.map(({ middle }) => middle) };
  });
}

interface Ring {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** Circles, and rings that are drawn out for long numbers. */
function ringsOf(paper: Paper, here: (x: number, y: number) => boolean): Ring[] {
  const circles = paper.circles
    .filter((circle) => !circle.form && circle.pen?.ink === BLACK && circle.fill === null)
    .map(({ x, y, r }): Ring => ({ x, y, width: 2 * r }));
  const pills = paper.shapes
    .filter((shape) => !shape.form && shape.closed && shape.pen?.ink === BLACK && shape.fill === null)
    .filter((shape) => shape.points.length > 8)
    .map((shape): Ring => {
      const xs = shape.points.map(([x]) => x);
      const ys = shape.points.map(([, y]) => y);
      const [left, right] = [Math.min(...xs), Math.max(...xs)];
      return { x: (left + right) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2, width: right - left };
    });
  return [...circles, ...pills].filter((ring) => here(ring.x, ring.y));
}

interface Placed {
  readonly text: PaperText;
  readonly middle: readonly [x: number, y: number];
}

/** The line down the middle of a column: that of the sign on the block's first row, which always says something. */
function axisOf(
  texts: readonly Placed[],
  rings: readonly Ring[],
  flat: readonly PaperLine[],
  grid: Grid,
): number | null {
  const signs = [
    ...texts
      .filter(({ text }) => text.angle === 0 && text.text !== '(' && text.text !== ')')
      .map(({ middle }) => middle),
    ...rings.map(({ x, y }) => [x, y] as const),
    ...flat.map((line) => [(line.x1 + line.x2) / 2, line.y1] as const),
  ].filter(([, y]) => inside(y, grid.rows[0]!));
  // Brackets of cycles and their words stand to the right of the signs.
  return signs.length > 0 ? Math.min(...signs.map(([x]) => x)) : null;
}

/** The two halves of a bracket about a dash stand a little off the line. */
function isOn(axis: number | null, text: PaperText, x: number): boolean {
  return axis !== null && Math.abs(x - axis) < (text.text === '(' || text.text === ')' ? 1.7 : 0.15);
}

const longerThan = (line: PaperLine, text: PaperText): boolean =>
  Math.abs(line.x2 - line.x1) > Math.abs(text.endX - text.x);

/** Brackets about cycles, to the right of the signs, and the words to the right of each; and the texts that are no bracket's. */
function bracketsOf(
  upright: readonly PaperLine[],
  grid: Grid,
  flat: readonly PaperLine[],
  texts: readonly Placed[],
  paper: Paper,
): { brackets: Bracket[]; others: Placed[] } {
  const used = new Set<Placed>();
  const brackets = upright.map((line): Bracket => {
    const x = line.x1;
    const [top, bottom] = [Math.min(line.y1, line.y2), Math.max(line.y1, line.y2)];
    const touches = (y: number) =>
      flat.some((one) => Math.abs(one.y1 - y) < 0.02 && Math.abs(Math.max(one.x1, one.x2) - x) < 0.02);
    const arrow = paper.shapes.some(
      (shape) =>
        !shape.form &&
        shape.fill === BLACK &&
        shape.points.some(([px, py]) => Math.hypot(px - x, py - bottom) < 0.02),
    );
    // Words go on until the next bracket of the lane begins.
    const next = Math.min(
      ...upright
        .filter((one) => Math.abs(one.x1 - x) < 0.05)
        .map((one) => Math.min(one.y1, one.y2))
        .filter((y) => y > top + 0.05),
    );
    const words = texts
      .filter(({ middle: [tx, ty] }) => tx > x && tx - x < 1.5 && ty > top && ty < next)
      .sort((a, b) => a.middle[1] - b.middle[1]);
    for (const word of words) used.add(word);
    return {
      firstRow: edgeAt(grid, top),
      lastRow: edgeAt(grid, bottom) - 1,
      begins: touches(top),
      ends: touches(bottom),
      arrow,
      words: words.map(({ text }) => text.text).join(''),
    };
  });
  return { brackets, others: texts.filter((text) => !used.has(text)) };
}
