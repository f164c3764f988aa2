import { describe, expect, it } from 'vitest';
import { messageOf } from '../../../src/language/message.js';
import type { Move } from '../../../src/shot/camera/camera-model.js';
import { fieldBetween, sameTurn, sameWidth } from '../../../src/solve/camera/field-moves.js';
import {
  at,
  codes,
  FULL,
  field,
  follow,
  leg,
  level,
  pan,
  pull,
  type Scene,
  slide,
  solved,
  truck,
} from './build.js';

const placed = (scene: Scene, name: string) => solved(scene).solved.placement.get(name)!;

const A = field('A', { xMm: 10 });
const B = field('B', { xMm: 20 });

describe('a field between two', () => {
  it('of one size lies on the straight way between them', () => {
    const to = field('T', { xMm: 40, yMm: -8, turnDeg: 20 });
    expect(fieldBetween(FULL, to, false, 0.25)).toEqual({ x: 10, y: -2, value: 254, turn: 5 });
  });

  it('of two sizes has its centre where the width is, so that one point stays still', () => {
    const to = field('T', { xMm: 40, widthMm: 127 });
    // (c1 w0 - c0 w1) / (w0 - w1) = 40 * 254 / 127 = 80 stays at the same share of the field.
    for (const log of [false, true]) {
      for (const p of [0, 0.3, 0.5, 1]) {
        const { x, value } = fieldBetween(FULL, to, log, p);
        expect((80 - x) / value!).toBeCloseTo(80 / 254, 12);
      }
    }
  });

  it('grows evenly, or by equal ratios', () => {
    const to = field('T', { widthMm: 254 * 4 });
    expect(fieldBetween(FULL, to, false, 0.5).value).toBe(254 * 2.5);
    expect(fieldBetween(FULL, to, true, 0.5).value).toBe(254 * 2);
  });

  it('ends exactly on the second', () => {
    const to = field('T', { xMm: 0.1 + 0.2, widthMm: 100.1, turnDeg: 33.3 });
    expect(fieldBetween(FULL, to, false, 1)).toEqual({ x: to.xMm, y: 0, value: 100.1, turn: 33.3 });
  });
});

it('two widths are one size whatever the digits', () => {
  expect(sameWidth(0.6 * 254, 152.4)).toBe(true);
  expect(sameWidth(152.4, 152.41)).toBe(false);
});

it('two turns are one where they show the same picture', () => {
  expect(sameTurn(0, 360)).toBe(true);
  expect(sameTurn(-10, 350)).toBe(true);
  expect(sameTurn(359.96, 0)).toBe(true);
  expect(sameTurn(359.9, 0)).toBe(false);
  expect(sameTurn(0, 180)).toBe(false);
});

describe('a carried level', () => {
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
});

describe('a move of the camera', () => {
  it('begins where the last one ended', () => {
    const jumps = (...moves: Move[]) => codes({ moves }).includes('move-jumps');
    expect(jumps(pan([leg(FULL, 1, A, 9)]), pan([leg(B, 12, A, 20)]))).toBe(true);
    expect(jumps(pan([leg(FULL, 1, A, 9)]), pan([leg(A, 12, B, 20)]))).toBe(false);
  });

  it('begin where the camera was told to rest', () => {
    const scene = { moves: [pan([leg(FULL, 1, A, 9)])], rest: B };
    const found = solved(scene).diagnostics.find(({ code }) => code === 'move-jumps')!;
    expect(messageOf(found, 'en')).toContain(
      'starts from field full, but the camera is 254 mm wide at 20, 0',
    );
    expect(found.notes[0]!.span).toEqual(B.span);
  });

  it('that begins while another runs is an overlap and no jump', () => {
    expect(codes({ moves: [pan([leg(FULL, 1, A, 24)]), pan([leg(FULL, 12, B, 36)])] })).not.toContain(
      'move-jumps',
    );
  });

  it('that begins with the same turn by another number does not jump', () => {
    const [once, none] = [field('O', { turnDeg: 360 }), field('N', { turnDeg: 0, xMm: 0 })];
    expect(codes({ moves: [pan([leg(FULL, 1, once, 9)]), pan([leg(none, 9, A, 20)])] })).not.toContain(
      'move-jumps',
    );
  });
});

describe('way moves', () => {
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
      const scene = {
        length: 3,
        levels: [level('A')],
        moves: [slide(['A'], [leg(at(5, 6), 2, at(7, 6), 3)])],
      };
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
});
