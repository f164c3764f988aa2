import { describe, expect, test } from 'vitest';
import { MissingGlyph, openFonts } from '../../src/print/fonts.js';
import { bytesOf, testFonts } from '../fonts.js';

describe('a face', () => {
  const { regular } = testFonts();

  test('gives the advance of a character as a share of the em', () => {
    // A Japanese character fills the em square (common practice).
    expect(regular.advance('渡'.codePointAt(0)!)).toBe(1);
    expect(regular.advance('i'.codePointAt(0)!)).toBeLessThan(0.5);
  });

  test('has none for what the font lacks', () => {
    expect(regular.advance(0x1f600)).toBeNull();
    expect(regular.advance(0x0a)).toBeNull();
  });

  test('reads the whole font only for characters that the Latin subset has not', () => {
    const latin = { regular: regular.latin, bold: testFonts().bold.latin };
    const asked: string[] = [];
    const read = (weight: 'regular' | 'bold') => {
      asked.push(weight);
      return bytesOf(weight);
    };
    const { metrics } = openFonts({ read, latin });
    expect(metrics.width('Cut 12 – “dusk”', 4, 'bold')).toBe(
      testFonts().metrics.width('Cut 12 – “dusk”', 4, 'bold'),
    );
    expect(asked).toEqual([]);
    expect(metrics.width('夕', 4, 'bold')).toBe(4);
    expect(asked).toEqual(['bold']);
  });
});

describe('the width of a text', () => {
  const { metrics, regular, bold } = testFonts();

  test('is that of its characters one by one: no kerning', () => {
    const each = [...'AVATAR'].map((one) => metrics.width(one, 4, 'regular'));
    expect(metrics.width('AVATAR', 4, 'regular')).toBeCloseTo(
      each.reduce((sum, one) => sum + one, 0),
      9,
    );
  });

  test('grows with the size', () => {
    expect(metrics.width('Pim', 8, 'regular')).toBeCloseTo(2 * metrics.width('Pim', 4, 'regular'), 9);
  });

  test('is that of the weight', () => {
    expect(metrics.width('m', 1, 'bold')).toBe(bold.advance(0x6d));
    expect(metrics.width('m', 1, 'regular')).toBe(regular.advance(0x6d));
    expect(metrics.width('m', 1, 'bold')).not.toBe(metrics.width('m', 1, 'regular'));
  });

  test('counts a letter with its mark as the one that is printed', () => {
    expect(metrics.width('か\u3099', 5, 'regular')).toBe(metrics.width('が', 5, 'regular'));
  });

  test('counts an em for what the font lacks', () => {
    expect(metrics.width('😀', 5, 'regular')).toBe(5);
  });
});

test('a missing glyph is told with its code', () => {
  const fault = new MissingGlyph('😀', 'bold', 'so 😀');
  expect(fault.message).toBe('the font has no glyph for “😀” (U+1F600) in “so 😀”');
  expect(fault.character).toBe('😀');
  expect(new MissingGlyph('\u{a}', 'bold', '').message).toContain('(U+000A)');
});
