import { describe, expect, test } from 'vitest';
import { distance, makeGuess, nearest } from '../../src/language/suggest.js';

describe('distance', () => {
  // The first two are the textbook pairs for edit distance (common practice); swapped neighbours count once.
  test.each([
    ['kitten', 'sitting', 3],
    ['saturday', 'sunday', 3],
    ['tmie', 'time', 1],
    ['time', 'time', 0],
    ['', 'abc', 3],
  ])('%s %s', (a, b, expected) => {
    expect(distance([...a], [...b], 9)).toBe(expected);
    expect(distance([...b], [...a], 9)).toBe(expected);
  });

  test('is not counted beyond its limit', () => {
    expect(distance([...'kitten'], [...'sitting'], 1)).toBe(2);
  });
});

describe('what was probably meant', () => {
  const words = ['time', 'truck', 'stack', 'voice', 'on', 'BG'];
  test.each([
    ['tmie', 'time'],
    ['trcuk', 'truck'],
    ['TIME', 'time'],
    ['bg', 'BG'],
    ['voices', 'voice'],
    ['ウォク', undefined],
    ['an', undefined],
    ['A', undefined],
    ['harbour', undefined],
    ['time', undefined],
  ])('%s', (typed, meant) => {
    expect(nearest(typed, words)).toBe(meant);
  });

  test('names of any script', () => {
    expect(nearest('あるき方', ['あるきかた', 'あるき型'])).toBe('あるき型');
  });

  // One slip in a word of three to five letters, two in a longer one, none in a shorter one.
  test.each([
    ['ab', 'ax', undefined],
    ['abc', 'abx', 'abx'],
    ['abc', 'axy', undefined],
    ['abcde', 'abcdx', 'abcdx'],
    ['abcde', 'abcxy', undefined],
    ['abcdef', 'abcdxy', 'abcdxy'],
    ['abcdef', 'abcxyz', undefined],
    ['abcde', 'abcdexy', 'abcdexy'],
    ['abcdefghijkl', 'abcdefghixyz', undefined],
  ])('%s for %s: %s', (typed, word, meant) => {
    expect(nearest(typed, [word])).toBe(meant);
  });

  test('the first of two that are equally near, the nearer one of two', () => {
    expect(nearest('abcd', ['abcx', 'abcy'])).toBe('abcx');
    expect(nearest('abcdef', ['abcdxy', 'abcdex'])).toBe('abcdex');
  });

  test('nothing for what is no word: more than 64 characters', () => {
    expect(nearest('a'.repeat(64), ['a'.repeat(63)])).toBe('a'.repeat(63));
    expect(nearest('a'.repeat(65), ['a'.repeat(64)])).toBeUndefined();
  });
});

test('the nearest name, or none', () => {
  const guess = makeGuess();
  expect(guess('hbarour', ['tide', 'harbour'])).toBe('harbour');
  expect(guess('lantern', ['tide', 'harbour'])).toBeUndefined();
});

test('forty guesses a text, whether they find something or not', () => {
  const guess = makeGuess();
  for (let i = 0; i < 39; i++) guess('lantern', ['tide']);
  expect(guess('tied', ['tide'])).toBe('tide');
  expect(guess('tied', ['tide'])).toBeUndefined();
  expect(makeGuess()('tied', ['tide'])).toBe('tide');
});
