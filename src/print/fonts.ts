import type { Metrics, Weight } from '../sheet/display-list.js';
import { isLatin, type LatinFont, type LatinFonts, latinFont } from './latin-font.js';
import { TrueTypeFont } from './truetype-font.js';

/** What the fonts are read from. Throws where the installation has lost them. */
export interface FontFiles {
  /** A weight as a TrueType file; asked for when a character is needed that the Latin subset has not. */
  read(weight: Weight): Uint8Array;
  /** Subsets made when the program was built; null where there are none, so that they are made now. */
  readonly latin: LatinFonts | null;
}

/** One weight of the font, used for any number of documents. */
export interface Face {
  /** Of the font, as PDF files have it. */
  readonly name: string;
  readonly latin: LatinFont;
  /** The whole font, read when it is first asked for. */
  whole(): TrueTypeFont;
  /** As a share of the em; null where the font has no glyph. */
  advance(codePoint: number): number | null;
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

/** PostScript names of the shipped font. */
const NAMES = { regular: 'NotoSansJP-Regular', bold: 'NotoSansJP-Bold' } as const;

export function openFonts(files: FontFiles): Fonts {
  const regular = openFace('regular', files);
  const bold = openFace('bold', files);
  const metrics: Metrics = {
    width(text, sizeMm, weight) {
      const face = weight === 'bold' ? bold : regular;
      let ems = 0;
      for (const character of composed(text)) ems += face.advance(character.codePointAt(0)!) ?? 1;
      return ems * sizeMm;
    },
  };
  return { regular, bold, metrics };
}

/** The text in NFC. */
export function composed(text: string): string {
  for (let i = 0; i < text.length; i++) if (text.charCodeAt(i) > 0x7e) return text.normalize('NFC');
  return text;
}

function openFace(weight: Weight, { read, latin: made }: FontFiles): Face {
  let font: TrueTypeFont | undefined;
  const whole = (): TrueTypeFont => {
    font ??= new TrueTypeFont(read(weight));
    return font;
  };
  const latin = made?.[weight] ?? latinFont(whole(), NAMES[weight]);
  const advances = new Map<number, number | null>(latin.advances);
  return {
    name: NAMES[weight],
    latin,
    whole,
    advance(codePoint) {
      let known = advances.get(codePoint);
      if (known === undefined) {
        known = isLatin(codePoint) ? null : measured(whole(), codePoint);
        advances.set(codePoint, known);
      }
      return known;
    },
  };
}

function measured(font: TrueTypeFont, codePoint: number): number | null {
  const glyph = font.glyphOf(codePoint);
  return glyph === 0 ? null : font.advanceOf(glyph) / font.unitsPerEm;
}
