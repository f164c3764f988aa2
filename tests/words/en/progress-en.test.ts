import { expect, test } from 'vitest';
import { wordsOf } from '../../../src/words/words.js';

const words = wordsOf({ labels: 'en', convention: 'west' }).progress;

test('one day, several days', () => {
  expect([words.daysLate(1), words.daysLate(2)]).toEqual(['! 1 day late', '! 2 days late']);
  expect(words.dayOfYear(3, 9)).toBe('03-09');
});

test('a western form has scenes', () => {
  expect([words.columns.cut, words.columns.cuts]).toEqual(['scene', 'scenes']);
});
