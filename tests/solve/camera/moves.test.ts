import { describe, expect, it } from 'vitest';
import * as build from './build.js';

const { at, field, follow, FULL, leg, level, pan, pull, roll, scale, shake, slide, solved, truck, turn } =
  build;

const placed = (scene: build.Scene, name: string) => solved(scene).solved.placement.get(name)!;

describe('the camera', () => {
  it('rests where it was told to, and is fixed without a move of its own', () => {
    const C = field('C', { xMm: 12, widthMm: 127 });
    const { solved: s } = solved({ length: 3, rest: C, moves: [pull(['BG'], 'left', 3, 1, 3)] });
    expect(s.frames.map(({ x, percent }) => [x, percent])).toEqual([
      [12, 50],
      [12, 50],
      [12, 50],
    ]);
    expect(s.fixed).toBe(true);
    expect(solved({ moves: [shake(3, 3, 1, 4)] }).solved.fixed).toBe(false);
  });

  it('goes on from where a follow left it', () => {
    const here = field('H', { xMm: -24 });
    const there = field('T', { xMm: -24, yMm: 24 });
    const scene = {
      length: 48,
      levels: [level('A')],
      rest: FULL,
      moves: [follow(['A'], 'left', 24, 1, 24), pan([leg(here, 24, there, 48)])],
    };
    const { solved: s, diagnostics } = solved(scene);
    expect(diagnostics.map(({ code }) => code)).not.toContain('move-jumps');
    expect(s.frames[23]).toMatchObject({ x: -24, y: 0 });
    expect(s.frames[47]).toMatchObject({ x: -24, y: 24 });
    expect(s.placement.get('A')![47]).toMatchObject({ x: -24, y: 0 });
  });

  it('follows from any field, in the direction of the screen on the first frame', () => {
    const turned = field('T', { xMm: 10, yMm: 20, turnDeg: 90 });
    const { solved: s } = solved({
      length: 4,
      levels: [level('A')],
      rest: turned,
      moves: [follow(['A'], 'right', 4, 1, 4)],
    });
    expect(s.frames.map(({ x, y }) => [x, y])).toEqual([
      [10, 19],
      [10, 18],
      [10, 17],
      [10, 16],
    ]);
    expect(s.placement.get('A')![3]).toMatchObject({ x: 0, y: -4 });
  });

  it('carries levels from the start of its move on, and they keep what they gained', () => {
    const A = field('A', { xMm: 10 });
    const B = field('B', { xMm: 22 });
    const moves = [pan([leg(A, 3, B, 6)], { carry: ['C'] })];
    const x = placed({ length: 8, levels: [level('BG'), level('C')], moves }, 'C').map((p) => p.x);
    expect(x).toEqual([0, 0, 0, 4, 8, 12, 12, 12]);
  });

  it('carries along by the centre alone where it trucks as well', () => {
    const B = field('B', { xMm: 40, widthMm: 127 });
    const scene = { length: 2, levels: [level('C')], moves: [truck([leg(FULL, 1, B, 2)], { carry: ['C'] })] };
    expect(placed(scene, 'C')[1]).toMatchObject({ x: 40, y: 0, scale: 1, screenX: 0 });
  });

  it('shakes the picture up first, ± s on each frame, and rests after', () => {
    const { solved: s } = solved({ length: 7, moves: [shake(4, 0, 2, 5)] });
    expect(s.frames.map(({ y }) => y)).toEqual([0, -4, 3, -2, 1, 0, 0]);
  });

  it('shakes every other frame on twos, sideways to the right first', () => {
    const { solved: s } = solved({ length: 5, moves: [shake(3, 3, 1, 4, { on: 2, sideways: true })] });
    expect(s.frames.map(({ x }) => x)).toEqual([-3, -3, 3, 3, 0]);
  });

  it('shakes in its own axes when it is turned', () => {
    const { solved: s } = solved({
      length: 2,
      rest: field('T', { turnDeg: 90 }),
      moves: [shake(3, 3, 1, 2)],
    });
    expect(s.frames[0]).toMatchObject({ x: -3, y: 0 });
  });
});

describe('levels', () => {
  it('add pulls to each other and to slides', () => {
    const scene = {
      length: 4,
      levels: [level('A')],
      moves: [
        pull(['A'], 'right', 4, 1, 4),
        pull(['A'], 'up', 8, 3, 4),
        slide(['A'], [leg(at(0, 0), 1, at(30, 0), 4)]),
      ],
    };
    expect(placed(scene, 'A').map(({ x, y }) => [x, y])).toEqual([
      [1, 0],
      [12, 0],
      [23, 4],
      [34, 8],
    ]);
  });

  it('rest where their first slide starts', () => {
    const scene = { length: 3, levels: [level('A')], moves: [slide(['A'], [leg(at(5, 6), 2, at(7, 6), 3)])] };
    expect(placed(scene, 'A')[0]).toMatchObject({ x: 5, y: 6 });
  });

  it('keep the point of a truck still', () => {
    const A = level('A', { homeMm: { xMm: 30, yMm: 0 } });
    const about = { xMm: 10, yMm: 20 };
    const scene = { length: 3, levels: [A], moves: [scale(['A'], [leg(1, 1, 2, 3)], about)] };
    const p = placed(scene, 'A')[2]!;
    expect([30 + p.x + p.scale * (10 - 30), p.y + p.scale * 20]).toEqual([10, 20]);
  });

  it('scaled about one point and then about another keep both still while each runs', () => {
    const moves = [
      scale(['A'], [leg(1, 1, 2, 5)], { xMm: 50, yMm: 0 }),
      scale(['A'], [leg(2, 5, 3, 9)], { xMm: 0, yMm: 40 }),
    ];
    const all = placed({ length: 9, levels: [level('A')], moves }, 'A');
    const second = (i: number) => [all[i]!.x, all[i]!.y + all[i]!.scale * 40];
    expect(second(8)[0]).toBeCloseTo(second(4)[0]!, 12);
    expect(second(8)[1]).toBeCloseTo(second(4)[1]!, 12);
    expect(all[3]!.x + all[3]!.scale * 50).toBeCloseTo(50, 12);
  });

  it('turned about two points one after the other keep each still', () => {
    const moves = [
      turn(['A'], [leg(0, 1, 90, 5)], { xMm: 50, yMm: 0 }),
      turn(['A'], [leg(90, 5, 30, 9)], { xMm: 0, yMm: 40 }),
    ];
    const all = placed({ length: 9, levels: [level('A')], moves }, 'A');
    const where = (i: number, x: number, y: number) => {
      const r = (all[i]!.rotation * Math.PI) / 180;
      return [all[i]!.x + Math.cos(r) * x + Math.sin(r) * y, all[i]!.y + Math.cos(r) * y - Math.sin(r) * x];
    };
    for (const i of [1, 2, 3, 4]) expect(where(i, 50, 0)[0]).toBeCloseTo(50, 10);
    for (const i of [5, 6, 7, 8]) {
      expect(where(i, 0, 40)[0]).toBeCloseTo(where(4, 0, 40)[0]!, 10);
      expect(where(i, 0, 40)[1]).toBeCloseTo(where(4, 0, 40)[1]!, 10);
    }
  });

  it('turn once around in 360 degrees and may go on from 0 without a jump', () => {
    const moves = [turn(['A'], [leg(0, 1, 360, 5)]), turn(['A'], [leg(0, 5, 90, 9)])];
    const { solved: s, diagnostics } = solved({ length: 9, levels: [level('A')], moves });
    expect(s.placement.get('A')!.map(({ rotation }) => rotation)).toEqual([
      0, 90, 180, 270, 360, 22.5, 45, 67.5, 90,
    ]);
    expect(diagnostics.map(({ code }) => code)).not.toContain('move-jumps');
  });

  it('sway by s · sin(2π (f - a + 1)/period), up first', () => {
    const scene = { length: 14, levels: [level('A')], moves: [roll(['A'], 5, 2, 13, 12)] };
    const y = placed(scene, 'A').map((p) => p.y);
    y.forEach((value, i) => {
      const f = i + 1;
      const expected = f >= 2 && f <= 13 ? 5 * Math.sin((2 * Math.PI * (f - 1)) / 12) : 0;
      expect(value).toBeCloseTo(expected, 12);
    });
    expect(y[12]).toBe(0);
  });

  it('fixed to the camera move in the picture, whatever the camera does', () => {
    const B = level('B', { carry: true, homeMm: { xMm: 20, yMm: 10 } });
    const view = field('V', { xMm: 100, widthMm: 127, turnDeg: 90 });
    const scene = {
      length: 4,
      levels: [B],
      rest: FULL,
      moves: [truck([leg(FULL, 1, view, 2)]), pull(['B'], 'right', 8, 1, 4), shake(3, 3, 1, 4)],
    };
    const { solved: s } = solved(scene);
    s.placement.get('B')!.forEach((p, i) => {
      const f = s.frames[i]!;
      const r = (f.rotation * Math.PI) / 180;
      const dx = 20 + p.x - f.x;
      const dy = 10 + p.y - f.y;
      const zoom = build.W / f.width;
      expect(zoom * (Math.cos(r) * dx - Math.sin(r) * dy)).toBeCloseTo(20 + 2 * (i + 1), 10);
      expect(zoom * (Math.sin(r) * dx + Math.cos(r) * dy)).toBeCloseTo(10, 10);
      expect(p.scale * zoom).toBeCloseTo(1, 12);
    });
    expect(s.artwork.get('B')!.needed!.width).toBeCloseTo(build.W + 6, 9);
  });
});

describe('graduations', () => {
  it('of a pan number its frames from 0 and name what stands on them', () => {
    const moves = [
      pan(
        [
          leg(FULL, 2, field('B', { xMm: 10 }), 4, { form: 'steps', mm: [4, 6] }),
          leg(field('B', { xMm: 10 }), 4, field('C', { xMm: 40 }), 5),
        ],
        { ticks: true },
      ),
    ];
    const { graduations, wayMm, largestStepMm, largestStepShare, largestStepPx } = solved({
      length: 6,
      moves,
    }).solved.moves[0]!;
    expect(graduations.map((g) => [g.frame, g.number, g.x, g.stepMm, g.label])).toEqual([
      [2, 0, 0, 0, 'full'],
      [3, 1, 4, 4, ''],
      [4, 2, 10, 6, 'B'],
      [5, 3, 40, 30, 'C'],
    ]);
    expect([wayMm, largestStepMm]).toEqual([40, 30]);
    expect(largestStepShare).toBeCloseTo(30 / 254, 15);
    expect(largestStepPx).toBeCloseTo((1920 * 30) / 254, 10);
  });

  it('of a range begin in the moment before its first frame', () => {
    const { graduations } = solved({ length: 3, moves: [pull(['BG'], 'left', 9, 1, 3)] }).solved.moves[0]!;
    expect(graduations.map((g) => [g.frame, g.number, g.x, g.stepMm])).toEqual([
      [0, 0, 0, 0],
      [1, 1, -3, 3],
      [2, 2, -6, 3],
      [3, 3, -9, 3],
    ]);
  });

  it('of a quick truck carry the fairing mark and the width', () => {
    const B = field('B', { widthMm: 127 });
    const moves = [
      truck([leg(FULL, 1, B, 13, { form: 'fair', mark: 'ア', frame: 5, share: 0.5 })], { quick: true }),
    ];
    const { graduations } = solved({ length: 13, moves }).solved.moves[0]!;
    expect(graduations[4]).toMatchObject({ frame: 5, label: 'ア', value: 254 - 127 / 2 });
    expect(graduations[12]).toMatchObject({ label: 'B', value: 127 });
  });

  it('count steps that run back as negative', () => {
    const moves = [pan([leg(FULL, 1, field('B', { xMm: 10 }), 4, { form: 'steps', mm: [-2, 8, 4] })])];
    const { graduations } = solved({ length: 4, moves }).solved.moves[0]!;
    expect(graduations.map((g) => g.stepMm)).toEqual([0, -2, 8, 4]);
  });
});
