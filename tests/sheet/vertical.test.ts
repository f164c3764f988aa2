/** Setting Japanese from top to bottom. */

import { expect, it } from 'vitest';
import { verticalCells } from '../../src/sheet/vertical.js';
import { lookOf } from './laid.js';

const { metrics } = lookOf();

const cells = (text: string) => verticalCells(text, (one) => metrics.width(one, 1, 'regular'));

it('lays long vowels, dashes and brackets down, and moves stops and small kana', () => {
  const forms = Object.fromEntries(cells('「コーッ、と」').map(({ text, form }) => [text, form]));
  expect(forms).toEqual({
    '「': 'turned',
    コ: 'upright',
    ー: 'turned',
    ッ: 'small',
    '、': 'raised',
    と: 'upright',
    '」': 'turned',
  });
});

it('stands two figures side by side and lays longer words down', () => {
  expect(cells('第12話 lantern').map(({ text, form }) => `${text}:${form}`)).toEqual([
    '第:upright',
    '12:upright',
    '話:upright',
    ':upright',
    'lantern:turned',
  ]);
});

it('lays words with stops, signs and figures down in one piece', () => {
  const forms = (text: string) => cells(text).map(({ text, form }) => `${text}:${form}`);
  expect(forms('セルT.U')).toEqual(['セ:upright', 'ル:upright', 'T.U:turned']);
  expect(forms('c11AとO.L 1+12')).toEqual([
    'c11A:turned',
    'と:upright',
    'O.L:turned',
    ':upright',
    '1+12:turned',
  ]);
  expect(forms('A,B付け85%')).toEqual(['A,B:turned', '付:upright', 'け:upright', '85%:turned']);
  expect(forms('終わり.')).toEqual(['終:upright', 'わ:upright', 'り:upright', '.:raised']);
});
