import { expect, test } from 'vitest';
import { englishWordsOf, shippedEnglishWords } from '../../src/host/shipped-files.js';
import { englishDictionary } from '../../src/sound/english-dictionary.js';

test('looks whole words up', () => {
  const look = englishDictionary('\nwait W EY1 T\nwaiter W EY1 T ER0\n');
  expect([look('wait'), look('waiter'), look('wai'), look('ait')]).toEqual([
    'W EY1 T',
    'W EY1 T ER0',
    null,
    null,
  ]);
  expect(look('wait')).toBe('W EY1 T');
});

test('the shipped one has more than a hundred thousand words', () => {
  const words = shippedEnglishWords();
  const text = words.ok ? words.value : '';
  expect(text.split('\n').length).toBeGreaterThan(100_000);
  expect(englishDictionary(text)('hello')).toBe('HH AH0 L OW1');
});

test('of several pronunciations the first is taken', () => {
  expect(englishWordsOf('  "a": "AH0",\n  "a(2)": "EY1",\n  hello: "HH AH0 L OW1",\n')).toBe(
    '\na AH0\nhello HH AH0 L OW1\n',
  );
});
