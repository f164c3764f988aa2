/** The form in Japanese. */

import { describe, expect, test } from 'vitest';
import { sheet } from '../../../src/words/ja/sheet-ja.js';

test('cuts that show a level again are listed', () => {
  const lent = (...cuts: string[]) =>
    sheet.lent(
      'A',
      cuts.map((cut) => ({ cut, as: 'B' })),
    );
  expect(lent('12', '15')).toBe('A：兼用先　カット12 の B、カット15 の B');
});

describe('handles', () => {
  test('name the ends that there are', () => {
    expect(sheet.handles('0+12', '1+0', '6+12')).toBe('のりしろ（網かけ）：頭 0+12、尻 1+0。シート全体 6+12');
    expect(sheet.handles('', '1+0', '6+0')).toBe('のりしろ（網かけ）：尻 1+0。シート全体 6+0');
    expect(sheet.handles('0+12', '', '5+12')).toBe('のりしろ（網かけ）：頭 0+12。シート全体 5+12');
  });

  test('in a line of the terminal', () => {
    expect(sheet.handlesLine('', '1+0', '6+0')).toBe('のりしろ 尻 1+0、シート全体 6+0');
  });
});

test('only kinds of drawings that there are are counted', () => {
  const counts = { keys: 1, breakdowns: 2, inbetweens: 9, reused: 3, backgrounds: 1 };
  expect(sheet.drawingCounts(counts)).toBe('原画 1、中割り参考 2、中割り 9、兼用 3、背景 1');
  expect(sheet.drawingCounts({ keys: 0, breakdowns: 0, inbetweens: 4, reused: 0, backgrounds: 0 })).toBe(
    '中割り 4',
  );
});

test('change bars are explained where there are some', () => {
  expect(sheet.changed('HEAD', true)).toBe('HEAD からの変更（太線：変わったコマ）');
  expect(sheet.changed('HEAD', false)).toBe('HEAD からの変更');
});

test('a page is named after how many there are', () => {
  expect(sheet.pageOf('1-b', 2)).toBe('2枚の1-b');
  // A part of the print has its name before that.
  expect(sheet.pageOf('カメラ図 1', 4)).toBe('カメラ図 4枚の1');
});
