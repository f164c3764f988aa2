import { expect, test } from 'vitest';
import { saidInJapanese as said } from './said-ja.js';

test('a short timeline says how many frames are missing, from which on', () => {
  expect(said('timeline-short', { level: 'A', shown: 8, time: 24, rows: 36 })).toBe(
    'セルAは24+12コマ（のりしろ込み）のうち8コマ分です。9コマ目から28コマ足りません。',
  );
  expect(said('timeline-short', { level: 'A', shown: 0, time: 24, rows: 24 })).toMatch(
    /^セルAは24コマの間、何も出ません。/,
  );
});

test('a drawing that is not there says why', () => {
  const drawing = { level: 'A', drawing: '1.9', key: '1', to: null, way: '2' };
  expect(said('reference-missing', { ...drawing, count: 2 })).toBe(
    'セルAに絵 1.9 はありません。原画1→2 の中割りは2枚です。',
  );
  expect(said('reference-missing', { ...drawing, count: 0 })).toBe(
    'セルAに絵 1.9 はありません。原画1からの中割りがありません。',
  );
});

test('one frame between holds is a drawing or empty', () => {
  expect(said('one-frame-flash', { level: 'A', drawing: '2', frame: 9 })).toContain(
    '9コマ目の1コマだけ絵 2 が出ます',
  );
  expect(said('one-frame-flash', { level: 'A', drawing: null, frame: 9 })).toContain(
    '9コマ目の1コマだけ空セルです',
  );
});

test('keys that are left out are one or several', () => {
  const jump = { key: '5', level: 'A', after: '2' };
  expect(said('key-jump', { ...jump, first: 3, last: 4 })).toBe(
    'セルAの原画2の次が原画5です。原画3～4がありません。',
  );
  expect(said('key-jump', { ...jump, first: 4, last: 4 })).toMatch(/原画4がありません。$/);
});
