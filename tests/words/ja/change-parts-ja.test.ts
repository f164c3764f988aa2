/** Times, places and names in Japanese sentences. */

import { describe, expect, test } from 'vitest';
import {
  at,
  by,
  later,
  longer,
  none,
  range,
  seen,
  size,
  time,
  timed,
  times,
} from '../../../src/words/ja/change-parts-ja.js';
import { between, cycle, EMPTY, FORMAT, key } from '../sentence-samples.js';

test('a time is in frames, from a second on in seconds and frames; it has no sign', () => {
  expect([1, 23, 24, -36].map((frames) => time(frames, FORMAT))).toEqual(['1コマ', '23コマ', '1+0', '1+12']);
});

test('two times are in one unit, that of the longer one', () => {
  expect(times({ old: 12, now: 16 }, FORMAT)).toBe('16コマ（旧 12）');
  expect(times({ old: 24, now: 12 }, FORMAT)).toBe('0+12（旧 1+0）');
});

test('later and earlier, longer and shorter by the sign', () => {
  expect([later(6, FORMAT), later(-6, FORMAT)]).toEqual(['6コマ後ろへ', '6コマ前へ']);
  expect([longer(1, FORMAT), longer(-30, FORMAT)]).toEqual(['1コマ長く', '1+6短く']);
});

test('a range of one row is that row', () => {
  expect(range({ from: 25, to: 25 }, FORMAT)).toBe('1+1');
  expect(range({ from: 25, to: 48 }, FORMAT)).toBe('1+1～1+24');
});

test('what is seen: keys by name, in-betweens by number, cycles by their ends', () => {
  expect(seen(key('3', 7), 'A')).toBe('原画3');
  expect(seen(between('1.2', 3, '1', '2'), 'A')).toBe('A3（1.2）');
  expect(seen(cycle('4', '5'), 'A')).toBe('リピート4～5');
  expect(seen(cycle('4', '4'), 'A')).toBe('リピート4');
  expect(seen(EMPTY, 'A')).toBe('空セル');
});

test('a way is said by its sides, one that is not seen as slight', () => {
  expect(by({ xMm: 10, yMm: 0 })).toBe('右へ10 mm');
  expect(by({ xMm: -2.5, yMm: -3 })).toBe('左へ2.5 mm、下へ3 mm');
  expect(by({ xMm: 0.004, yMm: 1 })).toBe('上へ1 mm');
  expect(by({ xMm: 0.004, yMm: 0 })).toBe('わずかに移動');
});

test('a place and a size; no size is that of the usual sheet', () => {
  expect(at({ xMm: -0.001, yMm: 12.5 })).toBe('0,12.5');
  expect(size({ widthMm: 560, heightMm: 200 })).toBe('560×200 mm');
  expect(size(null)).toBe('標準用紙');
});

test('no text is none', () => {
  expect([none('', FORMAT), none('Nao', FORMAT)]).toEqual(['なし', '「Nao」']);
});

describe('frames that changed', () => {
  const frames = (old: [number, number], now: [number, number]) =>
    timed('F.I', { old: { from: old[0], to: old[1] }, now: { from: now[0], to: now[1] } }, FORMAT);

  test('both ends alike are later or earlier', () => {
    expect(frames([1, 12], [7, 18])).toBe('F.I 6コマ後ろへ：0+7～0+18（旧 0+1～0+12）');
  });

  test('with the same end they begin later or earlier', () => {
    expect(frames([7, 12], [1, 12])).toBe('F.I 始まりを6コマ前へ：0+1～0+12（旧 0+7～0+12）');
  });

  test('else they are longer or shorter', () => {
    expect(frames([1, 24], [1, 12])).toBe('F.I 12コマ短く：0+1～0+12（旧 0+1～0+24）');
  });
});
