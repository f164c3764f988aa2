/** One ladder. */

import { describe, expect, it, test } from 'vitest';
import type { Ladder, Step } from '../../../src/sheet/charts/chart-ladders.js';
import { columnsFor, lengthOf, piecesOf, spreadLabels } from '../../../src/sheet/charts/ladder-marks.js';
import { plainMetrics } from '../plain-metrics.js';

const step = (way: number, more: Partial<Step> = {}): Step => ({
  drawing: '1.1',
  cel: 2,
  kind: way === 0 || way === 1 ? 'key' : 'inbetween',
  way,
  parts: 4,
  exposed: [2],
  ...more,
});
const ladder = (ways: readonly number[]) =>
  ({ level: 'A', steps: ways.map((way) => step(way)) }) as unknown as Ladder;
const even = (count: number) => ladder(Array.from({ length: count + 1 }, (_, i) => i / count));

describe('a ladder that is too long for a page', () => {
  test('is cut into as few pieces as will do, with one drawing in common', () => {
    // 3.6 mm a line: 10 gaps on 36 mm.
    const pieces = piecesOf(even(25), 36.1);
    expect(pieces.map(({ piece, pieces: of, steps }) => [piece, of, steps.length])).toEqual([
      [1, 3, 9],
      [2, 3, 9],
      [3, 3, 10],
    ]);
    expect(pieces[0]!.steps.at(-1)).toBe(pieces[1]!.steps[0]);
    expect(pieces[1]!.steps.at(-1)).toBe(pieces[2]!.steps[0]);
  });

  test('is whole where it goes onto the page', () => {
    expect(piecesOf(even(10), 36.1)).toMatchObject([{ piece: 1, pieces: 1 }]);
  });
});

describe('the length of a ladder', () => {
  const length = (it: Ladder, longestMm = 200) => lengthOf(piecesOf(it, 1000)[0]!, longestMm);

  test('is 34 mm at least, and 4.8 mm a line', () => {
    expect(length(even(2))).toBe(34);
    expect(length(even(10))).toBe(48);
  });

  test('grows where strokes crowd, so that they are 1.6 mm apart, up to 64 mm', () => {
    expect(length(ladder([0, 0.04, 1]))).toBeCloseTo(40);
    expect(length(ladder([0, 0.001, 1]))).toBe(64);
    expect(length(ladder([0, 0, 1]))).toBe(64);
  });

  test('is never more than there is room', () => {
    expect(length(even(100), 120)).toBe(120);
  });
});

test('columns are as wide as their widest text or heading, a breakdown with its brackets', () => {
  const headings = { number: 'No.', drawing: 'drawing', way: 'way', frames: 'frames' };
  const widths = (steps: readonly Step[]) => columnsFor(steps, headings, plainMetrics);
  // Three characters of half an em of 2.6 mm, and of 3.5 mm, and 2 mm.
  expect(widths([step(0.5)]).number).toBeCloseTo(3 * 1.3 + 2);
  expect(widths([step(0.5, { cel: 1234 })]).number).toBeCloseTo(4 * 1.75 + 2);
  expect(widths([step(0.5, { drawing: '1.123456', kind: 'breakdown' })]).name).toBeCloseTo(10 * 1.55 + 2);
  expect(widths([step(0.5, { drawing: 'x'.repeat(60) })]).name).toBe(26);
});

// ---- labels pushed apart

describe('labels pushed apart', () => {
  it('stay where they wish to be where there is room', () => {
    expect(spreadLabels([1, 5, 9], 2, 0, 10)).toEqual([1, 5, 9]);
  });

  it('share the room about their mean where they crowd, in order', () => {
    expect(spreadLabels([5, 5, 5], 2, 0, 10)).toEqual([3, 5, 7]);
    expect(spreadLabels([9.9, 10, 10], 2, 0, 10)).toEqual([6, 8, 10]);
    expect(spreadLabels([0, 0, 4], 2, 0, 10)).toEqual([0, 2, 4]);
  });
});
