import { describe, expect, test } from 'vitest';
import { type PrintPlan, pageRange, wantedPage } from '../../src/build/print-plan.js';
import { UsageError } from '../../src/build/usage-error.js';

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

describe('a range of pages', () => {
  const pages = (text: string): number[] => {
    const wanted = pageRange(text);
    return [1, 2, 3, 4, 5, 6, 7, 99999].filter((page) => wanted(page));
  };

  test.each([
    ['2', [2]],
    ['2-3', [2, 3]],
    ['3-3', [3]],
    ['6-12', [6, 7]],
    ['5-', [5, 6, 7, 99999]],
    ['1,4-6', [1, 4, 5, 6]],
    [' 1 , 3 ', [1, 3]],
    ['6-,2', [2, 6, 7, 99999]],
    ['99999', [99999]],
    ['12', []],
  ])('%s', (text, expected) => expect(pages(text)).toEqual(expected));

  test.each(['', '0', '0-2', '3-2', '-3', 'a', '1-2-3', '1,', '2 - 3', '1.5', '100000', 'a1', '1a'])(
    '%j is none, and is told as it was typed',
    (text) => {
      expect(() => pageRange(text)).toThrow(UsageError);
      try {
        pageRange(text);
      } catch (fault) {
        expect(fault).toMatchObject({
          code: 'option-value',
          word: text,
          parameters: { variant: 'page-range' },
        });
      }
    },
  );
});
