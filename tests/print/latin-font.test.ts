import { describe, expect, test } from 'vitest';
import { isLatin, latinFont, latinFontsFile, readLatinFonts } from '../../src/print/latin-font.js';
import { TrueTypeFont } from '../../src/print/truetype-font.js';
import { bytesOf } from '../fonts.js';

describe('the Latin subset', () => {
  const [regular, bold] = (['regular', 'bold'] as const).map((weight) =>
    latinFont(new TrueTypeFont(bytesOf(weight)), weight),
  ) as [ReturnType<typeof latinFont>, ReturnType<typeof latinFont>];

  test('has all of ASCII that is printed, and the signs of figures', () => {
    for (let codePoint = 0x20; codePoint < 0x7f; codePoint++)
      expect(regular.advances.get(codePoint)).toBeGreaterThan(0);
    for (const sign of '°±×–—…→−') expect(bold.advances.has(sign.codePointAt(0)!)).toBe(true);
    for (const codePoint of regular.advances.keys()) expect(isLatin(codePoint)).toBe(true);
  });

  test('has nothing else', () => {
    expect([0x0a, 0x7f, 0xe4, 0x5915].filter(isLatin)).toEqual([]);
    expect(regular.embedded.program.bytes.length).toBeLessThan(12_000);
  });

  test('comes back out of its file as it was', () => {
    const file = latinFontsFile({ regular, bold });
    const read = readLatinFonts(file);
    expect(Buffer.from(latinFontsFile(read)).equals(file)).toBe(true);
    expect(read.bold.advances).toEqual(bold.advances);
    expect(Buffer.from(regular.embedded.program.bytes).equals(read.regular.embedded.program.bytes)).toBe(
      true,
    );
    expect({ ...read.bold.embedded, program: 0, glyphs: 0, unicode: 0 }).toEqual({
      ...bold.embedded,
      ...{ program: 0, glyphs: 0, unicode: 0 },
    });
  });
});
