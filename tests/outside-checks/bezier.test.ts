import BezierEasing from 'bezier-easing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bezier } from '../../src/solve/camera/easing.js';

describe('cubic Bézier timing', () => {
  it('has the values of W3C CSS Easing 1', () => {
    // Points of the named curves of the standard, rounded to six digits there as here.
    expect(bezier(0.42, 0, 0.58, 1)(0.25)).toBeCloseTo(0.129162, 6);
    expect(bezier(0.42, 0, 0.58, 1)(0.75)).toBeCloseTo(0.870838, 6);
    expect(bezier(0.25, 0.1, 0.25, 1)(0.5)).toBeCloseTo(0.802403, 6);
    expect(bezier(0.3, -0.4, 0.6, 1.4)(0.1)).toBeCloseTo(-0.057903, 6);
  });

  it('agrees with npm bezier-easing for any curve', () => {
    // That library stops at single precision and a slope of .001; where the curve stands upright it is no reference.
    const time = fc.double({ min: 0.02, max: 0.98, noNaN: true });
    const way = fc.double({ min: -2, max: 3, noNaN: true });
    fc.assert(
      fc.property(time, way, time, way, fc.double({ min: 0, max: 1, noNaN: true }), (x1, y1, x2, y2, x) => {
        expect(Math.abs(bezier(x1, y1, x2, y2)(x) - BezierEasing(x1, y1, x2, y2)(x))).toBeLessThan(2e-4);
      }),
      { numRuns: 3000 },
    );
  });
});
