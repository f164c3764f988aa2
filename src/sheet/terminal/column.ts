/** What the columns of the sheet on a terminal have in common: their rows, and where ranges of frames stand on these. */

import type { TextColumn } from '../../layout/text-table.js';

/** The frames that have a row, rising; each row tells what is seen on that very frame. */
export type Rows = readonly number[];

/** `texts`: one a row, of any width: what is too wide is cut. `least`: the narrowest that makes sense. */
export function sheetColumn(
  heads: readonly string[],
  least: number,
  wanted: number,
  texts: (width: number) => readonly string[],
): TextColumn {
  return { heads, least, wanted, cells: (width) => texts(width).map((text) => [text]) };
}

/** The rows that show frames of a range: first and last index, or null for none. */
export function rowsWithin(
  rows: Rows,
  { from, to }: { readonly from: number; readonly to: number },
): { readonly first: number; readonly last: number } | null {
  const first = rows.findIndex((frame) => frame >= from);
  const last = rows.findLastIndex((frame) => frame <= to);
  return first < 0 || last < first ? null : { first, last };
}
