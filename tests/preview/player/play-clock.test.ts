import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Playing, playedAt, within } from '../../../src/preview/player/play-clock.js';

const minute: Playing = {
  start: 1234.5,
  from: 0,
  fps: 24,
  speed: 1,
  range: { first: 1, last: 1440 },
  loop: false,
};
/** Frame 1 is shown from 0 s on, frame 25 from 1 s on. */
const due = (seconds: number, fps = 24) => Math.floor(seconds * fps + 1e-6) + 1;

describe('a minute at 24 frames a second', () => {
  test('shows at every reading the frame that is due, however late readings come', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.0001, max: 0.4, noNaN: true }), { maxLength: 400 }),
        (steps) => {
          let now = 0;
          for (const step of steps) {
            now += step;
            if (now >= 60) break;
            expect(playedAt(minute, minute.start + now).frame - due(now)).toBeCloseTo(0);
          }
        },
      ),
    );
  });

  test('has shown each frame once when the clock ticks 60 times a second', () => {
    const shown = Array.from({ length: 3600 }, (_, i) => playedAt(minute, minute.start + i / 60).frame);
    expect(new Set(shown).size).toBe(1440);
    expect([shown[0], shown[1800], shown.at(-1)]).toEqual([1, 721, 1440]);
  });

  test('ends when its last frame was shown for its whole time', () => {
    expect(playedAt(minute, minute.start + 59.999)).toMatchObject({ frame: 1440, ended: false });
    expect(playedAt(minute, minute.start + 60)).toEqual({ frame: 1440, time: 1440, ended: true });
  });
});

test('a reading before the beginning, as of a clock that lags, shows the first frame', () => {
  expect(playedAt({ ...minute, from: 7 }, minute.start - 0.2)).toMatchObject({ frame: 8, ended: false });
});

test.each([
  [1 / 2, 13],
  [1 / 4, 7],
])('at speed %d a second shows frame %d', (speed, frame) => {
  expect(playedAt({ ...minute, speed }, minute.start + 1).frame).toBe(frame);
});

describe('a range that is looped', () => {
  const loop: Playing = { ...minute, start: 0, from: 9, range: { first: 10, last: 19 }, loop: true };

  test('begins again at its first frame, pass after pass without drift', () => {
    for (let pass = 0; pass < 5000; pass++) {
      const begins = (pass * 10) / 24;
      expect(playedAt(loop, begins + 0.001).frame).toBe(10);
      expect(playedAt(loop, begins + 9.5 / 24).frame).toBe(19);
    }
  });

  test('that was begun in its middle first ends this pass', () => {
    const middle = { ...loop, from: 17 };
    expect(playedAt(middle, 1.5 / 24).frame).toBe(19);
    expect(playedAt(middle, 2.5 / 24).frame).toBe(10);
  });

  test('of one frame shows that frame', () => {
    expect(playedAt({ ...loop, range: { first: 10, last: 10 } }, 7.77).frame).toBe(10);
  });
});

test('what lies outside is taken to the nearest end', () => {
  expect([0, 4, 99].map((frame) => within(frame, { first: 2, last: 9 }))).toEqual([2, 4, 9]);
});
