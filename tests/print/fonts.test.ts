import { describe, expect, test } from 'vitest';
import { MissingGlyph } from '../../src/print/fonts.js';
import { testFonts } from '../fonts.js';

describe('a face', () => {
  const { regular } = testFonts();

  test('has a glyph with its advance as a share of the em', () => {
    // A Japanese character fills the em square (common practice).
    expect(regular.glyph('渡'.codePointAt(0)!)).toMatchObject({ advance: 1 });
    expect(regular.glyph('i'.codePointAt(0)!)!.advance).toBeLessThan(0.5);
  });

  test('has none for what the font lacks', () => {
    expect(regular.glyph(0x1f600)).toBeNull();
  });

  test('gives the same glyph again', () => {
    expect(regular.glyph(0x41)).toBe(regular.glyph(0x41));
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
    expect(metrics.width('m', 1, 'bold')).toBe(bold.glyph(0x6d)!.advance);
    expect(metrics.width('m', 1, 'regular')).toBe(regular.glyph(0x6d)!.advance);
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
