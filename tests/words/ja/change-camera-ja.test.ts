/** Fields, moves and light in Japanese. */

import { describe, expect, test } from 'vitest';
import type { Spacing } from '../../../src/compare/change.js';
import { camera } from '../../../src/words/ja/change-camera-ja.js';
import { light, MOVE, moveTime, SAME_SPEED, say } from '../sentence-samples.js';

const told = (body: Parameters<typeof say>[1]) => say(camera, body);
const FRAMES = { from: 1, to: 24 };

describe('a field', () => {
  test('is larger or smaller, in percent and in millimetres', () => {
    const resized = (old: number, now: number, percent: { old: number; now: number }) =>
      told({ kind: 'field-resized', field: 'C', old, now, percent });
    expect(resized(152.4, 127, { old: 60, now: 50 })).toBe('フレームC 小さく：50% 127 mm（旧 60% 152.4 mm）');
    expect(resized(127, 152.4, { old: 50, now: 60 })).toBe('フレームC 大きく：60% 152.4 mm（旧 50% 127 mm）');
  });

  test('turns, comes, and moves by its sides', () => {
    expect(told({ kind: 'field-turned', field: 'C', old: 5, now: -1.5 })).toBe(
      'フレームC 傾き -1.5°（旧 5°）',
    );
    expect(told({ kind: 'field-added', field: 'D', widthMm: 127, xMm: 20, yMm: 0 })).toBe(
      'フレームD 追加：幅 127 mm、20,0',
    );
    const [old, now] = [
      { xMm: 110, yMm: 0 },
      { xMm: 100, yMm: 3 },
    ];
    expect(told({ kind: 'field-moved', field: 'B', by: { xMm: -10, yMm: 3 }, old, now })).toBe(
      'フレームB 左へ10 mm、上へ3 mm：100,3（旧 110,0）',
    );
  });
});

describe('the time of a move', () => {
  const faster = { largestStepMm: { old: 4, now: 6.25 } };
  const later = { old: FRAMES, now: { from: 13, to: 36 } };

  test('later as a whole', () => {
    expect(told(moveTime({ frames: later }))).toBe('PAN A→B 12コマ後ろへ：0+13～1+12（旧 0+1～0+24）');
  });

  test('a later begin, with the speed that this makes', () => {
    expect(told(moveTime({ frames: { old: FRAMES, now: { from: 13, to: 24 } }, ...faster }))).toBe(
      'PAN A→B 始まりを12コマ後ろへ：0+13～0+24（旧 0+1～0+24）、速く：最大 6.25 mm/コマ（旧 4）',
    );
  });

  test('a step that differs by less than is seen is the same', () => {
    const hair = { largestStepMm: { old: 4, now: 4.004 } };
    expect(told(moveTime({ frames: later, ...hair }))).not.toContain('最大');
  });

  test('longer', () => {
    expect(told(moveTime({ frames: { old: FRAMES, now: { from: 1, to: 36 } } }))).toBe(
      'PAN A→B 12コマ長く：0+1～1+12（旧 0+1～0+24）',
    );
  });

  test('of a place on the way is told with that place alone', () => {
    const stops = { old: [1, 12, 24], now: [1, 16, 24] };
    expect(told(moveTime({ places: ['A', 'B', 'C'], stops }))).toBe('PAN A→B→C：Bは0+16（旧 0+12）');
  });
});

describe('the way of a move', () => {
  const way = (old: number | null, now: number | null) =>
    told({
      kind: 'move-way',
      distanceMm: { old: 144, now: 192 },
      rateMm: { old, now },
      ...SAME_SPEED,
      ...MOVE,
    });

  test('said as a speed is faster or slower', () => {
    expect(way(3, 4)).toBe('PAN A→B 速く：4 mm/コマ（旧 3 mm/コマ）、全長 192 mm（旧 144 mm）');
    expect(way(4, 3)).toContain('遅く：3 mm/コマ（旧 4 mm/コマ）');
  });

  test('said as a distance is that', () => {
    expect(way(null, null)).toBe('PAN A→B 192 mm（旧 144 mm）');
    expect(way(3, null)).toBe('PAN A→B 192 mm（旧 144 mm）');
  });
});

test('another route says its time only where that differs', () => {
  const route = { kind: 'move-route', old: ['A', 'C'], now: ['A', 'B'], ...SAME_SPEED, ...MOVE } as const;
  expect(told({ ...route, frames: { old: FRAMES, now: FRAMES } })).toBe('PAN A→B（旧 A→C）');
  expect(told({ ...route, frames: { old: FRAMES, now: { from: 1, to: 12 } } })).toBe(
    'PAN A→B（旧 A→C）：0+1～0+12（旧 0+1～0+24）',
  );
});

test.each<[Spacing, string]>([
  [{ form: 'linear' }, '等速'],
  [{ form: 'ease', leave: 6, arrive: 12 }, '加減速 6/12'],
  [{ form: 'curve', x1: 0.42, y1: 0, x2: 0.58, y2: 1 }, 'カーブ 0.42 0 0.58 1'],
  [{ form: 'steps', mm: [1, 2, 3] }, '手書き目盛り 1 2 3'],
  [{ form: 'fair', mark: 'ア', frame: 6, share: 0.85 }, 'フェアリング ア 0+6 85%'],
])('a spacing: %o', (now, text) => {
  const change = { kind: 'move-spacing', leg: 0, now, old: { form: 'linear' } } as const;
  expect(told({ ...change, ...SAME_SPEED, ...MOVE })).toBe(`PAN A→B：${text}（旧 等速）`);
});

test('the spacing of one leg of several says which', () => {
  const change = { kind: 'move-spacing', leg: 1, now: { form: 'linear' }, old: { form: 'linear' } } as const;
  expect(told({ ...change, ...SAME_SPEED, ...MOVE, places: ['A', 'B', 'C'] })).toMatch(/^PAN A→B→C、B→C：/);
});

test.each([
  ['kind', 'truck', 'pan', 'PAN（旧 T.U/T.B）'],
  ['graduated', false, true, '目盛りあり（旧 目盛りなし）'],
  ['on', 1, 2, '2コマ打ち（旧 1コマ打ち）'],
  ['levels', '', 'A', 'セルA（旧 セルなし）'],
  ['size', '3', '5', 'size 5（旧 size 3）'],
] as const)('the manner of a move: %s', (manner, old, now, text) => {
  expect(told({ kind: 'move-manner', manner, old, now, ...MOVE })).toBe(`PAN A→B：${text}`);
});

test.each([
  [light({ light: 'fade', way: 'in' }), 'F.I'],
  [light({ light: 'fade', way: 'out', white: true }), 'W.O'],
  [light({ light: 'overlap', way: 'in' }), '前カットとO.L'],
  [light({ light: 'overlap', way: 'out' }), '次カットとO.L'],
  [light({ light: 'expose', levels: ['A', 'B'] }), 'A,B WXP'],
  [light({ light: 'glow', levels: ['C'] }), 'C T光'],
  [light({ light: 'effect', text: '霧' }), '効果「霧」'],
  [light({ light: 'effect', text: '霧', levels: ['A'] }), '効果「霧」 A'],
])('light is called by its kind: %o', (seen, name) => {
  expect(told({ kind: 'light-added', frames: FRAMES, ...seen })).toBe(`${name} 追加：0+1～0+24`);
});

test.each([
  [light({ light: 'fade', way: 'in', white: true }), 'white', false, true, 'W.I：白（旧 黒）'],
  [light({ light: 'overlap', way: 'in' }), 'length', 12, 24, '前カットとO.L：1+0（旧 0+12）'],
  [light({ light: 'expose', levels: ['B'] }), 'shares', '50%', '40%>60%', 'B WXP：40%→60%（旧 50%）'],
  // What the name says already is not said again.
  [light({ light: 'glow', levels: ['B'] }), 'levels', 'C', 'B', 'B T光（旧 セルC）'],
  [light({ light: 'effect', text: '霧' }), 'text', '雨', '霧', '効果「霧」（旧 「雨」）'],
] as const)('the manner of light: %o %s', (seen, manner, old, now, sentence) => {
  expect(told({ kind: 'light-manner', manner, old, now, ...seen })).toBe(sentence);
});
