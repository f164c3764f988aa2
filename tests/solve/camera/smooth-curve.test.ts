import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vector } from '../../../src/solve/camera/plane-turns.js';
import { curveOf, smoothCurve } from '../../../src/solve/camera/smooth-curve.js';
import { at, field, leg, pan, slide } from './build.js';

const apart = (a: Vector, b: Vector) => Math.hypot(a.x - b.x, a.y - b.y);
const mix = (a: Vector, b: Vector, t: number, from: number, to: number): Vector => ({
  x: (a.x * (to - t) + b.x * (t - from)) / (to - from),
  y: (a.y * (to - t) + b.y * (t - from)) / (to - from),
});

/** Length of a way by so many chords. */
function measured(way: (u: number) => Vector, until = 1, chords = 20_000): number {
  let sum = 0;
  for (let i = 0; i < chords; i++) sum += apart(way((until * i) / chords), way((until * (i + 1)) / chords));
  return sum;
}

describe('a curve through three places', () => {
  it('is a parabola with its length: base 160, height 60', () => {
    const curve = smoothCurve([
      { x: 0, y: 0 },
      { x: 80, y: 60 },
      { x: 160, y: 0 },
    ]);
    // Arc of a parabola over its base b with height h: √(b² + 16h²)/2 + b²/(8h) · ln((4h + √(b² + 16h²))/b), a textbook integral.
    const [b, h] = [160, 60];
    const root = Math.sqrt(b * b + 16 * h * h);
    const whole = root / 2 + ((b * b) / (8 * h)) * Math.log((4 * h + root) / b);
    expect(curve.lengths[2]).toBeCloseTo(whole, 8);
    expect(curve.lengths[1]).toBeCloseTo(whole / 2, 8);
    for (let mm = 0; mm <= whole; mm += whole / 17) {
      const { x, y } = curve.at(mm);
      expect(y).toBeCloseTo(60 - (60 * (x - 80) ** 2) / 80 ** 2, 8);
    }
  });

  it('is the parabola of their centripetal times, whatever they are', () => {
    const [p, q, r]: [Vector, Vector, Vector] = [
      { x: -20, y: 5 },
      { x: 70, y: 40 },
      { x: 90, y: -30 },
    ];
    const curve = smoothCurve([p, q, r]);
    const [h, k] = [Math.sqrt(apart(p, q)), Math.sqrt(apart(q, r))];
    const lagrange = (u: number): Vector => {
      const t = u * (h + k);
      return mix(mix(p, q, t, 0, h), mix(q, r, t, h, h + k), t, 0, h + k);
    };
    for (const u of [0.2, 0.5, 0.9])
      expect(apart(curve.at(measured(lagrange, u)), lagrange(u))).toBeLessThan(1e-5);
    expect(curve.lengths[2]).toBeCloseTo(measured(lagrange), 5);
  });
});

describe('a curve through more places', () => {
  const places: Vector[] = [
    { x: 0, y: 0 },
    { x: 30, y: 50 },
    { x: 140, y: 20 },
    { x: 150, y: -60 },
    { x: 60, y: -90 },
  ];
  const curve = smoothCurve(places);

  it('passes each of them, and at those in the middle halves the bend', () => {
    expect(curve.lengths.map((mm) => curve.at(mm))).toEqual(places);
    for (const i of [1, 2, 3]) {
      const [a, b, c] = [places[i - 1]!, places[i]!, places[i + 1]!];
      const along = (from: Vector, to: Vector) => Math.atan2(to.y - from.y, to.x - from.x);
      const half = (along(a, b) + along(b, c)) / 2;
      const { x, y } = curve.directionAt(curve.lengths[i]!)!;
      expect(Math.abs(Math.sin(Math.atan2(y, x) - half))).toBeLessThan(1e-9);
    }
  });

  it('is in the middle what the pyramid of Barry and Goldman makes of four places', () => {
    // P. J. Barry, R. N. Goldman, “A recursive evaluation algorithm for a class of Catmull-Rom splines”, SIGGRAPH 1988.
    const four = places.slice(1);
    const t = [0, 0, 0, 0];
    for (let i = 1; i < 4; i++) t[i] = t[i - 1]! + Math.sqrt(apart(four[i - 1]!, four[i]!));
    const pyramid = (u: number): Vector => {
      const now = t[1]! + u * (t[2]! - t[1]!);
      const a = [0, 1, 2].map((i) => mix(four[i]!, four[i + 1]!, now, t[i]!, t[i + 1]!));
      const b = [0, 1].map((i) => mix(a[i]!, a[i + 1]!, now, t[i]!, t[i + 2]!));
      return mix(b[0]!, b[1]!, now, t[1]!, t[2]!);
    };
    const [from, to] = [curve.lengths[2]!, curve.lengths[3]!];
    expect(to - from).toBeCloseTo(measured(pyramid), 5);
    for (const u of [0.1, 0.4, 0.75])
      expect(apart(curve.at(from + measured(pyramid, u)), pyramid(u))).toBeLessThan(1e-5);
  });

  it('goes on straight before the first and behind the last place', () => {
    const end = curve.lengths[4]!;
    const { x, y } = curve.directionAt(end)!;
    expect(curve.at(end + 10)).toEqual({
      x: expect.closeTo(60 + 10 * x, 9),
      y: expect.closeTo(-90 + 10 * y, 9),
    });
    expect(apart(curve.at(-10), places[0]!)).toBeCloseTo(10, 9);
  });
});

describe('a curve', () => {
  it('is straight along one line, and turns back on its place without going past it', () => {
    const line = smoothCurve([0, 10, 90, 100].map((x) => ({ x, y: 0 })));
    expect(line.lengths).toEqual([0, 10, 90, 100].map((mm) => expect.closeTo(mm, 9)));
    expect(line.at(37)).toEqual({ x: expect.closeTo(37, 6), y: 0 });
    const back = smoothCurve([0, 100, 50].map((x) => ({ x, y: 0 })));
    for (let mm = 0; mm <= back.lengths[2]!; mm += 3) expect(back.at(mm).x).toBeLessThanOrEqual(100 + 1e-9);
  });

  it('stands still where a place is repeated, and everywhere where all are one', () => {
    const held = smoothCurve([0, 50, 50, 80].map((x) => ({ x, y: x * x * 0.01 })));
    expect(held.lengths[2]).toBe(held.lengths[1]);
    const one = smoothCurve([
      { x: 3, y: 4 },
      { x: 3, y: 4 },
    ]);
    expect([one.lengths, one.at(5), one.directionAt(0)]).toEqual([[0, 0], { x: 3, y: 4 }, null]);
  });

  it('is measured along itself: what lies so far apart along it lies no further apart across', () => {
    const places = fc.array(
      fc.record({ x: fc.integer({ min: -300, max: 300 }), y: fc.integer({ min: -300, max: 300 }) }),
      {
        minLength: 3,
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(places, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
        const curve = smoothCurve(points);
        const end = curve.lengths.at(-1)!;
        const [a, b] = [curve.at(share * end), curve.at(Math.min(end, share * end + 0.5))];
        expect([a, b].every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
        expect(apart(a, b)).toBeLessThanOrEqual(0.5 + 1e-6);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the legs of a curved move', () => {
  it('are the parts of the curve between its frames, over the places that have none', () => {
    const [a, b, c, d] = [
      [0, 0],
      [40, 30],
      [90, 0],
      [120, 60],
    ].map(([xMm, yMm], i) => field('ABCD'[i]!, { xMm: xMm!, yMm: yMm! }));
    const legs = [{ ...leg(a!, 1, c!, 24), passing: [b!] }, leg(c!, 24, d!, 48)];
    const curve = curveOf(pan(legs, { curved: true }))!;
    const whole = smoothCurve([a, b, c, d].map((one) => ({ x: one!.xMm, y: one!.yMm })));
    expect(curve.legs.map(({ lengthMm }) => lengthMm)).toEqual([
      whole.lengths[2],
      whole.lengths[3]! - whole.lengths[2]!,
    ]);
    expect(curve.legs[1]!.at(1)).toEqual({ x: 120, y: 60 });
    expect(curve.legs[0]!.at(0.5)).toEqual(whole.at(whole.lengths[2]! / 2));
    expect(curveOf(pan(legs))).toBeNull();
    expect(
      curveOf(slide(['A'], [leg(at(0, 0), 1, at(9, 0), 5), leg(at(9, 0), 5, at(9, 9), 9)], { curved: true }))!
        .legs,
    ).toHaveLength(2);
  });
});
