/** Our reader beside that of fontkit, which knows every table. */

import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { TrueTypeFont } from '../../src/print/truetype-font.js';
import { bytesOf } from '../fonts.js';

const bytes = bytesOf('regular');
const font = new TrueTypeFont(bytes);
const other = create(bytes);

describe('a TrueType font', () => {
  test('has the measures that fontkit reads', () => {
    expect(font.unitsPerEm).toBe(other.unitsPerEm);
    expect(font.glyphCount).toBe(other.numGlyphs);
    expect([font.ascent, font.descent]).toEqual([other.ascent, other.descent]);
    expect([font.capHeight, font.xHeight]).toEqual([other.capHeight, other.xHeight]);
    const { minX, minY, maxX, maxY } = other.bbox;
    expect(font.bounds).toEqual([minX, minY, maxX, maxY]);
  });

  test('has the characters that fontkit finds', () => {
    expect(font.codePoints()).toEqual([...new Set(other.characterSet)].sort((a, b) => a - b));
  });

  test('has glyphs and advances as fontkit has them', () => {
    const all = font.codePoints();
    const wrong = all.filter((codePoint, i) => {
      if (i % 7 > 0) return false;
      const glyph = other.glyphForCodePoint(codePoint);
      return font.glyphOf(codePoint) !== glyph.id || font.advanceOf(glyph.id) !== glyph.advanceWidth;
    });
    expect(wrong).toEqual([]);
    expect(all.length).toBeGreaterThan(10_000);
  });

  test('has no glyph for what it lacks', () => {
    expect(font.glyphOf(0x1f600)).toBe(0);
    expect(font.glyphOf(0x0a)).toBe(0);
    expect(font.glyphOf(0x10ffff)).toBe(0);
  });

  test('counts its characters beyond the first 65,536 up to one of them', () => {
    const beyond = font.codePoints().filter((codePoint) => codePoint > 0xffff);
    expect(beyond.map((codePoint) => font.rankBeyondBmp(codePoint))).toEqual(beyond.map((_, i) => i));
    expect(beyond.length).toBeGreaterThan(100);
  });
});

test('what is no such font is refused', () => {
  expect(() => new TrueTypeFont(new Uint8Array(12))).toThrow('no table');
});
