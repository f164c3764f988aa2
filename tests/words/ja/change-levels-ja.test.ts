/** The cut as a whole and its levels in Japanese. */

import { expect, test } from 'vitest';
import { levels } from '../../../src/words/ja/change-levels-ja.js';
import { say } from '../sentence-samples.js';

test('what was not written is none', () => {
  expect(say(levels, { kind: 'take', old: '', now: '2' })).toBe('テイク 2（旧 なし）');
  expect(say(levels, { kind: 'title', old: '埠頭', now: '' })).toBe('カット名 なし（旧 「埠頭」）');
  expect(say(levels, { kind: 'artist', old: [], now: ['M. Arai', 'L. Quoy'] })).toBe(
    '担当 M. Arai、L. Quoy（旧 なし）',
  );
});

test('a cut has grown or shrunk', () => {
  expect(say(levels, { kind: 'time', old: 120, now: 108 })).toBe('尺 12コマ短く：4+12（旧 5+0）');
});

test('a memo is added, dropped or reworded', () => {
  expect(say(levels, { kind: 'memo', old: null, now: '雨なし' })).toBe('メモ追加：「雨なし」');
  expect(say(levels, { kind: 'memo', old: '雨なし', now: null })).toBe('メモ削除：「雨なし」');
  expect(say(levels, { kind: 'memo', old: '雨', now: '雨なし' })).toBe('メモ変更：「雨なし」（旧 「雨」）');
});

test('handles are told by both ends', () => {
  expect(say(levels, { kind: 'handles', old: { head: 0, tail: 0 }, now: { head: 12, tail: 24 } })).toBe(
    'のりしろ：頭 0+12、尻 1+0（旧 頭 0+0、尻 0+0）',
  );
});

test('a level that comes lies above another or at the bottom, with its drawings if it has any', () => {
  const added = { kind: 'level-added', level: 'C', title: '煙', drawings: 5, above: 'A' } as const;
  expect(say(levels, added)).toBe('C「煙」 追加、Aの上、5枚');
  expect(say(levels, { ...added, title: '', drawings: 0, above: null })).toBe('C 追加、一番下');
});

test('a level that goes is told with its drawings if it had any', () => {
  const dropped = { kind: 'level-dropped', level: 'C', title: '', drawings: 5 } as const;
  expect(say(levels, dropped)).toBe('C 削除、5枚');
  expect(say(levels, { ...dropped, drawings: 0 })).toBe('C 削除');
});

test.each([
  ['free', true, 'A：端が見えてもよい'],
  ['free', false, 'A：端が見えてはいけない'],
  ['carry', true, 'A：カメラに固定'],
  ['carry', false, 'A：カメラに固定しない'],
  ['flash', true, 'A：出で光る'],
  ['flash', false, 'A：光らない'],
] as const)('the manner of a level: %s %s', (manner, now, sentence) => {
  expect(say(levels, { kind: 'level-manner', level: 'A', manner, now })).toBe(sentence);
});

test('reuse names cut and level, or ends', () => {
  const reuse = { kind: 'reuse', level: 'C', old: null, now: { cut: '8', level: 'A' } } as const;
  expect(say(levels, reuse)).toBe('C：兼用 カット8 の A（旧 なし）');
  expect(say(levels, { ...reuse, old: reuse.now, now: null })).toBe('C：兼用 なし（旧 カット8 の A）');
});

test('artwork lies elsewhere by its sides, or has another size', () => {
  const [old, now] = [
    { xMm: 130, yMm: 0 },
    { xMm: 130, yMm: 5 },
  ];
  expect(say(levels, { kind: 'artwork-home', level: 'BG', old, now })).toBe(
    'BG：作画位置 上へ5 mm、130,5（旧 130,0）',
  );
  expect(
    say(levels, { kind: 'artwork-size', level: 'BG', old: null, now: { widthMm: 560, heightMm: 200 } }),
  ).toBe('BG：作画サイズ 560×200 mm（旧 標準用紙）');
});

test('a timeline comes or goes', () => {
  expect(say(levels, { kind: 'level-timed', level: 'A', now: true })).toBe('A：タイムシートあり');
  expect(say(levels, { kind: 'level-timed', level: 'A', now: false })).toBe(
    'A：タイムシートなし（常時あり）',
  );
});
