import type { Font } from 'fontkit';
import { create } from 'fontkit';
import type { Metrics, Weight } from '../sheet/display-list.js';

/** A glyph of the font: its number in the font file, and its advance as a share of the em. */
export interface FaceGlyph {
  readonly id: number;
  readonly advance: number;
}

/** One weight of the font, parsed once and used for any number of documents. */
export interface Face {
  readonly font: Font;
  /** The glyph of a code point, or null where the font has none. */
  glyph(codePoint: number): FaceGlyph | null;
}

export interface Fonts {
  readonly regular: Face;
  readonly bold: Face;
  /**
   * Widths as the printer sets them: one glyph a code point, no kerning, text in NFC. A character that the font lacks
   * counts as one em.
   */
  readonly metrics: Metrics;
}

/** A character that the font cannot print. The last line of defence: `check` finds them first, with their place. */
export class MissingGlyph extends Error {
  override readonly name = 'MissingGlyph';
  readonly character: string;

  constructor(
    character: string,
    readonly weight: Weight,
    readonly text: string,
  ) {
    const code = character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0');
    super(`the font has no glyph for “${character}” (U+${code}) in “${text}”`);
    this.character = character;
  }
}

/** Parses both weights (TrueType files). */
export function openFonts(regularBytes: Uint8Array, boldBytes: Uint8Array): Fonts {
  const regular = openFace(regularBytes);
  const bold = openFace(boldBytes);
  const metrics: Metrics = {
    width(text, sizeMm, weight) {
      const face = weight === 'bold' ? bold : regular;
      let ems = 0;
      for (const character of text.normalize('NFC')) {
        ems += face.glyph(character.codePointAt(0)!)?.advance ?? 1;
      }
      return ems * sizeMm;
    },
  };
  return { regular, bold, metrics };
}

function openFace(bytes: Uint8Array): Face {
  const font = create(bytes);
  const glyphs = new Map<number, FaceGlyph | null>();
  return {
    font,
    glyph(codePoint) {
      let known = glyphs.get(codePoint);
      if (known === undefined) {
        known = font.hasGlyphForCodePoint(codePoint) ? measure(font, codePoint) : null;
        glyphs.set(codePoint, known);
      }
      return known;
    },
  };
}

function measure(font: Font, codePoint: number): FaceGlyph {
  const glyph = font.glyphForCodePoint(codePoint);
  return { id: glyph.id, advance: glyph.advanceWidth / font.unitsPerEm };
}
