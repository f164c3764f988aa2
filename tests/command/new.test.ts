import { expect, test } from 'vitest';
import { fileName } from '../../src/command/new-cut.js';

test.each([
  ['13', 'c012.cut', '12', 'c013.cut'],
  ['4A', 'c012.cut', '12', 'c004A.cut'],
  ['13', 'c012A.cut', '12A', 'c013.cut'],
  ['3', 'sc01.cut', '1', 'sc03.cut'],
  ['3', 'ep1_c12_rough.cut', '12', 'ep1_c03_rough.cut'],
  ['OP', 'c012.cut', '12', 'cOP.cut'],
  ['5', null, '', 'c005.cut'],
  ['1205', 'c012.cut', '12', 'c1205.cut'],
])('cut %s beside %s (cut %s) is %s', (number, like, own, name) => {
  expect(fileName(number, like, own)).toBe(name);
});
