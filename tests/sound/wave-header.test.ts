import { describe, expect, test } from 'vitest';
import { readWaveHeader } from '../../src/sound/wave-header.js';
import { source } from './byte-source.js';
import { tone, wave } from './wave-writer.js';

const read = (bytes: Uint8Array) => readWaveHeader(source(bytes));

describe('what a header says', () => {
  // Layouts: Microsoft and IBM, RIFF 1.0 (1991), chapter 3; EBU Tech 3306 (2009) for RF64 and ds64.
  test.each([
    ['8 bits', { bits: 8 }, 'unsigned8', 1],
    ['16 bits', { bits: 16 }, 'signed16', 2],
    ['24 bits, stereo', { bits: 24, channels: 2 }, 'signed24', 6],
    ['32 bits', { bits: 32 }, 'signed32', 4],
    ['floating point', { bits: 32, float: true }, 'float32', 4],
    ['doubles', { bits: 64, float: true }, 'float64', 8],
    ['the longer form', { bits: 24, extensible: true }, 'signed24', 3],
    ['floating point in the longer form', { bits: 32, float: true, extensible: true }, 'float32', 4],
    ['RF64', { rf64: true }, 'signed16', 2],
    ['another chunk first, of an odd size', { chunk: true }, 'signed16', 2],
  ] as const)('%s', (_, options, format, blockBytes) => {
    const reading = read(wave(tone(0.1), { ...options, rate: 44_100 }));
    expect(reading).toMatchObject({
      ok: true,
      header: { sampleRate: 44_100, format, blockBytes, samples: 1600, promised: null },
    });
  });

  test('a recorder that never wrote the size: all up to the end of the file', () => {
    for (const said of [0, 0xffffffff]) {
      const reading = read(wave(tone(0.1), { said }));
      expect(reading).toMatchObject({ ok: true, header: { samples: 1600, promised: null } });
    }
  });

  test('a file that ends too early: what is there, and what was promised', () => {
    const bytes = wave(tone(1));
    const reading = read(bytes.subarray(0, 44 + 16_000));
    expect(reading).toMatchObject({ ok: true, header: { samples: 8000, promised: 16_000 } });
  });

  test('more than 4 GB is only a number', () => {
    const bytes = wave(tone(0.1), { rf64: true });
    bytes.writeBigUInt64LE(BigInt(6e9), 28);
    const huge = { ...source(bytes), size: 6e9 + 100 };
    expect(readWaveHeader(huge)).toMatchObject({ ok: true, header: { samples: 3e9, promised: null } });
  });
});

describe('what is no WAV, or cannot be read', () => {
  const magic = (head: string) => Buffer.concat([Buffer.from(head, 'latin1'), Buffer.alloc(2000)]);
  // First bytes as each format is described: ID3v2 and ISO 11172-3, RFC 9639, RFC 3533, AIFF-C 1991, ISO 14496-12.
  test.each([
    ['ID3\x04', 'mp3'],
    ['\xff\xfb\x90\x64', 'mp3'],
    ['fLaC\0\0\0\x22', 'flac'],
    ['OggS\0\x02', 'ogg'],
    ['FORM\0\0\0\x10AIFF', 'aiff'],
    ['FORM\0\0\0\x10AIFC', 'aiff'],
    ['\0\0\0\x20ftypM4A ', 'm4a'],
    ['caff\0\x01', 'caf'],
    ['.snd\0\0\0\x18', 'au'],
    ['riff\x2e\x91\xcf\x11', 'wave64'],
    ['RIFX\0\0\0\x10WAVE', 'big-endian-wave'],
    ['RIFF\x10\0\0\0AVI ', 'avi'],
    ['MThd\0\0\0\x06', 'midi'],
  ])('%j is named: %s', (head, format) => {
    expect(read(magic(head))).toEqual({ ok: false, fault: 'other-format', format });
  });

  const header = wave(tone(0.1));
  const changed = (change: (bytes: Buffer) => void): Buffer => {
    const bytes = Buffer.from(header);
    change(bytes);
    return bytes;
  };
  test.each([
    ['nothing at all', Buffer.alloc(0), 'empty'],
    ['a picture', magic('\x89PNG\r\n\x1a\n'), 'unknown-format'],
    ['the first bytes only', header.subarray(0, 20), 'cut-off'],
    ['a header only', header.subarray(0, 44), 'cut-off'],
    ['a rate of 0', changed((one) => one.writeUInt32LE(0, 24)), 'no-rate'],
    ['no channels', changed((one) => one.writeUInt16LE(0, 22)), 'no-channels'],
    ['a block that does not fit', changed((one) => one.writeUInt16LE(7, 32)), 'damaged'],
    ['no samples', wave([], { said: 0 }), 'no-samples'],
  ])('%s', (_, bytes, fault) => {
    expect(read(bytes)).toEqual({ ok: false, fault });
  });

  test('samples in a coding, with its registered tag', () => {
    expect(read(wave(tone(0.1), { tag: 0x11 }))).toEqual({ ok: false, fault: 'coded', tag: 17, bits: 16 });
  });

  test('every beginning of a file is read without an exception', () => {
    const bytes = wave(tone(0.01), { extensible: true, chunk: true });
    for (let length = 0; length < bytes.length; length++)
      expect(() => read(bytes.subarray(0, length))).not.toThrow();
  });
});
