import { expect, test } from 'vitest';
import { tables } from '../../../../src/language/catalogue/ja/table-texts-ja.js';

const COUNTS = { drawings: 5, keys: 1, breakdowns: 0, inbetweens: 4, reused: 2, backgrounds: 0 };

test.each([
  [null, false, '2カット、総尺 7+6'],
  [null, true, '2カット、総尺 7+6 以上'],
  [{ budget: '8+0', by: null }, false, '2カット、総尺 7+6（定尺 8+0：過不足なし）'],
  [{ budget: '8+0', by: { length: '0+18', over: false } }, false, '2カット、総尺 7+6（定尺 8+0：0+18 不足）'],
  [{ budget: '7+0', by: { length: '0+6', over: true } }, false, '2カット、総尺 7+6（定尺 7+0：0+6 超過）'],
])('the budget %j', (budget, least, sentence) =>
  expect(tables.list.running(2, '7+6', least, budget)).toBe(sentence),
);

test('drawings by their sorts; backgrounds and unknown times where there are any', () => {
  const { list } = tables;
  expect(list.drawings(COUNTS, '2.0')).toBe(
    '動画枚数 5枚：原画1、中割り参考0、中割り4。兼用2。1秒あたり新規 2.0枚',
  );
  expect(list.drawings({ ...COUNTS, backgrounds: 1 }, '2.0')).toContain('兼用2、ほかに背景1枚。');
  expect(list.unsound(2, 0)).toBe('2カットに誤りあり（!）：読めた分だけ数え、印刷しない');
  expect(list.unsound(2, 1)).toMatch(/。うち1カットは尺が不明で合計に入らない$/);
});

test('what has become of an episode', () => {
  const { since } = tables;
  expect(since.differ(0, 3, false)).toBe('違うカットなし、3カットは尺も枚数も同じ');
  expect(since.differ(2, 0, true)).toBe('2カットに違いあり。カットの順が変わった');
  expect(since.episode(null, 1, 2, '1+0', false, null)).toBe('現在：1カット、2枚、総尺 1+0');
  expect(since.episode('v2', 1, 2, '1+0', true, null)).toBe('v2：1カット、2枚、総尺 1+0 以上');
  expect(since.runs('0+0', 'same')).toBe('総尺は変わらない');
  expect([since.runs('0+4', 'longer'), since.runs('0+4', 'shorter')]).toEqual([
    '総尺は 0+4 長い',
    '総尺は 0+4 短い',
  ]);
  expect([since.budget('2+0', 'larger'), since.budget('2+0', 'smaller')]).toEqual([
    '定尺は 2+0 長い',
    '定尺は 2+0 短い',
  ]);
});
