/** Where lines of any script may break. Every character is one wide here. */

import { describe, expect, test } from 'vitest';
import { brokenLines, isWide, widest } from '../../src/layout/line-breaking.js';

const letters = (text: string): number => [...text].length;
const broken = (text: string, width: number) => brokenLines(text, width, letters);

describe('words with blanks between them', () => {
  test('stay whole, and the blank at a line’s end is dropped', () => {
    expect(broken('wind from screen left', 11)).toEqual(['wind from', 'screen left']);
  });

  test('fill a line to its last character', () => {
    expect(broken('aa bb cc', 5)).toEqual(['aa bb', 'cc']);
    expect(broken('aa bb cc', 4)).toEqual(['aa', 'bb', 'cc']);
  });

  test('are cut where one is wider than a line', () => {
    expect(broken('a lighthousekeeper b', 6)).toEqual(['a', 'lighth', 'ouseke', 'eper b']);
  });
});

describe('Japanese', () => {
  test('breaks between any two of its characters', () => {
    expect(broken('風が左から吹く', 3)).toEqual(['風が左', 'から吹', 'く']);
  });

  // Common practice in Japanese setting (kinsoku).
  test('begins no line with a stop, a small kana or a closing bracket', () => {
    expect(broken('風が吹く。雨', 4)).toEqual(['風が吹', 'く。雨']);
    expect(broken('きちっと', 2)).toEqual(['き', 'ちっ', 'と']);
    expect(broken('と「風」が', 3)).toEqual(['と', '「風」', 'が']);
  });

  test('ends no line with an opening bracket', () => {
    expect(broken('風が「吹く', 3)).toEqual(['風が', '「吹く']);
  });

  test('breaks at its edge with Latin letters, which stay together', () => {
    expect(broken('背景BOOK1を引く', 6)).toEqual(['背景', 'BOOK1を', '引く']);
  });
});

test('line breaks of the text are kept, an empty line too', () => {
  expect(broken('one\n\ntwo three', 9)).toEqual(['one', '', 'two three']);
  expect(broken('', 5)).toEqual(['']);
});

test('kana, kanji, full-width forms and rare kanji are wide; Latin and half-width kana are not', () => {
  expect([...'あ漢ア！𠮷'].map(isWide)).toEqual([true, true, true, true, true]);
  expect([...'aé—ｱ'].map(isWide)).toEqual([false, false, false, false]);
});

test('the widest of several texts is measured, of none it is 0', () => {
  expect(widest(['ab', 'abcd', 'a'], letters)).toBe(4);
  expect(widest([], letters)).toBe(0);
});
