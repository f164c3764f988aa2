import { expect, test } from 'vitest';
import type { Compiled } from '../../src/episode/compile-cut.js';
import { CutCompiler } from '../../src/episode/cut-outcome.js';
import { newEpisodeCache, noEpisode } from '../../src/episode/episode.js';
import { memoryHost } from '../../src/host/memory-host.js';

function resultOf(text: string, make: (compiled: Compiled) => unknown = () => null) {
  const host = memoryHost({ 'a.cut': text });
  const compiler = new CutCompiler(host, [], make, newEpisodeCache());
  return compiler.result({ path: '/work/a.cut', name: 'a.cut', episode: noEpisode, named: true });
}

test('a cut is told as far as a run knows it, with what was made of it', async () => {
  const text = 'cut 012 "Quay"\ntime 1+0\nA: 1..\n';
  const { outcome, made } = await resultOf(text, ({ solved }) => solved?.shot.cut);
  expect(outcome).toEqual({
    file: 'a.cut',
    sources: new Map([['a.cut', text]]),
    diagnostics: [],
    house: false,
    number: { text: '012', span: { file: 'a.cut', start: 4, end: 7 } },
    cut: '012',
    solved: true,
  });
  expect(structuredClone(outcome)).toEqual(outcome);
  expect(await made()).toBe('012');
});

test.each([
  ['cut 7\n', { house: false, cut: '7', solved: false }],
  ['zzz\n', { house: false, number: null, cut: null, solved: false }],
  ['phrase walk = 1-2\n', { house: true, number: null, cut: null, solved: false }],
])('%j', async (text, wanted) => {
  expect((await resultOf(text)).outcome).toMatchObject(wanted);
});

test('what the program stumbles over while something is made is thrown, and what is wrong with the text is told', async () => {
  const { outcome, made } = await resultOf('cut 1\ntime 1+0\nA: 1\n', () => {
    throw new Error('a fault that was made');
  });
  expect(made).toThrow('a fault that was made');
  expect(outcome.diagnostics.map(({ code }) => code)).toEqual(['timeline-short']);
});
