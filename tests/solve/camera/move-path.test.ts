import { describe, expect, it } from 'vitest';
import type { Leg } from '../../../src/shot/camera/camera-model.js';
import { pathOf } from '../../../src/solve/camera/move-path.js';
import { FULL, field, leg, pan, pull, shake, solved, truck } from './build.js';

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

describe('graduations', () => {
  it('of a pan number its frames from 0 and name what stands on them', () => {
    const moves = [
      pan(
        [
          leg(FULL, 2, field('B', { xMm: 10 }), 4, { form: 'steps', mm: [4, 6] }),
          leg(field('B', { xMm: 10 }), 4, field('C', { xMm: 40 }), 5),
        ],
        { graduated: true },
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

  it('of a move past the end of the sheet stop with its last row', () => {
    const { graduations, end } = solved({ length: 3, moves: [pull(['BG'], 'left', 9, 1, 9)] }).solved
      .moves[0]!;
    expect([graduations.at(-1)!.frame, end]).toEqual([3, 9]);
  });

  it('of a swing add up without a sign, since it has no way', () => {
    const { wayMm, graduations } = solved({ length: 4, moves: [shake(2, 2, 1, 3)] }).solved.moves[0]!;
    // 0, up 2, down 4, up 4.
    expect(graduations.map(({ stepMm }) => stepMm)).toEqual([0, 2, 4, 4]);
    expect(wayMm).toBe(10);
  });

  it('are a share of the field that the camera has then', () => {
    const rest = field('H', { widthMm: 127 });
    const { largestStepShare, largestStepPx } = solved({ rest, moves: [pull(['BG'], 'up', 48, 1, 48)] })
      .solved.moves[0]!;
    expect(largestStepShare).toBe(1 / 127);
    expect(largestStepPx).toBe(1920 / 127);
  });
});
