import { describe, expect, test } from 'vitest';
import { power } from '../../../src/solve/camera/power.js';

/** Any numbers from 0 to 1, the same ones in every run: a linear congruential generator modulo 2^32. */
function numbers(count: number): number[] {
  let state = 7;
  return Array.from({ length: count }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  });
}
const BASES = numbers(2000).map((x) => x * 40);

describe('a power is the double nearest to it', () => {
  test('halves are the square roots, which IEEE 754 rounds to the nearest', () => {
    expect(BASES.filter((base) => power(base, 0.5) !== Math.sqrt(base))).toEqual([]);
  });

  test('whole powers of whole numbers are exact as far as a double holds them', () => {
    for (let base = 2; base < 60; base++) {
      let product = base * base;
      for (let exponent = 2; product <= Number.MAX_SAFE_INTEGER; exponent++) {
        expect(power(base, exponent)).toBe(product);
        product *= base;
      }
    }
  });

  test('negative powers of two are exact, down to the smallest double', () => {
    let half = 1;
    for (let n = 1; n <= 1074; n++) {
      half /= 2;
      expect(power(2, -n)).toBe(half);
    }
  });

  test('the engine comes to the same but for its last digit', () => {
    for (const [i, base] of BASES.entries()) {
      const exponent = BASES[BASES.length - 1 - i]! / 10 - 2;
      expect(Math.abs(power(base, exponent) / base ** exponent - 1)).toBeLessThan(4e-16);
    }
  });
});

test.each([
  [0, 2, 0],
  [0, 0, 1],
  [0, -1, Infinity],
  [3.7, 1, 3.7],
  [3.7, 0, 1],
  [1, 1e300, 1],
  [0.5, 1e9, 0],
  [2, 1e9, Infinity],
  [1e300, 2, Infinity],
  [Infinity, -1, 0],
  [Infinity, 0.5, Infinity],
  [-8, 1 / 3, Number.NaN],
  [Number.NaN, 2, Number.NaN],
  [2, Number.NaN, Number.NaN],
])('%d to the power of %d is %d', (base, exponent, expected) => {
  expect(power(base, exponent)).toBe(expected);
});
