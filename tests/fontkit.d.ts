/** What the tests use of fontkit, which brings no types of its own. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly path: { toSVG(): string };
  }

  export interface Font {
    readonly unitsPerEm: number;
    readonly numGlyphs: number;
    readonly ascent: number;
    readonly descent: number;
    readonly capHeight: number;
    readonly xHeight: number;
    readonly bbox: {
      readonly minX: number;
      readonly minY: number;
      readonly maxX: number;
      readonly maxY: number;
    };
    readonly characterSet: number[];
    glyphForCodePoint(codePoint: number): Glyph;
    getGlyph(id: number): Glyph;
  }

  export function create(bytes: Uint8Array): Font;
}
