import { describe, expect, test } from 'vitest';
import type { Face } from '../../src/print/fonts.js';
import { MissingGlyph } from '../../src/print/fonts.js';
import type { EmbeddedFont } from '../../src/print/pdfkit.js';
import { openCodes } from '../../src/print/subset-encoding.js';

/** A font of small letters, glyph 1 to 26, as wide as 0.1 em each; `’` and `'` share glyph 30. */
const face: Face = {
  font: null as never,
  glyph(codePoint) {
    if (codePoint === 0x27 || codePoint === 0x2019) return { id: 30, advance: 0.25 };
    const id = codePoint - 0x60;
    return id >= 1 && id <= 26 ? { id, advance: 0.1 } : null;
  },
};

/** What a document embeds of the font: glyph 0 is there from the start. */
function embedded() {
  const glyphs = [0];
  const font = {
    id: 'F1',
    subset: {
      glyphs,
      includeGlyph: (id: number) => (glyphs.includes(id) ? glyphs.indexOf(id) : glyphs.push(id) - 1),
    },
    unicode: [[0]] as number[][],
    widths: [0] as number[],
  };
  return { font, codes: openCodes(face, 'regular', font as unknown as EmbeddedFont) };
}

describe('the codes of a text', () => {
  test('are given in the order in which characters come, four hexadecimal figures each', () => {
    const { codes, font } = embedded();
    expect(codes.run('ba').hex).toBe('00010002');
    expect(codes.run('ab').hex).toBe('00020001');
    expect(font.subset.glyphs).toEqual([0, 2, 1]);
  });

  test('have the advance of all of them', () => {
    expect(embedded().codes.run("ab'").ems).toBeCloseTo(0.45, 12);
    expect(embedded().codes.run('').ems).toBe(0);
  });

  test('tell the document each character, and its width in thousandths', () => {
    const { codes, font } = embedded();
    codes.run('b');
    expect(font.unicode[1]).toEqual([0x62]);
    expect(font.widths[1]).toBe(100);
  });

  test('differ for characters that share a glyph', () => {
    const { codes, font } = embedded();
    expect(codes.run("'’").hex).toBe('00010002');
    expect(font.subset.glyphs).toEqual([0, 30, 30]);
    expect(font.unicode.slice(1)).toEqual([[0x27], [0x2019]]);
  });

  test('are those of the letter as it is composed', () => {
    expect(() => embedded().codes.run('a\u0301')).toThrow(new MissingGlyph('á', 'regular', 'a\u0301'));
  });
});
