import fc from 'fast-check';
import {
  applyToPoint,
  compose,
  inverse,
  rotateDEG,
  scale as scaling,
  translate,
} from 'transformation-matrix';
import { describe, expect, it } from 'vitest';
import type { CameraLevel } from '../../src/solve/camera/camera-tracks.js';
import type { SolvedCamera } from '../../src/solve/camera/solved-camera.js';
import * as build from '../solve/camera/build.js';

const { at, field, H, leg, level, pan, pull, sway, scale, shake, slide, solved, truck, turn, W } = build;

const number = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const size = fc.double({ min: 0.3, max: 2.5, noNaN: true });
const set = fc.record({
  from: fc.record({
    xMm: number(150),
    yMm: number(150),
    turnDeg: number(200),
    widthMm: fc.double({ min: 60, max: 300, noNaN: true }),
  }),
  to: fc.record({
    xMm: number(150),
    yMm: number(150),
    turnDeg: number(200),
    widthMm: fc.double({ min: 60, max: 300, noNaN: true }),
  }),
  home: fc.tuple(number(100), number(100)),
  about: fc.tuple(number(100), number(100)),
  way: fc.tuple(number(200), number(200)),
  scale: fc.tuple(size, size),
  degrees: fc.tuple(number(200), number(200)),
  angle: number(360),
  distance: number(200),
  shake: fc.double({ min: 0, max: 8, noNaN: true }),
  sway: fc.double({ min: 0, max: 8, noNaN: true }),
  carry: fc.boolean(),
  hidden: fc.integer({ min: 1, max: 9 }),
});
type Set = typeof set extends fc.Arbitrary<infer T> ? T : never;

function sceneOf(c: Set, more: Partial<CameraLevel> = {}) {
  const about = { xMm: c.about[0], yMm: c.about[1] };
  return {
    length: 10,
    levels: [
      level('A', {
        homeMm: { xMm: c.home[0], yMm: c.home[1] },
        carry: c.carry,
        shown: (frame) => frame !== c.hidden,
        ...more,
      }),
    ],
    moves: [
      truck([leg(field('P', c.from), 1, field('Q', c.to), 8)]),
      scale(['A'], [leg(c.scale[0], 2, c.scale[1], 9)], about),
      turn(['A'], [leg(c.degrees[0], 1, c.degrees[1], 7)], about),
      slide(['A'], [leg(at(0, 0), 1, at(...c.way), 10)]),
      pull(['A'], c.angle, c.distance, 3, 9),
      shake(c.shake, 0, 2, 8),
      sway(['A'], c.sway, 1, 9, 6),
    ],
  };
}

/** Points of the field's edge, mapped back to the artwork: from its centre, in its own axes. */
function edgePoints(s: SolvedCamera, home: readonly [number, number], frame: number): [number, number][] {
  const f = s.frames[frame - 1]!;
  const p = s.placement.get('A')![frame - 1]!;
  const camera = compose(translate(f.x, f.y), rotateDEG(-f.rotation), scaling(f.width / W));
  const own = compose(translate(home[0] + p.x, home[1] + p.y), rotateDEG(-p.rotation), scaling(p.scale));
  const back = compose(inverse(own), camera);
  const points: [number, number][] = [];
  for (let i = 0; i <= 6; i++) {
    const x = (i / 6 - 0.5) * W;
    const y = (i / 6 - 0.5) * H;
    for (const point of [
      [x, -H / 2],
      [x, H / 2],
      [-W / 2, y],
      [W / 2, y],
    ] as const) {
      points.push(applyToPoint(back, [...point]) as [number, number]);
    }
  }
  return points;
}

describe('coverage', () => {
  // Reference: points of the field's edge mapped back to the artwork by npm transformation-matrix.
  it('needs what brute force finds, on thousands of set-ups', () => {
    fc.assert(
      fc.property(set, (c) => {
        const { solved: s } = solved(sceneOf(c));
        const xs: number[] = [];
        const ys: number[] = [];
        for (let frame = 1; frame <= 10; frame++) {
          if (frame === c.hidden) continue;
          for (const [x, y] of edgePoints(s, c.home, frame)) {
            xs.push(x);
            ys.push(y);
          }
        }
        const needed = s.artwork.get('A')!.needed!;
        const [left, right, bottom, top] = [
          Math.min(...xs),
          Math.max(...xs),
          Math.min(...ys),
          Math.max(...ys),
        ];
        expect(needed.width).toBeCloseTo(right - left, 6);
        expect(needed.height).toBeCloseTo(top - bottom, 6);
        expect(needed.x).toBeCloseTo(c.home[0] + (left + right) / 2, 6);
        expect(needed.y).toBeCloseTo(c.home[1] + (bottom + top) / 2, 6);
      }),
      { numRuns: 3000 },
    );
  });

  it('names the first frame, the side and the millimetres that brute force finds', () => {
    const paper = fc.record({
      widthMm: fc.double({ min: 200, max: 900, noNaN: true }),
      heightMm: fc.double({ min: 150, max: 700, noNaN: true }),
    });
    let seen = 0;
    fc.assert(
      fc.property(set, paper, (c, sizeMm) => {
        const { solved: s, diagnostics } = solved(sceneOf(c, { sizeMm }));
        const over = Array.from({ length: 10 }, (_, i) => {
          if (i + 1 === c.hidden) return -Infinity;
          return Math.max(
            ...edgePoints(s, c.home, i + 1).map(([x, y]) =>
              Math.max(Math.abs(x) - sizeMm.widthMm / 2, Math.abs(y) - sizeMm.heightMm / 2),
            ),
          );
        });
        const { edge } = s.artwork.get('A')!;
        expect(diagnostics.some(({ code }) => code === 'artwork-edge')).toBe(edge !== null);
        const first = over.findIndex((mm) => mm > 1e-5);
        if (first < 0) return;
        seen++;
        expect(edge!.frame).toBe(first + 1);
        expect(edge!.byMm).toBeCloseTo(over[first]!, 5);
        expect(edge!.worstMm).toBeCloseTo(Math.max(...over), 5);
      }),
      { numRuns: 1500 },
    );
    expect(seen).toBeGreaterThan(100);
  });

  it('passes the smallest artwork that it reports, and fails one 0.01 mm smaller', () => {
    fc.assert(
      fc.property(set, fc.boolean(), (c, wide) => {
        // A level fixed to the camera is homed in the picture, so its paper cannot be moved to the reported centre.
        const scene = sceneOf({ ...c, carry: false });
        const needed = solved(scene).solved.artwork.get('A')!.needed!;
        const fits = (less: { x: number; y: number }) => {
          const sizeMm = { widthMm: needed.width - less.x, heightMm: needed.height - less.y };
          const homeMm = { xMm: needed.x, yMm: needed.y };
          const again = solved({ ...scene, levels: [{ ...scene.levels[0]!, sizeMm, homeMm }] });
          return again.solved.artwork.get('A')!.edge === null;
        };
        expect(fits({ x: 0, y: 0 })).toBe(true);
        expect(fits(wide ? { x: 0.01, y: 0 } : { x: 0, y: 0.01 })).toBe(false);
      }),
      { numRuns: 400 },
    );
  });

  it('of a pan is the fields and what lies between, none for a level marked free', () => {
    const B = field('B', { xMm: 180 });
    const scene = {
      moves: [pan([leg(field('A'), 1, B, 48)])],
      levels: [
        level('BG', { sizeMm: { widthMm: 434, heightMm: H }, homeMm: { xMm: 90, yMm: 0 } }),
        level('C', { timed: true, free: true }),
      ],
    };
    const { solved: s, diagnostics } = solved(scene);
    expect(s.artwork.get('BG')).toMatchObject({ needed: { width: 434, height: H, x: 90, y: 0 }, edge: null });
    expect(s.artwork.get('C')).toMatchObject({ width: 297, edge: null });
    expect(diagnostics.map(({ code }) => code)).not.toContain('artwork-edge');
  });
});
