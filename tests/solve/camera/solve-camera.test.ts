import { describe, expect, it } from 'vitest';
import type { Move, Spacing } from '../../../src/shot/camera/camera-model.js';
import {
  codes,
  expectSound,
  FULL,
  field,
  leg,
  level,
  pan,
  pull,
  type Scene,
  scale,
  shake,
  solved,
  truck,
} from './build.js';

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
  it('leave the camera on the standard field where its rest makes no sense', () => {
    const { solved: s } = solved({ rest: field('Z', { widthMm: Number.NaN }) });
    expect(s.frames[0]!.width).toBe(254);
  });
});

describe('sizes', () => {
  const levels = [level('L')];

  it('do not shrink a field to nothing by a curve', () => {
    const small = field('S', { widthMm: 25 });
    const curve: Spacing = { form: 'curve', x1: 0.3, y1: 0, x2: 0.6, y2: 3 };
    const scene = { moves: [truck([leg(FULL, 1, small, 24, curve)])] };
    expect(codes(scene)).toContain('size-vanishes');
    expectSound(solved(scene).solved);
    expect(codes({ levels, moves: [scale(['L'], [leg(1, 1, 0.1, 24, curve)])] })).toContain('size-vanishes');
  });
  it('that would vanish are held at a hundredth, and the move under way is named', () => {
    const small = field('S', { widthMm: 25 });
    const curve: Spacing = { form: 'curve', x1: 0.3, y1: 0, x2: 0.6, y2: 3 };
    const moves = [pan([leg(FULL, 1, FULL, 5)]), truck([leg(FULL, 5, small, 29, curve)])];
    const { solved: s, diagnostics } = solved({ moves });
    expect(Math.min(...s.frames.map(({ width }) => width))).toBe(0.01);
    expect(diagnostics.find(({ code }) => code === 'size-vanishes')!.span).toEqual(moves[1]!.span);
  });
});

describe('what is solved', () => {
  it('has the moves in the order of their starts, however they are written', () => {
    const late = pull(['BG'], 'left', 9, 10, 20);
    const early = pull(['BG'], 'up', 9, 1, 5);
    expect(solved({ moves: [late, early] }).solved.moves.map(({ move }) => move)).toEqual([early, late]);
  });

  it('solves what depends on others after them: a pull to the left of a camera that turns later', () => {
    // On its first frame the camera has turned by 90 degrees: left on screen is up on the artwork.
    const turned = field('T', { turnDeg: 90 });
    const moves = [pull(['BG'], 'left', 8, 9, 9), pan([leg(FULL, 1, turned, 9)])];
    expect(solved({ length: 9, moves }).solved.placement.get('BG')![8]).toMatchObject({ x: 0, y: 8 });
  });

  it('says of each field whether the camera stands on it on some frame, whatever brought it there', () => {
    const [A, B] = [field('A', { xMm: 9 }), field('B', { xMm: 20 })];
    const used = (scene: Scene) => {
      const { fields, standardUsed } = solved({ length: 9, fields: [A, B], ...scene }).solved;
      return [...fields.map(({ used }) => used), standardUsed];
    };
    expect(used({ moves: [pan([leg(FULL, 1, A, 9)])] })).toEqual([true, false, true]);
    expect(used({ rest: B })).toEqual([false, true, false]);
    // On its way to 18 mm it stands on A on frame 5, which it does on no frame where it arrives on an even one.
    const far = field('F', { xMm: 18 });
    expect(used({ moves: [pan([leg(FULL, 1, far, 9)])] })).toEqual([true, false, true]);
    expect(used({ moves: [pan([leg(FULL, 1, far, 8)])] })).toEqual([false, false, true]);
  });

  it('names the field that the camera goes to where the scan is enlarged', () => {
    const small = field('S', { widthMm: 100 });
    const found = (moves: readonly Move[], rest = FULL) =>
      solved({ moves, rest }).diagnostics.find(({ code }) => code === 'scan-enlarged')!.span;
    expect(found([truck([leg(FULL, 1, small, 9)])])).toEqual(small.span);
    expect(found([truck([leg(small, 1, FULL, 9)])], small)).toEqual(small.span);
    expect(found([], small)).toEqual(small.span);
  });

  it('names the move that scales a level where its scan is enlarged', () => {
    const scaled = scale(['BG'], [leg(1, 1, 2, 9)]);
    const { diagnostics } = solved({ moves: [scaled] });
    expect(diagnostics.find(({ code }) => code === 'scan-enlarged')!.span).toEqual(scaled.span);
  });
});
