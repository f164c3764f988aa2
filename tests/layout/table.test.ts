/** How columns share a line. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cellByCell,
  fromTheWidest,
  inProportion,
  inTurn,
  layTable,
  leastSum,
  type TableColumn,
  type TableSet,
} from '../../src/layout/table.js';
import { sharings, tables } from './tables.js';

const COLUMNS = [
  { least: 4, wanted: 10 },
  { least: 2, wanted: 2 },
  { least: 3, wanted: 6 },
];

test('what columns need is the sum of their least widths', () => {
  expect(leastSum(COLUMNS)).toBe(9);
  expect(leastSum([])).toBe(0);
});

test('in turn, the first column has all that it wants before the next one gets more', () => {
  expect(inTurn(COLUMNS, 13)).toEqual([8, 2, 3]);
  expect(inTurn(COLUMNS, 16)).toEqual([10, 2, 4]);
  expect(inTurn(COLUMNS, 40)).toEqual([10, 2, 6]);
});

test('in turn, a column that wants no end takes all the rest', () => {
  expect(inTurn([{ least: 1, wanted: Number.POSITIVE_INFINITY }, ...COLUMNS], 20)).toEqual([11, 4, 2, 3]);
});

test('in proportion, all grow by the same share of what they want more', () => {
  // 3 of the 9 that they want more.
  expect(inProportion(COLUMNS, 12)).toEqual([6, 2, 4]);
  expect(inProportion(COLUMNS, 100)).toEqual([10, 2, 6]);
});

test('in proportion, columns that want no more shrink by the same share where they do not fit', () => {
  const fixed = [
    { least: 6, wanted: 6 },
    { least: 2, wanted: 2 },
  ];
  expect(inProportion(fixed, 4)).toEqual([3, 1]);
  expect(inProportion(fixed, 20)).toEqual([6, 2]);
});

test('cell by cell, each column that wants more has one in turn', () => {
  expect(cellByCell(COLUMNS, 12)).toEqual([6, 2, 4]);
  expect(cellByCell(COLUMNS, 17)).toEqual([9, 2, 6]);
  expect(cellByCell(COLUMNS, 100)).toEqual([10, 2, 6]);
  // Half a cell is none.
  expect(cellByCell(COLUMNS, 9.5)).toEqual([4, 2, 3]);
});

test('from the widest, only what is too much is taken, and never what a column needs', () => {
  expect(fromTheWidest(COLUMNS, 18)).toEqual([10, 2, 6]);
  expect(fromTheWidest(COLUMNS, 13)).toEqual([5, 2, 6]);
  expect(fromTheWidest(COLUMNS, 9)).toEqual([4, 2, 3]);
  expect(fromTheWidest(COLUMNS, 3)).toEqual([4, 2, 3]);
});

describe('any columns', () => {
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

// ---- tables of any columns and rows: nothing lost, nothing twice, nothing on top of anything, nothing outside

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
