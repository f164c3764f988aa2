import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Field, Spacing } from '../../../src/shot/camera/camera-model.js';
import { cushionOf, progress } from '../../../src/solve/camera/easing.js';
import * as build from './build.js';

const { at, field, follow, leg, level, pan, pull, slide, solved, truck } = build;

const number = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const place = fc.record({ xMm: number(300), yMm: number(300), turnDeg: number(30) });
const spacings = fc.oneof(
  fc.constant<Spacing>({ form: 'linear' }),
  fc
    .record({ leave: fc.integer({ min: 0, max: 10 }), arrive: fc.integer({ min: 0, max: 10 }) })
    .map((ramps): Spacing => ({ form: 'ease', ...ramps })),
  fc
    .record({
      x1: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      y1: number(2),
      x2: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
      y2: number(2),
    })
    .map((curve): Spacing => ({ form: 'curve', ...curve })),
  fc
    .array(fc.double({ min: 0.1, max: 9, noNaN: true }), { minLength: 24, maxLength: 24 })
    .map((mm): Spacing => ({ form: 'steps', mm })),
);

/** The same way, seen backwards. */
function backwards(spacing: Spacing): Spacing {
  switch (spacing.form) {
    case 'ease':
      return { form: 'ease', leave: spacing.arrive, arrive: spacing.leave };
    case 'curve':
      return {
        form: 'curve',
        x1: 1 - spacing.x2,
        y1: 1 - spacing.y2,
        x2: 1 - spacing.x1,
        y2: 1 - spacing.y1,
      };
    case 'steps':
      return { form: 'steps', mm: [...spacing.mm].reverse() };
    default:
      return spacing;
  }
}

describe('a follow', () => {
  it('looks the same as the pull the other way, to the last digit, with level and background the whole stack', () => {
    const cases = fc.record({
      view: place,
      width: fc.double({ min: 40, max: 300, noNaN: true }),
      // Eighths, so that the opposite angle has no rounding of its own.
      angle: fc.integer({ min: -2880, max: 2880 }).map((n) => n / 8),
      distance: number(900),
      on: fc.integer({ min: 1, max: 3 }),
      spacing: spacings,
    });
    fc.assert(
      fc.property(cases, ({ view, width, angle, distance, on, spacing }) => {
        const rest = field('V', { ...view, widthMm: width });
        const levels = [level('BG'), level('A')];
        const common = { on, spacing };
        const camera = solved({
          levels,
          rest,
          moves: [follow(['A'], angle + 180, distance, 5, 28, common)],
        }).solved;
        const ground = solved({ levels, rest, moves: [pull(['BG'], angle, distance, 5, 28, common)] }).solved;
        for (const name of ['BG', 'A']) {
          const screen = (s: typeof camera) => s.placement.get(name)!.map((p) => [p.screenX, p.screenY]);
          expect(screen(camera)).toEqual(screen(ground));
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('a move reversed in time', () => {
  it('retraces itself: with `@` frame a + b - f, with a range frame a + b - 1 - f', () => {
    fc.assert(
      fc.property(place, place, spacings, fc.boolean(), (p, q, spacing, log) => {
        const P = field('P', { ...p, widthMm: 90 });
        const Q = field('Q', { ...q, widthMm: 200 });
        const positions = (from: Field, to: Field, s: Spacing) =>
          solved({ length: 40, moves: [truck([leg(from, 8, to, 32, s)], { ratios: log })] }).solved.frames;
        // Graduations by hand are no matter of trucks, but their progress is the same.
        const there = positions(P, Q, spacing);
        const back = positions(Q, P, backwards(spacing));
        for (let f = 8; f <= 32; f++) {
          const a = there[f - 1]!;
          const b = back[40 - f - 1]!;
          expect(Math.abs(a.x - b.x)).toBeLessThan(1e-6);
          expect(Math.abs(a.width - b.width)).toBeLessThan(1e-6);
          expect(Math.abs(a.rotation - b.rotation)).toBeLessThan(1e-6);
        }
        const pulled = (way: 0 | 180, s: Spacing) =>
          solved({ length: 40, moves: [pull(['BG'], way, 240, 9, 32, { spacing: s })] })
            .solved.placement.get('BG')!
            .map(({ x }) => x);
        const right = pulled(0, spacing);
        const left = pulled(180, backwards(spacing));
        for (let f = 9; f < 32; f++) expect(right[f - 1]! - (240 + left[40 - f - 1]!)).toBeCloseTo(0, 6);
      }),
      { numRuns: 300 },
    );
  });
});

describe('a linear leg', () => {
  it('may be split in two without a change', () => {
    fc.assert(
      fc.property(place, place, fc.integer({ min: 2, max: 39 }), (p, q, middle) => {
        const P = field('P', p);
        const Q = field('Q', q);
        const share = (middle - 1) / 39;
        const between = (a: number, b: number) => a + (b - a) * share;
        const M = field('M', {
          xMm: between(P.xMm, Q.xMm),
          yMm: between(P.yMm, Q.yMm),
          turnDeg: between(P.turnDeg, Q.turnDeg),
        });
        const whole = solved({ length: 40, moves: [pan([leg(P, 1, Q, 40)])] }).solved.frames;
        const split = solved({ length: 40, moves: [pan([leg(P, 1, M, middle), leg(M, middle, Q, 40)])] });
        whole.forEach((frame, i) => {
          expect(split.solved.frames[i]!.x).toBeCloseTo(frame.x, 9);
          expect(split.solved.frames[i]!.y).toBeCloseTo(frame.y, 9);
          expect(split.solved.frames[i]!.rotation).toBeCloseTo(frame.rotation, 9);
        });
        expect(split.diagnostics.map(({ code }) => code)).not.toContain('speed-jumps');
      }),
    );
  });
});

describe('the steps of a move', () => {
  it('add up to its way, whatever its spacing and sampling', () => {
    const way = fc.tuple(number(400), number(400)).filter(([x, y]) => Math.hypot(x, y) > 1);
    fc.assert(
      fc.property(way, spacings, fc.integer({ min: 1, max: 4 }), ([x, y], spacing, on) => {
        const B = field('B', { xMm: x, yMm: y });
        const moves = [
          pan([leg(field('A'), 1, B, 25, spacing)], { on }),
          slide(['A'], [leg(at(0, 0), 1, at(x, y), 25, spacing)], { on }),
          pull(['A'], 33, Math.hypot(x, y), 1, 24, { spacing, on }),
        ];
        for (const move of solved({ levels: [level('A')], moves }).solved.moves) {
          const sum = move.graduations.reduce((total, { stepMm }) => total + stepMm, 0);
          expect(move.graduations).toHaveLength(25);
          expect(move.wayMm).toBeCloseTo(Math.hypot(x, y), 9);
          expect(sum).toBeCloseTo(move.wayMm, 6);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('a cushion', () => {
  const cases = fc
    .record({
      before: fc.integer({ min: 1, max: 40 }),
      left: fc.integer({ min: 1, max: 40 }),
      share: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    })
    .filter(({ before, left, share }) => ((share / before) * left) / (1 - share) >= 1);

  it('never overshoots, never runs back, and its speed does not jump at the mark', () => {
    fc.assert(
      fc.property(cases, ({ before, left, share }) => {
        const spacing = { form: 'fair', mark: 'ア', frame: 5 + before, share } as const;
        const p = progress(spacing, before + left, 5);
        for (let i = 1; i <= before + left; i++) {
          expect(p(i)).toBeLessThanOrEqual(1);
          expect(p(i)).toBeGreaterThanOrEqual(p(i - 1) - 1e-15);
        }
        expect(p(before)).toBeCloseTo(share, 12);
        expect(p(before + left)).toBe(1);
        // The slope just behind the mark, by a difference quotient, is the constant speed before it.
        const h = 1e-5;
        const power = cushionOf(spacing, 5, 5 + before + left)!.power;
        const slope = (p(before + h) - p(before)) / h;
        expect(Math.abs(slope / (share / before) - 1)).toBeLessThan((h * power) / left + 1e-6);
      }),
      { numRuns: 2000 },
    );
  });

  it('of power 2 slows down evenly', () => {
    // v = .5/6, T2 = 12: k = (.5/6) 12 / .5 = 2.
    const p = progress({ form: 'fair', mark: 'ア', frame: 7, share: 0.5 }, 18, 1);
    const steps = Array.from({ length: 12 }, (_, i) => p(7 + i) - p(6 + i));
    for (let i = 2; i < 12; i++) expect(steps[i]! - steps[i - 1]!).toBeCloseTo(steps[1]! - steps[0]!, 12);
  });
});

describe('sampling', () => {
  it('holds what stands on a frame, and has moved on the first frame of a range', () => {
    const B = field('B', { xMm: 8 });
    const on = 2;
    const panned = solved({ length: 10, moves: [pan([leg(field('A'), 1, B, 9)], { on })] }).solved.frames;
    expect(panned.map(({ x }) => x)).toEqual([0, 0, 2, 2, 4, 4, 6, 6, 8, 8]);
    const pulled = solved({ length: 10, moves: [pull(['BG'], 'right', 9, 1, 9, { on })] }).solved;
    expect(pulled.placement.get('BG')!.map(({ x }) => x)).toEqual([2, 2, 4, 4, 6, 6, 8, 8, 9, 9]);
  });
});
