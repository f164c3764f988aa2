import { expect, test } from 'vitest';
import { findSpeech } from '../../src/sound/find-speech.js';
import { source } from './byte-source.js';
import { synthesise } from './speech-synthesis.js';
import { wave } from './wave-writer.js';

const ROW = 1 / 24;

test('where somebody speaks is found without a word of what is said', () => {
  const made = synthesise(6, [
    { at: 0.5, text: 'Wait for me!' },
    { at: 3, text: 'The tide is coming in.' },
  ]);
  const found = findSpeech(source(wave(made.samples, { rate: made.rate })), { firstSample: 0, seconds: 6 });
  expect(found).toHaveLength(2);
  found.forEach(({ from, to }, i) => {
    expect(Math.abs(from - [0.5, 3][i]!)).toBeLessThan(3 * ROW);
    expect(Math.abs(to - made.lines[i]!.end)).toBeLessThan(4 * ROW);
  });
});

test('hiss is not speech, nor is a file that cannot be read', () => {
  const hiss = synthesise(2, []);
  for (let i = 8000; i < 20_000; i++) hiss.samples[i]! += 0.3 * Math.sin(i * i);
  expect(findSpeech(source(wave(hiss.samples, { rate: 16_000 })), { firstSample: 0, seconds: 2 })).toEqual(
    [],
  );
  expect(findSpeech(source(Buffer.from('x')), { firstSample: 0, seconds: 1 })).toEqual([]);
});
