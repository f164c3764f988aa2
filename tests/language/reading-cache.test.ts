import { expect, test } from 'vitest';
import { type CachedStatement, movedSpans, ReadingCache } from '../../src/language/reading-cache.js';
import { readAll } from './read-text.js';

const read = (text: string, start = 0): CachedStatement => {
  const { tree, tokens } = readAll(text);
  return { ...movedSpans({ statement: tree.statements[0]!, tokens, problems: [] }, start), start };
};

test('a statement is found by what was typed, with every place moved to where it stands now', () => {
  const cache = new ReadingCache();
  cache.begin();
  cache.keep('A: 1--2', read('A: 1--2'));
  const found = cache.find('A: 1--2', 10)!;
  expect(found.start).toBe(10);
  expect(found.statement.span).toEqual({ file: 'this.cut', start: 10, end: 17 });
  expect(found.tokens.map(({ span }) => span.start)).toEqual([10, 11, 13, 14, 15, 16]);
});

test('one that stands where it stood is the same', () => {
  const cache = new ReadingCache();
  cache.begin();
  const known = read('cut 1', 4);
  cache.keep('cut 1', known);
  expect(cache.find('cut 1', 4)).toBe(known);
});

test('only what the text before held is known', () => {
  const cache = new ReadingCache();
  cache.begin();
  cache.keep('cut 1', read('cut 1'));
  cache.begin();
  expect(cache.find('time 5', 0)).toBeNull();
  cache.begin();
  expect(cache.find('cut 1', 0)).toBeNull();
});

test('what is found again is kept for the next text', () => {
  const cache = new ReadingCache();
  cache.begin();
  cache.keep('cut 1', read('cut 1'));
  for (const at of [3, 6, 9]) {
    cache.begin();
    expect(cache.find('cut 1', at)?.statement.span.start).toBe(at);
  }
});

test('places are moved in a copy, those alone for which it holds', () => {
  const tree = {
    name: 'A',
    all: [
      { file: 'a.cut', start: 1, end: 2 },
      { file: 'b.cut', start: 1, end: 2, more: null },
    ],
  };
  expect(movedSpans(tree, 5, ({ file }) => file === 'b.cut')).toEqual({
    name: 'A',
    all: [
      { file: 'a.cut', start: 1, end: 2 },
      { file: 'b.cut', start: 6, end: 7, more: null },
    ],
  });
  expect(tree.all[1]!.start).toBe(1);
});
