/**
 * Tables: columns and rows to places on pages. Knows neither what a page is made of nor what the table says: the columns
 * tell how wide they must be, and give the lines of their cells when they know how wide they are; all lengths have one
 * unit, millimetres of paper or cells of a terminal. Painters draw what is placed here: `../sheet/table-marks.ts` on paper,
 * `text-table.ts` as lines of text.
 */

// ----
// Widths of columns that share a line. Every unit will do: millimetres of paper, cells of a terminal.
//
// A sharing is given the columns and the room for them (gaps taken off), and gives a width for each. Where the sum of what
// the columns need is no more than the room, no width is under its `least` or over its `wanted`, and their sum is no more
// than the room.

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

export interface TableColumn extends ColumnExtent {
  /** Neighbours of one group stay in one set of columns; the group's name may stand over them. */
  readonly group?: string;
  /** May be left out of a table that is too wide otherwise: the lowest first. */
  readonly optional?: number;
  /** For each row the lines of its cell, in a column as wide as given. */
  cells(width: number): readonly (readonly string[])[];
}

export interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface TableSetting<C extends TableColumn> {
  readonly columns: readonly C[];
  /** So many of the first columns name the rows: where the columns are split into sets, they stand at the left of each. */
  readonly names?: number;
  readonly rows: number;
  /** The height of a row whose longest cell has so many lines. */
  rowHeight(lines: number): number;
  readonly headHeight: number;
  readonly sharing: Sharing;
  /** Between two columns, and at both ends of a line, over and above the columns' own padding. */
  readonly gap?: number;
  readonly edge?: number;
  /** What the table may fill on each page; the height may be infinite. */
  readonly area: Area;
  /** Where the table begins on its first page, if not at the area's top. */
  readonly top?: number;
  /** Columns that do not fit side by side: `split` into sets of a page each (the default), null for a table, or one set that is too wide. */
  readonly tooWide?: 'split' | 'refuse' | 'overhang';
  /** What does not fit on one page: goes on over further ones (the default), or null for a table. */
  readonly tooLong?: 'split' | 'refuse';
  /** At most so many times side by side on a page, rows going on at the top of the next; 1 if nothing is said. */
  readonly across?: number;
  readonly between?: number;
}

export interface PlacedColumn<C> {
  readonly column: C;
  readonly x: number;
  readonly width: number;
}

export interface PlacedRow {
  /** Its index among all rows of the table. */
  readonly row: number;
  readonly y: number;
  readonly height: number;
  /** Lines of text, for each column of its set. */
  readonly cells: readonly (readonly string[])[];
}

/** A head and rows below each other: the table as a whole, or the part of it that stands in one place. */
export interface TableSet<C> extends Area {
  readonly headHeight: number;
  readonly columns: readonly PlacedColumn<C>[];
  readonly groups: readonly { readonly name: string; readonly x: number; readonly width: number }[];
  readonly rows: readonly PlacedRow[];
}

export interface TablePage<C> {
  readonly sets: readonly TableSet<C>[];
}

export interface LaidTable<C> {
  /** Without rows: one page, with the head. Sets of split columns follow each other before the next rows do. */
  readonly pages: readonly TablePage<C>[];
  /** Optional columns for which there was no room. */
  readonly leftOut: readonly C[];
}

const EPSILON = 1e-9;

/**
 * Null only where it is `tooWide: 'refuse'` and the columns do not fit, or `tooLong: 'refuse'` and one page does not do. Each page
 * takes one row at least, however high it is.
 */
export function layTable<C extends TableColumn>(setting: TableSetting<C>): LaidTable<C> | null {
  const { area, across = 1, between = 0, tooWide = 'split', tooLong = 'split', names = 0 } = setting;
  const line = lineOf(setting);
  const { kept, leftOut } = withoutOptional(setting.columns, line.fits(area.width));
  if (tooWide === 'refuse' && line.least(kept) > area.width) return null;
  const sets = tooWide === 'split' ? columnSets(kept, names, line.fits(area.width)) : [kept];
  if (sets.length > 1)
    return tooLong === 'refuse' ? null : { pages: laid(setting, prepared(setting, sets, 1)), leftOut };
  const most = Math.max(
    1,
    Math.min(across, Math.floor((area.width + between) / (line.least(kept) + between) + EPSILON)),
  );
  let made = prepared(setting, sets, 1);
  while (made.times < most && !onOnePage(made, setting)) made = prepared(setting, sets, made.times + 1, made);
  if (tooLong === 'refuse' && !onOnePage(made, setting)) return null;
  return { pages: laid(setting, made), leftOut };
}

/** What stands beside the columns on a line. */
function lineOf({ gap = 0, edge = 0 }: Pick<TableSetting<TableColumn>, 'gap' | 'edge'>) {
  const beside = (count: number): number => 2 * edge + Math.max(0, count - 1) * gap;
  return {
    gap,
    edge,
    beside,
    least: (columns: readonly ColumnExtent[]): number => leastSum(columns) + beside(columns.length),
    /** Whether columns fit in a width. */
    fits:
      (width: number) =>
      (columns: readonly ColumnExtent[]): boolean =>
        leastSum(columns) + beside(columns.length) <= width + EPSILON,
  };
}

/** Whether columns fit side by side. */
type Fits = (columns: readonly ColumnExtent[]) => boolean;

function withoutOptional<C extends TableColumn>(
  all: readonly C[],
  fits: Fits,
): { kept: readonly C[]; leftOut: C[] } {
  const optional = all
    .filter((column) => column.optional !== undefined)
    .sort((a, b) => a.optional! - b.optional!);
  const leftOut: C[] = [];
  let kept = all;
  while (!fits(kept) && optional.length > 0) {
    leftOut.push(optional.shift()!);
    kept = all.filter((column) => !leftOut.includes(column));
  }
  return { kept, leftOut };
}

/** As few sets as do, in order; a group that is too wide for any has one to itself. */
function columnSets<C extends TableColumn>(columns: readonly C[], names: number, fits: Fits): C[][] {
  const first = columns.slice(0, names);
  const groups: C[][] = [];
  for (const column of columns.slice(names)) {
    const last = groups.at(-1);
    if (last && column.group !== undefined && last[0]!.group === column.group) last.push(column);
    else groups.push([column]);
  }
  const sets: C[][] = [[...first]];
  for (const group of groups) {
    const last = sets.at(-1)!;
    if (last.length === names || fits([...last, ...group])) last.push(...group);
    else sets.push([...first, ...group]);
  }
  return sets;
}

/** Sets of columns with their widths, before their rows are shared out over pages. */
interface PreparedSets<C> {
  /** How many sets stand side by side on a page, and how wide each of them is. */
  readonly times: number;
  readonly width: number;
  readonly placed: readonly (readonly PlacedColumn<C>[])[];
  /** For each set and column the lines of each row. */
  readonly cells: readonly (readonly (readonly (readonly string[])[])[])[];
  /** Of each row. */
  readonly heights: readonly number[];
}

/**
 * `times` sets side by side on a page; only one set of columns may stand there more than once. `before`: the same with fewer, whose
 * cells are taken where the columns come out as wide.
 */
function prepared<C extends TableColumn>(
  setting: TableSetting<C>,
  sets: readonly (readonly C[])[],
  times: number,
  before?: PreparedSets<C>,
): PreparedSets<C> {
  const { area, between = 0, names = 0 } = setting;
  const width = (area.width - (times - 1) * between) / times;
  const placed = sets.map((columns) => placedColumns(setting, columns, names, width));
  if (before && sameWidths(before.placed, placed)) return { ...before, times, width, placed };
  const cells = placed.map((columns) => columns.map((one) => one.column.cells(one.width)));
  const heights: number[] = [];
  for (let row = 0; row < setting.rows; row++) {
    let most = 1;
    for (const set of cells) for (const column of set) most = Math.max(most, column[row]?.length ?? 0);
    heights.push(setting.rowHeight(most));
  }
  return { times, width, placed, cells, heights };
}

const sameWidths = <C>(
  a: readonly (readonly PlacedColumn<C>[])[],
  b: readonly (readonly PlacedColumn<C>[])[],
): boolean => a.every((columns, s) => columns.every(({ width }, i) => width === b[s]![i]!.width));

/** Whether all rows of one set of columns have room on the first page. */
function onOnePage<C extends TableColumn>(
  { times, heights }: PreparedSets<C>,
  { area, top = area.y, headHeight }: TableSetting<C>,
): boolean {
  let row = 0;
  for (let i = 0; i < times && row < heights.length; i++)
    row = lastRow(row, heights, top + headHeight, area.y + area.height);
  return row >= heights.length;
}

/** Shares out the rows over pages. */
function laid<C extends TableColumn>(
  setting: TableSetting<C>,
  { times, width, placed, cells, heights }: PreparedSets<C>,
): TablePage<C>[] {
  const { area, between = 0, headHeight } = setting;
  const pages: TablePage<C>[] = [];
  let row = 0;
  do {
    const y = pages.length === 0 ? (setting.top ?? area.y) : area.y;
    const chunks: { from: number; to: number }[] = [];
    for (let i = 0; i < times && (row < setting.rows || i === 0); i++) {
      const to = lastRow(row, heights, y + headHeight, area.y + area.height);
      chunks.push({ from: row, to });
      row = to;
    }
    placed.forEach((columns, s) => {
      pages.push({
        sets: chunks.map(({ from, to }, i) => {
          const dx = i * (width + between);
          const rows: PlacedRow[] = [];
          let at = y + headHeight;
          for (let row = from; row < to; row++) {
            const height = heights[row]!;
            rows.push({ row, y: at, height, cells: cells[s]!.map((column) => column[row] ?? []) });
            at += height;
          }
          return setAt(columns, rows, { x: area.x + dx, y, headHeight, dx, edge: setting.edge ?? 0 });
        }),
      });
    });
  } while (row < setting.rows);
  return pages;
}

/** The row behind those that have room between two heights, one at least where any is left. */
function lastRow(from: number, heights: readonly number[], top: number, bottom: number): number {
  let y = top;
  let row = from;
  for (; row < heights.length; row++) {
    if (y + heights[row]! > bottom + EPSILON && row > from) break;
    y += heights[row]!;
  }
  return row;
}

/** Columns of one set, the first at the left of the area. A column that is alone beside the names may be narrower than it needs. */
function placedColumns<C extends TableColumn>(
  setting: TableSetting<C>,
  columns: readonly C[],
  names: number,
  width: number,
): PlacedColumn<C>[] {
  const { gap, edge, beside } = lineOf(setting);
  const room = width - beside(columns.length);
  const alone = width - beside(names + 1) - leastSum(columns.slice(0, names));
  const split = (setting.tooWide ?? 'split') === 'split' && names > 0;
  const extents = columns.map((one, i) =>
    i < names || !split ? one : { least: Math.min(one.least, alone), wanted: one.wanted },
  );
  const widths = setting.sharing(extents, room);
  let x = setting.area.x + edge;
  return columns.map((column, i) => {
    const one = { column, x, width: widths[i]! };
    x += one.width + gap;
    return one;
  });
}

function setAt<C extends TableColumn>(
  columns: readonly PlacedColumn<C>[],
  rows: readonly PlacedRow[],
  { x, y, headHeight, dx, edge }: { x: number; y: number; headHeight: number; dx: number; edge: number },
): TableSet<C> {
  const moved = dx === 0 ? columns : columns.map((one) => ({ ...one, x: one.x + dx }));
  const last = moved.at(-1);
  const lowest = rows.at(-1);
  const groups: { name: string; x: number; width: number }[] = [];
  moved.forEach((one, i) => {
    const { group } = one.column;
    if (group === undefined) return;
    const open = groups.at(-1);
    if (open && moved[i - 1]?.column.group === group) open.width = one.x + one.width - open.x;
    else groups.push({ name: group, x: one.x, width: one.width });
  });
  return {
    x,
    y,
    width: last ? last.x + last.width + edge - x : 0,
    height: lowest ? lowest.y + lowest.height - y : headHeight,
    headHeight,
    columns: moved,
    groups,
    rows,
  };
}
