/** The columns of the cut list. */

import { describe, expect, test } from 'vitest';
import type { CutRow } from '../../../src/count/cut-row.js';
import { listPaper } from '../../../src/sheet/cut-list/cut-list-paper.js';
import { cutListColumns, listTable } from '../../../src/sheet/cut-list/cut-list-table.js';
import { listOf, row } from '../../count/rows.js';
import { lookOf } from '../laid.js';

const COUNTS = { keys: 5, breakdowns: 0, inbetweens: 12, drawings: 17, reused: 0, backgrounds: 1 };
const of = (key: string, one: CutRow) =>
  cutListColumns(false)
    .find((column) => column.key === key)!
    .of(one);

test('the measure of the convention stands first, and is bold', () => {
  const measures = (west: boolean) =>
    cutListColumns(west)
      .filter(({ key }) => ['time', 'frames', 'feet'].includes(key))
      .map(({ key, bold = false }) => [key, bold]);
  expect(measures(false)).toEqual([
    ['time', true],
    ['frames', false],
    ['feet', false],
  ]);
  expect(measures(true)).toEqual([
    ['feet', true],
    ['time', false],
    ['frames', false],
  ]);
});

describe('a cell', () => {
  const known = row('12', { time: 132, counts: COUNTS }, { artists: ['M. Arai', 'L. Quoy'] });
  const unknown = row('13', null, { sound: false, problems: { errors: 1, warnings: 2 }, pages: null });

  test('says what was counted', () => {
    expect(
      ['cut', 'time', 'frames', 'feet', 'keys', 'drawings', 'artist'].map((key) => of(key, known)),
    ).toEqual(['12', '5+12', '132', "8'04", '5', '17', 'M. Arai, L. Quoy']);
  });

  test('of nothing reused and no breakdown is blank', () => {
    expect([of('reused', known), of('breakdowns', known)]).toEqual(['', '']);
  });

  test('says that something is not known, which is not nothing', () => {
    expect(['cut', 'time', 'frames', 'keys', 'reused', 'pages'].map((key) => of(key, unknown))).toEqual([
      '13 !',
      '?',
      '–',
      '–',
      '–',
      '–',
    ]);
  });

  test('tells errors and warnings where there are some', () => {
    expect([of('problems', known), of('problems', unknown)]).toEqual(['', '1, 2']);
  });
});

describe('the table', () => {
  const list = listOf([row('1', { time: 24 })]);

  test('is as large as asked for where it goes into the width', () => {
    expect(listTable(listPaper(lookOf({ paper: 'A3' }), true), list, 2.6)!.sizeMm).toBe(2.6);
  });

  test('is made smaller, and is none where that is not enough', () => {
    const narrow = listPaper(lookOf({ paper: 'A4' }), false);
    const laid = listTable(narrow, list, 6)!;
    expect(laid.sizeMm).toBeLessThan(6);
    expect(laid.sizeMm).toBeGreaterThanOrEqual(narrow.least);
    expect(listTable({ ...narrow, body: { ...narrow.body, width: 40 } }, list, 6)).toBeNull();
    expect(listTable(narrow, list, 6, 5.9)).toBeNull();
  });

  test('has a row a cut and one for the sum', () => {
    const rows = listTable(listPaper(lookOf(), true), list, 2)!.pages.flatMap(({ sets }) =>
      sets.flatMap((set) => set.rows.map((one) => one.row)),
    );
    expect(rows).toEqual([0, 1]);
  });
});
