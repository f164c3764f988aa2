import { describe, expect, test } from 'vitest';
import { BANDS, cutOut, mel, speechFeatures, speechSamples } from '../../src/sound/speech-features.js';
import { readWaveHeader } from '../../src/sound/wave-header.js';
import { source } from './byte-source.js';
import { randomOf } from './speech-synthesis.js';
import { tone, wave } from './wave-writer.js';

test('the mel of 1000 Hz is 1000', () => {
  // O'Shaughnessy 1987: 2595 log10(1 + f/700), made so that 1000 Hz are 1000 mel.
  expect(mel(1000)).toBeCloseTo(1000, 0);
});

describe('every 10 ms', () => {
  const noise = randomOf(3);
  // Half a second each of nothing, a voice of 120 Hz, and hiss.
  const samples = Float32Array.from({ length: 24_000 }, (_, i) => {
    if (i < 8000) return 0;
    if (i >= 16_000) return 0.1 * (noise() * 2 - 1);
    return 0.3 * Math.sin(i * 0.0471) + 0.2 * Math.sin(i * 0.0942) + 0.1 * Math.sin(i * 0.1414);
  });
  const { steps, loud, voiced, shape } = speechFeatures(samples);

  test('how loud, from 0 to 1', () => {
    expect(steps).toBe(150);
    expect([loud[20]! < 0.05, loud[70]! > 0.5, loud[120]! > 0.5]).toEqual([true, true, true]);
  });

  test('how voiced', () => {
    expect([voiced[70]! > 0.9, voiced[120]! < 0.6]).toEqual([true, true]);
  });

  test('the shape of the spectrum, without its mean', () => {
    for (const step of [70, 120]) {
      const bands = shape.subarray(step * BANDS, (step + 1) * BANDS);
      expect(bands.reduce((sum, one) => sum + one, 0)).toBeCloseTo(0, 2);
    }
  });

  test('and a part of it', () => {
    const part = cutOut({ steps, loud, voiced, shape }, 60, 80);
    expect([part.steps, part.loud.length, part.shape.length, part.loud[10]]).toEqual([
      20,
      20,
      20 * BANDS,
      loud[70],
    ]);
  });
});

test('a high tone stands in a high band, whatever the rate of the recording', () => {
  for (const rate of [8000, 16_000, 22_050, 48_000]) {
    const at = (hz: number) =>
      Float32Array.from({ length: rate }, (_, i) => 0.5 * Math.sin((2 * Math.PI * hz * i) / rate));
    const strongest = (hz: number) => {
      const from = source(wave(at(hz), { rate }));
      const reading = readWaveHeader(from);
      if (!reading.ok) throw new Error(reading.fault);
      const { shape } = speechFeatures(speechSamples(from, reading.header, 0, 1));
      const bands = shape.subarray(50 * BANDS, 51 * BANDS);
      return bands.indexOf(Math.max(...bands));
    };
    expect(strongest(3000) - strongest(600), `${rate}`).toBeGreaterThan(6);
  }
});

test('a search that begins before the recording begins with silence', () => {
  const from = source(wave(tone(1, 0, 1)));
  const reading = readWaveHeader(from);
  if (!reading.ok) throw new Error(reading.fault);
  const samples = speechSamples(from, reading.header, -8000, 1);
  expect(samples).toHaveLength(16_000);
  expect(Math.max(...samples.subarray(0, 7990))).toBe(0);
  expect(Math.max(...samples.subarray(8000))).toBeGreaterThan(0.4);
});
