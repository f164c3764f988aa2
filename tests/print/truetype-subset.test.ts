import { create } from 'fontkit';
import { describe, expect, test } from 'vitest';
import { TrueTypeFont } from '../../src/print/truetype-font.js';
import { subsetOf } from '../../src/print/truetype-subset.js';
import { bytesOf } from '../fonts.js';

const bytes = bytesOf('bold');
const font = new TrueTypeFont(bytes);
const whole = create(bytes);

const glyphsOf = (text: string) => [...text].map((one) => font.glyphOf(one.codePointAt(0)!));
/** The subset as fontkit reads it: it has no character map, so glyphs are asked for by their numbers. */
const opened = (glyphs: readonly number[]) => create(subsetOf(font, glyphs));

describe('a subset', () => {
  test('draws each glyph as the font does, with its advance', () => {
    const glyphs = glyphsOf('Aji 12–夕渡が');
    const subset = opened(glyphs);
    for (const [i, id] of glyphs.entries()) {
      const [made, meant] = [subset.getGlyph(i + 1), whole.getGlyph(id)];
      expect(made.path.toSVG()).toBe(meant.path.toSVG());
      expect(made.advanceWidth).toBe(meant.advanceWidth);
    }
    expect(subset.getGlyph(0).path.toSVG()).toBe(whole.getGlyph(0).path.toSVG());
    expect(subset.numGlyphs).toBe(glyphs.length + 1);
  });

  test('can be made of every glyph: none is composed of others', () => {
    const all = Array.from({ length: font.glyphCount - 1 }, (_, i) => i + 1);
    expect(create(subsetOf(font, all)).numGlyphs).toBe(whole.numGlyphs);
  });

  test('one that is composed of others would be refused', () => {
    const composed = new TrueTypeFont(bytes);
    composed.outlineOf = () => Uint8Array.of(0xff, 0xff, 0, 0);
    expect(() => subsetOf(composed, [7])).toThrow('glyph 0 is composed of others');
  });

  test('sums up to the number that every font file has', () => {
    const subset = subsetOf(font, glyphsOf('Sum'));
    const view = new DataView(subset.buffer);
    let sum = 0;
    for (let at = 0; at < subset.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
    // ISO/IEC 14496-22, `head`: checkSumAdjustment.
    expect(sum).toBe(0xb1b0afba);
  });
});
