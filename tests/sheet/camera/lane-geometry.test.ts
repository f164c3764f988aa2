/** Where a move stands in the camera column. */

import { describe, expect, test } from 'vitest';
import { NO_GUTTERS } from '../../../src/sheet/block-columns.js';
import { laneOf, lanesShown } from '../../../src/sheet/camera/lane-geometry.js';
import type { BlockFrames, PageSide } from '../../../src/sheet/sheet-plan.js';

describe('lanes that are shown', () => {
  test('are as many as have their least width', () => {
    // 2.5 ems of the smallest print each, and twice that for a wide one.
    expect(lanesShown([1, 1, 1], 7.8, 1.04)).toBe(3);
    expect(lanesShown([1, 1, 1], 7.7, 1.04)).toBe(2);
    expect(lanesShown([2, 1], 7.7, 1.04)).toBe(1);
  });

  test('are at least one', () => {
    expect(lanesShown([2, 1], 1, 1.04)).toBe(1);
    expect(lanesShown([], 10, 1.04)).toBe(0);
  });
});

describe('a lane', () => {
  function lanes(widths: readonly number[], width: number, gutter = 0) {
    const side = {
      plan: { camera: { lanes: widths } },
      geometry: { scale: 1, leastTextMm: 1.4, gutters: { ...NO_GUTTERS, camera: gutter } },
    } as unknown as PageSide;
    const run = { block: { columns: { camera: { x: 100, width } } } } as unknown as BlockFrames;
    return widths.map((_, i) => laneOf(side, run, i));
  }

  test('has its share of the column', () => {
    const [wide, narrow] = lanes([2, 1], 12);
    expect([wide!.x, wide!.width]).toEqual([100, 8]);
    expect([narrow!.x, narrow!.width]).toEqual([108, 4]);
  });

  test('stands beside the gutter for change bars', () => {
    expect(lanes([1], 6, 2)[0]).toMatchObject({ x: 102, width: 4 });
  });

  test('is not made wider than it needs: the rest is the pencil’s', () => {
    expect(lanes([1], 30)[0]!.width).toBe(9);
  });

  test('has its line, its names and its words from left to right', () => {
    const [lane] = lanes([1], 6);
    const { x, width, lineX, zoneX, zoneEnd, strip } = lane!;
    expect([x, lineX, zoneX, zoneEnd, strip.x]).toEqual(
      [x, lineX, zoneX, zoneEnd, strip.x].sort((p, q) => p - q),
    );
    expect(strip.x + strip.width).toBeLessThan(x + width);
    expect(strip.width).toBeGreaterThan(1.4);
  });

  test('is none where there is no room', () => {
    expect(lanes([1, 1], 5)[1]).toBeNull();
  });
});
