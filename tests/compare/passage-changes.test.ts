import { expect, test } from 'vitest';
import { compare } from '../../src/compare/compare-cuts.js';
import { compiled } from '../fuzz/ways.js';

test.each([
  'A: - 1 - - =2 =2 1:40 =2 x..\ncels A 1.1 6 6',
  'A: 1 - - 2 - 1 = 1.1 2 x..\ncels A 2 1>2.1 2.1 3',
])('a level whose numbered line is of another timeline does not differ from itself: %s', (lines) => {
  const { solved } = compiled(`cut 1\ntime 5+0\n${lines}\n`);
  expect(compare(solved!, solved!)).toEqual([]);
});
