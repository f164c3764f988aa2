/** What sentences say alike in every language. */

import { describe, expect, test } from 'vitest';
import { isLater, lasts, numberRuns, rises } from '../../src/words/change-parts.js';
import { cycle, EMPTY, key } from './sentence-samples.js';

test('frames are later, or earlier, by what both their ends move', () => {
  expect(isLater({ old: { from: 1, to: 12 }, now: { from: 7, to: 18 } })).toBe(6);
  expect(isLater({ old: { from: 7, to: 18 }, now: { from: 1, to: 12 } })).toBe(-6);
  expect(isLater({ old: { from: 1, to: 12 }, now: { from: 1, to: 12 } })).toBe(0);
});

test('frames that last otherwise are neither later nor earlier', () => {
  expect(isLater({ old: { from: 1, to: 12 }, now: { from: 7, to: 12 } })).toBeNull();
  expect(isLater({ old: { from: 1, to: 12 }, now: { from: 1, to: 13 } })).toBeNull();
});

test('both ends of frames count', () => {
  expect(lasts({ from: 5, to: 5 })).toBe(1);
  expect(lasts({ from: 1, to: 24 })).toBe(24);
});

describe('runs of numbers', () => {
  test('are joined while old and new numbers rise by one', () => {
    const numbers = [4, 5, 6].map((old) => ({ old, now: old + 1 }));
    expect(numberRuns(numbers)).toEqual([{ old: [4, 6], now: [5, 7] }]);
  });

  test('end where the old or the new numbers leave one out', () => {
    const numbers = [
      { old: 1, now: 2 },
      { old: 2, now: 4 },
      { old: 4, now: 5 },
    ];
    expect(numberRuns(numbers)).toEqual([
      { old: [1, 1], now: [2, 2] },
      { old: [2, 2], now: [4, 4] },
      { old: [4, 4], now: [5, 5] },
    ]);
  });

  test('of no numbers are none', () => expect(numberRuns([])).toEqual([]));
});

describe('two ends rise', () => {
  test('where their numbers do, or are the same', () => {
    expect(rises(key('1'), key('2'))).toBe(true);
    expect(rises(key('2'), key('2'))).toBe(true);
    expect(rises(key('2'), key('1'))).toBe(false);
  });

  test('without numbers only where they are of one form', () => {
    expect(rises(cycle('1', '2'), cycle('4', '5'))).toBe(true);
    expect(rises(cycle('1', '2'), key('3'))).toBe(false);
    expect(rises(key('3'), EMPTY)).toBe(false);
  });
});
