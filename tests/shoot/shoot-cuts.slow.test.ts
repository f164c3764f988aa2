/** Films as ffmpeg really writes them, read back by ffprobe and ffmpeg. Skipped, with a word, where they are not installed. */

import { execFileSync, spawnSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createCanvas } from '@napi-rs/canvas';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { program } from '../bundle.js';
import { compileFiles } from '../compile.js';
import { wave } from '../sound/wave-writer.js';

const installed = ['ffmpeg', 'ffprobe'].every((name) => spawnSync(name, ['-version']).status === 0);
if (!installed) console.warn('films are not looked at: ffmpeg and ffprobe are not installed');

const folder = mkdtempSync(join(tmpdir(), 'cutwright-films-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string): string => join(folder, name);

/** `path`: where programs are looked for. */
function shootWith(path: string, ...args: readonly string[]): { status: number | null; said: string } {
  const { status, stderr } = spawnSync(process.execPath, [program, 'shoot', ...args], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, PATH: path },
  });
  return { status, said: stderr };
}

const shoot = (...args: readonly string[]) => shootWith(process.env.PATH ?? '', ...args);

interface Stream {
  readonly codec_type: string;
  readonly width?: number;
  readonly height?: number;
  readonly r_frame_rate: string;
  readonly nb_read_frames?: string;
  readonly duration: string;
  readonly start_time: string;
}

function streamsOf(film: string): Stream[] {
  const options = ['-v', 'error', '-count_frames', '-show_streams', '-of', 'json'];
  const { streams } = JSON.parse(execFileSync('ffprobe', [...options, at(film)], { encoding: 'utf8' }));
  return streams as Stream[];
}

/** All frames of a film as grey values of a small picture. */
function greyFrames(film: string, width: number, height: number): Buffer[] {
  const bytes = execFileSync(
    'ffmpeg',
    ['-v', 'error', '-i', at(film), '-f', 'rawvideo', '-pix_fmt', 'gray', '-s', `${width}x${height}`, '-'],
    { maxBuffer: 1 << 28 },
  );
  const size = width * height;
  return Array.from({ length: bytes.length / size }, (_, i) => bytes.subarray(i * size, (i + 1) * size));
}

/** A drawing that shows its number as stripes of grey: nobody could take one for another. */
function numbered(number: number): Buffer {
  const canvas = createCanvas(254, 143);
  const context = canvas.getContext('2d');
  const grey = 40 + number * 35;
  context.fillStyle = `rgb(${grey}, ${grey}, ${grey})`;
  context.fillRect(0, 0, 254, 143);
  return canvas.toBuffer('image/png');
}

const MANIFEST = 'scan: 20dpi\ndrawings: scans/{level}{number}.png\n';

beforeAll(() => {
  mkdirSync(at('scans'), { recursive: true });
  writeFileSync(at('episode.yaml'), MANIFEST);
  writeFileSync(at('c1.cut'), 'cut 1\ntime 2+0\nstack A\nA: 1:5 2:3 (3 4)*4 5..\n');
  for (let number = 1; number <= 5; number++) writeFileSync(at(`scans/A${number}.png`), numbered(number));
});

describe.skipIf(!installed)('a film', () => {
  test('has the frames, the rate and the size of the cut, and on each frame the drawing that the sheet says', async () => {
    expect(shoot('c1.cut', '--clean', '--size', '320x180')).toEqual({
      status: 0,
      said: 'wrote c1.mp4: 2+0, 48 frames\n',
    });
    const [video, ...others] = streamsOf('c1.mp4');
    expect(others).toEqual([]);
    expect(video).toMatchObject({ width: 320, height: 180, r_frame_rate: '24/1', nb_read_frames: '48' });
    expect(Number(video!.duration)).toBeCloseTo(2, 6);
    const compiled = (await compileFiles(at('c1.cut'))).get(at('c1.cut'))!;
    const said = compiled.solved!.levels[0]!.exposures.map(({ cel }) => cel!);
    const shown = greyFrames('c1.mp4', 16, 9).map((frame) => Math.round((frame[72]! - 40) / 35));
    expect(shown).toEqual(said);
  });

  test('is the same file each time', () => {
    const [first, second] = ['x.mp4', 'y.mp4'].map((name) => {
      shoot('c1.cut', '--output', name, '--size', '160x90', '--to', '12');
      return readFileSync(at(name));
    });
    expect(first!.equals(second!)).toBe(true);
  });

  test('takes a picture of an odd size', () => {
    expect(shoot('c1.cut', '--output', 'odd.mp4', '--size', '161x91', '--to', '4').status).toBe(0);
    expect(streamsOf('odd.mp4')[0]).toMatchObject({ width: 162, height: 92 });
  });

  test.each(['.mov', '.mkv', '.webm'])('is written as %s, too', (ending) => {
    const name = `form${ending}`;
    expect(shoot('c1.cut', '--output', name, '--size', '160x90', '--to', '6').status).toBe(0);
    expect(streamsOf(name)[0]).toMatchObject({ nb_read_frames: '6' });
  });

  test('has its sound where the sheet has it, within a frame', () => {
    // A click half a second into the recording, which begins on row 13: heard at the end of the first second.
    const rate = 48_000;
    const samples = new Float32Array(rate * 2);
    samples.fill(0.9, rate / 2, rate / 2 + 200);
    writeFileSync(at('click.wav'), wave(samples, { rate }));
    writeFileSync(at('c2.cut'), 'cut 2\ntime 2+0\nA: 1..\ntrack "click.wav" @13\n');
    expect(shoot('c2.cut', '--size', '160x90').status).toBe(0);
    const streams = streamsOf('c2.mp4');
    expect(streams.map(({ codec_type }) => codec_type)).toEqual(['video', 'audio']);
    const [video, audio] = streams;
    expect(Math.abs(Number(audio!.duration) - Number(video!.duration))).toBeLessThan(1 / 24);
    const pcm = execFileSync('ffmpeg', [
      '-v',
      'error',
      '-i',
      at('c2.mp4'),
      '-f',
      's16le',
      '-ac',
      '1',
      '-ar',
      `${rate}`,
      '-',
    ]);
    const loud = Array.from({ length: pcm.length / 2 }, (_, i) => pcm.readInt16LE(i * 2)).findIndex(
      (value) => Math.abs(value) > 8000,
    );
    expect(Math.abs(loud / rate - 1)).toBeLessThan(1 / 24);
  });

  test('of an episode is as long as its running time, and mixes its overlap', () => {
    mkdirSync(at('ep/scans'), { recursive: true });
    writeFileSync(at('ep/episode.yaml'), 'scan: 20dpi\ndrawings: scans/{cut}.png\n');
    writeFileSync(at('ep/1.cut'), 'cut 1\ntime 1+0\nstack BG\noverlap out 9\n');
    writeFileSync(at('ep/2.cut'), 'cut 2\ntime 1+0\nstack BG\noverlap in 9\n');
    writeFileSync(at('ep/scans/1.png'), numbered(0));
    writeFileSync(at('ep/scans/2.png'), numbered(5));
    expect(shoot('ep', '--clean', '--size', '160x90').said).toBe('wrote ep/ep.mp4: 2+0, 48 frames\n');
    const greys = greyFrames('ep/ep.mp4', 16, 9).map((frame) => frame[72]!);
    expect(greys).toHaveLength(48);
    // Of nine frames five lie before the cut point: shares 0, 1/8 … 1 on frames 20 to 28.
    for (let frame = 1; frame <= 48; frame++) {
      const share = Math.max(0, Math.min(1, (frame - 20) / 8));
      expect(Math.abs(greys[frame - 1]! - (40 + 175 * share)), `frame ${frame}`).toBeLessThanOrEqual(5);
    }
  });

  test.each([
    ['cat > /dev/null; echo "x: No space left on device" >&2; exit 1', 'the disk is full'],
    ['head -c 20000 > /dev/null; echo "[mp4 @ 0x1] out of ideas" >&2; exit 1', 'ffmpeg says: out of ideas'],
  ])('whose program gives up (%s) is not there, and the one of before is', (script, reason) => {
    mkdirSync(at('shut'), { recursive: true });
    mkdirSync(at('bin'), { recursive: true });
    copyFileSync(at('c1.cut'), at('shut/c1.cut'));
    writeFileSync(at('shut/c1.mp4'), 'of before');
    writeFileSync(at('bin/ffmpeg'), `#!/bin/sh\n${script}\n`);
    chmodSync(at('bin/ffmpeg'), 0o755);
    const { status, said } = shootWith(`${at('bin')}:${process.env.PATH}`, 'shut/c1.cut', '--size', '160x90');
    expect(status).toBe(2);
    expect(said).toBe(`Error: \`shut/c1.mp4\` was not written: ${reason}.\ncommand line: film-failed\n`);
    expect(readFileSync(at('shut/c1.mp4'), 'utf8')).toBe('of before');
    expect(readdirSync(at('shut')).sort()).toEqual(['c1.cut', 'c1.mp4']);
  });

  test('without a program for it is pictures in a folder of its name', () => {
    mkdirSync(at('bare'));
    copyFileSync(at('c1.cut'), at('bare/c1.cut'));
    const { status } = shootWith(at('nothing'), 'bare/c1.cut', '--size', '160x90', '--to', '4');
    expect(status).toBe(0);
    expect(readdirSync(at('bare/c1'))).toEqual(['0001.png', '0002.png', '0003.png', '0004.png']);
    expect(readdirSync(at('bare')).sort()).toEqual(['c1', 'c1.cut']);
  });
});
