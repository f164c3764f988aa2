/** How the width of a block is shared out. */

import { describe, expect, test } from 'vitest';
import {
  besideGutter,
  blockColumns,
  mostCameraLanes,
  mostLevels,
  NARROWEST_COLUMN,
  NO_GUTTERS,
  type WantedColumns,
} from '../../src/sheet/block-columns.js';

const wanted = (more: Partial<WantedColumns> = {}): WantedColumns => ({
  levels: 3,
  main: true,
  bracketMm: 0,
  levelMm: 0,
  labelsMm: 0,
  voices: 1,
  sounds: 1,
  cameraLanes: 1,
  gutters: NO_GUTTERS,
  ...more,
});

test('what is left beside a gutter is as much narrower', () => {
  expect(besideGutter({ x: 10, width: 8 }, 1.5)).toEqual({ x: 11.5, width: 6.5 });
});

describe('a block', () => {
  test('has an empty column more than levels, and the usual number on a wide paper', () => {
    const { keys, cels } = blockColumns(wanted(), 0, 197);
    expect([keys.length, cels.length]).toEqual([4, 6]);
    const narrow = blockColumns(wanted({ levels: 6 }), 0, 110);
    expect(narrow.cels.length).toBeGreaterThan(6);
  });

  test('has dialogue and camera on the first side only', () => {
    const further = blockColumns(wanted({ main: false }), 0, 95);
    expect([further.dialogue, further.camera]).toEqual([null, null]);
    expect(blockColumns(wanted(), 0, 95).camera).not.toBeNull();
  });

  test('gives each level the room for its brackets and its gutter besides', () => {
    const levels = 5;
    const { keys, cels } = blockColumns(
      wanted({ levels, bracketMm: 1.5, gutters: { ...NO_GUTTERS, levels: 1 } }),
      0,
      120,
    );
    for (const { width } of keys.slice(0, levels))
      expect(width).toBeGreaterThanOrEqual(NARROWEST_COLUMN + 2.5 - 1e-9);
    for (const { width } of cels.slice(0, levels))
      expect(width).toBeGreaterThanOrEqual(NARROWEST_COLUMN + 1 - 1e-9);
  });

  test('fills its width to the end', () => {
    for (const width of [95, 197, 400]) {
      const { notes } = blockColumns(wanted(), 7, width);
      expect(notes.x + notes.width).toBeCloseTo(7 + width);
    }
  });
});

test('as many levels fit as have their narrowest columns, and more without dialogue and camera', () => {
  const { levels: _, ...asked } = wanted();
  const most = mostLevels(asked, 95);
  // 4 + 2 × 2.8 for times, 10 for notes, 9.2 for dialogue, 11 for the camera; two columns of 3 a level, one spare.
  expect(most).toBe(Math.floor((95 - 4 - 5.6 - 10 - 9.2 - 11 - 3) / 6));
  expect(mostLevels({ ...asked, main: false }, 95)).toBe(Math.floor((95 - 4 - 5.6 - 10 - 3) / 6));
  expect(mostLevels(asked, 10)).toBe(1);
});

test('as many camera lanes as fit beside one level, at least one', () => {
  const { levels: _, main: __, ...asked } = wanted();
  expect(mostCameraLanes({ ...asked, cameraLanes: 4 }, 95)).toBe(4);
  expect(mostCameraLanes({ ...asked, cameraLanes: 40 }, 95)).toBeLessThan(40);
  expect(mostCameraLanes({ ...asked, cameraLanes: 4 }, 10)).toBe(1);
  expect(mostCameraLanes({ ...asked, cameraLanes: 0 }, 95)).toBe(1);
});
