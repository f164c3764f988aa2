import { expect, test } from 'vitest';
import { printableLine } from '../../src/build/printable-line.js';

test('one line, and the printer’s mark for type that the font lacks', () => {
  expect(printableLine(' two\n lines\t')).toBe('two lines');
  expect(printableLine('Rain ☔🎬 é 雨')).toBe('Rain 〓〓 é 雨');
});
