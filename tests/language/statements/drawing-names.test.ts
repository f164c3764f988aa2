import { expect, test } from 'vitest';
import { betweenName, keyName } from '../../../src/language/statements/drawing-names.js';

test.each([
  ['3', '3'],
  ['003', '3'],
  ['0', '0'],
  ['03a', '3a'],
  ['4か\u3099', '4が'],
])('the key %s is %s', (typed, name) => {
  expect(keyName(typed)).toBe(name);
});

test.each([
  ['1.2', null, { key: '1', to: null, index: 2, letter: '' }],
  ['01.02', null, { key: '1', to: null, index: 2, letter: '' }],
  ['1.1a', null, { key: '1', to: null, index: 1, letter: 'a' }],
  ['3a.10', null, { key: '3a', to: null, index: 10, letter: '' }],
  // What stands behind the `>` of `1>3.2`.
  ['3.2', '1', { key: '1', to: '3', index: 2, letter: '' }],
])('the in-between %s behind %s', (image, from, name) => {
  expect(betweenName(image, from)).toEqual(name);
});
