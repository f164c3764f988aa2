import type { Weight } from '../sheet/display-list.js';
import type { Face } from './fonts.js';
import { MissingGlyph } from './fonts.js';
import type { EmbeddedFont } from './pdfkit.js';

/** A text as one document writes it: its codes as the inside of a hexadecimal string, and its advance in ems. */
export interface EncodedText {
  readonly hex: string;
  readonly ems: number;
}

/** Gives the texts of one document their codes in the embedded subset of one weight. */
export interface Codes {
  /** Name of the font in the resources. */
  readonly resource: string;
  /** Throws MissingGlyph. */
  run(text: string): EncodedText;
}

/**
 * One code a character, not a glyph: characters that look alike share a glyph in the font (the hyphen and the soft hyphen),
 * and text that is read back must give the one that was written.
 */
export function openCodes(face: Face, weight: Weight, embedded: EmbeddedFont): Codes {
  const characters = new Map<string, EncodedText>();
  const texts = new Map<string, EncodedText>();

  function character(char: string, text: string): EncodedText {
    const known = characters.get(char);
    if (known) return known;
    const codePoint = char.codePointAt(0)!;
    const glyph = face.glyph(codePoint);
    if (!glyph) throw new MissingGlyph(char, weight, text);
    const { subset, unicode, widths } = embedded;
    let code = subset.includeGlyph(glyph.id);
    if (unicode[code]) code = subset.glyphs.push(glyph.id) - 1;
    unicode[code] = [codePoint];
    widths[code] = glyph.advance * 1000;
    const made = { hex: code.toString(16).padStart(4, '0'), ems: glyph.advance };
    characters.set(char, made);
    return made;
  }

  return {
    resource: embedded.id,
    run(text) {
      const known = texts.get(text);
      if (known) return known;
      let hex = '';
      let ems = 0;
      for (const char of text.normalize('NFC')) {
        const one = character(char, text);
        hex += one.hex;
        ems += one.ems;
      }
      const made = { hex, ems };
      texts.set(text, made);
      return made;
    },
  };
}
