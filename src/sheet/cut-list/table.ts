/** The table of the cut list: rows of a page under their heads. */

import type { CutList } from '../../count/list.js';
import type { CutRow } from '../../count/row.js';
import { type Box, black, line, pale, textAt } from '../draw.js';
import { setInBox, wrap } from '../fit.js';
import type { Mark } from '../marks.js';
import { type Column, columnsOf, type Placed, paddingMm, placeColumns } from './columns.js';
import type { Stage } from './frame.js';

export interface Table {
  readonly columns: readonly Placed[];
  readonly sizeMm: number;
  readonly headMm: number;
  /** Height of a row of one line. */
  readonly rowMm: number;
  readonly headHeight: number;
}

const LEADING = 1.2;

/** The columns at the largest print that goes into the width; null where even the smallest does not. */
export function tableFor(stage: Stage, list: CutList, most: number): Table | null {
  const { least, metrics, words, body, west } = stage;
  for (let sizeMm = most; ; sizeMm = Math.max(least, sizeMm * 0.95)) {
    const headMm = Math.max(least, sizeMm * 0.82);
    const columns = placeColumns(columnsOf(west), list, words, metrics, {
      x: body.x,
      room: body.width,
      sizeMm,
      headMm,
    });
    if (columns) return { columns, sizeMm, headMm, rowMm: sizeMm * 1.95, headHeight: headMm * 2.9 };
    if (sizeMm === least) return null;
  }
}

/** No text takes more lines: one that does was pasted by mistake, and would leave no room for other cuts. */
const MOST_LINES = 12;

/** The lines of each cell. */
export function cellsOf(stage: Stage, table: Table, row: CutRow): string[][] {
  return table.columns.map(({ column, width }) => {
    const text = column.of(row);
    if (column.wraps === undefined || text === '') return [text];
    const weight = column.bold ? 'bold' : 'regular';
    const room = width - 2 * paddingMm(table.sizeMm) + 1e-6;
    const lines = wrap(stage.metrics, text, room, table.sizeMm, weight);
    return lines.length <= MOST_LINES ? lines : [...lines.slice(0, MOST_LINES - 1), '…'];
  });
}

export function heightOf(table: Table, cells: readonly (readonly string[])[]): number {
  const lines = Math.max(...cells.map((cell) => cell.length));
  return table.rowMm + (lines - 1) * table.sizeMm * LEADING;
}

export function headMarks(stage: Stage, table: Table, y: number): Mark[] {
  const { body, words, metrics, least } = stage;
  const marks: Mark[] = [line(body.x, y, body.x + body.width, y, pale(0.45))];
  for (const { column, x, width } of table.columns) {
    const inset = paddingMm(table.sizeMm) * 0.8;
    const box = { x: x + inset, y: y + 0.3, width: width - 2 * inset, height: table.headHeight - 0.6 };
    const set = { most: table.headMm, least, across: column.align === 'end' ? 'end' : 'start' } as const;
    marks.push(...setInBox(metrics, words.columns[column.key], box, set).marks);
  }
  return [
    ...marks,
    line(body.x, y + table.headHeight, body.x + body.width, y + table.headHeight, pale(0.45)),
  ];
}

export function rowMarks(
  table: Table,
  cells: readonly (readonly string[])[],
  y: number,
  bold: (column: Column) => boolean = (column) => column.bold === true,
): Mark[] {
  const { sizeMm, rowMm } = table;
  return table.columns.flatMap(({ column, x, width }, i) => {
    const inset = paddingMm(sizeMm);
    const at = column.align === 'end' ? x + width - inset : x + inset;
    const weight = bold(column) ? 'bold' : 'regular';
    return cells[i]!.flatMap((text, n) =>
      text === ''
        ? []
        : [textAt(at, y + rowMm / 2 + n * sizeMm * LEADING, text, { sizeMm, weight, anchor: column.align })],
    );
  });
}

/** Upright rules from the heads down to the last row. */
export function uprights(table: Table, { x, width }: Box, top: number, bottom: number): Mark[] {
  return [
    ...table.columns.map((column) =>
      line(column.x, top, column.x, bottom, pale(column.x === x ? 0.45 : 0.12)),
    ),
    line(x + width, top, x + width, bottom, pale(0.45)),
  ];
}

/** Under a row: heavier after every fifth, black before a new scene. */
export function ruleUnder(stage: Stage, y: number, kind: 'plain' | 'fifth' | 'scene' | 'end'): Mark {
  const { x, width } = stage.body;
  const stroke = { plain: pale(0.1), fifth: pale(0.3), scene: black(0.18), end: black(0.35) }[kind];
  return line(x, y, x + width, y, stroke);
}

export function totalCells(table: Table, list: CutList, word: string): string[][] {
  return table.columns.map(({ column }) => [column.key === 'title' ? word : (column.total?.(list) ?? '')]);
}
