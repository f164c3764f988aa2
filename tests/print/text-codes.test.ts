import { describe, expect, test } from 'vitest';
import { MissingGlyph } from '../../src/print/fonts.js';
import { FontUse, TextCodes } from '../../src/print/text-codes.js';
import { testFonts } from '../fonts.js';

const codes = () => new TextCodes(testFonts().regular, 'regular');

describe('the codes of a text', () => {
  test('are code points, four hexadecimal figures each', () => {
    expect(codes().of('bA')).toMatchObject({ resource: 'F1', hex: '00620041', characters: [] });
    expect(new TextCodes(testFonts().bold, 'bold').of('…')).toMatchObject({ resource: 'F2', hex: '2026' });
  });

  test('have the advance of all of them', () => {
    const { regular } = testFonts();
    expect(codes().of('ab').ems).toBeCloseTo(regular.advance(0x61)! + regular.advance(0x62)!, 12);
    expect(codes().of('').ems).toBe(0);
  });

  test('are all of the other font where one character is', () => {
    expect(codes().of('Cut 夕')).toMatchObject({
      resource: 'F3',
      hex: '00430075007400205915',
      characters: [0x43, 0x75, 0x74, 0x20, 0x5915],
    });
  });

  test('beyond the first 65,536 lie where no character is, each in its place', () => {
    const [first, second] = ['𠮷', '𠀋'].map((one) => Number.parseInt(codes().of(one).hex, 16));
    for (const code of [first!, second!]) {
      expect(code).toBeGreaterThanOrEqual(0xd800);
      expect(code).toBeLessThan(0xe000);
    }
    expect(first).not.toBe(second);
    expect(codes().of('x𠮷').hex).toContain(first!.toString(16));
  });

  test('differ for characters that share a glyph', () => {
    expect(codes().of('-\u00ad').hex).toBe('002d00ad');
  });

  test('are those of the letter as it is composed', () => {
    expect(codes().of('か\u3099').hex).toBe('304c');
    expect(() => codes().of('\u{1F6A2}')).toThrow(new MissingGlyph('\u{1F6A2}', 'regular', '\u{1F6A2}'));
  });

  test('are made once', () => {
    const own = codes();
    expect(own.of('Wait')).toBe(own.of('Wait'));
  });
});

test('what a file needs is all that its texts need', () => {
  const [one, two] = [new FontUse(), new FontUse()];
  one.add(codes().of('ab'), 'regular');
  two.add(codes().of('夕b'), 'regular');
  two.addAll(one);
  expect([...two.latin]).toEqual(['F1']);
  expect([...two.other.regular]).toEqual([0x5915, 0x62]);
  expect(two.other.bold.size).toBe(0);
});
