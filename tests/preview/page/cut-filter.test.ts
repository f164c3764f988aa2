import { expect, test } from 'vitest';
import { fitsFilter } from '../../../src/preview/page/cut-filter.js';

const cut = { number: '12', title: 'Rain on the Weir', file: 'cuts/c012.cut' };

test.each([
  ['nothing', ''],
  ['its number', '12'],
  ['a part of its title, in any case', 'wEI'],
  ['its file', 'c012'],
  ['several words in any order', '  weir 12 '],
  ['full-width letters', 'Ｒａｉｎ　１２'],
])('a cut fits %s', (_, typed) => {
  expect(fitsFilter(cut, typed)).toBe(true);
});

test.each(['13', 'weir 13', 'weirs'])('a cut does not fit what it lacks: %s', (typed) => {
  expect(fitsFilter(cut, typed)).toBe(false);
});
