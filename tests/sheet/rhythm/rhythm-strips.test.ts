import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeCuts } from '../../../src/count/count-episode.js';
import {
  bandMarks,
  column,
  densityOf,
  densityStep,
  HIGHEST,
  hatched,
  placeOf,
  ruled,
  stretchFrames,
  stripPieces,
  stripsFor,
} from '../../../src/sheet/rhythm/rhythm-strips.js';
import { listOf, row } from '../../count/rows.js';
import { linesOf } from '../laid.js';

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

  test('every drawing counts once, also one that is first seen under an overlap', () => {
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

// ---- what lies on the strips

const strips = { frames: 240, count: 1, left: 0, width: 100, top: 0, pitch: 15 };
const bands = { bar: 4, camera: 8, dialogue: 10, bottom: 12, ruler: 14 };

test('dialogue is ruled along, moves are hatched, drawings are blocks of grey', () => {
  expect(ruled(1, 9, 10, 20).map((mark) => mark.kind === 'line' && [mark.x1, mark.x2, mark.y1])).toEqual([
    [1, 9, 12],
    [1, 9, 15],
    [1, 9, 18],
  ]);
  expect(hatched(1, 9, 10, 20)).toMatchObject({ kind: 'hatch', x: 1, y: 10, width: 8, height: 10 });
  expect(column(1, 9, 10, 20)).toMatchObject({
    fill: 'grey',
    points: [
      [1, 10],
      [9, 10],
      [9, 20],
      [1, 20],
    ],
  });
});

test('drawings are counted a second, or over as many seconds as can be seen', () => {
  expect(stretchFrames(strips, 24)).toBe(24);
  // 0.3 mm a second: 5 seconds are the first round number of them of a millimetre.
  expect(stretchFrames({ ...strips, width: 3 }, 24)).toBe(120);
  expect(stretchFrames({ ...strips, width: 0.001 }, 24)).toBe(60 * 24);
});

describe('the cuts', () => {
  const upright = (list: ReturnType<typeof listOf>) =>
    linesOf(bandMarks(list, strips, bands)).filter(({ x1, x2 }) => x1 === x2);

  test('are parted where they begin, a new scene by a heavier and higher line', () => {
    const list = listOf([
      row('1', { time: 60 }, { scene: '1' }),
      row('2', { time: 60 }, { scene: '1' }),
      row('3', { time: 60 }, { scene: '2' }),
    ]);
    expect(upright(list).map(({ x1, y1, stroke }) => [x1, y1, stroke.widthMm])).toEqual([
      // The first scene is no new one.
      [0, 4, 0.22],
      [25, 4, 0.22],
      [50, 0, 0.5],
      // The end of the last.
      [75, 4, 0.5],
    ]);
  });

  test('that overlap are crossed instead', () => {
    const list = listOf([
      row(
        '1',
        { time: 114, rows: 120, handles: { head: 0, tail: 6 }, overlap: { in: 0, out: 12 } },
        { scene: '1' },
      ),
      row(
        '2',
        { time: 114, rows: 120, handles: { head: 6, tail: 0 }, overlap: { in: 12, out: 0 } },
        { scene: '1' },
      ),
    ]);
    expect(upright(list)).toHaveLength(2);
    const slanted = linesOf(bandMarks(list, strips, bands)).filter(
      ({ x1, x2, y1, y2 }) => x1 !== x2 && y1 !== y2,
    );
    expect(slanted.map(({ y1, y2 }) => [y1, y2])).toEqual([
      [4, 12],
      [12, 4],
    ]);
  });

  test('have moves and dialogue on their rows', () => {
    const rhythm = { moving: [{ from: 1, to: 24 }], spoken: [{ from: 25, to: 48 }], fresh: [] };
    const marks = bandMarks(listOf([row('1', { time: 240, rhythm })]), strips, bands);
    expect(marks.filter(({ kind }) => kind === 'hatch')).toMatchObject([
      { x: 0, width: 10, y: 8, height: 2 },
    ]);
    const lines = linesOf(marks).filter(({ y1, y2 }) => y1 === y2 && y1 > 10 && y1 < 12);
    expect(lines.map(({ x1, x2 }) => [x1, x2])).toEqual(Array(3).fill([10, 20]));
  });
});
