/** Columns side by side in a frame of box-drawing lines, in several tables where they do not fit one. */

import type { Column } from './column.js';
import { inWidth } from './text.js';

export interface Ruled {
  /** Names of the rows; it stands at the left of every table. */
  readonly names: Column;
  readonly columns: readonly Column[];
  /** Lines over a row, by its index. */
  readonly rules: ReadonlyMap<number, 'light' | 'cut'>;
  /** Columns of the terminal, enough for the names and one column. */
  readonly width: number;
}

interface Placed {
  readonly column: Column;
  readonly width: number;
}

/** Lines of the tables, with an empty line between two. No line is wider than the terminal. */
export function tables(ruled: Ruled): string[] {
  return split(ruled).flatMap((columns, i) => [...(i > 0 ? [''] : []), ...drawn(columns, ruled)]);
}

/** A cell is a bar, a blank, the text and a blank; one bar more closes the row. */
const over = 3;

/** As few tables as do; in each the columns share what is left to their widest. */
function split({ names, columns, width }: Ruled): Placed[][] {
  const room = width - 1 - (names.most + over);
  const groups: Column[][] = [[]];
  let used = 0;
  for (const column of columns) {
    const needs = Math.min(column.least, room - over) + over;
    if (used + needs > room && groups.at(-1)!.length > 0) {
      groups.push([]);
      used = 0;
    }
    groups.at(-1)!.push(column);
    used += needs;
  }
  const first = { column: names, width: names.most };
  return groups.map((group) => [first, ...shared(group, room)]);
}

function shared(columns: readonly Column[], room: number): Placed[] {
  const widths = columns.map(({ least }) => Math.min(least, room - over));
  let left = room - widths.reduce((sum, one) => sum + one + over, 0);
  for (let grown = true; grown && left > 0; ) {
    grown = false;
    columns.forEach(({ most }, i) => {
      if (left <= 0 || widths[i]! >= most) return;
      widths[i]! += 1;
      left -= 1;
      grown = true;
    });
  }
  return columns.map((column, i) => ({ column, width: widths[i]! }));
}

function drawn(placed: readonly Placed[], { rules }: Ruled): string[] {
  const rule = (left: string, middle: string, right: string, dash: string): string =>
    left + placed.map(({ width }) => dash.repeat(width + 2)).join(middle) + right;
  const row = (texts: readonly string[]): string =>
    `│${placed.map(({ width }, i) => ` ${inWidth(texts[i] ?? '', width)} `).join('│')}│`;
  const cells = placed.map(({ column, width }) => column.cells(width));
  const heads = Math.max(
    ...placed.map(({ column }) => column.heads.findLastIndex((head) => head !== '') + 1),
  );
  const lines = [rule('┌', '┬', '┐', '─')];
  for (let i = 0; i < heads; i++) lines.push(row(placed.map(({ column }) => column.heads[i] ?? '')));
  lines.push(rule('├', '┼', '┤', '─'));
  for (let i = 0; i < cells[0]!.length; i++) {
    const over = rules.get(i);
    if (over && i > 0) lines.push(over === 'cut' ? rule('╞', '╪', '╡', '═') : rule('├', '┼', '┤', '─'));
    lines.push(row(cells.map((column) => column[i] ?? '')));
  }
  lines.push(rule('└', '┴', '┘', '─'));
  return lines;
}
