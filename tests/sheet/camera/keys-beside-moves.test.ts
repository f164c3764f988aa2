/** The key drawings beside a move. */

import { expect, test } from 'vitest';
import { keysOf } from '../../../src/sheet/camera/keys-beside-moves.js';
import { solvedCut } from '../laid.js';

const CUT = solvedCut('cut 1\ntime 1+0\nA: 1:4 1-2:4 x:2 2..\nB: x:4 7..\n');
const keys = (levels: readonly string[], west = false) => [...keysOf(levels, CUT, west)];

test('stand on the rows on which they begin, in-betweens and emptiness nowhere', () => {
  expect(keys(['A'])).toEqual([
    [1, ['1']],
    [9, ['2']],
    [15, ['2']],
  ]);
});

test('are named with their level where several go along', () => {
  expect(keys(['A', 'B'])).toEqual([
    [1, ['A 1']],
    [9, ['A 2']],
    [15, ['A 2']],
    [5, ['B 7']],
  ]);
});

test('are told by their final numbers in the west', () => {
  expect(keys(['A'], true)[1]).toEqual([9, ['3']]);
  expect(keys(['B'], true)).toEqual([[5, ['1']]]);
});

test('of a level that is not there are none', () => {
  expect(keys(['C'])).toEqual([]);
});
