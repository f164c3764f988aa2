/** Widths that are measured once. */

import { expect, test } from 'vitest';
import type { Metrics } from '../../src/sheet/display-list.js';
import { cachedMetrics } from '../../src/sheet/metrics-cache.js';

function counting(): { metrics: Metrics; asked: string[] } {
  const asked: string[] = [];
  const width: Metrics['width'] = (text, sizeMm, weight) => {
    asked.push(`${text} ${weight}`);
    return text.length * sizeMm * (weight === 'bold' ? 0.6 : 0.5);
  };
  return { metrics: { width }, asked };
}

test('a text is measured once for all sizes, and once a weight', () => {
  const { metrics, asked } = counting();
  const kept = cachedMetrics(metrics);
  expect([kept.width('abc', 2, 'regular'), kept.width('abc', 4, 'regular')]).toEqual([3, 6]);
  expect(kept.width('abc', 1, 'bold')).toBeCloseTo(1.8);
  expect(asked).toEqual(['abc regular', 'abc bold']);
});

test('the same metrics have one cache, which is its own', () => {
  const { metrics } = counting();
  expect(cachedMetrics(metrics)).toBe(cachedMetrics(metrics));
  expect(cachedMetrics(cachedMetrics(metrics))).toBe(cachedMetrics(metrics));
  expect(cachedMetrics(counting().metrics)).not.toBe(cachedMetrics(metrics));
});

test('it starts again where far too many texts are known', () => {
  const { metrics, asked } = counting();
  const kept = cachedMetrics(metrics);
  for (let i = 0; i <= 50_001; i++) kept.width(`${i}`, 1, 'regular');
  asked.length = 0;
  kept.width('0', 1, 'regular');
  expect(asked).toEqual(['0 regular']);
});
