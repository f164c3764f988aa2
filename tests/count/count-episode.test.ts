import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeCuts } from '../../src/count/count-episode.js';
import { handleOf } from '../../src/shot/camera/bind-light.js';
import { listOf, row } from './rows.js';

const counts = (keys: number, breakdowns: number, inbetweens: number, reused = 0) => ({
  counts: { keys, breakdowns, inbetweens, drawings: keys + breakdowns + inbetweens, reused, backgrounds: 0 },
});

const rows = [
  row('1', { time: 48, ...counts(2, 0, 3) }, { artists: ['H. Tarn'] }),
  row('2', { time: 72, ...counts(1, 1, 0, 4) }, { artists: ['H. Tarn', 'L. Quoy'] }),
  row('3', { time: 24, ...counts(0, 0, 0) }),
  row('4', null, { artists: ['L. Quoy'], sound: false, pages: null, problems: { errors: 2, warnings: 1 } }),
];

describe('totals', () => {
  const { totals } = listOf(rows, { budget: 120 });

  test('add up what the rows say', () => {
    expect(totals).toMatchObject({
      cuts: 4,
      time: 144,
      running: 144,
      rows: 144,
      counts: { keys: 3, breakdowns: 1, inbetweens: 3, drawings: 7, reused: 4, backgrounds: 0 },
      pages: { sheet: 3, all: 6 },
      problems: { errors: 2, warnings: 1 },
      unsound: 1,
      untimed: 1,
      withoutArtist: 1,
    });
  });

  test('seven drawings in six seconds', () => {
    expect(totals.drawingsASecond).toBeCloseTo(7 / 6, 12);
  });

  test.each([
    [120, 24],
    [144, 0],
    [150, -6],
    [null, null],
  ])('against a budget of %s frames: %s', (budget, over) => {
    expect(listOf(rows, { budget }).totals.over).toBe(over);
  });

  test('of nothing', () => {
    expect(listOf([], { budget: 10 }).totals).toMatchObject({
      cuts: 0,
      running: 0,
      over: -10,
      drawingsASecond: 0,
    });
  });
});

test('a cut of two artists counts for both of them, and once in the total', () => {
  const { artists, totals } = listOf(rows);
  expect(artists).toEqual([
    { name: 'H. Tarn', cuts: 2, shared: 1, running: 120, drawings: 7 },
    { name: 'L. Quoy', cuts: 2, shared: 1, running: 72, drawings: 2 },
  ]);
  expect(artists.reduce((sum, { drawings }) => sum + drawings, 0)).toBe(totals.counts.drawings + 2);
});

// ----
// Running time against the two rules for dissolves; common practice, with the figures that studios give for them.

/** Two cuts with a dissolve of `length` between them, as the sheets of either rule have them. */
function dissolved(rule: 'half' | 'full', times: readonly [number, number], length: number, fps = 24) {
  const tail = handleOf('out', length, rule);
  const head = handleOf('in', length, rule);
  return placeCuts(
    [
      row('1', {
        time: times[0],
        rows: times[0] + tail,
        handles: { head: 0, tail },
        overlap: { in: 0, out: length },
      }),
      row('2', {
        time: times[1],
        rows: times[1] + head,
        handles: { head, tail: 0 },
        overlap: { in: length, out: 0 },
      }),
    ],
    rule,
    fps,
  );
}

const running = (placed: readonly { frames: number }[]): number =>
  placed.reduce((sum, { frames }) => sum + frames, 0);

describe('a dissolve of 1+0 between 4+0 and 3+0', () => {
  test('runs 168 frames where times end in its middle', () => {
    expect(running(dissolved('half', [96, 72], 24))).toBe(168);
  });

  test('runs 96 + 72 − 24 = 144 frames where both times hold the whole of it', () => {
    expect(running(dissolved('full', [96, 72], 24))).toBe(144);
  });
});

test('of an odd length, the outgoing cut has the smaller half beyond the cut point', () => {
  const half = dissolved('half', [96, 72], 13);
  expect(half.map(({ before, after }) => [before, after])).toEqual([
    [0, 6],
    [7, 0],
  ]);
  const full = dissolved('full', [96, 72], 13);
  expect(full.map(({ before, after, frames }) => [before, after, frames])).toEqual([
    [0, 6, 90],
    [7, 0, 65],
  ]);
});

test('the same two pictures, said in either way, have the same cut point and run as long', () => {
  const frames = fc.integer({ min: 30, max: 400 });
  fc.assert(
    fc.property(frames, frames, fc.integer({ min: 1, max: 29 }), (a, b, length) => {
      const half = dissolved('half', [a, b], length);
      const full = dissolved('full', [a + Math.floor(length / 2), b + Math.ceil(length / 2)], length);
      expect(full).toEqual(half);
    }),
  );
});

test('under full times a dissolve that only one cut names takes nothing off', () => {
  const rows = [row('1', { time: 96, overlap: { in: 0, out: 24 } }), row('2', { time: 72 })];
  expect(running(placeCuts(rows, 'full', 24))).toBe(168);
});

test('each cut begins where the ones before it end; one whose time is not known takes none', () => {
  const placed = placeCuts([row('1', { time: 48 }), row('2', null), row('3', { time: 24 })], 'half', 24);
  expect(placed.map(({ start, frames }) => [start, frames])).toEqual([
    [0, 48],
    [48, 0],
    [48, 24],
  ]);
});

test('a cut on 12 frames a second runs as long as its seconds', () => {
  const [placed] = placeCuts([row('1', { time: 18, fps: 12 })], 'half', 24);
  expect(placed).toMatchObject({ frames: 36, frameOfRow: 2 });
});

describe('cuts of another rate than the episode', () => {
  const ten = (fps: number) => row('1', { fps, time: 10, rows: 10 });

  test('add up in seconds and are rounded at each cut point', () => {
    const placed = placeCuts(
      Array.from({ length: 5 }, () => ten(25)),
      'half',
      24,
    );
    expect(running(placed)).toBe(48);
    // 9.6 frames each: cut points at 9.6, 19.2, 28.8, 38.4.
    expect(placed.map(({ start }) => start)).toEqual([0, 10, 19, 29, 38]);
  });

  test('leave no gap and are a frame off nowhere', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ fps: fc.constantFrom(12, 24, 25, 30), time: fc.integer({ min: 1, max: 500 }) })),
        fc.constantFrom(24, 25, 30),
        (cuts, fps) => {
          const placed = placeCuts(
            cuts.map((cut) => row('1', { ...cut, rows: cut.time })),
            'half',
            fps,
          );
          let seconds = 0;
          for (const [i, { start, frames }] of placed.entries()) {
            expect(Math.abs(start - seconds * fps)).toBeLessThanOrEqual(0.5 + 1e-6);
            seconds += cuts[i]!.time / cuts[i]!.fps;
            expect(start + frames).toBe(placed[i + 1]?.start ?? running(placed));
          }
        },
      ),
    );
  });
});
