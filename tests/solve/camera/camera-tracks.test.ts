import { describe, expect, it } from 'vitest';
import type { Move } from '../../../src/shot/camera/camera-model.js';
import {
  clampFrame,
  before as moveBefore,
  named,
  stageOf,
  write,
} from '../../../src/solve/camera/camera-tracks.js';
import type { Path } from '../../../src/solve/camera/move-path.js';
import {
  at,
  contextOf,
  FULL,
  field,
  follow,
  leg,
  level,
  pull,
  scale,
  shake,
  slide,
  solved,
  sway,
  truck,
  turn,
  W,
} from './build.js';

const stage = () =>
  stageOf(
    contextOf({ length: 6, levels: [level('A'), level('B')] }),
    field('R', { xMm: 3, yMm: 4, widthMm: 100, turnDeg: 5 }),
    () => {},
  );

/** A path that is at its frame. */
const path = (start: number, end: number): Path => ({
  start,
  end,
  at: (frame) => ({ x: frame, y: 0, value: null, turn: 0 }),
  alongMm: null,
  legs: [],
});

describe('a stage', () => {
  it('has the camera at rest and the levels at home on every frame and in the moment before', () => {
    const { camera, levels } = stage();
    expect([...camera.baseX]).toEqual([3, 3, 3, 3, 3, 3, 3]);
    expect([camera.baseY[0], camera.width[6], camera.turn[6], camera.goneX[6]]).toEqual([4, 100, 5, 0]);
    expect([...levels.keys()]).toEqual(['A', 'B']);
    const { scale, slideX, turn } = levels.get('A')!;
    expect([scale[0], scale[6], slideX[6], turn[6]]).toEqual([1, 1, 0, 0]);
  });

  it('names levels that are there, and passes over others', () => {
    expect(named(stage(), ['B', 'X', 'A']).map(({ level: { name } }) => name)).toEqual(['B', 'A']);
  });

  it('has frames from the moment before the first to its last row', () => {
    expect([-3, 0, 4, 6, 9].map((frame) => clampFrame(stage(), frame))).toEqual([0, 0, 4, 6, 6]);
  });
});

describe('writing', () => {
  const written = (from: number, to: number) => {
    const found: [number, number][] = [];
    write(path(from, to), 6, (frame, { x }) => found.push([frame, x]));
    return found;
  };

  it('begins behind the start and holds the end to the last row', () => {
    expect(written(1, 3)).toEqual([
      [2, 2],
      [3, 3],
      [4, 3],
      [5, 3],
      [6, 3],
    ]);
  });

  it('stops with the sheet', () => {
    expect(written(4, 9)).toEqual([
      [5, 5],
      [6, 6],
    ]);
  });

  it('puts nothing where the move begins behind the sheet', () => {
    expect(written(6, 9)).toEqual([]);
    expect(written(8, 9)).toEqual([]);
  });
});

describe('the move before', () => {
  it('runs still where it ends behind the start, and is done where it ends there', () => {
    const on = stage();
    const move = pull(['A'], 'left', 9, 1, 4);
    on.last.set('A pull', move);
    on.paths.set(move, path(0, 4));
    expect(moveBefore(on, 'A pull', 3)).toEqual({ last: move, running: true });
    expect(moveBefore(on, 'A pull', 4)).toEqual({ last: move, running: false });
    expect(moveBefore(on, 'B pull', 3)).toEqual({ last: undefined, running: false });
  });
});

describe('the camera', () => {
  it('is told in mm, in percent and in lines of the chart, shake included', () => {
    const rest = field('R', { xMm: 5, widthMm: 127, turnDeg: 30 });
    const { frames } = solved({ length: 2, rest, moves: [shake(3, 3, 2, 2)] }).solved;
    expect(frames[0]).toEqual({ frame: 1, x: 5, y: 0, width: 127, percent: 50, field: 6, rotation: 30 });
    expect(Math.hypot(frames[1]!.x - 5, frames[1]!.y)).toBeCloseTo(3, 12);
  });
});

describe('a level', () => {
  it('is seen from the camera in mm on the standard field, turned back', () => {
    const rest = field('R', { xMm: 10, yMm: 20, widthMm: 127, turnDeg: 90 });
    const { placement } = solved({ length: 1, rest, moves: [] }).solved;
    // Home is 10 left and 20 below the centre; a camera turned clockwise sees below on its right, left on its bottom; twice as large.
    expect(placement.get('BG')![0]).toEqual({
      x: 0,
      y: 0,
      scale: 1,
      rotation: 0,
      screenX: 40,
      screenY: -20,
    });
  });

  it('is computed anew only on a frame on which it or the camera has moved', () => {
    const distinct = (moves: Move[]) => {
      const { placement } = solved({ length: 6, levels: [level('A'), level('B')], moves }).solved;
      return ['A', 'B'].map((name) => new Set(placement.get(name)).size);
    };
    expect(distinct([])).toEqual([1, 1]);
    // On frames 2 and 3; then it stays where it has come to.
    expect(distinct([pull(['B'], 'right', 8, 2, 3)])).toEqual([1, 3]);
    expect(distinct([shake(3, 3, 2, 3)])).toEqual([4, 4]);
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
      const zoom = W / f.width;
      expect(zoom * (Math.cos(r) * dx - Math.sin(r) * dy)).toBeCloseTo(20 + 2 * (i + 1), 10);
      expect(zoom * (Math.sin(r) * dx + Math.cos(r) * dy)).toBeCloseTo(10, 10);
      expect(p.scale * zoom).toBeCloseTo(1, 12);
    });
    expect(s.artwork.get('B')!.needed!.width).toBeCloseTo(W + 6, 9);
  });

  it('fixed to the camera is on the screen what it would be before a camera at rest', () => {
    const moves = [
      slide(['B'], [leg(at(3, 4), 1, at(15, -9), 6)]),
      turn(['B'], [leg(0, 1, 70, 6)], { xMm: 11, yMm: -7 }),
      scale(['B'], [leg(1, 1, 1.6, 6)], { xMm: -5, yMm: 13 }),
      pull(['B'], 30, 24, 1, 6),
      sway(['B'], 6, 1, 6, 5),
    ];
    const view = field('V', { xMm: 40, yMm: 25, widthMm: 127, turnDeg: 50 });
    const camera = truck([leg(FULL, 1, view, 6)]);
    const homeMm = { xMm: 20, yMm: 10 };
    const seen = (carry: boolean, more: readonly Move[]) => {
      const levels = [level('B', { carry, homeMm })];
      const { solved: s } = solved({ length: 6, levels, rest: FULL, moves: [...moves, ...more] });
      // The centre of the artwork in the picture: (W/w) · Rcam⁻¹ · (home + (x, y) − c).
      return s.placement.get('B')!.map((p, i) => {
        const { x, y, width, rotation } = s.frames[i]!;
        const zoom = W / width;
        const r = (rotation * Math.PI) / 180;
        const [dx, dy] = [homeMm.xMm + p.x - x, homeMm.yMm + p.y - y];
        return [
          zoom * (Math.cos(r) * dx - Math.sin(r) * dy),
          zoom * (Math.sin(r) * dx + Math.cos(r) * dy),
          p.scale * zoom,
          p.rotation - rotation,
        ];
      });
    };
    const still = seen(false, []);
    expect(still[5]![0]).not.toBeCloseTo(still[0]![0]!, 0);
    for (const [i, frame] of seen(true, [camera]).entries())
      for (const [k, value] of frame.entries()) expect(value, `frame ${i + 1}`).toBeCloseTo(still[i]![k]!, 9);
  });

  it('at home before a camera on its head is at 0, not at −0', () => {
    const rest = field('R', { turnDeg: 180 });
    for (const carry of [false, true]) {
      const { placement } = solved({ length: 1, rest, levels: [level('BG', { carry })] }).solved;
      expect(Object.is(placement.get('BG')![0]!.screenX, -0)).toBe(false);
      expect(Object.is(placement.get('BG')![0]!.screenY, -0)).toBe(false);
    }
  });
});

describe('where a level is seen', () => {
  // Turned clockwise by so many degrees, y up; written out here, apart from the solver's own.
  const turned = ([x, y]: readonly [number, number], degrees: number): [number, number] => {
    const a = (-degrees * Math.PI) / 180;
    return [x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)];
  };
  const T = field('T', { xMm: 30, yMm: -20, widthMm: 200, turnDeg: 25 });
  const filming = [truck([leg(FULL, 1, T, 25)]), shake(3, 1, 26, 40)];
  const framesOf = (own: ReturnType<typeof level>, ...moves: Move[]) => {
    const { frames, placement } = solved({ levels: [own], moves: [...filming, ...moves] }).solved;
    return frames.map((seen, i) => ({ seen, at: placement.get(own.name)![i]!, zoom: W / seen.width }));
  };
  const home = { xMm: 12, yMm: -7 };
  const goes = [
    slide(['A'], [leg(at(0, 0), 1, at(15, 9), 20)]),
    pull(['A'], 'up', 10, 5, 12),
    sway(['A'], 4, 20, 43, 12),
  ];

  it('is where the paper lies, from the middle of the field, turned and enlarged as the camera has it', () => {
    for (const { seen, at: placed, zoom } of framesOf(level('A', { homeMm: home, free: true }), ...goes)) {
      const [x, y] = turned([placed.x - seen.x, placed.y - seen.y], -seen.rotation);
      expect(placed.screenX).toBeCloseTo(zoom * x, 9);
      expect(placed.screenY).toBeCloseTo(zoom * y, 9);
    }
  });

  it('is the same place for a level that is carried, but for the way that it goes itself', () => {
    const carried = framesOf(level('A', { homeMm: home, free: true, carry: true }), ...goes);
    const alone = solved({ levels: [level('A', { homeMm: home, free: true })], moves: goes }).solved;
    carried.forEach(({ seen, at: placed, zoom }, i) => {
      const way = alone.placement.get('A')![i]!;
      const [hx, hy] = turned([home.xMm, home.yMm], -seen.rotation);
      expect(placed.screenX + zoom * hx).toBeCloseTo(home.xMm + way.x, 9);
      expect(placed.screenY + zoom * hy).toBeCloseTo(home.yMm + way.y, 9);
      expect(placed.scale * zoom).toBeCloseTo(1, 9);
      expect(placed.rotation).toBe(seen.rotation);
    });
  });

  it('leaves the point about which it is scaled and turned where it is', () => {
    const about = { xMm: 20, yMm: 11 };
    const own = level('A', { homeMm: home, free: true });
    const moves = [scale(['A'], [leg(1, 1, 1.4, 25)], about), turn(['A'], [leg(0, 13, 50, 37)], about)];
    for (const { at: placed } of framesOf(own, ...moves)) {
      const [x, y] = turned([about.xMm - home.xMm, about.yMm - home.yMm], placed.rotation);
      expect(home.xMm + placed.x + placed.scale * x).toBeCloseTo(about.xMm, 9);
      expect(home.yMm + placed.y + placed.scale * y).toBeCloseTo(about.yMm, 9);
    }
  });

  it('is the same on screen whether the camera follows a level or the others are pulled the other way', () => {
    const levels = [level('A', { free: true }), level('BG', { free: true })];
    const seen = (move: Move, name: string) =>
      solved({ levels, moves: [move] })
        .solved.placement.get(name)!
        .map(({ screenX, screenY }) => [screenX, screenY]);
    expect(seen(follow(['A'], 30, 40, 5, 24), 'BG')).toEqual(seen(pull(['BG'], 210, 40, 5, 24), 'BG'));
    expect(seen(follow(['A'], 30, 40, 5, 24), 'A').every(([x, y]) => x === 0 && y === 0)).toBe(true);
  });
});
