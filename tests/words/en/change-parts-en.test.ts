/** Times, places and names in English sentences. */

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
} from '../../../src/words/en/change-parts-en.js';
import { between, cycle, EMPTY, FORMAT, key } from '../sentence-samples.js';

test('a time is in frames, from a second on in seconds and frames; it has no sign', () => {
  expect([1, 23, 24, -36].map((frames) => time(frames, FORMAT))).toEqual([
    '1 frame',
    '23 frames',
    '1+0',
    '1+12',
  ]);
});

test('two times are in one unit, that of the longer one', () => {
  expect(times({ old: 12, now: 16 }, FORMAT)).toBe('16 frames (was 12)');
  expect(times({ old: 2, now: 1 }, FORMAT)).toBe('1 frame (was 2)');
  expect(times({ old: 24, now: 12 }, FORMAT)).toBe('0+12 (was 1+0)');
});

test('later and earlier, longer and shorter by the sign', () => {
  expect([later(6, FORMAT), later(-6, FORMAT)]).toEqual(['6 frames later', '6 frames earlier']);
  expect([longer(1, FORMAT), longer(-30, FORMAT)]).toEqual(['1 frame longer', '1+6 shorter']);
});

test('a range of one row is that row', () => {
  expect(range({ from: 25, to: 25 }, FORMAT)).toBe('1+1');
  expect(range({ from: 25, to: 48 }, FORMAT)).toBe('1+1 to 1+24');
});

test('what is seen: keys by name, in-betweens by number, cycles by their ends', () => {
  expect(seen(key('3', 7), 'A')).toBe('key 3');
  expect(seen(between('1.2', 3, '1', '2'), 'A')).toBe('A3 (1.2)');
  expect(seen(cycle('4', '5'), 'A')).toBe('the cycle 4-5');
  expect(seen(cycle('4', '4'), 'A')).toBe('the cycle on 4');
  expect(seen(EMPTY, 'A')).toBe('empty');
});

test('a way is said by its sides, one that is not seen as a hair', () => {
  expect(by({ xMm: 10, yMm: 0 })).toBe('10 mm right');
  expect(by({ xMm: -2.5, yMm: -3 })).toBe('2.5 mm left, 3 mm down');
  expect(by({ xMm: 0.004, yMm: 1 })).toBe('1 mm up');
  expect(by({ xMm: 0.004, yMm: 0 })).toBe('moved by a hair');
});

test('a place and a size; no size is that of the usual sheet', () => {
  expect(at({ xMm: -0.001, yMm: 12.5 })).toBe('0,12.5');
  expect(size({ widthMm: 560, heightMm: 200 })).toBe('560 x 200 mm');
  expect(size(null)).toBe('the usual sheet');
});

test('no text is none', () => {
  expect([none('', FORMAT), none('Nao', FORMAT)]).toEqual(['none', '“Nao”']);
});

describe('frames that changed', () => {
  const frames = (old: [number, number], now: [number, number]) =>
    timed('F.I', { old: { from: old[0], to: old[1] }, now: { from: now[0], to: now[1] } }, FORMAT);

  test('both ends alike are later or earlier', () => {
    expect(frames([1, 12], [7, 18])).toBe('F.I 6 frames later: 0+7 to 0+18 (was 0+1 to 0+12)');
  });

  test('with the same end they begin later or earlier', () => {
    expect(frames([7, 12], [1, 12])).toBe('F.I begins 6 frames earlier: 0+1 to 0+12 (was 0+7 to 0+12)');
  });

  test('else they are longer or shorter', () => {
    expect(frames([1, 24], [1, 12])).toBe('F.I 12 frames shorter: 0+1 to 0+12 (was 0+1 to 0+24)');
  });
});
