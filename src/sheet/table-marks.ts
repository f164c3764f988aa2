/** Tables as marks on paper. Where their columns and rows stand, `../layout/table.ts` has found. */

import type { PlacedColumn, TableColumn, TableSet } from '../layout/table.js';
import type { Mark, Metrics, Stroke } from './display-list.js';
import { type Box, line, textAt } from './mark-builders.js';
import { fitLine } from './text-fitting.js';

export interface PaperColumn extends TableColumn {
  readonly align: 'start' | 'end';
}

/** How a table is drawn. Rows are meant by their index among all rows of the table. */
export interface TableStyle<C extends PaperColumn> {
  readonly metrics: Metrics;
  readonly sizeMm: number;
  /** Height of a row of one line, and from line to line. */
  readonly rowMm: number;
  readonly leadingMm: number;
  /** From a column's left and right edge to its texts. */
  readonly inset: readonly [left: number, right: number];
  /** Texts that are wider than their columns are set smaller, down to this, then squeezed; null: there are none. */
  readonly least: number | null;
  bold(column: C, row: number): boolean;
  /** The head of a column in the box between the rules over and under it. */
  head(column: C, box: Box): readonly Mark[];
  /** Over and under the heads. */
  readonly headRule: Stroke;
  /** `index`: how many rows stand over this one here; `last`: no row stands below it here. */
  ruleUnder(row: number, index: number, last: boolean): Stroke;
  /** Left of a column; null for all of them: no upright rules. */
  upright(at: PlacedColumn<C>, index: number): Stroke | null;
  /** The rule at the table's right edge. */
  readonly edge: Stroke | null;
}

/** Heads, then row by row its texts and its rule, then the upright rules. */
export function tableMarks<C extends PaperColumn>(set: TableSet<C>, style: TableStyle<C>): Mark[] {
  const { x, y, width, height, headHeight, columns, rows } = set;
  const across = (at: number, stroke: Stroke): Mark => line(x, at, x + width, at, stroke);
  const down = (at: number, stroke: Stroke | null): Mark[] =>
    stroke ? [line(at, y, at, y + height, stroke)] : [];
  return [
    across(y, style.headRule),
    ...columns.flatMap((one) =>
      style.head(one.column, { x: one.x, y, width: one.width, height: headHeight }),
    ),
    across(y + headHeight, style.headRule),
    ...rows.flatMap(({ row, y: top, height: high, cells }, i) => [
      ...columns.flatMap((one, c) => cellMarks(one, cells[c]!, row, top, style)),
      across(top + high, style.ruleUnder(row, i, i === rows.length - 1)),
    ]),
    ...columns.flatMap((one, i) => down(one.x, style.upright(one, i))),
    ...down(x + width, style.edge),
  ];
}

function cellMarks<C extends PaperColumn>(
  { column, x, width }: PlacedColumn<C>,
  lines: readonly string[],
  row: number,
  top: number,
  style: TableStyle<C>,
): Mark[] {
  const { metrics, rowMm, leadingMm, least } = style;
  const [left, right] = style.inset;
  const weight = style.bold(column, row) ? 'bold' : 'regular';
  const at = column.align === 'end' ? x + width - right : x + left;
  return lines.flatMap((text, n) => {
    if (text === '') return [];
    const set =
      least === null
        ? { sizeMm: style.sizeMm }
        : fitLine(metrics, text, width - left - right, { most: style.sizeMm, least, weight });
    return [textAt(at, top + rowMm / 2 + n * leadingMm, text, { ...set, weight, anchor: column.align })];
  });
}
