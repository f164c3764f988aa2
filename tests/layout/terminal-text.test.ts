import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import { broken, hanging, inWidth, widthOf } from '../../src/layout/terminal-text.js';

describe('width', () => {
  // Independent reference: npm string-width, which follows Unicode Standard Annex 11, East Asian Width.
  test('of every character of a sheet is that of the library', () => {
    const narrow = '│┊╮╯┌├└╶×…–“”→←↑↓°';
    for (const character of [...narrow, ...'Ab(1) -=o*<>', 'ア', '渡', 'ｱ', '（', '🎬'])
      expect(widthOf(character), character).toBe(stringWidth(character));
    expect(widthOf(narrow)).toBe([...narrow].length);
  });

  test('a text is filled up or cut to exactly so many columns, also where a wide character stands across the end', () => {
    expect(inWidth('渡し場', 8)).toBe('渡し場  ');
    expect(inWidth('渡し場', 6)).toBe('渡し場');
    expect(inWidth('渡し場', 5)).toBe('渡し…');
    expect(inWidth('渡し場', 4)).toBe('渡… ');
    expect(inWidth('12', 4, 'right')).toBe('  12');
    expect(inWidth('12345', 3)).toBe('12…');
  });

  test('lines break between words and between kana, never wider than asked for', () => {
    expect(broken('Somebody rings, girl.', 10)).toEqual(['Somebody', 'rings,', 'girl.']);
    expect(broken('潮が満ちるよ', 5)).toEqual(['潮が', '満ち', 'るよ']);
    expect(hanging('wait for me', 8, 2)).toEqual(['wait', '  for me']);
  });
});
