import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeCuts } from '../../../src/count/count-episode.js';
import {
  densityOf,
  densityStep,
  HIGHEST,
  placeOf,
  stripPieces,
  stripsFor,
} from '../../../src/sheet/rhythm/rhythm-strips.js';
import { row } from '../../count/rows.js';

const ROOM = { x: 10, y: 20, width: 240, height: 160 };
const SIZES = { lowest: 12, highest: 40, widestMm: 11 };

describe('strips', () => {
  test('22 minutes fold into strips that are as high as they must be', () => {
    const strips = stripsFor(1320 * 24, 24, ROOM, SIZES);
    expect(strips).toMatchObject({ frames: 120 * 24, count: 11 });
    expect(strips.pitch).toBeGreaterThanOrEqual(12);
    expect(strips.count * strips.pitch).toBeLessThanOrEqual(160 + 1e-9);
  });

  test('a short film is not stretched: a second is at most so wide', () => {
    const strips = stripsFor(5 * 24, 24, ROOM, SIZES);
    expect((strips.width * 24) / strips.frames).toBeLessThanOrEqual(11);
    expect(strips.count).toBe(1);
  });

  test('any length at all is folded into the room', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20_000_000 }), fc.constantFrom(8, 24, 25, 30), (total, fps) => {
        const { count, frames, pitch } = stripsFor(total, fps, ROOM, SIZES);
        expect(count * frames).toBeGreaterThanOrEqual(total);
        expect((count - 1) * frames).toBeLessThan(total);
        expect(pitch * count).toBeLessThanOrEqual(160 + 1e-6);
        expect(pitch).toBeGreaterThanOrEqual(12 - 1e-9);
      }),
    );
  });

  test('the pieces of a stretch are as long as it is, end to end', () => {
    const strips = stripsFor(1320 * 24, 24, ROOM, SIZES);
    const time = fc.double({ min: 0, max: 1320 * 24, noNaN: true });
    fc.assert(
      fc.property(time, time, (a, b) => {
        const [from, to] = [Math.min(a, b), Math.max(a, b)];
        const pieces = stripPieces(strips, from, to);
        const wide = pieces.reduce((sum, { x1, x2 }) => sum + x2 - x1, 0);
        expect((wide * strips.frames) / strips.width).toBeCloseTo(to - from, 3);
        for (const { x1, x2 } of pieces) {
          expect(x1).toBeGreaterThanOrEqual(10 - 1e-6);
          expect(x2).toBeLessThanOrEqual(250 + 1e-6);
        }
      }),
    );
  });

  test('a moment between two strips begins the lower one, or ends the upper', () => {
    const strips = stripsFor(1320 * 24, 24, ROOM, SIZES);
    expect(placeOf(strips, strips.frames)).toEqual({ strip: 1, x: 10 });
    expect(placeOf(strips, strips.frames, true)).toEqual({ strip: 0, x: 250 });
  });
});

describe('new drawings a second', () => {
  // On ones one level brings 24 a second, on twos 12 (24 frames a second), on threes 8.
  test.each([
    [0, 0],
    [0.5, 1],
    [2, 1],
    [2.1, 2],
    [8, 3],
    [12, 4],
    [24, HIGHEST],
  ])('%d is step %d', (aSecond, step) => {
    expect(densityStep(aSecond)).toBe(step);
  });

  test('every drawing counts once, also one that is first seen under a dissolve', () => {
    const cut = row('2', {
      time: 72,
      rows: 96,
      handles: { head: 12, tail: 12 },
      rhythm: { moving: [], spoken: [], fresh: [1, 5, 13, 14, 40, 84, 85, 96] },
    });
    const [, placed] = placeCuts([row('1', { time: 48 }), cut], 'half', 24);
    const stretches = densityOf(cut, placed!, 24, 24);
    // Rows 13 to 84 are its own three seconds; those before count in the first, those behind in the last.
    expect(stretches.map(({ from, to, fresh }) => [from, to, fresh])).toEqual([
      [48, 72, 4],
      [72, 96, 1],
      [96, 120, 3],
    ]);
  });

  test('in total, whatever the cut', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.array(fc.nat(), { maxLength: 60 }),
        fc.constantFrom(1, 24, 120),
        (time, rolls, wanted) => {
          const fresh = rolls.map((roll) => 1 + (roll % time)).sort((a, b) => a - b);
          const cut = row('1', { time, rhythm: { moving: [], spoken: [], fresh } });
          const stretches = densityOf(cut, placeCuts([cut], 'half', 24)[0]!, 24, wanted);
          expect(stretches.reduce((sum, one) => sum + one.fresh, 0)).toBe(fresh.length);
          expect(stretches.at(-1)!.to).toBeCloseTo(time, 6);
        },
      ),
    );
  });
});
