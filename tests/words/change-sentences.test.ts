/** What sentences say alike in every language. */

import { describe, expect, test } from 'vitest';
import type { SeenThing } from '../../src/compare/change.js';
import {
  isLater,
  lasts,
  listOf,
  listsOf,
  type Naming,
  numberRuns,
  rises,
} from '../../src/words/change-sentences.js';
import { between, cycle, EMPTY, key, shown } from './sentence-samples.js';

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

// ---- lists of what is shown

const NAMING: Naming = {
  one: (it) => (it.form === 'drawing' ? it.drawing : it.form),
  full: ({ drawing, way }) => `${way!.from}>${way!.to}:${drawing}`,
  betweens: (count) => `${count} between`,
  ends: (first, last, count) => `${first}…${last} (${count})`,
  comma: ', ',
};
const keys = (count: number): SeenThing[] => Array.from({ length: count }, (_, i) => key(`${i + 1}`));

test('a list names up to six things; of more, its ends and how many they are', () => {
  expect(listOf(shown(keys(6)), NAMING)).toBe('1, 2, 3, 4, 5, 6');
  expect(listOf(shown(keys(7)), NAMING)).toBe('1…7 (7)');
});

describe('two lists, one in the other’s place', () => {
  const lists = (now: readonly SeenThing[], old: readonly SeenThing[]) =>
    listsOf(shown(now), shown(old), NAMING);
  const [a, b] = [between('1.1', 2, '1', '2'), between('1.2', 3, '1', '2')];

  test('count the in-betweens of each run, keys by name', () => {
    expect(lists([a, key('9'), b], [a, b])).toEqual(['1 between, 9, 1 between', '2 between']);
  });

  test('name the in-betweens where their counts are the same', () => {
    expect(lists([a], [b])).toEqual(['1.1', '1.2']);
  });

  test('name in-betweens of one name by the keys that they lie between', () => {
    expect(lists([between('1.1', 2, '1', '3')], [a])).toEqual(['1>3:1.1', '1>2:1.1']);
  });

  test('count what they name where there is too much of it', () => {
    expect(lists(keys(8), [EMPTY])).toEqual(['1…8 (8)', 'empty']);
  });
});
