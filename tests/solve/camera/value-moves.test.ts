import { describe, expect, it } from 'vitest';
import type { Move } from '../../../src/shot/camera/camera-model.js';
import { codes, leg, level, type Scene, scale, solved, turn } from './build.js';

const placed = (scene: Scene, name: string) => solved(scene).solved.placement.get(name)!;

describe('a truck of a level', () => {
  it('keeps its point still', () => {
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
  it('by equal ratios is half-way at the middle ratio', () => {
    const scene = { length: 3, moves: [scale(['BG'], [leg(1, 1, 4, 3)], null, { ratios: true })] };
    expect(placed(scene, 'BG').map((p) => p.scale)).toEqual([1, 2, 4]);
  });

  it('has its first scale from the first frame on', () => {
    expect(
      placed({ length: 4, moves: [scale(['BG'], [leg(2, 3, 3, 4)])] }, 'BG').map((p) => p.scale),
    ).toEqual([2, 2, 2, 3]);
  });

  it('begins where the last one ended', () => {
    const jumps = (...moves: Move[]) => codes({ levels: [level('L')], moves }).includes('move-jumps');
    expect(jumps(scale(['L'], [leg(1, 1, 2, 9)]), scale(['L'], [leg(1.9, 9, 1, 20)]))).toBe(true);
    expect(jumps(scale(['L'], [leg(1, 1, 2, 9)]), scale(['L'], [leg(2, 9, 1, 20)]))).toBe(false);
  });
});

describe('a turn of a level', () => {
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

  it('goes once around in 360 degrees and may go on from 0 without a jump', () => {
    const moves = [turn(['A'], [leg(0, 1, 360, 5)]), turn(['A'], [leg(0, 5, 90, 9)])];
    const { solved: s, diagnostics } = solved({ length: 9, levels: [level('A')], moves });
    expect(s.placement.get('A')!.map(({ rotation }) => rotation)).toEqual([
      0, 90, 180, 270, 360, 22.5, 45, 67.5, 90,
    ]);
    expect(diagnostics.map(({ code }) => code)).not.toContain('move-jumps');
  });
  it('about its point begins turned where its first angle is none', () => {
    const scene = { length: 3, moves: [turn(['BG'], [leg(90, 2, 180, 3)], { xMm: 10, yMm: 0 })] };
    // A point 10 to the right, turned by 90 degrees clockwise, would lie 10 below: the level goes 10 right and 10 up.
    expect(placed(scene, 'BG')[0]).toMatchObject({ rotation: 90, x: 10, y: 10 });
  });

  it('begins where the last one ended', () => {
    const first = turn(['L'], [leg(0, 1, 30, 9)]);
    const scene = (from: number) => ({
      levels: [level('L')],
      moves: [first, turn(['L'], [leg(from, 9, 60, 20)])],
    });
    expect(codes(scene(31))).toContain('move-jumps');
    expect(codes(scene(30))).not.toContain('move-jumps');
  });
});
