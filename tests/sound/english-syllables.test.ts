/** Words by how many syllables the CMU Pronouncing Dictionary gives them; where they are cut: by the rules in the source. */

import { describe, expect, test } from 'vitest';
import { syllableStarts } from '../../src/sound/english-syllables.js';

const cut = (word: string, spoken: number) => {
  const starts = syllableStarts(word, spoken);
  return starts.map((start, i) => word.slice(start, starts[i + 1])).join('-');
};

describe('a word is cut', () => {
  test.each([
    ['seven', 2, 'se-ven'],
    ['juggler', 2, 'jug-gler'],
    ['nothing', 2, 'no-thing'],
    ['chicken', 2, 'chick-en'],
    ['taxi', 2, 'tax-i'],
    ['beyond', 2, 'be-yond'],
    ['sequel', 2, 'se-quel'],
    ['kudasai', 3, 'ku-da-sai'],
  ])('%s, of %d: %s', (word, spoken, expected) => {
    expect(cut(word, spoken)).toBe(expected);
  });

  test.each([
    ['something', 2, 'some-thing'],
    ['every', 2, 'eve-ry'],
    ['wanted', 2, 'wan-ted'],
    ['table', 2, 'ta-ble'],
    ['stories', 2, 'sto-ries'],
  ])('with an e that is not heard: %s, of %d: %s', (word, spoken, expected) => {
    expect(cut(word, spoken)).toBe(expected);
  });

  test.each([
    ['lion', 2, 'li-on'],
    ['create', 2, 'cre-ate'],
    ['reuse', 2, 're-use'],
    ['recipe', 3, 're-ci-pe'],
    ['anyone', 3, 'a-ny-one'],
    ['someone', 2, 'some-one'],
    ['idea', 3, 'i-de-a'],
    ['quiet', 2, 'qui-et'],
    ['extraordinarily', 7, 'ex-tra-or-di-na-ri-ly'],
  ])('between vowels that are spoken apart: %s, of %d: %s', (word, spoken, expected) => {
    expect(cut(word, spoken)).toBe(expected);
  });

  test('with accents as without', () => {
    expect(cut('Émile', 2)).toBe('É-mile');
    expect(cut('Über', 2)).toBe('Ü-ber');
  });
});

test('one syllable is never cut', () => {
  for (const word of ['plates', 'cracked', 'through', 'names', 'anyone']) expect(cut(word, 1)).toBe(word);
});

test('a word whose spelling shows fewer or more is not cut', () => {
  expect(cut('rhythm', 2)).toBe('rhythm');
  expect(cut('business', 1)).toBe('business');
  expect(cut('chocolate', 2)).toBe('chocolate');
  expect(cut('12', 2)).toBe('12');
  expect(cut('Größe', 2)).toBe('Größe');
});
