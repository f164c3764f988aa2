import { describe, expect, test } from 'vitest';
import { listOf, row } from './rows.js';

const counts = (keys: number, breakdowns: number, inbetweens: number, reused = 0) => ({
  counts: { keys, breakdowns, inbetweens, drawings: keys + breakdowns + inbetweens, reused, backgrounds: 0 },
});

const rows = [
  row('1', { time: 48, ...counts(2, 0, 3) }, { artists: ['H. Tarn'] }),
  row('2', { time: 72, ...counts(1, 1, 0, 4) }, { artists: ['H. Tarn', 'L. Quoy'] }),
  row('3', { time: 24, ...counts(0, 0, 0) }),
  row('4', null, { artists: ['L. Quoy'], sound: false, pages: null, problems: { errors: 2, warnings: 1 } }),
];

describe('totals', () => {
  const { totals } = listOf(rows, { budget: 120 });

  test('add up what the rows say', () => {
    expect(totals).toMatchObject({
      cuts: 4,
      time: 144,
      running: 144,
      rows: 144,
      counts: { keys: 3, breakdowns: 1, inbetweens: 3, drawings: 7, reused: 4, backgrounds: 0 },
      pages: { sheet: 3, all: 6 },
      problems: { errors: 2, warnings: 1 },
      unsound: 1,
      untimed: 1,
      withoutArtist: 1,
    });
  });

  test('seven drawings in six seconds', () => {
    expect(totals.drawingsASecond).toBeCloseTo(7 / 6, 12);
  });

  test.each([
    [120, 24],
    [144, 0],
    [150, -6],
    [null, null],
  ])('against a budget of %s frames: %s', (budget, over) => {
    expect(listOf(rows, { budget }).totals.over).toBe(over);
  });

  test('of nothing', () => {
    expect(listOf([], { budget: 10 }).totals).toMatchObject({
      cuts: 0,
      running: 0,
      over: -10,
      drawingsASecond: 0,
    });
  });
});

test('a cut of two artists counts for both of them, and once in the total', () => {
  const { artists, totals } = listOf(rows);
  expect(artists).toEqual([
    { name: 'H. Tarn', cuts: 2, shared: 1, running: 120, drawings: 7 },
    { name: 'L. Quoy', cuts: 2, shared: 1, running: 72, drawings: 2 },
  ]);
  expect(artists.reduce((sum, { drawings }) => sum + drawings, 0)).toBe(totals.counts.drawings + 2);
});
