import { expect, test } from 'vitest';
import {
  anyOf,
  drawingList,
  frameList,
  meant,
  notLent,
  oneOf,
  reasonInJapanese,
  rows,
  sheetRows,
  taken,
} from '../../../../src/language/catalogue/ja/terms-texts-ja.js';

test('a guess is a question; without one the sentence ends', () => {
  expect(meant('pan')).toBe('。`pan` のことですか？');
  expect(meant(null)).toBe('。');
  expect(meant(null, '。書いてください。')).toBe('。書いてください。');
});

test('one of several words', () => {
  expect(oneOf(['cw'])).toBe('`cw`');
  expect(oneOf(['cw', 'ccw'])).toBe('`cw` か `ccw`');
  expect(oneOf(['a', 'b', 'c'])).toBe('`a`、`b`、`c`');
});

test('signs of the language are typed as they are, other things are named', () => {
  expect(anyOf(['time', '`in`'])).toBe('時間（5+0 など）、または`in`');
});

test('frames that follow each other are one stretch, and at most four are listed', () => {
  expect(frameList([3], rows.plain)).toBe('3コマ目');
  expect(frameList([3, 4, 5, 9], rows.plain)).toBe('3～5、9コマ目');
  expect(frameList([1, 3, 5, 7, 9], rows.plain)).toBe('1、3、5、7コマ目ほか');
});

test('rows that a dissolve adds are told', () => {
  expect(sheetRows(24, 24)).toBe('24コマ');
  expect(sheetRows(24, 36)).toBe('24+12コマ（のりしろ込み）');
});

test('at most six drawings are listed', () => {
  expect(drawingList([])).toBe('絵なし');
  expect(drawingList(['1', '2'])).toBe('1、2');
  expect(drawingList(['1', '2', '3', '4', '5', '6', '7'])).toBe('1、2、3、4、5、6 …');
});

test('a level that is not lent has its reason', () => {
  expect(notLent({ why: 'no-cut', cut: '8' })).toBe('この話数にカット8はありません');
  expect(notLent({ why: 'no-level', cut: '8', level: 'Z', guess: 'A' })).toContain('（A のことですか？）');
  expect(notLent({ why: 'circle', links: ['9/C', '8/C'] })).toContain('9/C → 8/C');
});

test('what a key takes', () => {
  expect(taken({ value: 'whole', least: 1, most: 9 })).toBe('1 から 9 までの整数');
  expect(
    taken({ value: 'rows', fault: { unit: 'seconds', rows: 24, most: 192, near: 96, paper: 'A4' } }),
  ).toContain('24行（1秒）の倍数');
});

test('reasons of the system are Japanese; a strange one is quoted', () => {
  expect(reasonInJapanese('no such file')).toBe('ファイルがありません');
  expect(reasonInJapanese('git knows no revision `HEDA`')).toBe('git に `HEDA` という版はありません');
  expect(reasonInJapanese('the system refuses (EWHAT)')).toBe('`the system refuses (EWHAT)`');
});

test('rows that the sheet names have their frames behind them', () => {
  expect(rows.named('2+9', 57)).toBe('2+9（57コマ目）');
  expect(frameList([57, 58], (from, to) => rows.named('2+9～2+10', from, to))).toBe(
    '2+9～2+10（57～58コマ目）',
  );
});
