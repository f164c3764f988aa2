import { describe, expect, it } from 'vitest';
import { at, codes, FULL, field, follow, leg, level, pan, pull, type Scene, slide, solved } from './build.js';

const placed = (scene: Scene, name: string) => solved(scene).solved.placement.get(name)!;

describe('a follow', () => {
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
  it('does not move a level that is fixed to the camera', () => {
    const levels = [level('A', { carry: true }), level('B')];
    const { solved: s } = solved({ length: 4, levels, moves: [follow(['A', 'B'], 'up', 8, 1, 4)] });
    expect(s.placement.get('A')!.map(({ screenY }) => screenY)).toEqual([0, 0, 0, 0]);
    expect(s.placement.get('B')!.map(({ y }) => y)).toEqual([2, 4, 6, 8]);
  });
});

describe('a pull', () => {
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
  it('goes in the direction of the screen on its first frame', () => {
    const rest = field('T', { turnDeg: 90 });
    // A camera turned clockwise by 90 degrees has its right on the artwork below.
    expect(placed({ length: 2, rest, moves: [pull(['BG'], 'right', 8, 1, 2)] }, 'BG')[1]).toMatchObject({
      x: 0,
      y: -8,
      screenX: 8,
    });
  });

  it('of a level fixed to the camera goes in the directions of the picture', () => {
    const rest = field('T', { turnDeg: 90 });
    const scene = {
      length: 2,
      rest,
      levels: [level('A', { carry: true })],
      moves: [pull(['A'], 'up', 8, 1, 2)],
    };
    expect(placed(scene, 'A').map(({ screenX, screenY }) => [screenX, screenY])).toEqual([
      [0, 4],
      [0, 8],
    ]);
  });
});

describe('a slide', () => {
  it('rest where their first slide starts', () => {
    const scene = { length: 3, levels: [level('A')], moves: [slide(['A'], [leg(at(5, 6), 2, at(7, 6), 3)])] };
    expect(placed(scene, 'A')[0]).toMatchObject({ x: 5, y: 6 });
  });
  it('that starts elsewhere than the last one ended is a jump, with both places', () => {
    const slides = (x: number) => [
      slide(['L'], [leg(at(0, 0), 1, at(5, 0), 9)]),
      slide(['L'], [leg(at(x, 0), 12, at(9, 0), 24)]),
    ];
    const scene = (x: number) => ({ levels: [level('L', { free: true })], moves: slides(x) });
    expect(codes(scene(5))).not.toContain('move-jumps');
    expect(codes(scene(6))).toContain('move-jumps');
    const found = solved(scene(6)).diagnostics.find(({ code }) => code === 'move-jumps')!;
    expect(found.parameters).toMatchObject({ starts: { x: 6, y: 0 }, ended: { x: 5, y: 0 } });
  });
});
