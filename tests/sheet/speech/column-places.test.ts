import { expect, test } from 'vitest';
import { placesDown } from '../../../src/sheet/speech/column-places.js';

const of = (...wanted: [top: number, height: number][]) => wanted.map(([top, height]) => ({ top, height }));

test('each stands where it is wanted, as long as there is room', () => {
  expect(placesDown(of([0, 2], [5, 2], [9, 1]), 10)).toEqual([0, 5, 9]);
});

test('one that is wanted beside the one before stands below it', () => {
  expect(placesDown(of([0, 4], [1, 2], [9, 1]), 10)).toEqual([0, 4, 9]);
});

test('none goes past the end: those before it make room', () => {
  expect(placesDown(of([0, 4], [5, 3], [8, 4]), 11)).toEqual([0, 4, 7]);
});

test('the first never stands higher than it is wanted: then there is no room for all', () => {
  expect(placesDown(of([1, 4], [5, 3], [8, 4]), 12)).toEqual([1, 5, 8]);
  expect(placesDown(of([1, 4], [5, 3], [8, 4]), 11.5)).toBeNull();
});

test('nothing has no places', () => {
  expect(placesDown([], 5)).toEqual([]);
});
