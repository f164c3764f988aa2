import { describe, expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { noEpisode } from '../../src/episode/episode.js';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { messageOf } from '../../src/language/message.js';
import { tone, wave } from '../sound/wave-writer.js';

const RECORDING = wave(tone(1, 0, 1, 4000), { rate: 4000 });
const text = (file: string) => `cut 1\ntime 1+0\nA: 1..\ntrack "${file}"\nvoice "Nao" 1..24 "Wait"\n`;

function compiled(host: MemoryHost, folder: string | null = null) {
  const made = compile(
    host,
    '/work/cuts/c1.cut',
    { ...noEpisode, folder, file: folder && `${folder}/episode.yaml` },
    { name: 'cuts/c1.cut' },
  );
  const said = made.diagnostics.map((one) => `${one.severity} ${one.code}: ${messageOf(one, 'en')}`);
  return { ...made, said };
}
const world = (file: string, files: Readonly<Record<string, Uint8Array>> = {}) =>
  memoryHost({ 'cuts/c1.cut': text(file), ...files });

describe('where a recording may lie', () => {
  test.each([
    ['beside the cut', 'a.wav', 'cuts/a.wav', null],
    ['below it', 'sound/a.wav', 'cuts/sound/a.wav', null],
    ['in the episode', '../sound/a.wav', 'sound/a.wav', '/work'],
  ])('%s', (_, file, path, folder) => {
    const { said, solved, trackPath } = compiled(world(file, { [path]: RECORDING }), folder);
    expect(said).toEqual([]);
    expect(solved!.track!.sound!.seconds).toBe(1);
    expect(trackPath).toBe(`/work/${path}`);
  });

  test.each([
    ['../sound/a.wav', null, 'is not below this folder, so it is not read.'],
    [
      '../../a.wav',
      '/work',
      'is not below this folder and not below the folder of the episode, so it is not read.',
    ],
    [
      '/etc/a.wav',
      '/work',
      'is not below this folder and not below the folder of the episode, so it is not read.',
    ],
  ])('%s is not read', (file, folder, why) => {
    const host = world(file, { '/etc/a.wav': RECORDING, 'sound/a.wav': RECORDING, '/a.wav': RECORDING });
    const { said, solved } = compiled(host, folder);
    expect(said).toEqual([`warning track-outside: \`${file}\` ${why}`]);
    expect(solved!.track).toMatchObject({ sound: null, heard: null });
  });

  test('nor what a link leads to', () => {
    const host = world('a.wav', { '/elsewhere/a.wav': RECORDING });
    host.links.set('/work/cuts/a.wav', '/elsewhere/a.wav');
    expect(compiled(host).said).toEqual([expect.stringContaining('warning track-outside')]);
  });
});

describe('what cannot be read is one warning, and the cut is solved all the same', () => {
  const bad = (change: (bytes: Buffer) => void): Buffer => {
    const bytes = Buffer.from(RECORDING);
    change(bytes);
    return bytes;
  };
  const magic = (head: string) => Buffer.concat([Buffer.from(head, 'latin1'), Buffer.alloc(100)]);
  test.each([
    ['empty', Buffer.alloc(0), 'track-unreadable: `a.wav` is empty.'],
    ['an MP3', magic('ID3\x04'), 'track-unreadable: `a.wav` is an MP3 file, not a WAV.'],
    ['a FLAC', magic('fLaC'), 'track-unreadable: `a.wav` is a FLAC file, not a WAV.'],
    ['an Ogg', magic('OggS'), 'track-unreadable: `a.wav` is an Ogg file, not a WAV.'],
    ['an AIFF', magic('FORM\0\0\0\0AIFF'), 'track-unreadable: `a.wav` is an AIFF file, not a WAV.'],
    ['an M4A', magic('\0\0\0\x20ftypM4A '), 'track-unreadable: `a.wav` is an M4A file, not a WAV.'],
    ['a text', Buffer.from('hello, this is no sound'), 'track-unreadable: `a.wav` is no WAV file.'],
    ['a header', RECORDING.subarray(0, 44), 'track-unreadable: `a.wav` is cut off before its first sample.'],
    [
      '0 Hz',
      bad((one) => one.writeUInt32LE(0, 24)),
      'track-unreadable: `a.wav` says a rate of 0 samples a second.',
    ],
    [
      'no channels',
      bad((one) => one.writeUInt16LE(0, 22)),
      'track-unreadable: `a.wav` says that it has no channels.',
    ],
    [
      'samples in a coding',
      wave(tone(1), { tag: 17 }),
      'track-unreadable: `a.wav` holds samples of 16 bits in a coding (format 17) that is not read; save it with plain samples.',
    ],
    [
      'no numbers',
      wave([...tone(0.999, 0, 1, 4000), Number.NaN, Number.NaN, Number.NaN, Number.NaN], {
        rate: 4000,
        bits: 32,
        float: true,
      }),
      'track-damaged: `a.wav` holds 4 samples on these rows that are no numbers; silence stands for them.',
    ],
  ])('%s', (_, bytes, message) => {
    const { said, solved } = compiled(world('a.wav', { 'cuts/a.wav': bytes }));
    expect(said).toEqual([`warning ${message}`]);
    expect(solved!.levels).toHaveLength(2);
  });

  test('half of it: what is there is used', () => {
    const { said, solved } = compiled(world('a.wav', { 'cuts/a.wav': RECORDING.subarray(0, 44 + 4000) }));
    expect(said).toContain('warning track-damaged: `a.wav` is cut off: 0.5 s of 1 s are there.');
    expect(solved!.track!.heard).toEqual({ from: 1, to: 12 });
  });

  test('not there, with a guess; and not permitted', () => {
    const host = world('c12.wav', { 'cuts/c012.wav': RECORDING });
    expect(compiled(host).said).toEqual([
      'warning track-missing: There is no file `c12.wav`; did you mean `c012.wav`?',
    ]);
    host.files.set('/work/cuts/c12.wav', RECORDING);
    host.locked.add('/work/cuts/c12.wav');
    expect(compiled(host).said).toEqual([
      'warning track-missing: `c12.wav` cannot be read: permission denied.',
    ]);
    expect(compiled(world('sound', { 'cuts/sound/x': RECORDING })).said).toEqual([
      'warning track-missing: `sound` cannot be read: is a folder.',
    ]);
  });
});

test('2 GB are read in parts of a quarter of a megabyte, and only where the cut is', () => {
  const head = wave(tone(1, 0, 1, 48_000), { rate: 48_000, bits: 24, channels: 2, rf64: true });
  head.writeBigUInt64LE(BigInt(2e9), 28);
  const host = memoryHost({ 'cuts/c1.cut': text('reel.wav" from 3000s #') });
  let most = 0;
  host.readPart = (_, at, count) => {
    most = Math.max(most, count);
    const bytes = at < 200 ? head.subarray(at, at + count) : new Uint8Array(count).fill(0x55);
    return { ok: true, value: { bytes, size: 2e9 + 100, modified: 1 } };
  };
  const { solved } = compiled(host);
  expect(solved!.track!.sound!.seconds).toBeCloseTo(2e9 / 6 / 48_000, 3);
  expect(most).toBeLessThanOrEqual(1 << 18);
});

test('a recording that has not changed is not read again; one that has is', () => {
  const host = world('a.wav', { 'cuts/a.wav': Buffer.from(RECORDING) });
  let read = 0;
  const { readPart } = host;
  host.readPart = (path, at, most) => {
    read += most;
    return readPart(path, at, most);
  };
  const first = compiled(host);
  const once = read;
  expect(once).toBeGreaterThan(8000);
  const again = compiled(host);
  expect(read).toBe(once);
  expect(again.digest).toBe(first.digest);
  host.files.set('/work/cuts/a.wav', wave(tone(1, 0, 0.9, 4000), { rate: 4000 }));
  expect(compiled(host).digest).not.toBe(first.digest);
  expect(read).toBeGreaterThan(once);
});
