/** Pictures of the reference: parts of the pages that an example prints, as SVG. */

import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { cutPages } from '../src/build/printed-parts.js';
import { printSvg } from '../src/print/svg.js';
import type { Mark, Page, PagePart } from '../src/sheet/display-list.js';
import type { SolvedShot } from '../src/solve/solved-shot.js';
import { testFonts } from './fonts.js';
import { boundsOf } from './sheet/laid.js';

/**
 * Which part of which page. `rows`: these frames of the sheet's left half, with the heads of the columns where they begin at
 * the first; `head`, `memo`: those boxes; `chart`: the camera chart below its head; `charts`: the in-between charts.
 */
export type Crop =
  | { readonly rows: readonly [from: number, to: number] }
  | 'head'
  | 'memo'
  | 'chart'
  | 'charts';

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** On A4, the paper of a cut outside any episode; mm. */
const BOXES: Readonly<Record<Exclude<Crop, object>, { part: PagePart; box: Box }>> = {
  head: { part: 'sheet', box: { x: 4, y: 4, width: 202, height: 22 } },
  memo: { part: 'sheet', box: { x: 4, y: 24, width: 202, height: 22 } },
  chart: { part: 'camera', box: { x: 4, y: 24, width: 289, height: 152 } },
  charts: { part: 'charts', box: { x: 4, y: 24, width: 202, height: 80 } },
};
const HEADS_AT = 44.5;
const LEFT_HALF = { x: 4, width: 101 };

export function picture(solved: SolvedShot, crop: Crop): string {
  const { metrics } = testFonts();
  const { parts } = cutPages(
    solved,
    { settings: solved.shot.settings, metrics, stamp: '' },
    { parts: 'all' },
  );
  const part = typeof crop === 'string' ? BOXES[crop].part : 'sheet';
  const page = parts.flatMap(({ pages }) => pages).find((one) => one.part === part);
  if (!page) throw new Error(`it prints no ${part}`);
  return cropped(page, typeof crop === 'string' ? BOXES[crop].box : rowsBox(page, crop.rows));
}

/** Part of a page, mm. */
export function cropped(page: Page, box: Box): string {
  const { metrics } = testFonts();
  const inside = (marks: readonly Mark[]): Mark[] => marks.filter((mark) => touches(mark, box));
  const form = page.form && { ...page.form, marks: inside(page.form.marks) };
  return printSvg({ ...page, form, marks: inside(page.marks) }, { metrics, crop: box });
}

/** Compares a written file; UPDATE=1 writes it. Gives what is in the file, and what should be. */
export function kept(path: string, text: string): [string, string] {
  if (process.env.UPDATE === '1') {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  return [existsSync(path) ? readFileSync(path, 'utf8') : '', text];
}

function rowsBox({ rows }: Page, [from, to]: readonly [number, number]): Box {
  const of = (frame: number) => rows.find((row) => row.frame === frame)!;
  const top = from === 1 ? HEADS_AT : of(from).y - 0.5;
  const last = of(to);
  return { ...LEFT_HALF, y: top, height: last.y + last.height + 0.5 - top };
}

function touches(mark: Mark, { x, y, width, height }: Box): boolean {
  const [left, top, right, bottom] = rectangle(mark);
  return right >= x && left <= x + width && bottom >= y && top <= y + height;
}

function rectangle(mark: Mark): [number, number, number, number] {
  switch (mark.kind) {
    case 'text': {
      const { left, top, right, bottom } = boundsOf(mark);
      return [left, top, right, bottom];
    }
    case 'line':
      return about([
        [mark.x1, mark.y1],
        [mark.x2, mark.y2],
      ]);
    case 'circle':
      return [mark.x - mark.r, mark.y - mark.r, mark.x + mark.r, mark.y + mark.r];
    case 'path':
    case 'curve':
      return about(mark.points);
    case 'tint':
    case 'hatch':
      return [mark.x, mark.y, mark.x + mark.width, mark.y + mark.height];
  }
}

function about(points: readonly (readonly [number, number])[]): [number, number, number, number] {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
