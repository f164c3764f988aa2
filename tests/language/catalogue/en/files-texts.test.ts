import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('errors of the manifest are told in plain words, rare ones as the reader has them', () => {
  const yaml = (code: string) =>
    said('episode-syntax', { variant: 'yaml', code, message: 'Some Fault here' });
  expect(yaml('TAB_AS_INDENT')).toBe('A tab stands in the indentation; YAML takes blanks only.');
  expect(yaml('MISSING_CHAR')).toBe('Something that was opened is not closed: some Fault here.');
  expect(yaml('BLOCK_AS_IMPLICIT_KEY')).toMatch(/^A value that holds a colon needs quotes/);
  expect(yaml('MULTIPLE_DOCS')).toMatch(/^A manifest is one document/);
  expect(yaml('RESOURCE_EXHAUSTION')).toBe('The manifest is nested too deeply to be read.');
  expect(yaml('ANYTHING_ELSE')).toBe('This is no YAML: some Fault here.');
});

test.each([
  ['\t', 'A tab (U+0009) is'],
  ['\u0007', 'The character U+0007 is'],
  ['\u0301', 'The character U+0301 is'],
  ['☔', '`☔` (U+2614) is'],
  ['🎬', '`🎬` (U+1F3AC) is'],
])('a character without a shape: %j', (character, begins) => {
  expect(said('missing-glyph', { character })).toBe(`${begins} not in the font and cannot be printed.`);
});

test('a line break in a title is told as one', () => {
  expect(said('missing-glyph', { character: '\n' })).toMatch(/cannot have a line break\.$/);
});

test('sizes of files are in MB, below in whole kB', () => {
  const large = (bytes: number, file: string | null = null) => said('file-too-large', { file, bytes });
  expect(large(2 * 1024 * 1024)).toBe('The file is larger than 2 MB, too much for a text.');
  expect(large(1.5 * 1024 * 1024, 'a.cut')).toBe('`a.cut` is larger than 1.5 MB, too much for a text.');
  expect(large(256 * 1024 - 1)).toBe('The file is larger than 256 kB, too much for a text.');
});

test('one NUL byte, or several', () => {
  expect(said('not-text', { count: 1 })).toMatch(/^A NUL byte stands here/);
  expect(said('not-text', { count: 3 })).toMatch(/^The first of 3 NUL bytes stands here/);
});

test('a cut that is left out of a comparison', () => {
  const twice = (compared: boolean) => said('cut-twice', { cut: '8', file: 'c008.cut', compared });
  expect(twice(false)).toBe('Cut 8 is already the number of `c008.cut`.');
  expect(twice(true)).toBe('Cut 8 is already the number of `c008.cut`; only that one is compared.');
});

test('a key, or a thing that is none', () => {
  expect(said('episode-key', { variant: 'unknown', key: 'papper', guess: 'paper' })).toBe(
    'The manifest has no key `papper`; did you mean `paper`?',
  );
  expect(said('episode-key', { variant: 'unknown', key: null, guess: null })).toBe(
    'The manifest has no key like this.',
  );
  expect(said('episode-value', { variant: 'other', found: null, takes: { value: 'pixels' } })).toMatch(
    /^This is not a width/,
  );
  expect(said('episode-value', { variant: 'other', found: 'x', takes: { value: 'dpi' } })).toMatch(
    /^`x` is not a resolution/,
  );
});

test('a file that uses itself, or a chain', () => {
  expect(said('use-circle', { files: ['a.cut', 'a.cut'] })).toBe('The file uses itself.');
  expect(said('use-circle', { files: ['a.cut', 'b.cut', 'a.cut'] })).toBe(
    'The files use each other in a circle: a.cut → b.cut → a.cut.',
  );
  expect(said('use-outside', { path: '../a.cut', inEpisode: false })).toContain('without an episode.yaml');
  expect(said('use-outside', { path: '../a.cut', inEpisode: true })).toContain(
    'not below the folder of the episode',
  );
});

test('standard output has no name', () => {
  expect(said('output-unwritable', { output: null, reason: 'disk full' })).toBe(
    'Standard output cannot be written: disk full.',
  );
  expect(said('output-unwritable', { output: 'a.pdf', reason: 'disk full' })).toMatch(/^`a\.pdf` cannot/);
});

test('a fault of the program on a cut, or elsewhere', () => {
  expect(said('internal-fault', { onCut: true, error: 'x' })).toBe('The program failed on this cut: x.');
  expect(said('internal-fault', { onCut: false, error: 'x' })).toBe('The program failed: x.');
});
