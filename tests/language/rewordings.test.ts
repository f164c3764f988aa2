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
  ['wipe in from left 1..12', ['from left→right']],
  ['wipe in from the left edge to the right 1..12', ['from the left edge→right', 'to the right→right']],
  ['wipe out from above 1..12', ['from above→down']],
  ['pull BG from bottom to top 2mm/f 1..', ['from bottom to top→up']],
  ['wipe in right to left 1..12', ['right to left→left']],
  ['follow A 下から上へ 2mm/f 1..', ['下から上へ→up']],
  ['pan left to right 1..24', ['left to right 1..24→left@1 > right@24']],
  ['level A is masked by B', ['A is masked by B→B masks A']],
  ['level A free drawn with B', ['drawn with→with']],
  ['expose B 50% to 100% 1..12', ['50% to 100%→50%>100%']],
  ['truck level A 100% to 140%@2+0', []],
  ['truck quick A@1 > B@9 fair 5 65%', ['5→ア@5']],
  ['wipe left out 1..12', ['left out→out left']],
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
