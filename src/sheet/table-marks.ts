/** Tables as marks on paper. Where their columns and rows stand, `../layout/table.ts` has found. */

import type { PlacedColumn, TableColumn, TableSet } from '../layout/table.js';
import type { Mark, Metrics, Stroke, Weight } from './display-list.js';
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
  const marks: Mark[] = [];
  const across = (at: number, stroke: Stroke): void => void marks.push(line(x, at, x + width, at, stroke));
  const down = (at: number, stroke: Stroke | null): void => {
    if (stroke) marks.push(line(at, y, at, y + height, stroke));
  };
  across(y, style.headRule);
  for (const one of columns)
    marks.push(...style.head(one.column, { x: one.x, y, width: one.width, height: headHeight }));
  across(y + headHeight, style.headRule);
  for (const [i, { row, y: top, height: high, cells }] of rows.entries()) {
    for (const [c, one] of columns.entries()) addCell(marks, one, cells[c]!, row, top, style);
    across(top + high, style.ruleUnder(row, i, i === rows.length - 1));
  }
  for (const [i, one] of columns.entries()) down(one.x, style.upright(one, i));
  down(x + width, style.edge);
  return marks;
}

function addCell<C extends PaperColumn>(
  marks: Mark[],
  { column, x, width }: PlacedColumn<C>,
  lines: readonly string[],
  row: number,
  top: number,
  style: TableStyle<C>,
): void {
  const { metrics, rowMm, leadingMm, least, sizeMm } = style;
  const [left, right] = style.inset;
  const weight: Weight = style.bold(column, row) ? 'bold' : 'regular';
  const anchor = column.align;
  const at = anchor === 'end' ? x + width - right : x + left;
  for (const [n, text] of lines.entries()) {
    if (text === '') continue;
    const set =
      least === null
        ? { sizeMm, weight, anchor }
        : {
            ...fitLine(metrics, text, width - left - right, { most: sizeMm, least, weight }),
            weight,
            anchor,
          };
    marks.push(textAt(at, top + rowMm / 2 + n * leadingMm, text, set));
  }
}
