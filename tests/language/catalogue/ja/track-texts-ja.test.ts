import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('what is wrong with a recording', () => {
  const trouble = (given: object) => said('track-unreadable', { file: 'a.wav', ...given } as never);
  expect(trouble({ fault: 'other-format', format: 'mp3' })).toBe('`a.wav` は WAV ではなく、MP3 です。');
  expect(trouble({ fault: 'coded', tag: 17, bits: 4 })).toContain('4ビットの圧縮された形式（17）');
  expect(trouble({ fault: 'empty' })).toBe('`a.wav` は空です。');
});

test('stretches with sound are listed, three at most', () => {
  const at = (n: number) => ({ from: n, to: n + 5 });
  expect(said('sound-unwritten', { stretches: [at(1)] })).toBe(
    '1～6行目に音がありますが、何も書かれていません。',
  );
  expect(said('sound-unwritten', { stretches: [at(1), at(11), at(21), at(31)] })).toMatch(
    /21～26行目ほか1か所に音/,
  );
});

test('a recording that is short ends somewhere, or on the first row', () => {
  expect(said('track-length', { variant: 'short', rows: 4, last: 20 })).toBe(
    '録音は20行目で終わり、シートより4行短いです。',
  );
  expect(said('track-length', { variant: 'short', rows: 24, last: 0 })).toBe(
    '録音がシートの最初の行で終わっています。',
  );
});
