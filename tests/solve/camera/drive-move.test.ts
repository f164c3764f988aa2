import { describe, expect, it } from 'vitest';
import type { Move, MoveOf } from '../../../src/shot/camera/camera-model.js';
import { sharing } from '../../../src/shot/camera/move-kinds.js';
import { stageOf } from '../../../src/solve/camera/camera-tracks.js';
import { driveMove, drivenBy, swayMm, swing } from '../../../src/solve/camera/drive-move.js';
import * as build from './build.js';
import { codes, field, leg, level, type Scene, scale, shake, solved, sway, turn } from './build.js';

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

describe('swing moves', () => {
  const placed = (scene: Scene, name: string) => solved(scene).solved.placement.get(name)!;

  const shaken = (...of: Parameters<typeof shake>) => shake(...of) as MoveOf<'shake'>;
  const swayed = (...of: Parameters<typeof sway>) => sway(...of) as MoveOf<'sway'>;

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
      const scene = { length: 14, levels: [level('A')], moves: [sway(['A'], 5, 2, 13, 12)] };
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
      expect([6, 12, 18, 24].map((frame) => swayMm(move, frame))).toEqual([5, 0, -5, 0]);
    });

    it('on twos shows each second step, the last frame its end', () => {
      const move = swayed(['A'], 8, 1, 7, 12, { on: 2 });
      const at = (step: number) => 8 * Math.sin((2 * Math.PI * step) / 12);
      [2, 2, 4, 4, 6, 6, 7].forEach((step, i) => {
        expect(swayMm(move, i + 1)).toBeCloseTo(at(step), 12);
      });
    });

    it('of a turned camera goes along the vertical of the screen', () => {
      const rest = field('T', { turnDeg: 90 });
      const moves = [sway(['BG'], 5, 1, 4, 4)];
      // Up on the screen of a camera turned clockwise is right on the artwork.
      expect(placed({ length: 4, rest, moves }, 'BG')[0]).toMatchObject({ x: 5, y: 0, screenY: 5 });
    });

    it('sideways goes to the right first', () => {
      const moves = [sway(['BG'], 5, 1, 4, 4, { sideways: true })];
      expect(placed({ length: 4, moves }, 'BG').map(({ x }) => x)).toEqual([5, 0, -5, 0]);
    });
  });
});

describe('drive move', () => {
  const { at, FULL, field, follow, leg, level, pan, pull, sway, scale, shake, slide, truck, turn } = build;

  describe('what a move drives', () => {
    it('is the camera’s centre and width, whatever goes along, or the one that it gives', () => {
      const shared = sharing([pan([leg(FULL, 1, FULL, 9)]), truck([leg(FULL, 1, FULL, 9)])]);
      expect(shared.map(drivenBy)).toEqual([['camera centre'], ['camera width']]);
      expect(drivenBy(pan([leg(FULL, 1, FULL, 9)], { carry: ['A'] }))).toEqual([
        'camera centre',
        'camera width',
      ]);
      expect(drivenBy(truck([leg(FULL, 1, FULL, 9)]))).toEqual(['camera centre', 'camera width']);
      expect(drivenBy(follow(['A', 'B'], 'left', 9, 1, 9))).toEqual(['camera centre', 'camera width']);
      expect(drivenBy(shake(1, 1, 1, 9))).toEqual(['camera shake']);
    });

    it('is a quantity of each level that it names', () => {
      expect(drivenBy(pull(['A', 'B'], 'left', 9, 1, 9))).toEqual(['A pull', 'B pull']);
      expect(drivenBy(slide(['A'], [leg(at(0, 0), 1, at(1, 0), 9)]))).toEqual(['A slide']);
      expect(drivenBy(scale(['A'], [leg(1, 1, 2, 9)]))).toEqual(['A scale']);
      expect(drivenBy(turn(['A'], [leg(0, 1, 9, 9)]))).toEqual(['A turn']);
      expect(drivenBy(sway(['A'], 5, 1, 9, 9))).toEqual(['A sway']);
    });
  });

  it('drives the tracks of its kind alone, and gives its own way', () => {
    const context = build.contextOf({ length: 9, levels: [level('A')] });
    const stage = stageOf(context, field('R'), () => {});
    const path = driveMove(pull(['A'], 'right', 9, 1, 9), stage);
    expect([path.start, path.end, path.at(3).x]).toEqual([0, 9, 3]);
    const { pullX, slideX } = stage.levels.get('A')!;
    expect([pullX[3], slideX[3], stage.camera.goneX[3]]).toEqual([3, 0, 0]);
    expect(driveMove(pan([leg(FULL, 1, field('B', { xMm: 16 }), 9)]), stage).at(5).x).toBe(8);
    expect([stage.camera.baseX[5], pullX[5]]).toEqual([8, 5]);
  });
});
