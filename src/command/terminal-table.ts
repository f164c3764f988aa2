/** Rows of an episode as a table on a terminal. */

import type { TableTexts } from '../language/catalogue/table-entry.js';
import { widest } from '../layout/line-breaking.js';
import { fromTheWidest } from '../layout/table.js';
import { layTextTable, OPEN, type TextColumn, tableLines, widthOf } from '../layout/text-table.js';

export interface Column<T> {
  readonly head: string;
  readonly right?: boolean;
  /** May be shortened, down to so many columns of the terminal. */
  readonly least?: number;
  /** Left out of a table that is too wide otherwise; the lowest first. */
  readonly spare?: number;
  readonly of: (row: T) => string;
  readonly total?: string;
}

/** Controls would break the table, or worse. */
export function oneLine(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .replace(/[\p{Cc}\p{Cf}]/gu, '')
    .trim();
}

/** Rows of texts, heads over them and totals under them; what is too wide is shortened, then columns are left out. */
export function textTable<T>(
  columns: readonly Column<T>[],
  rows: readonly T[],
  width: number | null,
  texts: Pick<TableTexts, 'leftOut'>,
): string[] {
  const totals = columns.map(({ total }) => total ?? '');
  const totalled = totals.some((one) => one !== '');
  const placed = columns.map((column, i): TextColumn => {
    const texts = [...rows.map(column.of), ...(totalled ? [totals[i]!] : [])];
    const wanted = widest([column.head, ...texts], widthOf);
    return {
      heads: [column.head],
      align: column.right ? 'end' : 'start',
      wanted,
      least: Math.min(wanted, column.least ?? wanted),
      ...(column.spare === undefined ? {} : { optional: column.spare }),
      cells: () => texts.map((text) => [text]),
    };
  });
  const { pages, leftOut } = layTextTable({
    columns: placed,
    rows: rows.length + (totalled ? 1 : 0),
    sharing: fromTheWidest,
    border: OPEN,
    width: width ?? Number.POSITIVE_INFINITY,
    tooWide: 'overhang',
  });
  const lines = tableLines(pages[0]!.sets[0]!, OPEN, (row) => (row === rows.length ? 'light' : null));
  return [
    ...lines.map((line) => line.trimEnd()),
    ...(leftOut.length > 0 ? [texts.leftOut(leftOut.map(({ heads }) => heads[0]!))] : []),
  ];
}
