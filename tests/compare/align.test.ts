/** Which elements of two sequences are the same, and which of two sets belong together. */

import { describe, expect, test } from 'vitest';
import { align, type Element, match } from '../../src/compare/align.js';

/** `a4`: the symbol a for four frames. */
const sequence = (text: string): Element[] =>
  text.split(' ').map((one) => ({ symbol: one[0]!, frames: Number(one.slice(1)) }));
const aligned = (old: string, now: string) => align(sequence(old), sequence(now));

describe('two sequences', () => {
  test('what is the same at both ends stays', () => {
    expect(aligned('a2 b2 c2', 'a2 x2 c2')).toEqual([
      [0, 0],
      [2, 2],
    ]);
  });

  test('what lasts otherwise stays', () => {
    expect(aligned('a2 b4 c2', 'a2 b9 c2')).toEqual([
      [0, 0],
      [1, 1],
      [2, 2],
    ]);
  });

  test('what comes in or goes has no counterpart', () => {
    expect(aligned('a2 b2', 'a2 c2 b2')).toEqual([
      [0, 0],
      [1, 2],
    ]);
    expect(aligned('a2 c2 b2', 'a2 b2')).toEqual([
      [0, 0],
      [2, 1],
    ]);
  });

  test('of several alike, the one that lasts as long stays', () => {
    expect(aligned('x1 a2 y1', 'z1 a6 b2 a2 w1')).toEqual([[1, 3]]);
  });

  test('one run comes in rather than two', () => {
    // Either a of the new sequence could be the old one: with the first, b and a come in as one run.
    expect(aligned('x1 a2 y1', 'x1 a2 b2 a2 y1')).toEqual([
      [0, 0],
      [1, 1],
      [2, 4],
    ]);
  });

  test('of nothing nothing stays', () => {
    expect(align([], sequence('a1'))).toEqual([]);
    expect(align(sequence('a1'), [])).toEqual([]);
  });
});

describe('very long sequences', () => {
  const long = (first: string, last: string, name: (i: number) => string): Element[] =>
    [first, ...Array.from({ length: 1998 }, (_, i) => name(i)), last].map((symbol) => ({
      symbol,
      frames: 1,
    }));

  test('are aligned by the shortest edit script', () => {
    const same = (i: number) => `s${i}`;
    const pairs = align(long('x', 'y', same), long('z', 'w', same));
    expect(pairs).toEqual(Array.from({ length: 1998 }, (_, i) => [i + 1, i + 1]));
  });

  test('are not aligned where nearly all differs', () => {
    expect(
      align(
        long('x', 'y', (i) => `a${i}`),
        long('z', 'w', (i) => `b${i}`),
      ),
    ).toEqual([]);
  });
});

describe('two sets', () => {
  const away = (a: number, b: number) => Math.abs(a - b);

  test('are paired the likeliest first, each once, in the order of the new one', () => {
    expect(match([10, 50], [49, 12, 11], away)).toEqual([
      [1, 0],
      [0, 2],
    ]);
  });

  test('of equal ones the nearest in order', () => {
    expect(match([7, 7], [7, 7], away)).toEqual([
      [0, 0],
      [1, 1],
    ]);
  });

  test('never pair what can never be the same', () => {
    expect(match([1, 2], [1, 2], (a, b) => (a === b && a === 2 ? 0 : null))).toEqual([[1, 1]]);
  });

  test('that are very large pair neighbours only', () => {
    const numbers = Array.from({ length: 600 }, (_, i) => i);
    const same = (a: number, b: number) => (a === b ? 0 : null);
    const turned = (by: number) => [...numbers.slice(by), ...numbers.slice(0, by)];
    expect(match(numbers, turned(40), same)).toHaveLength(560);
    expect(match(numbers, turned(60), same)).toEqual([]);
  });
});
