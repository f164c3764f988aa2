/** Titles and headings in English. */

import { expect, test } from 'vitest';
import { documentsIn } from '../../../src/words/en/documents-en.js';
import { JAPAN_TERMS, WEST_TERMS } from '../../../src/words/en/terms-en.js';

const japan = documentsIn(JAPAN_TERMS);

test('cuts that only one version has: which version, and one cut or several', () => {
  expect(japan.onlyIn(null, '12', 1)).toBe('only now: cut 12');
  expect(japan.onlyIn('HEAD', '12, 14', 2)).toBe('only in HEAD: cuts 12, 14');
});

test('a bookmark begins with a capital, a heading of a note does not', () => {
  expect([japan.cut('12'), japan.noteCut('12')]).toEqual(['Cut 12', 'cut 12']);
  expect(documentsIn(WEST_TERMS).cut('12')).toBe('Scene 12');
});
