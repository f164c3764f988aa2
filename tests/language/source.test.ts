import { describe, expect, test } from 'vitest';
import {
  displayWidth,
  lines,
  lineText,
  offsetAt,
  placeAt,
  withoutMark,
  withoutTabs,
} from '../../src/language/source.js';

describe('lines and columns', () => {
  const source = lines('cut 1\r\n\ttime 5+0\n\nA: 1\rB: 1');

  test('a line ends at LF, CR LF or CR', () => {
    expect([1, 2, 3, 4, 5].map((line) => lineText(source, line))).toEqual([
      'cut 1',
      '\ttime 5+0',
      '',
      'A: 1',
      'B: 1',
    ]);
  });

  test('count from 1', () => {
    expect(placeAt(source, 0)).toEqual({ line: 1, column: 1 });
    expect(placeAt(source, 8)).toEqual({ line: 2, column: 2 });
    expect(placeAt(source, source.text.length)).toEqual({ line: 5, column: 5 });
  });

  test('an offset beyond the text is its end', () => {
    expect(placeAt(source, 999)).toEqual({ line: 5, column: 5 });
  });

  test('a place and its offset are the same thing', () => {
    for (let offset = 0; offset < source.text.length; offset++) {
      if (source.text[offset] === '\n' && source.text[offset - 1] === '\r') continue;
      expect(offsetAt(source, placeAt(source, offset))).toBe(offset);
    }
  });

  test('a place beyond its line is the end of the line', () => {
    expect(offsetAt(source, { line: 1, column: 99 })).toBe(5);
  });
});

test('a byte-order mark is no part of the text', () => {
  expect(withoutMark('\ufeffcut 1')).toBe('cut 1');
});

describe('width on a terminal', () => {
  // Unicode, UAX 11: kana, han and full-width forms are wide; half-width katakana is narrow. Combining marks take no column.
  test.each([
    ['time', 4],
    ['ナオ', 4],
    ['雨、風', 6],
    ['Ａ：', 4],
    ['ﾅｵ', 2],
    ['か\u3099', 2],
    ['e\u0301', 1],
    ['𠮷', 2],
    ['', 0],
  ])('%s is %i', (text, width) => {
    expect(displayWidth(text)).toBe(width);
  });

  // Wide by the East Asian Width property (Unicode Standard Annex 11, EastAsianWidth.txt: 231A, 2615, 2705 are W; from memory); a
  // picture that is joined out of several takes the room of one (Unicode Technical Standard 51; from memory).
  test.each([
    ['⌚', 2],
    ['☕', 2],
    ['✅', 2],
    ['👩‍👧', 2],
    ['☂', 1],
  ])('a picture is as wide as a terminal draws it: %s', (text, width) => {
    expect(displayWidth(text)).toBe(width);
    expect(displayWidth(`\tナ${text}x`)).toBe(11 + width);
  });

  test('a tab goes to the next multiple of eight', () => {
    expect(displayWidth('\t')).toBe(8);
    expect(displayWidth('ab\t')).toBe(8);
    expect(displayWidth('\t', 7)).toBe(1);
    expect(displayWidth('ナオナオ\tx')).toBe(17);
  });

  test('tabs written out as blanks keep every column', () => {
    for (const text of ['\ta\tb', 'ナ\tオ', 'abcdefgh\ti']) {
      expect(withoutTabs(text)).not.toContain('\t');
      expect(displayWidth(withoutTabs(text))).toBe(displayWidth(text));
    }
  });
});
