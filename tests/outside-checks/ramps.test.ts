import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenSteps } from '../../src/shot/camera/move-parameters.js';
import { progress } from '../../src/solve/camera/easing.js';

const ease = (leave: number, arrive: number, steps: number) =>
  progress({ form: 'ease', leave, arrive }, steps, 0);

/** Simpson's rule over the speed of a trapezoid, piece by piece: the reference knows nothing of the solver's formula. */
function integrated(leave: number, arrive: number, steps: number, until: number): number {
  const speed = (t: number) => {
    const rising = leave > 0 ? Math.min(1, t / leave) : 1;
    const falling = arrive > 0 ? Math.min(1, (steps - t) / arrive) : 1;
    return Math.min(rising, falling);
  };
  const area = (end: number) => {
    const knees = [0, leave, steps - arrive, steps].filter((k) => k < end).concat(end);
    let sum = 0;
    for (let i = 1; i < knees.length; i++) {
      const a = knees[i - 1]!;
      const b = knees[i]!;
      const inside = (t: number) => speed(Math.min(b - 1e-12, Math.max(a + 1e-12, t)));
      sum += ((b - a) / 6) * (inside(a) + 4 * inside((a + b) / 2) + inside(b));
    }
    return sum;
  };
  return area(until) / area(steps);
}

/** The constant speed between the ramps, as a share of the way a step. */
const easeSpeed = (leave: number, arrive: number, steps: number) =>
  1 / evenSteps({ form: 'ease', leave, arrive }, steps);

describe('ramps', () => {
  it('of 12 and 12 frames over 254 mm in 48 run at 7.055556 mm a frame between', () => {
    // Computed two ways: closed form and integration.
    const p = ease(12, 12, 48);
    const mm = (i: number) => 254 * p(i);
    expect(254 * easeSpeed(12, 12, 48)).toBeCloseTo(7.055556, 6);
    expect(mm(24) - mm(23)).toBeCloseTo(7.055556, 6);
    expect(mm(1)).toBeCloseTo(0.294, 4);
    expect(mm(2) - mm(1)).toBeCloseTo(0.8819, 4);
    expect(mm(12) - mm(11)).toBeCloseTo(6.7616, 4);
    expect(mm(12)).toBeCloseTo(42.333, 3);
    expect(254 - mm(36)).toBeCloseTo(42.333, 3);
  });

  it('step v(2k-1)/(2a) on their k-th frame', () => {
    const v = easeSpeed(8, 5, 30);
    const p = ease(8, 5, 30);
    for (let k = 1; k <= 8; k++) expect(p(k) - p(k - 1)).toBeCloseTo((v * (2 * k - 1)) / 16, 14);
  });

  it('stop from 4 mm a frame over 8 frames in 16 mm, by 3.75, 3.25 … .25', () => {
    // Deceleration d = v t/2, computed.
    const steps = 20;
    const way = 4 / easeSpeed(0, 8, steps);
    const p = ease(0, 8, steps);
    const mm = Array.from({ length: 8 }, (_, i) => way * (p(13 + i) - p(12 + i)));
    expect(way * (1 - p(12))).toBeCloseTo(16, 10);
    mm.forEach((step, i) => {
      expect(step).toBeCloseTo(3.75 - 0.5 * i, 10);
    });
  });

  it('agree with the numerical integral of their speed', () => {
    const cases = fc
      .record({
        leave: fc.integer({ min: 0, max: 60 }),
        arrive: fc.integer({ min: 0, max: 60 }),
        even: fc.integer({ min: 0, max: 60 }),
      })
      .filter(({ leave, arrive, even }) => leave + arrive + even > 0);
    fc.assert(
      fc.property(cases, fc.double({ min: 0, max: 1, noNaN: true }), ({ leave, arrive, even }, share) => {
        const steps = leave + arrive + even;
        const i = Math.round(share * steps);
        expect(ease(leave, arrive, steps)(i)).toBeCloseTo(integrated(leave, arrive, steps, i), 9);
      }),
      { numRuns: 2000 },
    );
  });
});
