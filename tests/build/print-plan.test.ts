import { expect, test } from 'vitest';
import { type PrintPlan, wantedPage } from '../../src/build/print-plan.js';

const plan = (pages: PrintPlan['pages']): PrintPlan => ({
  output: undefined,
  strict: false,
  settings: {},
  selection: {},
  against: { kind: 'nothing' },
  changedPagesOnly: false,
  pages,
  oneFile: false,
  coversAPage: null,
  markedAgainst: null,
  threads: null,
});

test('every page is wanted where no range was typed', () => {
  expect([1, 2, 99].map(wantedPage(plan(null)))).toEqual([true, true, true]);
});

test('a range takes its own pages', () => {
  const wanted = wantedPage(plan({ range: '2-3', includes: (page) => page === 2 || page === 3 }));
  expect([1, 2, 3, 4].filter(wanted)).toEqual([2, 3]);
});
