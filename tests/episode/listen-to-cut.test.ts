import { expect, test } from 'vitest';
import { compile } from '../../src/episode/compile-cut.js';
import { noEpisode } from '../../src/episode/episode.js';
import { listenToCut } from '../../src/episode/listen-to-cut.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { synthesise } from '../sound/speech-synthesis.js';
import { wave } from '../sound/wave-writer.js';

const made = synthesise(6, [{ at: 3, text: 'まって、 もう すこし' }]);
const dictionary = () => null;

function heard(track: string, lines: string, options: { again?: boolean; speechOnly?: boolean } = {}) {
  const text = `cut 1\ntime 6+0\nA: 1..\n${track}\n${lines}\n`;
  const host = memoryHost({ 'a.cut': text, 'a.wav': wave(made.samples, { rate: made.rate }) });
  const compiled = compile(host, '/work/a.cut', noEpisode, { name: 'a.cut' });
  return listenToCut(host, compiled, { dictionary, ...options });
}
const row = (seconds: number) => Math.round(seconds * 24) + 1;

test('rows count from the row and the place in the recording that the track says', () => {
  const voice = 'voice "なお" 1..96 "まって、 もう すこし"';
  const later = (track: string) => heard(track, voice)!.lines[0]!.words[0]!.row;
  expect(Math.abs(later('track "a.wav"') - row(3))).toBeLessThanOrEqual(1);
  expect(Math.abs(later('track "a.wav" from 2s') - row(1))).toBeLessThanOrEqual(1);
  expect(Math.abs(later('track "a.wav" @13 from 2s') - row(1) - 12)).toBeLessThanOrEqual(1);
});

test('a typed tie is the row, unless it is to be found anew', () => {
  const voice = 'voice "なお" 1..96 "まって、" @87 "もう すこし"';
  expect(heard('track "a.wav"', voice)!.lines[0]!.words[1]!.row).toBe(87);
  const anew = heard('track "a.wav"', voice, { again: true })!.lines[0]!.words[1]!.row;
  expect(Math.abs(anew - row(made.lines[0]!.words[1]!))).toBeLessThanOrEqual(1);
});

test('only where somebody speaks', () => {
  const { lines, speech } = heard('track "a.wav"', '', { speechOnly: true })!;
  expect(lines).toEqual([]);
  expect(Math.abs(speech[0]!.from - row(3))).toBeLessThanOrEqual(2);
});

test('nothing without a recording', () => {
  expect(heard('', 'voice "なお" 1..96 "まって"')).toBeNull();
  expect(heard('track "b.wav"', 'voice "なお" 1..96 "まって"')).toBeNull();
});
