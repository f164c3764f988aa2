import { expect, test } from 'vitest';
import { rewordings } from '../../src/language/rewordings.js';

const reworded = (text: string, drawn = false): string[] =>
  rewordings(text, { start: 0, end: text.length }, drawn).map(
    ({ found, text: written }) => `${found}→${written}`,
  );

test.each([
  ['time 2 seconds 12 frames', ['2 seconds 12 frames→2+12']],
  ['time 2秒12コマ', ['2秒12コマ→2+12']],
  ['time 2:06', ['2:06→2+6']],
  ['sound 1+1 to 2+0', ['1+1 to 2+0→1+1..2+0']],
  ['pull BG left 2 mm per frame 1..24', ['left→left', '2 mm per frame→2mm/f'].slice(1)],
  ['pan full 1 > B 2+0', ['full 1 > B 2+0→full@1 > B@2+0']],
])('%s', (text, expected) => expect(reworded(text)).toEqual(expected));

test('drawings and other statements have rules of their own', () => {
  expect(reworded('A: 1, 2, 3', true)).toEqual([',→', ',→']);
  expect(reworded('A: 1:12 frames 2', true)).toEqual(['1:12 frames→1:12']);
  expect(reworded('A: 1 2:06', true)).toEqual([]);
});

test('quoted text is left alone, and places are those of the text', () => {
  expect(reworded('voice "2 seconds, he said" 1..24')).toEqual([]);
  expect(rewordings('xx time 2s', { start: 3, end: 10 }, false)).toEqual([
    { start: 8, end: 10, found: '2s', text: '2+0' },
  ]);
});
