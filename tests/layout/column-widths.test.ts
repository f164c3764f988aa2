/** How columns share a line. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellByCell, fromTheWidest, inProportion, inTurn, leastSum } from '../../src/layout/column-widths.js';
import { sharings } from './tables.js';

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
