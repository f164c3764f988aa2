/** What is used of fontkit, which brings no types of its own. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
  }

  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly characterSet: number[];
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
  }

  export function create(bytes: Uint8Array): Font;
}
