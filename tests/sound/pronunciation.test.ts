import { describe, expect, test } from 'vitest';
import { shippedEnglishWords } from '../../src/host/shipped-files.js';
import { englishDictionary } from '../../src/sound/english-dictionary.js';
import { pronounce } from '../../src/sound/pronunciation.js';

const words = shippedEnglishWords();
const dictionary = englishDictionary(words.ok ? words.value : '');
const sounds = (text: string) =>
  pronounce(text, dictionary).words.map((word) => word.sounds.map(({ sound }) => sound).join(' '));

describe('a text as its words', () => {
  test('with their places, beats and pauses', () => {
    const text = '“Wait—for me!” she said, twice.';
    const read = pronounce(text, dictionary).words;
    expect(read.map(({ start, end }) => text.slice(start, end))).toEqual([
      'Wait',
      'for',
      'me',
      'she',
      'said',
      'twice',
    ]);
    expect(read.map(({ pause }) => pause)).toEqual(['short', 'none', 'long', 'none', 'short', 'long']);
    expect(read.map(({ beats }) => beats)).toEqual([1, 1, 1, 1, 1, 1]);
  });

  test('in two languages side by side', () => {
    const read = pronounce('きょうは Monday です。', dictionary).words;
    expect(read.map(({ language, beats }) => [language, beats])).toEqual([
      ['ja', 3],
      ['en', 2],
      ['ja', 2],
    ]);
  });

  test('with the class and length of each sound', () => {
    const [hello] = pronounce('hello', dictionary).words;
    // CMU Pronouncing Dictionary: hello HH AH0 L OW1.
    expect(hello!.sounds.map(({ sound, kind, beat, stressed }) => [sound, kind, beat, stressed])).toEqual([
      ['HH', 'fricative', 0, false],
      ['AH', 'vowel', 0, false],
      ['L', 'liquid', 1, false],
      ['OW', 'vowel', 1, true],
    ]);
    for (const { seconds } of hello!.sounds) expect(seconds).toBeGreaterThan(0.02);
  });

  test('nothing of nothing', () => {
    for (const text of ['', '…', '—', '  ', '《》']) expect(pronounce(text, dictionary).words).toEqual([]);
  });
});

test('every text of every script is read without an exception', () => {
  for (const text of [
    'Ünïcödé',
    'Здравствуй',
    '漢字',
    '１２３',
    'ﾊﾛｰ',
    '🎬',
    'a.b.c',
    "'''",
    'ー',
    'ゃ',
    '《かな》',
  ])
    expect(() => sounds(text)).not.toThrow();
});
