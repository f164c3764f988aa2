import { describe, expect, it } from 'vitest';
import type { Leg } from '../../../src/shot/camera/camera-model.js';
import { pathOf } from '../../../src/solve/camera/move-path.js';
import { leg } from './build.js';

const place = (from: number, to: number, p: number) => ({
  x: from + (to - from) * p,
  y: 0,
  value: null,
  turn: 0,
});
const path = (legs: readonly Leg<number>[], kind: 'slide' | 'pull' = 'slide', on = 1) =>
  pathOf({ kind, on, legs }, place, (end) => `at ${end}`);
const xs = (of: ReturnType<typeof path>, frames: readonly number[]) => frames.map((frame) => of.at(frame).x);

describe('a path', () => {
  const two = [leg(0, 2, 4, 6), leg(4, 6, 10, 9)];

  it('runs from the start of its first leg to the end of its last', () => {
    expect(path(two)).toMatchObject({ start: 2, end: 9 });
  });

  it('has a place on each frame, outside of its frames the nearest end', () => {
    expect(xs(path(two), [-3, 2, 3, 5, 6, 7, 8, 9, 40])).toEqual([0, 0, 1, 3, 4, 6, 8, 10, 10]);
  });

  it('is the same in whatever order its frames are asked for', () => {
    expect(xs(path(two), [9, 3, 8, 2, 6])).toEqual([10, 1, 8, 0, 4]);
  });

  it('with a rest between two legs stays where the first has ended', () => {
    expect(xs(path([leg(0, 1, 4, 3), leg(4, 7, 8, 9)]), [3, 5, 7, 8])).toEqual([4, 4, 4, 6]);
  });

  it('on twos holds from where it stands; one of a range has moved on its first frame', () => {
    expect(xs(path([leg(0, 1, 4, 5)], 'slide', 2), [1, 2, 3, 4, 5])).toEqual([0, 0, 2, 2, 4]);
    expect(xs(path([leg(0, 0, 4, 4)], 'pull', 2), [1, 2, 3, 4])).toEqual([2, 2, 4, 4]);
  });

  it('names the ends of its legs', () => {
    expect(path(two).legs.map(({ fromLabel, toLabel }) => [fromLabel, toLabel])).toEqual([
      ['at 0', 'at 4'],
      ['at 4', 'at 10'],
    ]);
    expect(pathOf({ kind: 'slide', on: 1, legs: two }, place).legs[0]).toMatchObject({ fromLabel: '' });
  });

  it('is spread as each leg says', () => {
    const legs = [leg(0, 1, 10, 3, { form: 'steps', mm: [1, 4] }), leg(10, 3, 20, 5)];
    expect(xs(path(legs), [2, 3, 4])).toEqual([2, 10, 15]);
  });
});
