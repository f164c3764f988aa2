import { describe, expect, it } from 'vitest';
import { bezier } from '../../../src/solve/camera/bezier.js';

describe('cubic Bézier timing', () => {
  it('solves its own x back to full precision, also where the curve stands upright', () => {
    for (const [x1, x2] of [
      [1, 0],
      [0, 1],
      [0, 0],
      [1, 1],
      [0.999, 0.001],
    ] as const) {
      // With y = x the way is the time, whatever the curve.
      const straight = bezier(x1, x1, x2, x2);
      for (let i = 0; i <= 200; i++) expect(straight(i / 200)).toBeCloseTo(i / 200, 14);
    }
  });

  it('starts at nothing and ends at all', () => {
    const curve = bezier(0.1, -3, 0.2, 4);
    expect([curve(0), curve(1), curve(-1), curve(2)]).toEqual([0, 1, 0, 1]);
  });
});
