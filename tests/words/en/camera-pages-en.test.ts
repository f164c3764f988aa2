/** The camera's pages in English. */

import { expect, test } from 'vitest';
import { cameraPages } from '../../../src/words/en/camera-pages-en.js';

test('a way leads up or down', () => {
  expect(cameraPages.slope('4.5', true, true)).toBe('leads 4.5° up to the right');
  expect(cameraPages.slope('4.5', false, false)).toBe('leads 4.5° down to the left');
});

test('the rows of the largest step are one or several', () => {
  expect(cameraPages.way('9 mm', '1 mm', '0+2', '0+2')).toBe('way 9 mm, largest step 1 mm a frame (row 0+2)');
  expect(cameraPages.way('9 mm', '1 mm', '0+2', '0+8')).toContain('(rows 0+2–0+8)');
});
