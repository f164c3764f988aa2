/**
 * Widths of columns that share a line. Every unit will do: millimetres of paper, cells of a terminal.
 *
 * A sharing is given the columns and the room for them (gaps taken off), and gives a width for each. Where the sum of what
 * the columns need is no more than the room, no width is under its `least` or over its `wanted`, and their sum is no more
 * than the room.
 */

/** How wide a column must be and would like to be, its padding included; `wanted` may be infinite. */
export interface ColumnExtent {
  readonly least: number;
  readonly wanted: number;
}

export type Sharing = (columns: readonly ColumnExtent[], room: number) => number[];

export const leastSum = (columns: readonly ColumnExtent[]): number =>
  columns.reduce((sum, { least }) => sum + least, 0);

/** Each column has all that it wants before the next one has more than it needs. */
export const inTurn: Sharing = (columns, room) => {
  let spare = room - leastSum(columns);
  return columns.map(({ least, wanted }) => {
    const more = Math.max(0, Math.min(wanted - least, spare));
    spare -= more;
    return least + more;
  });
};

/** All columns grow by the same share of what they want, or shrink by it where there is not even what they need. */
export const inProportion: Sharing = (columns, room) => {
  const least = leastSum(columns);
  const more = columns.reduce((sum, column) => sum + column.wanted - column.least, 0);
  if (more <= 0) return columns.map((column) => column.least * Math.min(1, room / least));
  const share = Math.min(1, (room - least) / more);
  return columns.map((column) => column.least + (column.wanted - column.least) * share);
};

/** For whole cells: each column that wants more has one more in turn, as long as there are any. */
export const cellByCell: Sharing = (columns, room) => {
  const widths = columns.map(({ least }) => least);
  let left = room - leastSum(columns);
  for (let grown = true; grown && left >= 1; ) {
    grown = false;
    columns.forEach(({ wanted }, i) => {
      if (left < 1 || widths[i]! >= wanted) return;
      widths[i]! += 1;
      left -= 1;
      grown = true;
    });
  }
  return widths;
};

/** For whole cells: all columns have what they want; what that is too much is taken from the widest, cell by cell. */
export const fromTheWidest: Sharing = (columns, room) => {
  const widths = columns.map(({ wanted }) => wanted);
  for (let beyond = widths.reduce((sum, one) => sum + one, 0) - room; beyond > 0; beyond--) {
    const widest = widths.reduce(
      (most, one, i) => (one > columns[i]!.least && one > (widths[most] ?? 0) ? i : most),
      -1,
    );
    if (widest < 0) break;
    widths[widest]! -= 1;
  }
  return widths;
};
