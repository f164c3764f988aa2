/** Cycles of two versions. */

import { describe, expect, test } from 'vitest';
import {
  differs,
  endHeld,
  otherTimes,
  pairCycles,
  passesOf,
  regrouped,
  wholePasses,
} from '../../src/compare/cycle-pairs.js';
import { type ExposureToken, nameBoth, tokensOf } from '../../src/compare/exposure-tokens.js';
import { edits, MOUTH, SHEET } from './edits.js';
import { levelOf } from './say.js';

edits(SHEET, [
  ['*3', '*4', 'A: the cycle 4-5 runs 4 times (was 3), from 1+23; what follows comes 8 frames later'],
  [
    '(4-5-)*3',
    '(4-5-):2+0',
    'A: the cycle 4-5 runs 6 times (was 3), from 1+23; what follows comes 1+0 later',
  ],
  ['x:24', 'x:36', 'B: the cycle 1-2 comes 12 frames later, from 1+13 (was 1+1)'],
  ['(1--2--)..', '(1--2)<>..', 'B: the cycle 1-2 there and back (was one way), from 1+1'],
  [
    '(4-5-)',
    '(4:4-5-)',
    'A: key 4 held 2 frames longer, 4 frames (was 2), from 1+23, in each pass of the cycle; what follows comes 6 frames later',
  ],
  [
    '(4-5-)*3 ',
    '',
    'A: the cycle 4-5 dropped (was on 1+23, 1+0); what follows comes 1+0 earlier',
    'A: numbers: A11 is now A7',
  ],
]);

edits(MOUTH, [
  // What a cycle ends on is held behind it.
  [
    '2:12 3',
    '2:16 3',
    'C: key 2 held 4 frames longer, 18 frames (was 14), from 0+17; what follows comes 4 frames later',
  ],
  [
    '(1-2)*3',
    '(1-2)*2',
    'C: the cycle 1-2 runs 2 times (was 3), from 0+1; what follows comes 6 frames earlier',
  ],
]);

/** The tokens of two timelines, under lasting names. */
function both(old: string, now: string, time?: string) {
  const names = nameBoth(levelOf(old, time), levelOf(now));
  return { old: tokensOf(names.old), now: tokensOf(names.now), names };
}

/** The cycles that two timelines begin with. */
function pair(old: string, now: string, time?: string): { old: ExposureToken; now: ExposureToken } {
  const tokens = both(old, now, time);
  return { old: tokens.old[0]!, now: tokens.now[0]! };
}

const brief = (tokens: readonly ExposureToken[]) =>
  tokens.map(({ symbol, frames }) => `${symbol}:${frames}`).join(' ');

describe('what can be compared of two cycles', () => {
  test('is a whole pass where both have one', () => {
    const { old, now } = pair('(1-2-)*2 3..', '(1:4-2-)*2 3..');
    expect(wholePasses(old, now)).toBe(true);
    expect(passesOf(old, now).map(brief)).toEqual(['1:2 1>2.1:2 2:2 2>1.1:2', '1:4 1>2.1:2 2:2 2>1.1:2']);
  });

  test('is as much as both have room for where one is cut short', () => {
    const { old, now } = pair('(1-2-)..', '(1-2-)..', '0+5');
    expect(wholePasses(old, now)).toBe(false);
    expect(passesOf(old, now).map(brief)).toEqual(['1:2 1>2.1:2 2:1', '1:2 1>2.1:2 2:1']);
  });

  test('is the way there of one there and back', () => {
    const { old, now } = pair('(1 2 3)<>..', '(1 2 3)<>..');
    expect(passesOf(old, now).map(brief)).toEqual(['1:2 2:2 3:2', '1:2 2:2 3:2']);
  });
});

describe('a cycle differs', () => {
  const differ = (old: string, now: string, yields = false) => differs(pair(old, now), yields);

  test('by its drawings, their time, and the way back', () => {
    expect(differ('(1 2)*4 3..', '(1 2)*4 3..')).toBe(false);
    expect(differ('(1 2)*4 3..', '(1 3)*4 3..')).toBe(true);
    expect(differ('(1 2)*4 3..', '(1:4 2)*4 3..')).toBe(true);
    expect(differ('(1 2 3)*3 4..', '(1 2 3)<>*3 4..')).toBe(true);
  });

  test('by how often it is played, unless it is cut by what comes before it', () => {
    expect(differ('(1 2)*4 3..', '(1 2)*5 3..')).toBe(true);
    expect(differ('(1 2):16 3..', '(1 2):10 3..')).toBe(true);
    expect(differ('(1 2):16 3..', '(1 2):10 3..', true)).toBe(false);
  });

  test('never from a single drawing', () => {
    expect(differ('(1 2)*4 3..', '1..')).toBe(false);
  });

  test('not by its times where one goes on until further notice', () => {
    expect(otherTimes(pair('(1 2)*4 3..', '(1 2)..'), false)).toBe(false);
    expect(otherTimes(pair('(1 2)*4 3..', '(1 2)*3 3..'), false)).toBe(true);
  });
});

test('what a cycle ends on is held behind it, and is one run with that hold', () => {
  const { old } = pair('(1-2)*3 2:12 3..', '1..');
  expect(endHeld(old)).toMatchObject({ symbol: '2', start: 17, frames: 14 });
});

describe('cycles that belong together', () => {
  test('have one symbol in both versions', () => {
    const { old, now, names } = both('(1 2)*3 3 (4 5)..', '(4 5 6)..');
    const paired = pairCycles(old, now, names);
    expect(paired.now.map(({ symbol }) => symbol)).toEqual(['cycle 0']);
    expect(paired.old.at(-1)!.symbol).toBe('cycle 0');
  });

  test('have a counterpart; one that stands alone is written out', () => {
    const { old, now, names } = both('(1 2)*2 3..', '1 2 1 2 3..');
    const paired = pairCycles(old, now, names);
    expect(brief(paired.old)).toBe(brief(paired.now));
    expect([...paired.alone.old].map(({ start }) => start)).toEqual([1]);
    expect(paired.alone.now.size).toBe(0);
  });

  test('and what was written out is one again where all of it is there', () => {
    const { old, now, names } = both('(1 2)*2 3..', '4 1 2 1 3..');
    const { old: flat, alone } = pairCycles(old, now, names);
    expect(regrouped(flat, alone.old).map(({ seen }) => seen.form)).toEqual(['cycle', 'drawing']);
    expect(regrouped(flat.slice(1), alone.old)).toEqual(flat.slice(1));
  });
});
