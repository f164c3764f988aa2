import { describe, expect, test } from 'vitest';
import { readWaveHeader } from '../../src/sound/wave-header.js';
import { eachBlock } from '../../src/sound/wave-samples.js';
import { source } from './byte-source.js';
import { wave } from './wave-writer.js';

function samplesOf(bytes: Uint8Array, first = 0, count = Number.POSITIVE_INFINITY) {
  const from = source(bytes);
  const reading = readWaveHeader(from);
  if (!reading.ok) throw new Error(reading.fault);
  const all: number[] = [];
  const places: number[] = [];
  const counted = eachBlock(from, reading.header, first, count, (block, at) => {
    places.push(at);
    all.push(...block);
  });
  return { all, places, counted };
}

const ramp = Float32Array.from({ length: 1000 }, (_, i) => Math.sin(i / 20));

describe('samples of every kind come out as they went in', () => {
  test.each([
    ['8 bits', { bits: 8 }, 1 / 80],
    ['16 bits', { bits: 16 }, 1e-4],
    ['16 bits, stereo', { bits: 16, channels: 2 }, 1e-4],
    ['16 bits, six channels', { bits: 16, channels: 6 }, 1e-4],
    ['24 bits', { bits: 24 }, 1e-6],
    ['24 bits, stereo', { bits: 24, channels: 2 }, 1e-6],
    ['32 bits', { bits: 32 }, 1e-7],
    ['floating point', { bits: 32, float: true, channels: 2 }, 1e-7],
    ['doubles', { bits: 64, float: true }, 1e-7],
  ] as const)('%s', (_, options, near) => {
    const { all } = samplesOf(wave(ramp, options));
    expect(all).toHaveLength(1000);
    expect(Math.max(...all.map((value, i) => Math.abs(value - ramp[i]!)))).toBeLessThan(near);
  });
});

test('channels are mixed: what is opposite cancels out', () => {
  const bytes = wave(ramp, { channels: 2 });
  for (let at = 44; at < bytes.length; at += 4) bytes.writeInt16LE(-bytes.readInt16LE(at), at);
  expect(Math.max(...samplesOf(bytes).all.map(Math.abs))).toBeLessThan(1e-4);
});

test('a part from the middle, and no more than there is', () => {
  const bytes = wave(ramp);
  expect(samplesOf(bytes, 100, 5).all).toEqual(samplesOf(bytes).all.slice(100, 105));
  expect(samplesOf(bytes, 990, 500).all).toHaveLength(10);
  expect(samplesOf(bytes, 5000, 10)).toMatchObject({ all: [], counted: { read: 0 } });
});

test('a long recording comes in blocks of a quarter of a megabyte', () => {
  const { all, places } = samplesOf(wave(new Float32Array(200_000), { bits: 24, channels: 2 }));
  expect(all).toHaveLength(200_000);
  expect(places.slice(0, 3)).toEqual([0, 43_690, 87_380]);
});

test('what is no number is silence, and counted', () => {
  const bytes = wave([0.5, Number.NaN, Number.POSITIVE_INFINITY, -0.5], { bits: 32, float: true });
  expect(samplesOf(bytes)).toMatchObject({ all: [0.5, 0, 0, -0.5], counted: { read: 4, notNumbers: 2 } });
});

test('a file that can no longer be read ends there', () => {
  const bytes = wave(ramp);
  const from = source(bytes);
  const reading = readWaveHeader(from);
  if (!reading.ok) throw new Error(reading.fault);
  const taken = eachBlock({ ...from, read: () => null }, reading.header, 0, 1000, () => {});
  expect(taken).toEqual({ read: 0, notNumbers: 0 });
});
