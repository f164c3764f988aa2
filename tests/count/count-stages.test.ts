import { describe, expect, test } from 'vitest';
import { daysBetween, type ProducedCut, progressTable } from '../../src/count/count-stages.js';
import type { Rate } from '../../src/count/stage-rates.js';
import { stageRows } from './stages.js';

const cut = (key: string, keys: number, inbetweens: number): ProducedCut => ({
  ...{ cut: key, key, title: '' },
  payable: { counts: { keys, breakdowns: 0, inbetweens, drawings: keys + inbetweens }, time: 48, fps: 24 },
});
const CUTS = [cut('1', 3, 4), cut('2', 5, 6), { ...cut('3', 7, 8), payable: null }];
const PER_KEY: Rate = { amount: 9, decimals: 0, currency: 'yen', unit: 'key' };
const PRODUCTION = {
  stages: ['layout', 'key', 'in-between'],
  due: [
    { stage: 'key', cut: null, date: '2027-03-10' },
    { stage: 'key', cut: '2', date: '2027-03-20' },
  ],
  rates: new Map([['key', PER_KEY]]),
};
const ROWS = stageRows(
  '1 layout done 2027-03-01 Tarn',
  '1 key done 2027-03-12 Tarn',
  '2 layout done 2027-03-02 Quoy',
  '2 key started 2027-03-05 Quoy',
  '3 key done 2027-03-04 Quoy',
  '9 key done 2027-03-04 Esk',
);
const table = (date: string, rows = ROWS) => progressTable(CUTS, rows, PRODUCTION, date);

describe('lateness', () => {
  const late = (date: string) => table(date).cuts.map(({ stages }) => stages[1]!.daysLate);

  test('is counted until today, or until it was done', () => {
    expect(late('2027-03-15')).toEqual([2, 0, 0]);
    expect(late('2027-03-21')).toEqual([2, 1, 0]);
  });

  test('has no cut that is done in its sum, however late it was', () => {
    expect(table('2027-03-21').totals[1]).toMatchObject({ done: 2, started: 1, late: 1 });
  });

  test('goes over months and leap days', () => {
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
    expect(daysBetween('2027-02-28', '2027-03-01')).toBe(1);
  });
});

test('rows behind the day for which it holds are left out', () => {
  const [first] = table('2027-03-11').cuts;
  expect(first!.stages.map(({ state }) => state)).toEqual(['done', 'open', 'open']);
  expect(first!.stages[1]!.daysLate).toBe(1);
});

test('drawings are summed over the cuts that are done, and over all', () => {
  expect(table('2027-04-01').totals.map(({ drawings }) => drawings)).toEqual([
    null,
    { done: 3, all: 8 },
    { done: 0, all: 10 },
  ]);
});

test('people are paid for what was counted, sorted by name; a cut that is not there pays nobody', () => {
  const { people, pay } = table('2027-04-01');
  expect(people.map(({ person, stage, cuts, drawings }) => [person, stage, cuts, drawings])).toEqual([
    ['Quoy', 'layout', 1, null],
    ['Quoy', 'key', 1, null],
    ['Tarn', 'layout', 1, null],
    ['Tarn', 'key', 1, 3],
  ]);
  expect(pay).toEqual([{ amount: 27, decimals: 0, currency: 'yen' }]);
});

test('nobody named comes last', () => {
  const rows = stageRows('1 layout done 2027-03-01', '2 layout done 2027-03-01 Zed');
  expect(table('2027-04-01', rows).people.map(({ person }) => person)).toEqual(['Zed', '']);
});

test('of two cuts with one number the first has the rows', () => {
  const twice = progressTable([CUTS[0]!, CUTS[0]!], ROWS, PRODUCTION, '2027-04-01');
  expect(twice.cuts.map(({ stages }) => stages[1]!.state)).toEqual(['done', 'open']);
});
