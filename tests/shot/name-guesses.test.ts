import { expect, test } from 'vitest';
import { makeGuess } from '../../src/shot/name-guesses.js';

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
