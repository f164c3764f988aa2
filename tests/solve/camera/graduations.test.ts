import { describe, expect, it } from 'vitest';
import { FULL, field, leg, pan, pull, shake, solved, truck } from './build.js';

describe('graduations', () => {
  it('of a pan number its frames from 0 and name what stands on them', () => {
    const moves = [
      pan(
        [
          leg(FULL, 2, field('B', { xMm: 10 }), 4, { form: 'steps', mm: [4, 6] }),
          leg(field('B', { xMm: 10 }), 4, field('C', { xMm: 40 }), 5),
        ],
        { ticks: true },
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
