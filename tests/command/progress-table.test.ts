import { expect, test } from 'vitest';
import { terminalProgress } from '../../src/command/progress-table.js';
import { type ProducedCut, progressTable } from '../../src/count/count-stages.js';
import { stageRows } from '../count/stages.js';

const cut = (key: string): ProducedCut => ({
  ...{ cut: key, key, title: `Cut\n${key}` },
  payable: { counts: { keys: 2, breakdowns: 0, inbetweens: 1, drawings: 3 }, time: 24, fps: 24 },
});
const shown = (lines: readonly string[], width: number | null = null, date = '2027-01-10'): string =>
  terminalProgress(
    progressTable(
      [cut('1'), cut('2')],
      stageRows(...lines),
      {
        stages: ['key', 'shoot'],
        due: [
          { stage: 'key', cut: null, date: '2027-01-04' },
          { stage: 'shoot', cut: '2', date: '2027-01-09' },
        ],
        rates: new Map([['key', { amount: 5, decimals: 0, currency: 'EUR', unit: 'key' }]]),
      },
      date,
    ),
    width,
    'en',
  );

test('a day of another year is written whole; what is late is marked, longest past first', () => {
  const lines = shown(['1 key done 2026-12-30 Tarn', '2 key retake 2027-01-05']).split('\n');
  expect(lines.slice(0, 4)).toEqual([
    'cut  title  key         shoot',
    '---  -----  ----------  -----',
    '1    Cut 1  2026-12-30',
    '2    Cut 2  retake !    !',
  ]);
  expect(lines.slice(-3)).toEqual([
    'late by 6 days: key, due 2027-01-04: 2',
    'late by 1 day: shoot, due 2027-01-09: 2',
    '',
  ]);
});

test('who is not named has a line, and the sum stands below', () => {
  const out = shown(['1 key done 2027-01-03']);
  expect(out).toContain('(nobody named)  key       1         2      10 EUR');
  expect(out).toMatch(/^total +10 EUR$/m);
});

test('titles give way on a narrow terminal', () => {
  expect(shown([], 20)).toContain('Left out here, for want of width: title.');
});
