import { PNG as PngFile } from 'pngjs';
import { describe, expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { playOf, scanOf, soundOf } from '../../src/watch/played-cut.js';
import { wave } from '../sound/wave-writer.js';

const PNG = PngFile.sync.write(new PngFile({ width: 8, height: 4 }));
const CUT = 'cut 7 "Quay"\ntime 1+0\nstack BG A\nA: 1:12 2..\nlevel BG picture "art/bg.png"\n';
const FILES = {
  'episode.yaml': 'drawings: scans/{cut:3}/{level}{number:2}.png\ncuts: [ "*.cut" ]\n',
  'a.cut': CUT,
  'scans/007/A02.png': PNG,
  'scans/007/A03.png': PNG,
  'art/bg.png': PNG,
  'secret.png': PNG,
};

async function played(files: Readonly<Record<string, string | Uint8Array>> = FILES) {
  const host = memoryHost(files);
  const { jobs } = await findCuts(host, ['episode.yaml']);
  const job = jobs[0]!;
  const { solved, trackPath } = compile(host, job.path, job.episode, { name: job.name });
  const source = { solved: solved!, episode: job.episode, place: job.path!, file: job.name, trackPath };
  return {
    host,
    play: () => playOf(host, source),
    sound: () => soundOf(host, source),
    scan: (level: number, number: number | null) => scanOf(host, source, level, number),
  };
}

describe('the drawings of a cut', () => {
  test('are those that are there, as the episode and the level name them', async () => {
    const { play } = await played();
    expect(play().drawings.map(({ level, number, name }) => [level, number, name])).toEqual([
      [0, null, 'art/bg.png'],
      [1, 2, 'scans/007/A02.png'],
    ]);
  });

  test('have another stamp when the file is another one', async () => {
    const { host, play } = await played();
    const before = play().drawings[1]!.stamp;
    expect(play().drawings[1]!.stamp).toBe(before);
    host.files.set('/work/scans/007/A02.png', Buffer.concat([PNG, PNG]));
    expect(play().drawings[1]!.stamp).not.toBe(before);
  });

  test('are handed over with what they are', async () => {
    const { scan } = await played();
    expect(scan(1, 2)).toEqual({ type: 'image/png', bytes: PNG });
    expect(scan(0, null)?.type).toBe('image/png');
  });

  test('that the cut does not show are not handed over, though they lie there', async () => {
    const { scan } = await played();
    expect([scan(1, 3), scan(1, null), scan(0, 2), scan(9, 1)]).toEqual([null, null, null, null]);
  });

  test('that are no pictures are not handed over', async () => {
    const { scan, play } = await played({ ...FILES, 'scans/007/A02.png': '<svg onload="alert(1)"/>' });
    expect(scan(1, 2)).toBeNull();
    expect(play().drawings.map(({ number }) => number)).toContain(2);
  });

  test('that are too large for the memory of a browser are not handed over', async () => {
    const large = PngFile.sync.write(new PngFile({ width: 16_385, height: 1 }));
    const { scan } = await played({ ...FILES, 'scans/007/A02.png': large });
    expect(scan(1, 2)).toBeNull();
  });

  test('outside of the episode are neither named nor handed over', async () => {
    const { scan, play } = await played({
      ...FILES,
      'a.cut': CUT.replace('art/bg.png', '../../etc/bg.png'),
      '/etc/bg.png': PNG,
    });
    expect(play().drawings.map(({ level }) => level)).toEqual([1]);
    expect(scan(0, null)).toBeNull();
  });
});

describe('what is said of a cut', () => {
  test('is its rate, its rows and how they are named', async () => {
    const { picture, feet, caution, sound } = (await played()).play();
    expect([picture.fps, picture.runs.reduce((sum, [, rows]) => sum + rows, 0)]).toEqual([24, 24]);
    expect([feet, caution, sound]).toEqual([false, null, null]);
  });

  test('is the caution of its sheet where light flashes', async () => {
    const { play } = await played({
      ...FILES,
      'a.cut': `${CUT.replace('A: 1:12 2..', 'A: 1:6 x:6 1:6 x..')}level A flash\n`,
    });
    expect(play().caution).toMatchObject({
      language: 'en',
      text: expect.stringMatching(/^CAUTION: flashing light/),
    });
  });
});

describe('what is heard', () => {
  /** A second of silence, then a second that is loud; 24 bits. */
  const recording = (loud: number) =>
    wave(
      Float32Array.from({ length: 16_000 }, (_, i) => (i < 8000 ? 0 : loud)),
      { rate: 8000, bits: 24 },
    );
  const WITH = { ...FILES, 'a.cut': `${CUT}track "c.wav" from 0.5s\n`, 'c.wav': recording(0.5) };

  test('is the cut’s own part of the recording, and is another sound when the file is another one', async () => {
    const { sound, play, host } = await played(WITH);
    const { type, bytes } = sound()!;
    expect(type).toBe('audio/wav');
    const view = new DataView(bytes.buffer, bytes.byteOffset + 44);
    // The cut lasts a second; half of it is silent.
    expect(bytes.length).toBe(44 + 16_000);
    expect([view.getInt16(2 * 3990, true), view.getInt16(2 * 4010, true)]).toEqual([0, 0x4000]);
    const before = play().sound;
    expect(before).not.toBeNull();
    host.files.set('/work/c.wav', Buffer.concat([recording(0.5), Buffer.alloc(8)]));
    expect(play().sound).not.toBe(before);
  });

  test('is nothing where the cut names no recording, or one that is not there', async () => {
    const { sound, play } = await played();
    expect([sound(), play().sound]).toEqual([null, null]);
    const lost = await played({ ...WITH, 'c.wav': 'no sound' });
    expect([lost.sound(), lost.play().sound]).toEqual([null, null]);
  });
});
