import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test("the YAML reader's common faults are Japanese, its others are quoted", () => {
  const yaml = (code: string) =>
    said('episode-syntax', { variant: 'yaml', code, message: 'All collection items must start' });
  expect(yaml('TAB_AS_INDENT')).toBe('字下げにタブがあります。YAML では空白だけを使います。');
  expect(yaml('BAD_COLLECTION_ITEM')).toBe('YAML として読めません：`All collection items must start`。');
});

test('a character is shown where it can be', () => {
  expect(said('missing-glyph', { character: '🎬' })).toBe('`🎬`（U+1F3AC）は書体にないので印刷できません。');
  expect(said('missing-glyph', { character: '\t' })).toMatch(/^タブ（U\+0009）は/);
  expect(said('missing-glyph', { character: '\u200b' })).toMatch(/^文字 U\+200B は/);
  expect(said('missing-glyph', { character: '\n' })).toContain('改行できません');
});

test('a size is in MB or kB', () => {
  expect(said('file-too-large', { file: null, bytes: 2 * 1024 * 1024 })).toMatch(/^このファイルは 2 MB/);
  expect(said('file-too-large', { file: 'a.cut', bytes: 256 * 1024 })).toMatch(/^`a.cut` は 256 kB/);
});

test('a reason of the system is Japanese', () => {
  expect(said('output-unwritable', { output: 'a.pdf', reason: 'the disk is full' })).toBe(
    '`a.pdf` に書けません：ディスクがいっぱいです。',
  );
  expect(said('output-unwritable', { output: null, reason: null })).toMatch(/^標準出力に書けません：/);
});

test('what a key takes follows the value that does not fit', () => {
  expect(
    said('episode-value', { variant: 'other', found: 'x', takes: { value: 'choice', words: ['en', 'ja'] } }),
  ).toBe('`x` は書けません。ここに書くもの：`en` か `ja`。');
});
