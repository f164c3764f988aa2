import { describe, expect, test } from 'vitest';
import { readTrack, type TrackSound, type TrackWindow } from '../../src/sound/track-sound.js';
import { source } from './byte-source.js';
import { tone, type WaveOptions, wave } from './wave-writer.js';

const WINDOW: TrackWindow = { rows: 48, fps: 24, frame: 1, startSeconds: 0 };

function sound(
  samples: ArrayLike<number>,
  window: Partial<TrackWindow> = {},
  options: WaveOptions = {},
): TrackSound {
  const reading = readTrack(source(wave(samples, options)), { ...WINDOW, ...window });
  if (!reading.ok) throw new Error(reading.fault);
  return reading.sound;
}
/** First and last row on which something is heard. */
const rowsOf = ({ peaks }: TrackSound): [number, number] => {
  const loud = [...peaks.keys()].filter((i) => peaks[i]! > 0.1);
  return [Math.floor(loud[0]! / 4) + 1, Math.floor(loud.at(-1)! / 4) + 1];
};

describe('the waveform on its rows', () => {
  test('four points a row, each with its peak and its root mean square', () => {
    const { peaks, levels, seconds } = sound(tone(2, 0.5, 1));
    expect([peaks.length, levels.length, seconds]).toEqual([192, 192, 2]);
    expect(peaks[60]).toBeCloseTo(0.5, 2);
    // A sine's root mean square is its peak over the root of two.
    const mean = levels.subarray(52, 92).reduce((sum, one) => sum + one, 0) / 40;
    expect(mean).toBeCloseTo(0.5 / Math.SQRT2, 2);
    expect(peaks[40]).toBe(0);
  });

  test.each([
    ['from the first row on', {}, [13, 24]],
    ['begun on a later row', { frame: 7 }, [19, 30]],
    ['begun inside the recording', { startSeconds: 0.25 }, [7, 18]],
    ['both', { frame: 13, startSeconds: 0.5 }, [13, 24]],
    ['at another speed', { fps: 12, rows: 24 }, [7, 12]],
  ] as const)('%s', (_, window, rows) => {
    expect(rowsOf(sound(tone(2, 0.5, 1), window))).toEqual(rows);
    // A rate that no row divides, other samples, two channels: the same rows.
    const samples = tone(2, 0.5, 1, 22_050);
    expect(rowsOf(sound(samples, window, { rate: 22_050, bits: 24, channels: 2 }))).toEqual(rows);
  });

  test('what lies before the place where it begins is not heard on the rows above it', () => {
    expect(rowsOf(sound(tone(2, 0, 2), { frame: 13, startSeconds: 1 }))).toEqual([13, 36]);
  });

  test('nothing before the recording, and nothing behind it', () => {
    const { peaks } = sound(tone(0.5, 0, 0.5), { frame: 25 });
    expect([...peaks.subarray(0, 96)].every((one) => one === 0)).toBe(true);
    expect([...peaks.subarray(144)].every((one) => one === 0)).toBe(true);
    expect(rowsOf(sound(tone(0.5, 0, 0.5), { frame: 25 }))).toEqual([25, 36]);
  });

  test('the sample at the beginning of row 1', () => {
    expect(sound(tone(2), { frame: 25, startSeconds: 1.5 }).firstSample).toBe(8000);
    expect(sound(tone(2), { frame: 25 }).firstSample).toBe(-16_000);
  });
});

test('of a long reel only the part that is heard is read', () => {
  const bytes = wave(tone(60, 30, 31));
  let read = 0;
  const counting = {
    size: bytes.length,
    read(at: number, count: number) {
      read += count;
      return bytes.subarray(at, at + count);
    },
  };
  readTrack(counting, { ...WINDOW, startSeconds: 29.5 });
  expect(read).toBeLessThan(2 * 16_000 * 2 + 200);
});
