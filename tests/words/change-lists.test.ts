/** Lists of what is shown. */

import { describe, expect, test } from 'vitest';
import type { SeenThing } from '../../src/compare/change.js';
import { listOf, listsOf, type Naming } from '../../src/words/change-lists.js';
import { between, EMPTY, key, shown } from './sentence-samples.js';

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
