import { describe, expect, it, test } from 'vitest';
import type { Spacing } from '../../../src/shot/camera/camera-model.js';
import {
  asGoodAsStill,
  between,
  bezier,
  byRatio,
  curveFits,
  cushionOf,
  easeFits,
  power,
  progress,
  sampled,
} from '../../../src/solve/camera/easing.js';

const shares = (spacing: Spacing, steps: number, start = 1): number[] => {
  const spread = progress(spacing, steps, start);
  return Array.from({ length: steps + 1 }, (_, i) => spread(i));
};

describe('the way done', () => {
  it('is nothing before the first step and all after the last, in every form', () => {
    const forms: Spacing[] = [
      { form: 'linear' },
      { form: 'ease', leave: 2, arrive: 1 },
      { form: 'curve', x1: 0.2, y1: -3, x2: 0.6, y2: 4 },
      { form: 'steps', mm: [1, 2, 3, 4] },
      { form: 'fair', mark: 'a', frame: 3, share: 0.6 },
    ];
    for (const form of forms) {
      const spread = progress(form, 4, 1);
      expect([spread(-1), spread(0), spread(4), spread(9)]).toEqual([0, 0, 1, 1]);
    }
  });

  it('grows evenly', () => {
    expect(shares({ form: 'linear' }, 4)).toEqual([0, 0.25, 0.5, 0.75, 1]);
  });

  it('with ramps goes by the square of the frames in them, evenly between', () => {
    // v = 1 / (8 - (4 + 2) / 2) = 1/5 a step: v i^2 / 8, then v (i - 2), then 1 - v (8 - i)^2 / 4.
    const found = shares({ form: 'ease', leave: 4, arrive: 2 }, 8);
    [0, 0.025, 0.1, 0.225, 0.4, 0.6, 0.8, 0.95, 1].forEach((share, i) => {
      expect(found[i]).toBeCloseTo(share, 15);
    });
  });

  it('by hand is what the graduations add up to', () => {
    expect(shares({ form: 'steps', mm: [2, 3, 5] }, 3)).toEqual([0, 0.2, 0.5, 1]);
  });

  it('by hand may run back', () => {
    expect(shares({ form: 'steps', mm: [-2, 12] }, 2)).toEqual([0, -0.2, 1]);
  });

  it('by hand stands still where the graduations end early', () => {
    expect(shares({ form: 'steps', mm: [1, 3] }, 4)).toEqual([0, 0.25, 1, 1, 1]);
  });

  it('on a curve is the curve’s share at each share of the time', () => {
    const found = shares({ form: 'curve', x1: 0.42, y1: 0, x2: 0.58, y2: 1 }, 4);
    const curve = bezier(0.42, 0, 0.58, 1);
    expect(found).toEqual([0, curve(0.25), curve(0.5), curve(0.75), 1]);
    expect(found[1]).toBeLessThan(0.2);
    // It is the same there and back.
    expect(found[1]! + found[3]!).toBeCloseTo(1, 14);
  });

  it('to a fairing mark is even, then a cushion that goes on at the same speed', () => {
    // 60 % in 4 steps, 6 left: k = .15 * 6 / .4 = 2.25.
    const found = shares({ form: 'fair', mark: 'a', frame: 5, share: 0.6 }, 10);
    [0, 0.15, 0.3, 0.45, 0.6].forEach((share, i) => {
      expect(found[i]).toBeCloseTo(share, 15);
    });
    expect(found[7]).toBeCloseTo(0.6 + 0.4 * (1 - 0.5 ** 2.25), 14);
  });

  it.each<Spacing>([
    { form: 'ease', leave: 3, arrive: 2 },
    { form: 'ease', leave: -1, arrive: 2 },
    { form: 'curve', x1: 1.1, y1: 0, x2: 0.5, y2: 1 },
    { form: 'steps', mm: [1, -1] },
    { form: 'steps', mm: [Number.NaN, 1, 1, 1] },
    { form: 'steps', mm: [2e6, 1, 1, 1] },
    { form: 'fair', mark: 'a', frame: 1, share: 0.6 },
    { form: 'fair', mark: 'a', frame: 3, share: 1 },
  ])('is even where the numbers make no sense: %o', (spacing) => {
    expect(shares(spacing, 4)).toEqual([0, 0.25, 0.5, 0.75, 1]);
  });
});

it('ramps fit that take no more than all steps', () => {
  expect(easeFits({ leave: 3, arrive: 2 }, 5)).toBe(true);
  expect(easeFits({ leave: 3, arrive: 3 }, 5)).toBe(false);
  expect(easeFits({ leave: 0, arrive: 0 }, 5)).toBe(true);
  expect(easeFits({ leave: 0, arrive: -1 }, 5)).toBe(false);
});

it('a curve fits whose time runs from 0 to 1 and whose way stays within ten times', () => {
  expect(curveFits({ x1: 0, y1: -10, x2: 1, y2: 10 })).toBe(true);
  expect(curveFits({ x1: 0, y1: -10.1, x2: 1, y2: 0 })).toBe(false);
  expect(curveFits({ x1: 0, y1: 0, x2: 1.01, y2: 0 })).toBe(false);
  expect(curveFits({ x1: -0.01, y1: 0, x2: 1, y2: 0 })).toBe(false);
});

describe('a cushion', () => {
  it('has the frames on both sides of its mark and its power', () => {
    const cushion = cushionOf({ frame: 9, share: 0.6 }, 1, 21)!;
    expect(cushion).toMatchObject({ share: 0.6, before: 8, left: 12 });
    expect(cushion.power).toBeCloseTo(2.25, 12);
  });

  it.each([
    ['on its first frame', 1, 0.6],
    ['on its last frame', 21, 0.6],
    ['with nothing done', 9, 0],
    ['with all done', 9, 1],
  ])('is none %s', (_, frame, share) => {
    expect(cushionOf({ frame, share }, 1, 21)).toBeNull();
  });

  it('is as good as still where 99.5 % of its way are done', () => {
    const cushion = { share: 0.6, before: 8, left: 12, power: 2 };
    const tau = (asGoodAsStill(cushion) - 8) / 12;
    expect(1 - (1 - tau) ** 2).toBeCloseTo(0.995, 12);
    expect(tau).toBeLessThan(1);
  });
});

describe('a sampled step', () => {
  const steps = (on: number, manner: 'rests' | 'moved') =>
    Array.from({ length: 6 }, (_, i) => sampled(i, 5, on, manner));

  it('is each one on ones', () => {
    expect(steps(1, 'rests')).toEqual([0, 1, 2, 3, 4, 5]);
    expect(steps(1, 'moved')).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it('holds from where it stands; the last shows the end', () => {
    expect(steps(2, 'rests')).toEqual([0, 0, 2, 2, 4, 5]);
  });

  it('of a range has moved on its first frame, and never past the end', () => {
    expect(steps(2, 'moved')).toEqual([0, 2, 2, 4, 4, 5]);
    expect(steps(4, 'moved')).toEqual([0, 4, 4, 4, 4, 5]);
    expect(sampled(5, 6, 4, 'moved')).toBe(6);
  });
});

it('half-way is the mean, or by equal ratios the mean ratio; the ends are exact', () => {
  expect(between(1, 3, 0.5)).toBe(2);
  expect(byRatio(100, 400, 0.5)).toBe(200);
  // Neither 0.7 + (0.1 − 0.7) nor 0.1 · (1.7 / 0.1) is the end to the last digit.
  expect([between(0.7, 0.1, 1), byRatio(0.1, 1.7, 1)]).toEqual([0.1, 1.7]);
  expect([between(0.1, 0.3, 1), byRatio(0.1, 0.3, 0), byRatio(0.1, 0.3, 1)]).toEqual([0.3, 0.1, 0.3]);
});

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

  it('is the curve of its four points', () => {
    for (const [x1, y1, x2, y2] of [
      [0.25, 0.1, 0.25, 1],
      [0.42, 0, 0.58, 1],
      [0.1, -3, 0.2, 4],
      [0.9, 0.4, 0.05, 0.3],
    ] as const) {
      const curve = bezier(x1, y1, x2, y2);
      // Bernstein polynomials, with 0 and 1 at the ends.
      const at = (t: number, p1: number, p2: number) =>
        3 * (1 - t) ** 2 * t * p1 + 3 * (1 - t) * t ** 2 * p2 + t ** 3;
      for (let t = 0.05; t < 1; t += 0.05) expect(curve(at(t, x1, x2))).toBeCloseTo(at(t, y1, y2), 11);
    }
  });

  it('starts at nothing and ends at all', () => {
    const curve = bezier(0.1, -3, 0.2, 4);
    expect([curve(0), curve(1), curve(-1), curve(2)]).toEqual([0, 1, 0, 1]);
  });
});

/** Any numbers from 0 to 1, the same ones in every run: a linear congruential generator modulo 2^32. */
function numbers(count: number): number[] {
  let state = 7;
  return Array.from({ length: count }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  });
}
const BASES = numbers(2000).map((x) => x * 40);

describe('a power is the double nearest to it', () => {
  test('halves are the square roots, which IEEE 754 rounds to the nearest', () => {
    expect(BASES.filter((base) => power(base, 0.5) !== Math.sqrt(base))).toEqual([]);
  });

  test('whole powers of whole numbers are exact as far as a double holds them', () => {
    for (let base = 2; base < 60; base++) {
      let product = base * base;
      for (let exponent = 2; product <= Number.MAX_SAFE_INTEGER; exponent++) {
        expect(power(base, exponent)).toBe(product);
        product *= base;
      }
    }
  });

  test('negative powers of two are exact, down to the smallest double', () => {
    let half = 1;
    for (let n = 1; n <= 1074; n++) {
      half /= 2;
      expect(power(2, -n)).toBe(half);
    }
  });

  test('the engine comes to the same but for its last digit', () => {
    for (const [i, base] of BASES.entries()) {
      const exponent = BASES[BASES.length - 1 - i]! / 10 - 2;
      expect(Math.abs(power(base, exponent) / base ** exponent - 1)).toBeLessThan(4e-16);
    }
  });
});

test.each([
  [0, 2, 0],
  [0, 0, 1],
  [0, -1, Infinity],
  [3.7, 1, 3.7],
  [3.7, 0, 1],
  [1, 1e300, 1],
  [0.5, 1e9, 0],
  [2, 1e9, Infinity],
  [1e300, 2, Infinity],
  [Infinity, -1, 0],
  [Infinity, 0.5, Infinity],
  [-8, 1 / 3, Number.NaN],
  [Number.NaN, 2, Number.NaN],
  [2, Number.NaN, Number.NaN],
])('%d to the power of %d is %d', (base, exponent, expected) => {
  expect(power(base, exponent)).toBe(expected);
});
