/** Tables of any columns and rows: nothing lost, nothing twice, nothing on top of anything, nothing outside. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cellByCell,
  fromTheWidest,
  inProportion,
  inTurn,
  type Sharing,
} from '../../src/layout/column-widths.js';
import { layTable, type TableColumn, type TableSet, type TableSetting } from '../../src/layout/table.js';
import { widthOf } from '../../src/layout/terminal-text.js';
import { BOXED, layTextTable, OPEN, tableLines } from '../../src/layout/text-table.js';

const sharings = fc.constantFrom<Sharing>(inTurn, inProportion, cellByCell, fromTheWidest);

/** Columns in whole units, with rows of one to three lines; the text of a cell names its column and row. */
function tables(most: { groups: boolean; optional: boolean }) {
  const column = fc.record({
    least: fc.integer({ min: 1, max: 12 }),
    more: fc.integer({ min: 0, max: 20 }),
    group: fc.constantFrom(undefined, 'a', 'b'),
    optional: fc.constantFrom(undefined, 1, 2, 3),
    align: fc.constantFrom<'start' | 'end'>('start', 'end'),
  });
  return fc
    .record({
      made: fc.array(column, { minLength: 1, maxLength: 9 }),
      rows: fc.integer({ min: 0, max: 60 }),
      names: fc.integer({ min: 0, max: 2 }),
      lines: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 60, maxLength: 60 }),
      gap: fc.integer({ min: 0, max: 3 }),
      edge: fc.integer({ min: 0, max: 2 }),
      height: fc.integer({ min: 6, max: 40 }),
      width: fc.integer({ min: 60, max: 140 }),
      across: fc.integer({ min: 1, max: 5 }),
      between: fc.integer({ min: 0, max: 4 }),
      down: fc.integer({ min: 0, max: 3 }),
      sharing: sharings,
    })
    .map(({ made, lines, names, height, down, width, ...rest }) => {
      const columns = made.map(
        (
          { least, more, group, optional, align },
          c,
        ): TableColumn & { heads: string[]; align: 'start' | 'end' } => ({
          heads: [`h${c}`],
          align,
          least,
          wanted: least + more,
          ...(most.groups && group !== undefined && c >= names ? { group } : {}),
          ...(most.optional && optional !== undefined && c >= names ? { optional } : {}),
          cells: () =>
            Array.from({ length: rest.rows }, (_, row) =>
              Array.from({ length: lines[row]! }, (_, n) => `${c}/${row}/${n}`),
            ),
        }),
      );
      return {
        ...rest,
        columns,
        names: Math.min(names, columns.length - 1),
        rowHeight: (count: number) => count,
        headHeight: 2,
        area: { x: 7, y: 11, width, height },
        top: 11 + down,
      } satisfies TableSetting<TableColumn>;
    });
}

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const apart = (a: Rectangle, b: Rectangle): boolean =>
  a.x + a.width <= b.x + 1e-6 ||
  b.x + b.width <= a.x + 1e-6 ||
  a.y + a.height <= b.y + 1e-6 ||
  b.y + b.height <= a.y + 1e-6;

const within = (inner: Rectangle, outer: Rectangle): boolean =>
  inner.x >= outer.x - 1e-6 &&
  inner.y >= outer.y - 1e-6 &&
  inner.x + inner.width <= outer.x + outer.width + 1e-6 &&
  inner.y + inner.height <= outer.y + outer.height + 1e-6;

/** The cells of a set with the rectangles that they stand in. */
const cellsOf = (set: TableSet<TableColumn>) =>
  set.rows.flatMap(({ row, y, height, cells }) =>
    set.columns.map(({ column, x, width }, i) => ({ row, column, x, y, width, height, lines: cells[i]! })),
  );

describe('a table of any columns and rows', () => {
  test('has every row of every column once, in order, the names in each set', () => {
    fc.assert(
      fc.property(tables({ groups: true, optional: false }), (setting) => {
        const { pages, leftOut } = layTable(setting)!;
        expect(leftOut).toEqual([]);
        setting.columns.forEach((column, c) => {
          const rows = pages.flatMap(({ sets }) =>
            sets.flatMap((set) => cellsOf(set).filter((cell) => cell.column === column)),
          );
          const copies =
            c < setting.names ? new Set(pages.map(({ sets }) => sets[0]!.columns.at(-1)!.column)).size : 1;
          const once = rows.map(({ row }) => row);
          expect(once).toHaveLength(setting.rows * (setting.rows === 0 ? 0 : copies));
          if (copies === 1) expect(once).toEqual(Array.from({ length: setting.rows }, (_, row) => row));
          for (const { row, lines } of rows) expect(lines[0]).toBe(`${c}/${row}/0`);
        });
      }),
    );
  });

  test('lies inside its area, no cell, head or set on another; only a row that is higher than a page stands out', () => {
    fc.assert(
      fc.property(tables({ groups: true, optional: false }), (setting) => {
        for (const [n, { sets }] of layTable(setting)!.pages.entries()) {
          const top = n === 0 ? setting.top : setting.area.y;
          const area = { ...setting.area, y: top, height: setting.area.y + setting.area.height - top };
          sets.forEach((set, i) => {
            if (set.rows.length > 1) expect(within(set, area)).toBe(true);
            else expect(within({ ...set, height: 0 }, area)).toBe(true);
            for (const other of sets.slice(i + 1)) expect(apart(set, other)).toBe(true);
            const heads = set.columns.map(({ x, width }) => ({ x, width, y: set.y, height: set.headHeight }));
            const all = [...heads, ...cellsOf(set)];
            for (const one of all) expect(within(one, set)).toBe(true);
            all.forEach((one, k) => {
              for (const other of all.slice(k + 1))
                if (!apart(one, other)) throw new Error('one on the other');
            });
          });
        }
      }),
      { numRuns: 60 },
    );
  });

  test('keeps groups together, and names each over its own columns', () => {
    fc.assert(
      fc.property(tables({ groups: true, optional: false }), (setting) => {
        const sets = layTable(setting)!.pages.flatMap(({ sets: own }) => own);
        setting.columns.forEach((column, c) => {
          const next = setting.columns[c + 1];
          if (!next || column.group === undefined || column.group !== next.group) return;
          for (const set of sets) {
            const there = set.columns.map((one) => one.column);
            expect(there.includes(column)).toBe(there.includes(next));
          }
        });
        for (const set of sets)
          for (const { name, x, width } of set.groups) {
            const over = set.columns.filter(
              (one) => one.x >= x - 1e-6 && one.x + one.width <= x + width + 1e-6,
            );
            expect(new Set(over.map(({ column }) => column.group))).toEqual(new Set([name]));
          }
      }),
    );
  });

  test('leaves out the lowest of the optional columns first, and none for which there is room', () => {
    fc.assert(
      fc.property(tables({ groups: false, optional: true }), (setting) => {
        const narrow = { ...setting, area: { ...setting.area, width: 30 }, tooWide: 'overhang' as const };
        const { leftOut } = layTable(narrow)!;
        const need = (columns: readonly TableColumn[]): number =>
          columns.reduce((sum, { least }) => sum + least + setting.gap, 2 * setting.edge - setting.gap);
        const kept = setting.columns.filter((column) => !leftOut.includes(column));
        const open = kept.flatMap(({ optional }) => optional ?? []);
        for (const { optional } of leftOut) expect(open.every((one) => one >= optional!)).toBe(true);
        if (leftOut.length > 0) expect(need([...kept, leftOut.at(-1)!])).toBeGreaterThan(30);
        if (open.length > 0) expect(need(kept)).toBeLessThanOrEqual(30);
        expect(layTable({ ...narrow, tooWide: 'refuse' }) === null).toBe(need(kept) > 30);
      }),
    );
  });

  test('stands side by side no more often than it needs to, and fills each set before the next', () => {
    fc.assert(
      fc.property(tables({ groups: false, optional: false }), (setting) => {
        const { pages } = layTable(setting)!;
        const once = layTable({ ...setting, across: 1 })!.pages;
        if (once.length === 1) expect(pages).toEqual(once);
        expect(pages.length).toBeLessThanOrEqual(once.length);
        for (const { sets } of pages) {
          expect(sets.length).toBeLessThanOrEqual(setting.across);
          for (const [i, set] of sets.entries()) {
            const next = sets[i + 1]?.rows[0];
            if (next && set.rows.length > 0)
              expect(set.y + set.height + next.height).toBeGreaterThan(setting.area.y + setting.area.height);
          }
        }
      }),
    );
  });
});

describe('widths', () => {
  const extents = fc.array(
    fc.record({ least: fc.integer({ min: 0, max: 20 }), more: fc.integer({ min: 0, max: 20 }) }),
    { minLength: 1, maxLength: 8 },
  );

  test('are between what a column needs and wants, all room used that anybody wants', () => {
    fc.assert(
      fc.property(extents, fc.integer({ min: 0, max: 200 }), sharings, (made, spare, sharing) => {
        const columns = made.map(({ least, more }) => ({ least, wanted: least + more }));
        const room = columns.reduce((sum, { least }) => sum + least, 0) + spare;
        const widths = sharing(columns, room);
        columns.forEach(({ least, wanted }, i) => {
          expect(widths[i]).toBeGreaterThanOrEqual(least - 1e-9);
          expect(widths[i]).toBeLessThanOrEqual(wanted + 1e-9);
        });
        const all = columns.reduce((sum, { wanted }) => sum + wanted, 0);
        expect(widths.reduce((sum, one) => sum + one, 0)).toBeCloseTo(Math.min(room, all), 6);
      }),
    );
  });

  test('cut from the widest are those of the highest level that fits, as water finds it', () => {
    fc.assert(
      fc.property(extents, fc.integer({ min: 0, max: 100 }), (made, spare) => {
        const columns = made.map(({ least, more }) => ({ least, wanted: least + more }));
        const room = columns.reduce((sum, { least }) => sum + least, 0) + spare;
        const at = (level: number) =>
          columns.map(({ least, wanted }) => Math.max(least, Math.min(wanted, level)));
        const sum = (widths: readonly number[]) => widths.reduce((so, one) => so + one, 0);
        let level = 0;
        while (level < 50 && sum(at(level + 1)) <= room) level++;
        const lower = at(level);
        fromTheWidest(columns, room).forEach((width, i) => {
          expect([lower[i], at(level + 1)[i]]).toContain(width);
        });
      }),
    );
  });
});

describe('as lines of text', () => {
  test('all lines of a set are equally wide, no wider than the terminal, and say what the cells say', () => {
    fc.assert(
      fc.property(
        tables({ groups: false, optional: false }),
        fc.constantFrom(BOXED, OPEN),
        fc.integer({ min: 40, max: 120 }),
        ({ columns, rows, names }, border, width) => {
          const { pages } = layTextTable({ columns, rows, names, sharing: cellByCell, border, width });
          for (const { sets } of pages)
            for (const set of sets) {
              const lines = tableLines(set, border, () => null);
              expect(new Set(lines.map(widthOf)).size).toBe(1);
              expect(widthOf(lines[0]!)).toBe(set.width);
              expect(set.width).toBeLessThanOrEqual(width);
              const over = (border.top ? 1 : 0) + 2;
              const texts = lines.slice(over, border.bottom ? -1 : undefined);
              const expected = set.rows.flatMap(({ cells, height }) =>
                Array.from({ length: height }, (_, n) => cells.map((cell) => cell[n] ?? '')),
              );
              expect(texts).toHaveLength(expected.length);
              texts.forEach((text, i) => {
                set.columns.forEach(({ x, width: own }, c) => {
                  const there = text.slice(x, x + own).trim();
                  const whole = expected[i]![c]!;
                  expect(there).toBe(whole.length <= own ? whole : `${whole.slice(0, own - 1)}…`);
                });
              });
            }
        },
      ),
    );
  });

  test('a rule stands over the rows that ask for one, heads without a text take no line', () => {
    const column = (heads: readonly string[], texts: readonly string[]) => ({
      heads,
      least: 3,
      wanted: 3,
      cells: () => texts.map((text) => [text]),
    });
    const columns = [column(['s+f', ''], ['0+1', '1+1']), column(['A', ''], ['渡', 'long'])];
    const [page] = layTextTable({
      columns,
      names: 1,
      rows: 2,
      sharing: cellByCell,
      border: BOXED,
      width: 40,
    }).pages;
    expect(tableLines(page!.sets[0]!, BOXED, (row) => (row === 1 ? 'double' : null))).toEqual([
      '┌─────┬─────┐',
      '│ s+f │ A   │',
      '├─────┼─────┤',
      '│ 0+1 │ 渡  │',
      '╞═════╪═════╡',
      '│ 1+1 │ lo… │',
      '└─────┴─────┘',
    ]);
  });
});
