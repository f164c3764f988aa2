/** The cut list in Japanese. */

import { expect, test } from 'vitest';
import { cutList } from '../../../src/words/ja/cut-list-ja.js';

test('cuts with errors, and those of them whose time is not known', () => {
  expect(cutList.unsoundNote(2, 0)).toBe('2カットに誤りあり（!）。読めた分だけ数え、印刷しない。');
  expect(cutList.unsoundNote(2, 1)).toBe(
    '2カットに誤りあり（!）。読めた分だけ数え、印刷しない。うち1カットは尺が不明で合計に入らない。',
  );
});
