import { describe, expect, test } from 'vitest';
import { distance, nearest } from '../../src/language/suggest.js';

describe('distance', () => {
  // The first two are the textbook pairs for edit distance (common practice); swapped neighbours count once.
  test.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['tmie', 'time', 1],
    ['time', 'time', 0],
    ['', 'abc', 3],
  ])('%s %s', (a, b, expected) => {
    expect(distance([...a], [...b], 9)).toBe(expected);
    expect(distance([...b], [...a], 9)).toBe(expected);
  });

  test('is not counted beyond its limit', () => {
    expect(distance([...'kitten'], [...'sitting'], 1)).toBe(2);
  });
});

describe('what was probably meant', () => {
  const words = ['time', 'truck', 'stack', 'voice', 'on', 'BG'];
  test.each([
    ['tmie', 'time'],
    ['trcuk', 'truck'],
    ['TIME', 'time'],
    ['bg', 'BG'],
    ['voices', 'voice'],
    ['ウォク', undefined],
    ['an', undefined],
    ['A', undefined],
    ['harbour', undefined],
    ['time', undefined],
  ])('%s', (typed, meant) => {
    expect(nearest(typed, words)).toBe(meant);
  });

  test('names of any script', () => {
    expect(nearest('あるき方', ['あるきかた', 'あるき型'])).toBe('あるき型');
  });
});
