import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('what is given in percent and what in lines of the chart is not exchanged', () => {
  expect(said('field-measures', { field: 'A', other: 'B', percent: true })).toMatch(
    /`A` は%、フレーム `B` はチャートの目/,
  );
  expect(said('field-measures', { field: 'A', other: 'B', percent: false })).toMatch(
    /`A` はチャートの目、フレーム `B` は%/,
  );
});

test('what vanishes is the field, or a level by its name', () => {
  expect(said('size-vanishes', { level: null, frame: 9 })).toMatch(/^9コマ目でフレームの大きさ/);
  expect(said('size-vanishes', { level: 'A', frame: 9 })).toMatch(/^9コマ目でセルAの大きさ/);
});

test('moves that overlap are of the camera or of a level', () => {
  expect(said('moves-overlap', { move: 'turn', level: 'L', from: 21, to: 24 })).toBe(
    'セルLの回転が2つ、21～24コマ目で重なっています。',
  );
  expect(said('moves-overlap', { move: 'pan', level: null, from: 1, to: 2 })).toBe(
    'カメラの動きが2つ、1～2コマ目で重なっています。',
  );
});

test('ramps below nothing are told apart from ramps that are too long', () => {
  expect(said('ease-long', { leave: -2, arrive: 3, steps: 9 })).toBe(
    '-2コマの加減速はありません。なしなら 0 です。',
  );
  expect(said('ease-long', { leave: 6, arrive: 6, steps: 9 })).toBe(
    '加減速が 6+6コマですが、この区間は9ステップです。合計を9までにしてください。',
  );
});

test('a fairing mark is told where it may stand, if there is such a place', () => {
  const mark = { mark: 'ア', frame: 30 };
  expect(said('fairing-outside', { ...mark, first: 2, last: 23 })).toMatch(/2～23コマ目に置いて/);
  expect(said('fairing-outside', { ...mark, first: 2, last: 2 })).toMatch(/途中の2コマ目に置いて/);
  expect(said('fairing-outside', { ...mark, first: 2, last: 1 })).toMatch(/次のコマで着きます/);
});

test('an edge tells the worst frame only where that is another one', () => {
  const edge = {
    level: 'BG',
    side: 'left',
    frame: 3,
    byMm: 1.001,
    worstMm: 4,
    needed: { width: 300, height: 200, x: 0, y: -5 },
  } as const;
  expect(said('artwork-edge', { ...edge, worstFrame: 3 })).toBe(
    '3コマ目から、セルBGの左端が 1.01 mm 画面に入ります。用紙が 300 x 200 mm、中心が 0, -5 なら足ります。',
  );
  expect(said('artwork-edge', { ...edge, worstFrame: 9 })).toMatch(/（最大は9コマ目の 4 mm）/);
});
