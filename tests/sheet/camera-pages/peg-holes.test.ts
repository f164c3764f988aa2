import { expect, test } from 'vitest';
import { holeMark, holes } from '../../../src/sheet/camera-pages/peg-holes.js';
import { defaults } from '../../../src/shot/settings.js';

test('there are three in a row when they are asked for: over the field in Japan, under it in the west', () => {
  expect(holes(defaults)).toEqual([]);
  // Four inches apart; the middle one is the round one.
  const japan = holes({ ...defaults, pegs: 'acme', convention: 'japan' });
  expect(japan).toEqual([
    { x: -101.6, y: 104.775, round: false },
    { x: 0, y: 104.775, round: true },
    { x: 101.6, y: 104.775, round: false },
  ]);
  const west = holes({ ...defaults, pegs: 'acme', convention: 'west' });
  expect(west.map(({ y }) => y)).toEqual([-104.775, -104.775, -104.775]);
});

test('they are drawn at the scale of the page', () => {
  const place = ([x, y]: readonly [number, number]): [number, number] => [100 + x / 2, 50 - y / 2];
  expect(holeMark({ x: 0, y: 20, round: true }, place, 2)).toMatchObject({
    kind: 'circle',
    x: 100,
    y: 40,
    // A quarter of an inch across, at half its size.
    r: 6.35 / 4,
  });
  // Half an inch by an eighth, at half its size.
  expect(holeMark({ x: 20, y: 0, round: false }, place, 2)).toMatchObject({
    kind: 'path',
    closed: true,
    points: [
      [110 - 3.175, 50 - 0.79375],
      [110 + 3.175, 50 - 0.79375],
      [110 + 3.175, 50 + 0.79375],
      [110 - 3.175, 50 + 0.79375],
    ],
  });
});
