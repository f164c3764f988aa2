/** What a cut's sheet shows of its recording. Pure. */

import type { WaveTrouble } from '../language/catalogue/message-terms.js';
import { type ByteSource, readWaveHeader, type WaveHeader } from './wave-header.js';
import { eachBlock } from './wave-samples.js';

/** Points of the waveform on one row of the sheet. */
export const POINTS_A_ROW = 4;

/** Which part of a recording a cut hears. */
export interface TrackWindow {
  /** Rows of the sheet. */
  readonly rows: number;
  readonly fps: number;
  /** The row on whose beginning `startSeconds` of the recording is heard, from 1. */
  readonly frame: number;
  readonly startSeconds: number;
}

export interface TrackSound {
  readonly sampleRate: number;
  readonly channels: number;
  /** Of the whole recording. */
  readonly seconds: number;
  /** The recording's sample that is heard at the beginning of row 1; below 0 where the recording begins later. */
  readonly firstSample: number;
  /** Largest sample of each quarter of a row, 0 to 1, `POINTS_A_ROW` for each row of the sheet; 0 where there is no recording. */
  readonly peaks: Float32Array;
  /** Root mean square of each quarter of a row, 0 to 1. */
  readonly levels: Float32Array;
  /** Samples among those that are no numbers; they count as 0. */
  readonly notNumbers: number;
  /** Where the file ends before its header says: seconds that it should have. */
  readonly promisedSeconds: number | null;
}

export type TrackReading =
  | { readonly ok: true; readonly sound: TrackSound }
  | ({ readonly ok: false } & WaveTrouble);

/** Reads what is heard on the rows of a sheet, and nothing else of the recording, a block at a time. */
export function readTrack(source: ByteSource, window: TrackWindow): TrackReading {
  const reading = readWaveHeader(source);
  if (!reading.ok) return reading;
  const { header } = reading;
  const { sampleRate, channels, samples, promised } = header;
  const { rows, fps, frame, startSeconds } = window;
  const first = (startSeconds - (frame - 1) / fps) * sampleRate;
  const beginning = Math.max(first, startSeconds * sampleRate);
  const { peaks, levels, notNumbers } = envelope(source, header, { first, beginning, rows, fps });
  const sound: TrackSound = {
    sampleRate,
    channels,
    seconds: samples / sampleRate,
    firstSample: Math.round(first),
    peaks,
    levels,
    notNumbers,
    promisedSeconds: promised === null ? null : promised / sampleRate,
  };
  return { ok: true, sound };
}

interface Heard {
  /** The sample at the beginning of row 1, and the first that is heard. */
  readonly first: number;
  readonly beginning: number;
  readonly rows: number;
  readonly fps: number;
}

function envelope(source: ByteSource, header: WaveHeader, { first, beginning, rows, fps }: Heard) {
  const count = rows * POINTS_A_ROW;
  const peaks = new Float32Array(count);
  const levels = new Float32Array(count);
  const step = header.sampleRate / (fps * POINTS_A_ROW);
  const start = Math.max(0, Math.round(beginning));
  const end = Math.round(first + count * step);
  let point = Math.max(0, Math.floor((start - first) / step + 1e-9));
  let next = Math.round(first + (point + 1) * step);
  let peak = 0;
  let sum = 0;
  let inPoint = 0;
  const finish = (): void => {
    if (point < count && inPoint > 0) {
      peaks[point] = Math.min(1, peak);
      levels[point] = Math.min(1, Math.sqrt(sum / inPoint));
    }
    peak = 0;
    sum = 0;
    inPoint = 0;
  };
  const { notNumbers } = eachBlock(source, header, start, Math.max(0, end - start), (block, at) => {
    for (let i = 0; i < block.length; ) {
      while (at + i >= next) {
        finish();
        point += 1;
        next = Math.round(first + (point + 1) * step);
      }
      const stop = Math.min(block.length, next - at);
      inPoint += stop - i;
      // In names of its own: what other functions share is boxed at every write.
      let loudest = peak;
      let squares = 0;
      for (; i < stop; i++) {
        const value = block[i]!;
        squares += value * value;
        const size = value < 0 ? -value : value;
        if (size > loudest) loudest = size;
      }
      peak = loudest;
      sum += squares;
    }
  });
  finish();
  return { peaks, levels, notNumbers };
}
