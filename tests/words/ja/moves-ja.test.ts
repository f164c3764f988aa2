/** Moves in Japanese. */

import { describe, expect, test } from 'vitest';
import { moves } from '../../../src/words/ja/moves-ja.js';

describe('an overlap', () => {
  test('with a cut that is known names it', () => {
    expect(moves.overlap('O.L 12', 'in', '11')).toBe('c11とO.L 12');
  });

  test('with one that is not known says on which side it is', () => {
    expect(moves.overlap('O.L', 'in', null)).toBe('前カットとO.L');
    expect(moves.overlap('O.L', 'out', null)).toBe('次カットとO.L');
  });
});

test('what a retake note says of a flag depends on whether it is set', () => {
  const { ratios, quick, sideways } = moves.changed;
  expect([ratios('', true), ratios('', false)]).toEqual(['等比', '等差']);
  expect([quick('', true), quick('', false)]).toEqual(['クイック', '通常']);
  expect([sideways('', true), sideways('', false)]).toEqual(['横', '縦']);
});

test('no levels, no loop and no point are said in words', () => {
  const { carry, loop, about } = moves.changed;
  expect([carry('A,B', false), carry('', false)]).toEqual(['A,B付け', '付けなし']);
  expect([loop('420 mm', false), loop('', false)]).toEqual(['ループ 420 mm', 'ループなし']);
  expect([about('10,20', false), about('', false)]).toEqual(['中心 10,20', '中心は作画の中央']);
});
