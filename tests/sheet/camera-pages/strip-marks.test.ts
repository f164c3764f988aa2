/** Numbers of keys on the scale strip. */

import { expect, test } from 'vitest';
import { stripPages } from '../../../src/sheet/camera-pages/scale-strip.js';
import { lookOf, solvedCut, textsOf } from '../laid.js';

/** The numbers in rings, from left to right: the ones in a line above the rows. */
function numbers(wayMm: number): string[] {
  const cut = solvedCut(`cut 3
time 2+0
level A free
A: on 4 (1-2-3-)..
slide A ア(0,0)@1 > イ(${wayMm},0)@2+0
`);
  return stripPages(cut, lookOf()).flatMap(({ marks }) => {
    const rings = marks.flatMap((mark) => (mark.kind === 'circle' && mark.r > 1.2 ? [mark] : []));
    return textsOf(marks)
      .filter((text) => rings.some(({ x, y }) => Math.hypot(x - text.x, y - text.y) < 1.2))
      .sort((a, b) => a.x - b.x)
      .map(({ text }) => text);
  });
}

test('every key has its number where there is room', () => {
  expect(numbers(140)).toEqual(['1', '2', '3', '1', '2', '3']);
});

test('else the first pass alone is numbered, so that no order is read wrongly', () => {
  expect(numbers(12)).toEqual(['1', '2', '3']);
});

test('and none at all where that has no room', () => {
  expect(numbers(0.6)).toEqual([]);
});
