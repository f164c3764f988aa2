/** Moves in English. */

import { describe, expect, test } from 'vitest';
import { movesIn } from '../../../src/words/en/moves-en.js';
import { JAPAN_TERMS, WEST_TERMS } from '../../../src/words/en/terms-en.js';

const moves = movesIn(JAPAN_TERMS);

describe('an overlap', () => {
  test('with a cut that is known names it', () => {
    expect(moves.overlap('O.L 12', 'in', '11')).toBe('O.L 12 with c11');
    expect(movesIn(WEST_TERMS).overlap('O.L', 'in', '11')).toBe('O.L with sc. 11');
  });

  test('with one that is not known says on which side it is', () => {
    expect(moves.overlap('O.L', 'in', null)).toBe('O.L with the cut before');
    expect(moves.overlap('O.L', 'out', null)).toBe('O.L with the next cut');
  });
});

test('what a retake note says of a flag depends on whether it is set', () => {
  const { ratios, quick, sideways } = moves.changed;
  expect([ratios('', true), ratios('', false)]).toEqual(['by equal ratios', 'by equal widths']);
  expect([quick('', true), quick('', false)]).toEqual(['quick', 'not quick']);
  expect([sideways('', true), sideways('', false)]).toEqual(['sideways', 'up and down']);
});

test('no levels, no loop and no point are said in words', () => {
  const { carry, loop, about } = moves.changed;
  expect([carry('A,B', false), carry('', false)]).toEqual(['carrying A,B', 'carrying no level']);
  expect([loop('420 mm', false), loop('', false)]).toEqual(['loop of 420 mm', 'no loop']);
  expect([about('10,20', false), about('', false)]).toEqual([
    'about 10,20',
    'about the centre of the artwork',
  ]);
});
