import { applyToPoint, compose, inverse as inverted } from 'transformation-matrix';
import { describe, expect, it } from 'vitest';
import { after, applied, boxAfter, inverse } from '../../src/picture/affine.js';
import type { Matrix } from '../../src/picture/frame-picture.js';

const ONE: Matrix = [1.2, 0.4, -0.3, 0.9, 11, -7];
const TWO: Matrix = [0.5, -0.8, 0.7, 1.1, -4, 3];
const theirs = ([a, b, c, d, e, f]: Matrix) => ({ a, b, c, d, e, f });

describe('matrices of the plane', () => {
  // Held against npm `transformation-matrix`.
  it('are put after each other', () => {
    const { x, y } = applyToPoint(compose(theirs(ONE), theirs(TWO)), { x: 5, y: 6 });
    const ours = applied(after(ONE, TWO), 5, 6);
    expect(ours.x).toBeCloseTo(x, 12);
    expect(ours.y).toBeCloseTo(y, 12);
  });

  it('are turned round, where they can be', () => {
    const { x, y } = applyToPoint(inverted(theirs(ONE)), { x: 5, y: 6 });
    const ours = applied(inverse(ONE)!, 5, 6);
    expect(ours.x).toBeCloseTo(x, 12);
    expect(ours.y).toBeCloseTo(y, 12);
    expect(inverse([1, 2, 2, 4, 0, 0])).toBeNull();
    expect(inverse([Number.NaN, 0, 0, 1, 0, 0])).toBeNull();
  });

  it('lead a box into the smallest upright box around it', () => {
    const turned: Matrix = [0, 1, -1, 0, 10, 0];
    expect(boxAfter(turned, { left: 0, right: 4, bottom: 0, top: 2 })).toEqual({
      left: 8,
      right: 10,
      bottom: 0,
      top: 4,
    });
  });
});
