/**
 * The characters that nearly every page has, as a subset of the font that is the same in all files: made once, when the program is
 * built, so that a sheet without other characters is printed without reading the font.
 */

import type { Weight } from '../sheet/display-list.js';
import { type CompressedStream, type EmbeddedFont, embeddedFont } from './embedded-font.js';
import type { TrueTypeFont } from './truetype-font.js';

/** ASCII, and the signs that stand in figures and English words. */
const SIGNS = '\u00a0°±·×é–—‘’“”…←→−≤○';

export const isLatin = (codePoint: number): boolean =>
  (codePoint >= 0x20 && codePoint <= 0x7e) || SIGNS_SET.has(codePoint);

const SIGNS_SET: ReadonlySet<number> = new Set([...SIGNS].map((sign) => sign.codePointAt(0)!));

export interface LatinFont {
  /** Shares of the em, by code point. */
  readonly advances: ReadonlyMap<number, number>;
  readonly embedded: EmbeddedFont;
}

export type LatinFonts = Readonly<Record<Weight, LatinFont>>;

export function latinFont(font: TrueTypeFont, name: string): LatinFont {
  const characters = Array.from({ length: 0x5f }, (_, i) => 0x20 + i)
    .concat(...SIGNS_SET)
    .filter((codePoint) => font.glyphOf(codePoint) !== 0);
  return {
    advances: new Map(characters.map((one) => [one, font.advanceOf(font.glyphOf(one)) / font.unitsPerEm])),
    embedded: embeddedFont(font, name, characters),
  };
}

const STREAMS = ['program', 'glyphs', 'unicode'] as const;

/** As a file; `readLatinFonts` gives the same again. */
export function latinFontsFile(fonts: LatinFonts): Uint8Array {
  const plain = ({ advances, embedded }: LatinFont) => ({
    advances: [...advances],
    embedded,
    streams: STREAMS.map((name) => Buffer.from(embedded[name].bytes).toString('base64')),
  });
  const { regular, bold } = fonts;
  return Buffer.from(JSON.stringify({ regular: plain(regular), bold: plain(bold) }, withoutBytes));
}

const withoutBytes = (key: string, value: unknown): unknown => (key === 'bytes' ? undefined : value);

interface PlainLatinFont {
  readonly advances: [number, number][];
  readonly embedded: EmbeddedFont;
  readonly streams: string[];
}

/** Reads what `latinFontsFile` has made; nothing else is ever in this file. */
export function readLatinFonts(file: Uint8Array): LatinFonts {
  const plain = JSON.parse(Buffer.from(file).toString('latin1')) as Record<Weight, PlainLatinFont>;
  const whole = ({ advances, embedded, streams }: PlainLatinFont): LatinFont => {
    const stream = (i: number): CompressedStream => ({
      bytes: Buffer.from(streams[i]!, 'base64'),
      length: embedded[STREAMS[i]!].length,
    });
    return {
      advances: new Map(advances),
      embedded: { ...embedded, program: stream(0), glyphs: stream(1), unicode: stream(2) },
    };
  };
  return { regular: whole(plain.regular), bold: whole(plain.bold) };
}
