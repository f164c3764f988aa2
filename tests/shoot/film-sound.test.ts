import { describe, expect, it } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { noEpisode } from '../../src/episode/episode.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { type HeardPart, heardPart, writeFilmSound } from '../../src/shoot/film-sound.js';
import { wave } from '../sound/wave-writer.js';

const RATE = 2400;
/** A recording of a second whose samples count up: sample n is n / 4096. */
const counting = (rate = RATE, from = 0): Uint8Array =>
  wave(
    Array.from({ length: rate }, (_, i) => ((from + i) % 4096) / 4096),
    { rate },
  );

function heard(
  parts: readonly HeardPart[],
  files: Record<string, Uint8Array>,
  film: { from: number; frames: number },
) {
  const host = memoryHost(files);
  const opened = host.openTemporary('/work/out.wav');
  if (!opened.ok) throw new Error(opened.reason);
  const written = writeFilmSound(host, opened.value, parts, { fps: 24, ...film });
  if (written === null) return null;
  expect(written.ok).toBe(true);
  opened.value.finish();
  const bytes = Buffer.from(host.files.get('/work/out.wav')!);
  const samples = Array.from(
    { length: (bytes.length - 44) / 2 },
    (_, i) => bytes.readInt16LE(44 + 2 * i) / 8,
  );
  return { rate: bytes.readUInt32LE(24), length: bytes.readUInt32LE(40) / 2, samples };
}

const part = (before: number, frames: number, rowsBefore = 0) => ({ before, frames, rowsBefore });
const recorded = (
  path: string | null,
  at: HeardPart['part'],
  firstSeconds = 0,
  startSeconds = 0,
): HeardPart => ({
  part: at,
  path,
  firstSeconds,
  startSeconds,
});

describe('the sound of a film', () => {
  it('is that of the recording, from row 1 on', () => {
    const sound = heard(
      [recorded('/work/a.wav', part(0, 12))],
      { 'a.wav': counting() },
      { from: 0, frames: 12 },
    );
    expect(sound).toMatchObject({ rate: RATE, length: 1200 });
    expect([0, 1, 700, 1199].map((i) => Math.round(sound!.samples[i]!))).toEqual([0, 1, 700, 1199]);
  });

  it('begins in the middle of it for a part of the film', () => {
    const sound = heard(
      [recorded('/work/a.wav', part(0, 12))],
      { 'a.wav': counting() },
      { from: 6, frames: 2 },
    );
    expect(sound).toMatchObject({ length: 200 });
    expect(Math.round(sound!.samples[0]!)).toBe(600);
  });

  it('follows the cuts, each with its own recording, handles left out, silent where there is none', () => {
    const parts = [
      recorded('/work/a.wav', part(0, 2)),
      recorded(null, part(2, 2)),
      recorded('/work/b.wav', part(4, 2, 4)),
    ];
    const files = { 'a.wav': counting(), 'b.wav': counting(RATE, 1000) };
    const sound = heard(parts, files, { from: 0, frames: 6 })!;
    expect(sound.length).toBe(600);
    expect([199, 200, 399, 400, 401].map((i) => Math.round(sound.samples[i]!))).toEqual([
      199, 0, 0, 1400, 1401,
    ]);
  });

  it('is silent before the recording begins, and starts inside a longer reel', () => {
    // First heard on row 4 (three frames later), from 0.25 s of the reel on.
    const first = 0.25 - 3 / 24;
    const sound = heard(
      [recorded('/work/a.wav', part(0, 6), first, 0.25)],
      { 'a.wav': counting() },
      { from: 0, frames: 6 },
    )!;
    expect([0, 299, 300, 301].map((i) => Math.round(sound.samples[i]!))).toEqual([0, 0, 600, 601]);
  });

  it('takes recordings of another rate by their times', () => {
    const parts = [recorded('/work/a.wav', part(0, 2)), recorded('/work/b.wav', part(2, 2))];
    const files = { 'a.wav': counting(2400), 'b.wav': counting(4800) };
    const sound = heard(parts, files, { from: 0, frames: 4 })!;
    expect([200, 250, 399].map((i) => Math.round(sound.samples[i]!))).toEqual([0, 100, 398]);
  });

  it('is none where no cut has a recording that can be read', () => {
    expect(heard([recorded(null, part(0, 2))], {}, { from: 0, frames: 2 })).toBeNull();
    expect(heard([recorded('/work/x.wav', part(0, 2))], {}, { from: 0, frames: 2 })).toBeNull();
  });

  it('is refused where the disk is full', () => {
    const host = memoryHost({ 'a.wav': counting() });
    host.room = 100;
    const opened = host.openTemporary('/work/out.wav');
    if (!opened.ok) throw new Error(opened.reason);
    const parts = [recorded('/work/a.wav', part(0, 12))];
    expect(writeFilmSound(host, opened.value, parts, { fps: 24, from: 0, frames: 12 })).toEqual({
      ok: false,
      reason: 'the disk is full',
    });
  });
});

it('takes file, place and start from the cut', () => {
  const host = memoryHost({ 's.wav': counting() });
  const text = 'cut 1\ntime 1+0\nA: 1..\ntrack "s.wav" @7 from 0.5s\n';
  const { shot } = compile(host, '/work/this.cut', noEpisode, { bytes: Buffer.from(text) });
  expect(heardPart(host, '/work/this.cut', shot!, null, part(0, 24))).toEqual({
    part: part(0, 24),
    path: '/work/s.wav',
    firstSeconds: 0.25,
    startSeconds: 0.5,
  });
});
