import { inflateSync } from 'node:zlib';
import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { codeOf, embeddedFont } from '../../src/print/embedded-font.js';
import { TrueTypeFont } from '../../src/print/truetype-font.js';
import { bytesOf } from '../fonts.js';

const font = new TrueTypeFont(bytesOf('regular'));
const codePoints = (text: string) => [...text].map((one) => one.codePointAt(0)!);
const made = (text: string) => embeddedFont(font, 'Test', codePoints(text));

describe('a font in a file', () => {
  test('says the width of each code in thousandths, runs of codes together', () => {
    const width = (text: string) => font.advanceOf(font.glyphOf(text.codePointAt(0)!));
    expect(made('bac渡').widths).toBe(`97 [${width('a')} ${width('b')} ${width('c')}] 28193 [1000]`);
  });

  test('leads from each code to the glyph of its character', () => {
    const { program, glyphs } = made('a渡-\u00ad');
    const map = inflateSync(glyphs.bytes);
    const subset = create(inflateSync(program.bytes));
    expect([program.length, glyphs.length]).toEqual([inflateSync(program.bytes).length, map.length]);
    const drawn = (code: number) => subset.getGlyph(map.readUInt16BE(2 * code)).path.toSVG();
    const whole = create(bytesOf('regular'));
    for (const one of codePoints('a渡-')) expect(drawn(one)).toBe(whole.glyphForCodePoint(one).path.toSVG());
    // They share a glyph in the font.
    expect(drawn(0xad)).toBe(drawn(0x2d));
    expect(map.readUInt16BE(2 * 0x62)).toBe(0);
  });

  test('leads from each code back to its character', () => {
    const text = inflateSync(made('a𠮷').unicode.bytes).toString('latin1');
    expect(text).toContain('2 beginbfchar\n<0061> <0061>\n');
    expect(text).toContain(`<${codeOf(font, 0x20bb7).toString(16)}> <d842dfb7>\nendbfchar`);
  });

  test('has at most a hundred characters in a block of that map', () => {
    const all = font.codePoints().slice(0, 250);
    const text = inflateSync(embeddedFont(font, 'Test', all).unicode.bytes).toString('latin1');
    expect(text.match(/\d+ beginbfchar/g)).toEqual(['100 beginbfchar', '100 beginbfchar', '50 beginbfchar']);
  });

  test('has a name of its own for each set of characters', () => {
    expect(made('ab').name).toMatch(/^[A-Z]{6}\+Test$/);
    expect(made('ab').name).toBe(made('ba').name);
    expect(made('ab').name).not.toBe(made('ac').name);
  });
});
