import { describe, expect, it } from 'vitest';
import type { MoveOf } from '../../../src/shot/camera/camera-model.js';
import { sway, swing } from '../../../src/solve/camera/swing-moves.js';
import { field, level, roll, type Scene, shake, solved } from './build.js';

const placed = (scene: Scene, name: string) => solved(scene).solved.placement.get(name)!;

const shaken = (...of: Parameters<typeof shake>) => shake(...of) as MoveOf<'shake'>;
const swayed = (...of: Parameters<typeof roll>) => roll(...of) as MoveOf<'roll'>;

describe('a shake', () => {
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

  it('that dies away has n swings of s (1 - i/n), and none outside its frames', () => {
    const move = shaken(4, 0, 2, 5);
    expect([1, 2, 3, 4, 5, 6].map((frame) => swing(move, frame).y)).toEqual([0, -4, 3, -2, 1, 0]);
  });

  it('on twos has half as many swings, so that its sizes fall twice as fast', () => {
    const move = shaken(4, 0, 1, 4, { on: 2 });
    expect([1, 2, 3, 4].map((frame) => swing(move, frame).y)).toEqual([-4, -4, 2, 2]);
  });

  it('on twos over an odd number of frames begins a swing for the last', () => {
    const move = shaken(3, 0, 1, 5, { on: 2 });
    expect([1, 2, 3, 4, 5].map((frame) => swing(move, frame).y)).toEqual([-3, -3, 2, 2, -1]);
  });
});

describe('a sway', () => {
  it('is s · sin(2π (f - a + 1)/period), up first', () => {
    const scene = { length: 14, levels: [level('A')], moves: [roll(['A'], 5, 2, 13, 12)] };
    const y = placed(scene, 'A').map((p) => p.y);
    y.forEach((value, i) => {
      const f = i + 1;
      const expected = f >= 2 && f <= 13 ? 5 * Math.sin((2 * Math.PI * (f - 1)) / 12) : 0;
      expect(value).toBeCloseTo(expected, 12);
    });
    expect(y[12]).toBe(0);
  });

  it('is at rest exactly after half a period and after a whole one', () => {
    const move = swayed(['A'], 5, 1, 24, 24);
    expect([6, 12, 18, 24].map((frame) => sway(move, frame))).toEqual([5, 0, -5, 0]);
  });

  it('on twos shows each second step, the last frame its end', () => {
    const move = swayed(['A'], 8, 1, 7, 12, { on: 2 });
    const at = (step: number) => 8 * Math.sin((2 * Math.PI * step) / 12);
    [2, 2, 4, 4, 6, 6, 7].forEach((step, i) => {
      expect(sway(move, i + 1)).toBeCloseTo(at(step), 12);
    });
  });

  it('of a turned camera goes along the vertical of the screen', () => {
    const rest = field('T', { turnDeg: 90 });
    const moves = [roll(['BG'], 5, 1, 4, 4)];
    // Up on the screen of a camera turned clockwise is right on the artwork.
    expect(placed({ length: 4, rest, moves }, 'BG')[0]).toMatchObject({ x: 5, y: 0, screenY: 5 });
  });

  it('sideways goes to the right first', () => {
    const moves = [roll(['BG'], 5, 1, 4, 4, { sideways: true })];
    expect(placed({ length: 4, moves }, 'BG').map(({ x }) => x)).toEqual([5, 0, -5, 0]);
  });
});
