/** Setting Japanese from top to bottom. */

import { describe, expect, it } from 'vitest';
import { setDownwards, verticalCells } from '../../src/sheet/vertical-text.js';
import { lookOf, textsOf } from './laid.js';

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

describe('text down a strip', () => {
  const strip = { x: 10, width: 4, top: 20, room: 20 };
  const size = { most: 3, least: 1.4, weight: 'regular' } as const;
  const set = (text: string, room = 20) => setDownwards(text, { ...strip, room }, size, metrics);

  it('stands upright in Japanese, a character below the other', () => {
    const { marks, fits, end } = set('風と雨');
    expect(fits).toBe(true);
    expect(textsOf(marks).map(({ text, x, turn }) => [text, x, turn])).toEqual([
      ['風', 12, undefined],
      ['と', 12, undefined],
      ['雨', 12, undefined],
    ]);
    expect(end).toBeCloseTo(20 + 3 * 3 * 1.02);
  });

  it('lies on its side in other scripts', () => {
    const { marks, fits } = set('wind');
    expect(fits).toBe(true);
    expect(textsOf(marks)).toMatchObject([{ text: 'wind', turn: 90, anchor: 'start', sizeMm: 3 }]);
  });

  it('is as much as there is room for where it does not fit', () => {
    const japanese = set('風は画面左から吹く', 7);
    expect(japanese.fits).toBe(false);
    expect(japanese.marks.length).toBe(5);
    const latin = set('wind from screen left throughout the whole of the cut', 7);
    expect(latin.fits).toBe(false);
    expect(latin.marks.length).toBe(2);
  });
});
