/** The sound of a film: what its cuts hear of their recordings, one after the other, as one WAV of 16 bits. */

import { findTrack, sourceOf } from '../episode/track-file.js';
import type { Host, Reading, TemporaryFile } from '../host/host.js';
import type { FilmPart } from '../picture/film-order.js';
import type { Shot } from '../shot/shot.js';
import { readWaveHeader, type WaveHeader } from '../sound/wave-header.js';
import { eachBlock } from '../sound/wave-samples.js';

/** A recording and what of it a part of the film hears. */
export interface HeardPart {
  readonly part: FilmPart;
  /** Absolute; null: this part is silent. */
  readonly path: string | null;
  /** The recording's sample at the beginning of row 1 of the sheet, and the first that may be heard. */
  readonly firstSeconds: number;
  readonly startSeconds: number;
}

/** The recording of a cut, as its sheet has it. */
export function heardPart(
  host: Host,
  place: string,
  shot: Shot,
  root: string | null,
  part: FilmPart,
): HeardPart {
  const found = findTrack(host, place, shot, root);
  const { track, fps } = shot;
  if (!found?.path || !found.sound || !track) return { part, path: null, firstSeconds: 0, startSeconds: 0 };
  const firstSeconds = track.startSeconds - (track.frame - 1) / fps;
  return { part, path: found.path, firstSeconds, startSeconds: track.startSeconds };
}

const HEADER_BYTES = 44;
const BYTES = 2;
/** Samples that are written at once. */
const BLOCK = 1 << 16;

/**
 * Writes the sound of `frames` frames from `from` on (0: the film's first). Null where nothing is to be heard. The rate is that of the first
 * recording; samples of others are taken by their times. Never throws.
 */
export function writeFilmSound(
  host: Host,
  file: Pick<TemporaryFile, 'add'>,
  parts: readonly HeardPart[],
  film: { readonly fps: number; readonly from: number; readonly frames: number },
): Reading<null> | null {
  const { fps, from, frames } = film;
  const recordings = parts.map(({ path }) => path && recordingOf(host, path));
  const first = recordings.find((one) => one !== null && one !== '');
  if (!first) return null;
  const rate = first.header.sampleRate;
  const sampleAt = (frame: number): number => Math.round((frame / fps) * rate);
  const begin = sampleAt(from);
  const end = sampleAt(from + frames);
  const head = file.add(waveHead(rate, end - begin));
  if (!head.ok) return head;
  for (const [i, { part, firstSeconds, startSeconds }] of parts.entries()) {
    const recording = recordings[i];
    const starts = Math.max(begin, sampleAt(part.before));
    const ends = Math.min(end, sampleAt(part.before + part.frames));
    // Where the film's first sample of this part lies in the recording.
    const offset = firstSeconds + part.rowsBefore / fps - part.before / fps;
    for (let at = starts; at < ends; at += BLOCK) {
      const samples = new Int16Array(Math.min(BLOCK, ends - at));
      if (recording) hear(recording, samples, { at: at / rate + offset, rate, startSeconds });
      const added = file.add(new Uint8Array(samples.buffer));
      if (!added.ok) return added;
    }
  }
  return { ok: true, value: null };
}

interface Recording {
  readonly source: ReturnType<typeof sourceOf>;
  readonly header: WaveHeader;
}

function recordingOf(host: Host, path: string): Recording | null {
  const start = host.readPart(path, 0, 0);
  if (!start.ok) return null;
  const source = sourceOf(host, path, start.value);
  const reading = readWaveHeader(source);
  return reading.ok ? { source, header: reading.header } : null;
}

/** Fills `samples` with the recording from a time on: by the nearest sample where the rates are alike, else between two. */
function hear(
  { source, header }: Recording,
  samples: Int16Array,
  { at, rate, startSeconds }: { at: number; rate: number; startSeconds: number },
): void {
  const step = header.sampleRate / rate;
  const first = step === 1 ? Math.round(at * rate) : at * header.sampleRate;
  const least = Math.round(startSeconds * header.sampleRate);
  const from = Math.max(0, Math.floor(first));
  const heard = new Float32Array(Math.max(0, Math.ceil(first + samples.length * step) + 2 - from));
  eachBlock(source, header, from, heard.length, (block, place) => heard.set(block, place - from));
  for (let i = 0; i < samples.length; i++) {
    const place = first + i * step;
    const whole = Math.floor(place);
    if (whole < least || whole < from) continue;
    const rest = place - whole;
    const value = (heard[whole - from] ?? 0) * (1 - rest) + (heard[whole + 1 - from] ?? 0) * rest;
    samples[i] = Math.max(-0x8000, Math.min(0x7fff, Math.round(value * 0x8000)));
  }
}

/** RIFF and WAVE, PCM of one channel. Source: Microsoft and IBM, Multimedia Programming Interface and Data Specifications 1.0 (1991). */
function waveHead(rate: number, samples: number): Uint8Array {
  const bytes = Buffer.alloc(HEADER_BYTES);
  const size = Math.min(samples * BYTES, 0xffffffff - HEADER_BYTES);
  bytes.write('RIFF', 0, 'latin1');
  bytes.writeUInt32LE(size + HEADER_BYTES - 8, 4);
  bytes.write('WAVEfmt ', 8, 'latin1');
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(rate, 24);
  bytes.writeUInt32LE(rate * BYTES, 28);
  bytes.writeUInt16LE(BYTES, 32);
  bytes.writeUInt16LE(BYTES * 8, 34);
  bytes.write('data', 36, 'latin1');
  bytes.writeUInt32LE(size, 40);
  return bytes;
}
