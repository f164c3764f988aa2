import { describe, expect, test } from 'vitest';
import type { ShotChart } from '../../src/shot/shot.js';
import { chartFractions, narrowestGap } from '../../src/solve/chart-fractions.js';

const of = (form: Exclude<ShotChart['form'], 'fractions'>, count: number) => chartFractions({ form }, count);

describe('a chart as fractions of the way', () => {
  test('even: equal steps', () => {
    expect(of('even', 1)).toEqual([1 / 2]);
    expect(of('even', 3)).toEqual([1 / 4, 1 / 2, 3 / 4]);
  });

  test('late: half of what is left to the second key, again and again', () => {
    expect(of('late', 3)).toEqual([1 / 2, 3 / 4, 7 / 8]);
  });

  test('early: late seen in a mirror', () => {
    expect(of('early', 3)).toEqual([1 / 8, 1 / 4, 1 / 2]);
  });

  test('late and early with one in-between are not even', () => {
    expect(of('late', 1)).toEqual([3 / 4]);
    expect(of('early', 1)).toEqual([1 / 4]);
  });

  test('both: halves from the middle to both keys', () => {
    expect(of('both', 1)).toEqual([1 / 2]);
    expect(of('both', 2)).toEqual([1 / 4, 3 / 4]);
    expect(of('both', 3)).toEqual([1 / 4, 1 / 2, 3 / 4]);
    expect(of('both', 5)).toEqual([1 / 8, 1 / 4, 1 / 2, 3 / 4, 7 / 8]);
  });

  test('as they are written', () => {
    expect(chartFractions({ form: 'fractions', fractions: [0.1, 0.7] }, 2)).toEqual([0.1, 0.7]);
  });

  test('none where as many are not written as there are in-betweens', () => {
    expect(chartFractions({ form: 'fractions', fractions: [0.1, 0.7] }, 3)).toBeNull();
  });

  test.each(['even', 'late', 'early', 'both'] as const)('%s: rising, between the keys', (form) => {
    for (let count = 1; count <= 12; count++) {
      const all = [0, ...of(form, count)!, 1];
      expect(all).toHaveLength(count + 2);
      for (let i = 1; i < all.length; i++) expect(all[i]).toBeGreaterThan(all[i - 1]!);
    }
  });
});

describe('the narrowest gap', () => {
  test.each([
    [[0.5], 0.5],
    [[0.25, 0.5], 0.25],
    [[0.1, 0.9], 0.1],
    [[0.4, 0.95], 0.05],
    [[0.4, 0.45, 0.9], 0.05],
  ])('of %j, keys included, is %d', (fractions, gap) => {
    expect(narrowestGap(fractions)).toBeCloseTo(gap, 12);
  });
});
