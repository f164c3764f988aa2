/** Reads a printed sheet page: which cut, which frames on which rows, which levels in which columns, and where the cut ends. */

import type { Paper } from '../pdf.js';
import { edgeAt, isAcross, type ReadColumn, readColumn } from './cells.js';
import { type Band, type Grid, gridsOf, inside, middleOf, Unreadable } from './grid.js';

export interface ReadLevel {
  readonly name: string;
  readonly band: Band;
  readonly column: ReadColumn;
}

export interface ReadBlock {
  readonly grid: Grid;
  /** The frame of each row; null in a block that begins after the end. */
  readonly firstFrame: number | null;
  /** `3+` or `3'` beside a row: whole seconds or feet before it. */
  readonly wholes: readonly { readonly row: number; readonly whole: number; readonly feet: boolean }[];
  /** The finished number's and the key drawing's columns, left to right. */
  readonly cels: readonly ReadLevel[];
  readonly keys: readonly ReadLevel[];
  /** The edge that has the double line, counted from the top; null: none. */
  readonly end: number | null;
  /** The edge from which on all is hatched; null: nothing is. */
  readonly hatched: number | null;
  /** The rows that lie under a tone. */
  readonly toned: readonly number[];
  /** The edges that have the broken line of a cut point. */
  readonly cutPoints: readonly number[];
}

export interface ReadPage {
  readonly paper: Paper;
  readonly label: string;
  readonly cut: string;
  readonly page: string;
  readonly time: string;
  /** What stands above the rows, or on a page without rows, line after line. */
  readonly memo: string;
  readonly blocks: readonly ReadBlock[];
}

const BLACK = '#000000';
/** A western form has no `cut`, and its `scene` is one. */
const CAPTIONS = { cut: ['cut', 'カット', 'scene'], page: ['page', '枚'], time: ['time', '尺'] } as const;

export function readSheet(paper: Paper): ReadPage {
  const grids = gridsOf(paper);
  const headTop = Math.min(paper.heightMm, ...grids.map((grid) => grid.headTop));
  return {
    paper,
    label: paper.label,
    cut: headerOf(paper, 'cut'),
    page: headerOf(paper, 'page'),
    time: headerOf(paper, 'time'),
    memo: paper.texts
      .filter((text) => text.ink === BLACK && text.y < headTop)
      .map((text) => text.text)
      .join(' '),
    blocks: grids.map((grid) => readBlock(paper, grid)),
  };
}

/** What is written in a box of the header, lines joined. */
export function headerOf(paper: Paper, what: keyof typeof CAPTIONS): string {
  const words: readonly string[] = CAPTIONS[what];
  const caption = paper.texts
    .filter((text) => words.includes(text.text) && text.ink !== BLACK)
    .sort((a, b) => words.indexOf(a.text) - words.indexOf(b.text) || a.y - b.y)[0];
  if (!caption) throw new Unreadable(`no box for the ${what}`);
  const box = paper.rectangles.find(
    ({ x, y, width, height }) =>
      inside(caption.x, { from: x, to: x + width }) && inside(caption.y, { from: y, to: y + height }),
  );
  if (!box) throw new Unreadable(`no box about “${caption.text}”`);
  return paper.texts
    .filter((text) => text.ink === BLACK && !text.form)
    .filter((text) => {
      const [x, y] = middleOf(text);
      return (
        inside(x, { from: box.x, to: box.x + box.width }) &&
        inside(y, { from: box.y, to: box.y + box.height })
      );
    })
    .sort((a, b) => a.y - b.y)
    .map((text) => text.text)
    .join(' ');
}

function readBlock(paper: Paper, grid: Grid): ReadBlock {
  const labels = labelsOf(paper, grid);
  const firsts = new Set(labels.frames.map(({ row, frame }) => frame - row));
  if (firsts.size > 1) throw new Unreadable('the running frame numbers do not agree');
  return {
    grid,
    firstFrame: [...firsts][0] ?? null,
    wholes: labels.wholes,
    cels: levelsOf(paper, grid, grid.groups.get('cels') ?? []),
    keys: levelsOf(paper, grid, grid.groups.get('keys') ?? []),
    ...endOf(paper, grid),
    toned: tonedRows(paper, grid),
    cutPoints: paper.lines
      .filter((line) => line.pen.ink === BLACK && line.pen.dash.length > 0 && isAcross(line, grid))
      .map((line) => edgeAt(grid, line.y1)),
  };
}

function labelsOf(paper: Paper, grid: Grid) {
  const frames: { row: number; frame: number }[] = [];
  const wholes: { row: number; whole: number; feet: boolean }[] = [];
  for (const text of paper.texts) {
    const [x, y] = middleOf(text);
    if (text.form || !inside(x, grid.labels)) continue;
    const row = grid.rows.findIndex((band) => inside(y, band));
    if (row < 0) continue;
    const whole = /^(\d+)([+'])$/.exec(text.text);
    if (whole) wholes.push({ row, whole: Number(whole[1]), feet: whole[2] === "'" });
    else if (/^\d+$/.test(text.text)) frames.push({ row, frame: Number(text.text) });
    else throw new Unreadable(`“${text.text}” stands among the frame numbers`);
  }
  return { frames, wholes };
}

/** The columns that have a name, and what is in them. The others must be empty. */
function levelsOf(paper: Paper, grid: Grid, bands: readonly Band[]): ReadLevel[] {
  const levels: ReadLevel[] = [];
  for (const band of bands) {
    const name = paper.texts
      .filter((text) => !text.form && text.weight === 'bold' && text.angle === 0)
      .filter((text) => {
        const [x, y] = middleOf(text);
        return inside(x, band) && inside(y, { from: grid.headTop, to: grid.edges[0]! });
      })
      .sort((a, b) => a.y - b.y)
      .map((text) => text.text)
      .join('');
    const column = readColumn(paper, grid, band);
    if (name !== '') levels.push({ name, band, column });
    else if (column.cells.some((cell) => cell !== ''))
      throw new Unreadable('a column with no name is not empty');
  }
  return levels;
}

function tonedRows(paper: Paper, grid: Grid): number[] {
  const tones = paper.rectangles.filter(
    ({ x, fill, pen, form }) => !form && pen === null && fill !== null && Math.abs(x - grid.left) < 0.05,
  );
  return tones.flatMap(({ y, height }) => {
    const first = edgeAt(grid, y);
    return Array.from({ length: edgeAt(grid, y + height) - first }, (_, i) => first + i);
  });
}

function endOf(paper: Paper, grid: Grid): { end: number | null; hatched: number | null } {
  const near = (a: number, b: number) => Math.abs(a - b) < 0.05;
  const across = paper.lines.filter(
    (line) => !line.form && line.pen.ink === BLACK && line.pen.dash.length === 0 && isAcross(line, grid),
  );
  if (across.length !== 0 && across.length !== 2) throw new Unreadable(`${across.length} lines end the cut`);
  const [upper, lower] = across.map((line) => line.y1).sort((a, b) => a - b);
  const rowMm = grid.edges[1]! - grid.edges[0]!;
  if (upper !== undefined && lower! - upper >= Math.max(rowMm, 1))
    throw new Unreadable('the double line gapes');
  if (upper !== undefined && !near(upper, grid.edges[edgeAt(grid, upper)]!))
    throw new Unreadable('the double line stands within a row');
  const hatches = paper.hatches.filter((hatch) => near(hatch.x, grid.left));
  if (hatches.length > 1) throw new Unreadable('more than one hatch in a block');
  const hatch = hatches[0];
  if (hatch) {
    if (!near(hatch.width, grid.right - grid.left))
      throw new Unreadable('the hatch is not as wide as the block');
    if (!near(hatch.y + hatch.height, grid.edges.at(-1)!))
      throw new Unreadable('the hatch does not reach the bottom of the block');
    if (hatch.lines.length === 0) throw new Unreadable('a hatch without strokes');
  }
  return {
    end: upper === undefined ? null : edgeAt(grid, upper),
    hatched: hatch ? edgeAt(grid, hatch.y) : null,
  };
}
