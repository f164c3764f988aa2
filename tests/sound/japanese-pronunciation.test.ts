import { describe, expect, test } from 'vitest';
import { isJapanese, japanesePhrases } from '../../src/sound/japanese-pronunciation.js';

const read = (text: string) => {
  const { words, unread } = japanesePhrases(text, 0);
  return {
    sounds: words[0]?.sounds.map(({ sound }) => sound).join(' ') ?? '',
    beats: words[0]?.beats ?? 0,
    unread,
  };
};

describe('morae', () => {
  // Tokyo University of Foreign Studies, coelang.tufs.ac.jp; Iwate University, sp.cis.iwate-u.ac.jp, mora.
  test.each([
    ['きょう', 2],
    ['きって', 3],
    ['とうきょう', 4],
    ['コンピューター', 6],
    ['ファイル', 3],
  ])('%s has %d', (text, beats) => {
    expect(read(text).beats).toBe(beats);
  });
});

describe('sounds', () => {
  test.each([
    ['まって', 'm a q t e'],
    ['しゃしん', 'sh a sh i N'],
    ['きょう', 'k y o u'],
    ['コーヒー', 'k o o h i i'],
    ['ｶﾞｯｺｳ', 'g a q k o u'],
    ['ティー', 't i i'],
    ['うぃ', 'w i'],
    ['これは', 'k o r e w a'],
    ['うみへ', 'u m i e'],
    ['は', 'h a'],
    ['ゃ', 'a'],
  ])('%s', (text, sounds) => {
    expect(read(text).sounds).toBe(sounds);
  });
});

describe('kanji', () => {
  test('are read by their ruby, at their own place', () => {
    const { words, unread } = japanesePhrases('海《うみ》へ行《い》く', 10);
    expect(words[0]).toMatchObject({ start: 10, end: 21, beats: 5, beatStarts: [10, 10, 15, 16, 20] });
    expect(words[0]!.sounds.map(({ sound }) => sound).join(' ')).toBe('u m i e i k u');
    expect(unread).toEqual([]);
  });

  test('without it are named, and the rest is read', () => {
    expect(read('海へいく').unread).toEqual([{ start: 0, end: 1, text: '海' }]);
    expect(read('海へいく').sounds).toBe('h e i k u');
    expect(read('３時《じ》').unread).toEqual([{ start: 0, end: 1, text: '３' }]);
  });

  test('a bar says where they begin', () => {
    expect(read('｜お兄《にい》さん').sounds).toBe('n i i s a N');
  });
});

test('tells which runs are Japanese', () => {
  expect(['かな', 'カナ', '漢字', 'ｶﾅ'].every(isJapanese)).toBe(true);
  expect(['word', '12', 'Ünï'].some(isJapanese)).toBe(false);
});
