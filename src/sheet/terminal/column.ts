/** A column of the table: what it needs, and what it says on each row. */

/** The frames that have a row, rising; each row tells what is seen on that very frame. */
export type Rows = readonly number[];

export interface Column {
  /** Lines over the rows. */
  readonly heads: readonly string[];
  /** The narrowest that makes sense, and the widest that it has use for. */
  readonly least: number;
  readonly most: number;
  /** One text a row, of any width: what is too wide is cut. */
  cells(width: number): readonly string[];
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
