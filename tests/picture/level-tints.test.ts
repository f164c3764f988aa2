import { expect, it } from 'vitest';
import { tintOf } from '../../src/picture/level-tints.js';

const hue = (index: number): number => Number(/hsl\((\d+)/.exec(tintOf(index).pale)![1]);

it('gives neighbours in the stack hues that are far apart', () => {
  for (let index = 0; index < 12; index++) {
    const apart = Math.abs(hue(index) - hue(index + 1));
    expect(Math.min(apart, 360 - apart)).toBeGreaterThan(90);
  }
});

it('gives a level the same tint whatever stands above it', () => {
  expect(tintOf(3)).toEqual(tintOf(3));
  expect(new Set(Array.from({ length: 12 }, (_, i) => hue(i))).size).toBe(12);
});
