import { expect, test } from 'vitest';
import { wrapped } from '../../src/language/text-wrap.js';

test('a line is broken between Japanese characters, never before a full stop or behind a bracket', () => {
  expect(wrapped('あいう。えお', 6)).toBe('あい\nう。え\nお');
  expect(wrapped('あい（えお）', 6)).toBe('あい\n（え\nお）');
  expect(wrapped('abc def', 5)).toBe('abc\ndef');
  expect(wrapped('絵は cutwright で', 10)).toBe('絵は\ncutwright\nで');
});

test('what stands in backticks is kept together', () => {
  expect(wrapped('これは `a b c` です', 8)).toBe('これは\n`a b c`\nです');
});
