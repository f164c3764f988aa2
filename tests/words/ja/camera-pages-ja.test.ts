/** The camera's pages in Japanese. */

import { expect, test } from 'vitest';
import { cameraPages } from '../../../src/words/ja/camera-pages-ja.js';

test('a way leads up or down', () => {
  expect(cameraPages.slope('4.5', true, true)).toBe('水平から 4.5° 右上へ');
  expect(cameraPages.slope('4.5', false, false)).toBe('水平から 4.5° 左下へ');
});
