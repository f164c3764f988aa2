import { expect, test } from 'vitest';
import { actionOf } from '../../../../src/language/message.js';

test('one drawing is named, several from the first on', () => {
  expect(actionOf({ action: 'name-drawings', count: 1, name: '1>2.1' }, 'en')).toBe('name it `1>2.1`');
  expect(actionOf({ action: 'name-drawings', count: 2, name: '1>2.1' }, 'en')).toBe(
    'name them `1>2.1` and so on',
  );
});

test('one number is left unused, or several are', () => {
  expect(actionOf({ action: 'unpin-names', names: ['1.2'] }, 'en')).toBe('leave the number of 1.2 unused');
  expect(actionOf({ action: 'unpin-names', names: ['1.2', '1.3'] }, 'en')).toBe(
    'leave the numbers of 1.2 1.3 unused',
  );
});

test('each sign of several stands in backquotes', () => {
  expect(actionOf({ action: 'write-each', written: ['(', ')'] }, 'en')).toBe('write `(` and `)`');
});
