import { describe, expect, it } from 'vitest';
import {
  clampFrame,
  before as moveBefore,
  named,
  stageOf,
  write,
} from '../../../src/solve/camera/camera-tracks.js';
import type { Path } from '../../../src/solve/camera/move-path.js';
import { contextOf, field, level, pull } from './build.js';

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
