/** In-between charts, against what is taught about reading them. */

import { describe, expect, test } from 'vitest';
import { chartFractions } from '../../src/solve/drawn-fractions.js';
import { shown } from '../solve/shown.js';

function fractions(items: string): readonly number[] {
  const { level, codes } = shown(48, items);
  expect(codes.filter((code) => code.startsWith('error'))).toEqual([]);
  return level.passages[0]!.fractions;
}

describe('charts by halves', () => {
  test('settling into the second key: 0, .5, .75, .875, 1', () => {
    // Source: brianlemay.com, reading timing charts.
    expect(fractions('1{late}---2..')).toEqual([0.5, 0.75, 0.875]);
    expect(fractions('1{early}---2..')).toEqual([0.125, 0.25, 0.5]);
  });

  test('one in-between: 先ヅメ .25, 後ヅメ .75', () => {
    // Source: gyokai 1403.
    expect(fractions('1{early}-2..')).toEqual([0.25]);
    expect(fractions('1{late}-2..')).toEqual([0.75]);
  });

  test('both ends by halves from the middle', () => {
    // Common practice, no published source.
    expect(fractions('1{both}-2..')).toEqual([0.5]);
    expect(fractions('1{both}---2..')).toEqual([0.25, 0.5, 0.75]);
    expect(fractions('1{both}-----2..')).toEqual([0.125, 0.25, 0.5, 0.75, 0.875]);
    expect(fractions('1{both}--2..')).toEqual([0.25, 0.75]);
    expect(fractions('1{both}----2..')).toEqual([0.125, 0.25, 0.75, 0.875]);
  });

  test('even, said or not, is equal steps', () => {
    expect(fractions('1---2..')).toEqual([0.25, 0.5, 0.75]);
    expect(fractions('1{even}----2..')).toEqual([1 / 5, 2 / 5, 3 / 5, 4 / 5]);
  });

  test('each new drawing of a crowded chart halves a gap between two that are there', () => {
    for (const form of ['early', 'late', 'both'] as const) {
      for (let count = form === 'both' ? 1 : 2; count <= 9; count++) {
        const found = [0, ...chartFractions({ form }, count)!, 1];
        const halves = new Set([0, 1]);
        // Drawn in the order of their denominators: a half before the quarters.
        const order = [...found].sort((a, b) => denominator(a) - denominator(b));
        for (const one of order.slice(0)) {
          if (one === 0 || one === 1) continue;
          const step = 1 / denominator(one);
          const isHalf = halves.has(one - step) || halves.has(one + step);
          expect(isHalf, `${form} ${count}: ${one}`).toBe(true);
          halves.add(one);
        }
      }
    }
  });

  test('early is late seen from the other key', () => {
    for (let count = 1; count <= 12; count++) {
      const late = chartFractions({ form: 'late' }, count)!;
      const early = chartFractions({ form: 'early' }, count)!;
      expect(early).toEqual([...late].reverse().map((each) => 1 - each));
    }
  });

  test('any chart rises, inside its keys', () => {
    for (const form of ['even', 'early', 'late', 'both'] as const) {
      for (let count = 1; count <= 40; count++) {
        const all = [0, ...chartFractions({ form }, count)!, 1];
        for (const [i, each] of all.entries()) if (i > 0) expect(each).toBeGreaterThan(all[i - 1]!);
      }
    }
  });
});

/** 2, 4, 8 …: of a fraction that is made by halving. */
function denominator(fraction: number): number {
  let below = 1;
  while (!Number.isInteger(fraction * below)) below *= 2;
  return below;
}
