/**
 * Mouths of Japanese and English words. Morae: TUFS, coelang.tufs.ac.jp, 拍; pronunciation of `hello`: the CMU Pronouncing Dictionary
 * (HH AH0 L OW1). n closes the mouth where it stands alone (saraemi.com 1608kutipaku: ん).
 */

import { describe, expect, test } from 'vitest';
import { mouthSounds } from '../../../src/shot/mouth/mouth-sounds.js';

const SIGNS = { closure: 'm', consonant: 'k', pause: '.' } as const;
const CMU = new Map([
  ['hello', 'HH AH0 L OW1'],
  ['my', 'M AY1'],
  ['on', 'AA1 N'],
  ['no', 'N OW1'],
]);
const mouths = (text: string) =>
  mouthSounds((word) => CMU.get(word) ?? null)(text)
    ?.map(({ shown }) => SIGNS[shown as keyof typeof SIGNS] ?? shown)
    .join('');

describe('what a mouth shows of words', () => {
  test.each([
    ['きょう', 'kkou'],
    ['まんぷく', 'mammuku'],
    ['きって', 'kikke'],
    ['いっぱい', 'immai'],
    ['なの', 'kako'],
    ['わたし', 'uakaki'],
    ['コンピューター', 'kommkuukaa'],
    ['行《い》く', 'iku'],
  ])('%s: %s', (text, expected) => {
    expect(mouths(text)).toBe(expected);
  });

  test.each([
    ['hello', 'keko'],
    ['my', 'mai'],
    ['on', 'am'],
    ['no', 'ko'],
  ])('%s: %s', (text, expected) => {
    expect(mouths(text)).toBe(expected);
  });

  test('pauses stand at punctuation, and at the end only where there is some', () => {
    expect(mouths('no, no. no')).toBe('ko.ko.ko');
    expect(mouths('no, no. no.')).toBe('ko.ko.ko.');
  });

  test('kanji without a reading are not guessed', () => {
    expect(mouths('行く')).toBeUndefined();
  });

  test('a mora lasts about an eighth of a second at an ordinary pace', () => {
    const sounds = mouthSounds()('さくらがさいた')!;
    const seconds = sounds.reduce((sum, one) => sum + one.seconds, 0);
    expect(seconds / 7).toBeGreaterThan(0.1);
    expect(seconds / 7).toBeLessThan(0.2);
  });
});

test.each([
  ['no', 0],
  ['no,', 0.15],
  ['no!', 0.35],
  ['なの、', 0.15],
  ['「なの。」', 0.35],
])('behind the words of a part that ends with %s is a pause of %d s', (text, seconds) => {
  const sounds = mouthSounds((word) => CMU.get(word) ?? null)(text)!;
  expect(sounds.at(-1)!.shown === 'pause' ? sounds.at(-1)!.seconds : 0).toBe(seconds);
});

test('of a vowel of two the second takes a third', () => {
  const [, first, second] = mouthSounds((word) => CMU.get(word) ?? null)('my')!;
  expect(first!.seconds / second!.seconds).toBeCloseTo(2, 9);
});
