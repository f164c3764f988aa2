import { expect, test } from 'vitest';
import { compareNaturally } from '../../src/episode/natural-order.js';

test('numbers count as numbers: 2 before 10, 12A after 12', () => {
  const names = ['c10.cut', 'c2.cut', 'c12A.cut', 'c13.cut', 'c12.cut', 'c1.cut', 'c12B.cut'];
  expect(names.sort(compareNaturally)).toEqual([
    'c1.cut',
    'c2.cut',
    'c10.cut',
    'c12.cut',
    'c12A.cut',
    'c12B.cut',
    'c13.cut',
  ]);
});

test('leading zeros do not matter for the order, and equal numbers still have one', () => {
  expect(['c010', 'c9', 'c0009a'].sort(compareNaturally)).toEqual(['c9', 'c0009a', 'c010']);
  expect(['c01', 'c1'].sort(compareNaturally)).toEqual(['c1', 'c01'].sort(compareNaturally));
});

test('folders come in order of their numbers, before what their cuts are called', () => {
  expect(['s10/c1.cut', 's2/c9.cut', 's2/c10.cut'].sort(compareNaturally)).toEqual([
    's2/c9.cut',
    's2/c10.cut',
    's10/c1.cut',
  ]);
});

test('numbers beyond every integer are still compared right', () => {
  const [small, large] = ['c90071992547409931.cut', 'c90071992547409932.cut'];
  expect([large, small].sort(compareNaturally)).toEqual([small, large]);
});
