/** What lies on the strips. */

import { describe, expect, test } from 'vitest';
import { bandMarks, column, hatched, ruled, stretchFrames } from '../../../src/sheet/rhythm/rhythm-bands.js';
import { listOf, row } from '../../count/rows.js';
import { linesOf } from '../laid.js';

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

  test('that dissolve are crossed instead', () => {
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
