/** Titles and headings in Japanese. */

import { expect, test } from 'vitest';
import { documents } from '../../../src/words/ja/documents-ja.js';

test('cuts that only one version has: which version', () => {
  expect(documents.onlyIn(null, '12', 1)).toBe('現在 のみ：カット 12');
  expect(documents.onlyIn('HEAD', '12、14', 2)).toBe('HEAD のみ：カット 12、14');
});
