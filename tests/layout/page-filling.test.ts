import { expect, test } from 'vitest';
import { fillPages } from '../../src/layout/page-filling.js';

const heights = (all: readonly number[], room: number) =>
  fillPages(
    all.map((heightMm) => ({ heightMm })),
    room,
  ).map((page) => page.map(({ heightMm }) => heightMm));

test('fills page after page, in order', () => {
  expect(heights([4, 3, 3, 5, 6, 1], 10)).toEqual([[4, 3, 3], [5], [6, 1]]);
});

test('leaves what is too high a page of its own', () => {
  expect(heights([2, 30, 2], 10)).toEqual([[2], [30], [2]]);
  expect(heights([30], 10)).toEqual([[30]]);
});

test('is one page where there is nothing', () => {
  expect(heights([], 10)).toEqual([[]]);
});
