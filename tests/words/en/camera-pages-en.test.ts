/** The camera's pages in English. */

import { expect, test } from 'vitest';
import { cameraPages } from '../../../src/words/en/camera-pages-en.js';

test('a way leads up or down', () => {
  expect(cameraPages.slope('4.5', true)).toBe('leads 4.5° up from level');
  expect(cameraPages.slope('4.5', false)).toBe('leads 4.5° down from level');
});
