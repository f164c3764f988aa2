/** Widths that are measured once. */

import { describe, expect, test } from 'vitest';
import type { Metrics } from '../../src/sheet/display-list.js';
import { black } from '../../src/sheet/mark-builders.js';
import {
  cachedMetrics,
  fitLine,
  NARROWEST_SQUEEZE,
  ringed,
  setInBox,
  wrap,
} from '../../src/sheet/text-fitting.js';
import { textsOf } from './laid.js';
import { plainMetrics } from './plain-metrics.js';

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

// ---- making text fit. Every character is half an em wide here

const TEN = 'abcdefghij';

describe('one line', () => {
  const fitted = (width: number, most = 2, least = 1) => fitLine(plainMetrics, TEN, width, { most, least });

  test('is as large as may be where it fits', () => {
    expect(fitted(10)).toEqual({ sizeMm: 2, squeeze: 1, fits: true });
  });

  test('is squeezed a little before it is made smaller', () => {
    const { sizeMm, squeeze, fits } = fitted(9);
    expect(sizeMm).toBe(2);
    expect(squeeze).toBeCloseTo(0.9);
    expect(fits).toBe(true);
  });

  test('is made smaller with a squeeze of 0.85', () => {
    const { sizeMm, squeeze } = fitted(6);
    expect(squeeze).toBeCloseTo(0.85);
    expect(sizeMm).toBeCloseTo(6 / 5 / 0.85);
  });

  test('does not fit where even the smallest print is too narrow to be read', () => {
    expect(fitted(5 * NARROWEST_SQUEEZE + 0.01)).toMatchObject({ sizeMm: 1, fits: true });
    expect(fitted(5 * NARROWEST_SQUEEZE - 0.01)).toMatchObject({ sizeMm: 1, fits: false });
  });
});

test('lines are no wider than asked for, at the size asked for', () => {
  expect(wrap(plainMetrics, 'ab cd ef', 5, 2)).toEqual(['ab cd', 'ef']);
  expect(wrap(plainMetrics, 'ab cd ef', 5, 4)).toEqual(['ab', 'cd', 'ef']);
});

describe('a text in a box', () => {
  const box = { x: 10, y: 20, width: 10, height: 6 };
  const size = { most: 2, least: 1 };

  test('stands in its middle, on one line where that can be', () => {
    const { marks, fits } = setInBox(plainMetrics, 'abc', box, size);
    expect(fits).toBe(true);
    expect(marks).toMatchObject([{ text: 'abc', x: 15, sizeMm: 2, anchor: 'middle' }]);
    // The middle of the capitals: 0.37 ems over the baseline.
    expect(textsOf(marks)[0]!.y).toBeCloseTo(23 + 0.37 * 2);
  });

  test('is broken over several lines, from the top where asked for', () => {
    const { marks, fits } = setInBox(plainMetrics, 'abcdef ghijkl', box, {
      ...size,
      down: 'top',
      across: 'start',
    });
    expect(fits).toBe(true);
    expect(textsOf(marks).map(({ text, x }) => [text, x])).toEqual([
      ['abcdef', 10],
      ['ghijkl', 10],
    ]);
    expect(textsOf(marks)[0]!.y).toBeCloseTo(20 + 1 + 0.37 * 2);
  });

  test('is as much as fits where even the smallest does not', () => {
    const { marks, fits } = setInBox(plainMetrics, `${TEN} `.repeat(20).trim(), box, size);
    expect(fits).toBe(false);
    expect(marks.length).toBeGreaterThan(2);
    for (const { sizeMm, y } of textsOf(marks)) {
      expect(sizeMm).toBe(1);
      expect(y).toBeLessThan(26);
    }
  });

  test('reads upwards, its lines from left to right', () => {
    const tall = { x: 10, y: 20, width: 6, height: 10 };
    const { marks } = setInBox(plainMetrics, 'abcdef ghijkl', tall, {
      ...size,
      upwards: true,
      across: 'start',
    });
    const [first, second] = textsOf(marks);
    expect([first!.text, first!.turn, first!.y]).toEqual(['abcdef', -90, 30]);
    expect(second!.x).toBeGreaterThan(first!.x);
  });

  test('of nothing is nothing, and fits', () => {
    expect(setInBox(plainMetrics, '', box, size)).toEqual({ marks: [], fits: true });
  });
});

describe('a text in a ring', () => {
  const ring = (text: string, widestMm: number) =>
    ringed(plainMetrics, text, { r: 2, widestMm, mostMm: 2, leastMm: 1, stroke: black(0.2) });

  test('that is short stands in a circle', () => {
    const set = ring('1', 10);
    expect(set.widthMm).toBe(4);
    expect(set.at(5, 6)).toMatchObject([
      { kind: 'circle', x: 5, y: 6, r: 2 },
      { kind: 'text', text: '1', weight: 'bold' },
    ]);
  });

  test('that is longer stands in a pill, no wider than there is room', () => {
    const set = ring('12345', 10);
    expect(set.widthMm).toBeGreaterThan(4);
    expect(set.widthMm).toBeLessThanOrEqual(10);
    expect(set.fits).toBe(true);
    expect(set.at(0, 0)[0]).toMatchObject({ kind: 'path', closed: true });
  });

  test('that is too long does not fit', () => {
    const set = ring('1234567890123456789012345', 6);
    expect(set.fits).toBe(false);
    expect(set.widthMm).toBe(6);
  });

  test('is no higher than the room is wide', () => {
    expect(ring('1', 3).at(0, 0)[0]).toMatchObject({ kind: 'circle', r: 1.5 });
  });
});
