/** The form in Japanese. */

import { describe, expect, test } from 'vitest';
import { cameraPages, cutList, documents, moves, sheet } from '../../../src/words/ja/forms-ja.js';

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

// ---- moves in Japanese

describe('an overlap', () => {
  test('with a cut that is known names it', () => {
    expect(moves.overlap('O.L 12', 'in', '11')).toBe('c11とO.L 12');
  });

  test('with one that is not known says on which side it is', () => {
    expect(moves.overlap('O.L', 'in', null)).toBe('前カットとO.L');
    expect(moves.overlap('O.L', 'out', null)).toBe('次カットとO.L');
  });
});

test('what a retake note says of a flag depends on whether it is set', () => {
  const { ratios, quick, sideways } = moves.changed;
  expect([ratios('', true), ratios('', false)]).toEqual(['等比', '等差']);
  expect([quick('', true), quick('', false)]).toEqual(['クイック', '通常']);
  expect([sideways('', true), sideways('', false)]).toEqual(['横', '縦']);
});

test('no levels, no loop and no point are said in words', () => {
  const { carry, loop, about } = moves.changed;
  expect([carry('A,B', false), carry('', false)]).toEqual(['A,B付け', '付けなし']);
  expect([loop('420 mm', false), loop('', false)]).toEqual(['ループ 420 mm', 'ループなし']);
  expect([about('10,20', false), about('', false)]).toEqual(['中心 10,20', '中心は作画の中央']);
});

// ---- titles and headings in Japanese

test('cuts that only one version has: which version', () => {
  expect(documents.onlyIn(null, '12', 1)).toBe('現在 のみ：カット 12');
  expect(documents.onlyIn('HEAD', '12、14', 2)).toBe('HEAD のみ：カット 12、14');
});

// ---- the camera's pages in Japanese

test('a way leads up or down', () => {
  expect(cameraPages.slope('4.5', true, true)).toBe('水平から 4.5° 右上へ');
  expect(cameraPages.slope('4.5', false, false)).toBe('水平から 4.5° 左下へ');
});

// ---- the cut list in Japanese

test('cuts with errors, and those of them whose time is not known', () => {
  expect(cutList.unsoundNote(2, 0)).toBe('2カットに誤りあり（!）。読めた分だけ数え、印刷しない。');
  expect(cutList.unsoundNote(2, 1)).toBe(
    '2カットに誤りあり（!）。読めた分だけ数え、印刷しない。うち1カットは尺が不明で合計に入らない。',
  );
});
