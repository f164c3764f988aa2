/** What happened between two aligned sequences of exposures. */

import { describe, expect, test } from 'vitest';
import { followOf, lastAlignedBefore, type Scope, story } from '../../src/compare/alignment-events.js';
import type { ExposureToken } from '../../src/compare/exposure-tokens.js';

/** `a2 b4`: a on frames 1 and 2, b on 3 to 6. */
function tokens(text: string): ExposureToken[] {
  let start = 1;
  return text.split(' ').map((one) => {
    const frames = Number(one.slice(1));
    const symbol = one[0]!;
    const seen = { form: 'drawing', drawing: symbol, kind: 'key', cel: 1, way: null } as const;
    start += frames;
    return { symbol, seen, start: start - frames, frames, cycle: null };
  });
}

const anchors = (old: readonly number[] = [], now: readonly number[] = []) => ({
  old: new Set(old),
  now: new Set(now),
});
const told = (old: string, now: string, scope: Scope = 'level', ties = anchors()) =>
  story(tokens(old), tokens(now), ties, scope, () => false);

describe('a hold', () => {
  test('that lasts otherwise is a length, by what it gains', () => {
    expect(told('a2 b4 c6', 'a2 b6 c4').events).toEqual([{ type: 'length', first: 1, last: 1, delta: 2 }]);
  });

  test('at the end of the sheet takes up what is left', () => {
    expect(told('a2 b4', 'a2 b9').events).toEqual([]);
    expect(told('a2 b4', 'a2 b9', 'part').events).toEqual([]);
  });

  test('at the end of a whole pass does not', () => {
    expect(told('a2 b4', 'a2 b9', 'pass').events).toEqual([{ type: 'length', first: 1, last: 1, delta: 5 }]);
  });

  test('joins its neighbours that change in the same way: twos become threes', () => {
    expect(told('a2 b2 c2 d9', 'a3 b3 c3 d6').events).toEqual([
      { type: 'length', first: 0, last: 2, delta: 3 },
    ]);
    expect(told('a2 b2 c4 d9', 'a3 b3 c5 d6').events).toMatchObject([
      { first: 0, last: 1, delta: 2 },
      { first: 2, last: 2, delta: 1 },
    ]);
  });
});

describe('something else that is shown', () => {
  test('is a region behind what stays before it', () => {
    const { events } = told('a2 b4 c6', 'a2 x1 y2 c6', 'pass');
    expect(events).toMatchObject([{ type: 'region', after: 0, delta: -1 }]);
    const letters = (all: readonly ExposureToken[]) => all.map(({ symbol }) => symbol).join('');
    expect(events.map((one) => one.type === 'region' && [letters(one.old), letters(one.now)])).toEqual([
      ['b', 'xy'],
    ]);
  });

  test('at the beginning is behind nothing', () => {
    expect(told('a2 b4', 'x1 a2 b4', 'pass').events).toMatchObject([{ type: 'region', after: -1, delta: 1 }]);
  });

  test('is not told of what the end of a part cuts off', () => {
    expect(told('a2 b4 c2', 'a4 b4', 'part').events).toEqual([
      { type: 'length', first: 0, last: 0, delta: 2 },
    ]);
    expect(told('a2 b4 c2', 'a4 b4', 'pass').events).toHaveLength(2);
  });
});

describe('what the text ties to a frame', () => {
  test('takes up what changes before it', () => {
    expect(told('a4 b8', 'a6 b6', 'level', anchors([5], [7])).events).toEqual([
      { type: 'anchor', first: 1, delta: 2 },
    ]);
  });

  test('is not told where it stands as before', () => {
    expect(told('a2 b4 c6', 'a3 b3 c6', 'level', anchors([7], [7])).events).toEqual([
      { type: 'length', first: 0, last: 0, delta: 1 },
    ]);
  });
});

test('a cycle that differs in itself is told as such, not by its length', () => {
  const { events } = story(
    tokens('a2 b4 c6'),
    tokens('a2 b6 c4'),
    anchors(),
    'level',
    ({ now }) => now.symbol === 'b',
  );
  expect(events).toEqual([{ type: 'cycle', first: 1, last: 1, delta: 2 }]);
});

describe('what follows an event', () => {
  test('comes later to the end of the sheet', () => {
    const one = told('a2 b4 c6 d6', 'a2 b6 c6 d4');
    expect(followOf(one.events[0]!, one, 0)).toEqual({ by: 2, last: null });
    expect(lastAlignedBefore(one, 0)).toBe(3);
  });

  test('comes later up to where the time is taken back', () => {
    const two = told('a2 b4 c6 d6 e2', 'a4 b4 c4 d6 e2');
    expect(two.events.map(({ delta }) => delta)).toEqual([2, -2]);
    expect(followOf(two.events[0]!, two, 0)).toMatchObject({ by: 2, last: { drawing: 'c' } });
    expect(lastAlignedBefore(two, 0)).toBe(2);
    expect(followOf(two.events[1]!, two, 1)).toBeNull();
  });

  test('is nothing where the event takes no time, or is the last', () => {
    const swapped = told('a2 b4 c6', 'a2 x4 c6');
    expect(followOf(swapped.events[0]!, swapped, 0)).toBeNull();
    const last = told('a2 b4', 'a2 b9', 'pass');
    expect(followOf(last.events[0]!, last, 0)).toBeNull();
  });
});
