/**
 * What a PDF file needs of some characters of a font: a composite font (ISO 32000-1, 9.7) whose codes are the characters' code
 * points, so that a text is written alike in every file, whatever else stands in that file.
 */

import { createHash } from 'node:crypto';
import { deflateSync } from 'node:zlib';
import { hex, type PdfObjects, utf16Hex } from './pdf-objects.js';
import type { TrueTypeFont } from './truetype-font.js';
import { subsetOf } from './truetype-subset.js';

/** Bytes as they stand in a file, compressed; `length` is that of what they hold. */
export interface CompressedStream {
  readonly bytes: Uint8Array;
  readonly length: number;
}

export interface EmbeddedFont {
  /** With the tag that tells subsets of one font apart. */
  readonly name: string;
  /** Entries of the font descriptor. */
  readonly descriptor: string;
  /** Widths by code, thousandths of the em. */
  readonly widths: string;
  /** The font program, the glyph of each code, the character of each code. */
  readonly program: CompressedStream;
  readonly glyphs: CompressedStream;
  readonly unicode: CompressedStream;
}

/** The first of the codes of characters beyond the first 65,536: in Unicode they are no characters. */
const BEYOND_BMP = 0xd800;

/** The code of a character of the font in each of its subsets. */
export function codeOf(font: TrueTypeFont, codePoint: number): number {
  return codePoint > 0xffff ? BEYOND_BMP + font.rankBeyondBmp(codePoint) : codePoint;
}

/** Characters that share a glyph in the font do so here. `name`: without a tag. */
export function embeddedFont(font: TrueTypeFont, name: string, characters: readonly number[]): EmbeddedFont {
  const coded = characters
    .map((codePoint) => ({ codePoint, code: codeOf(font, codePoint), glyph: font.glyphOf(codePoint) }))
    .sort((a, b) => a.code - b.code);
  const glyphs = [...new Set(coded.map(({ glyph }) => glyph))];
  const numbers = new Map(glyphs.map((glyph, i) => [glyph, i + 1]));
  const program = subsetOf(font, glyphs);
  const thousandths = (value: number): string => String(Math.round((value * 1000) / font.unitsPerEm));
  const map = new Uint8Array(2 * ((coded.at(-1)?.code ?? 0) + 1));
  for (const { code, glyph } of coded) {
    map[2 * code] = numbers.get(glyph)! >> 8;
    map[2 * code + 1] = numbers.get(glyph)! & 0xff;
  }
  const { ascent, descent, capHeight, xHeight, bounds } = font;
  return {
    name: `${tagOf(program)}+${name}`,
    descriptor: [
      '/Flags 4',
      `/FontBBox [${bounds.map(thousandths).join(' ')}]`,
      '/ItalicAngle 0',
      `/Ascent ${thousandths(ascent)}`,
      `/Descent ${thousandths(descent)}`,
      `/CapHeight ${thousandths(capHeight)}`,
      `/XHeight ${thousandths(xHeight)}`,
      '/StemV 0',
    ].join('\n'),
    widths: widthsOf(coded.map(({ code, glyph }) => ({ code, width: thousandths(font.advanceOf(glyph)) }))),
    program: compressed(program),
    glyphs: compressed(map),
    unicode: compressed(Buffer.from(characterMap(coded), 'latin1')),
  };
}

export function compressed(bytes: Uint8Array): CompressedStream {
  return { bytes: deflateSync(bytes), length: bytes.length };
}

/** Writes the font into a file; its object has the number `id`. */
export function writeFont(objects: PdfObjects, id: number, font: EmbeddedFont): void {
  const [program, glyphs, unicode] = [objects.next(), objects.next(), objects.next()];
  const [descriptor, descendant] = [objects.next(), objects.next()];
  objects.stream(program, `/Length1 ${font.program.length}`, font.program.bytes);
  objects.stream(glyphs, '', font.glyphs.bytes);
  objects.stream(unicode, '', font.unicode.bytes);
  objects.add(
    descriptor,
    `<<\n/Type /FontDescriptor\n/FontName /${font.name}\n${font.descriptor}\n/FontFile2 ${program} 0 R\n>>`,
  );
  objects.add(
    descendant,
    `<<\n/Type /Font\n/Subtype /CIDFontType2\n/BaseFont /${font.name}
/CIDSystemInfo <<\n/Registry (Adobe)\n/Ordering (Identity)\n/Supplement 0\n>>
/FontDescriptor ${descriptor} 0 R\n/W [${font.widths}]\n/CIDToGIDMap ${glyphs} 0 R\n>>`,
  );
  objects.add(
    id,
    `<<\n/Type /Font\n/Subtype /Type0\n/BaseFont /${font.name}\n/Encoding /Identity-H
/DescendantFonts [${descendant} 0 R]\n/ToUnicode ${unicode} 0 R\n>>`,
  );
}

/** Six capital letters (9.6.4) that differ where the glyphs do. */
function tagOf(program: Uint8Array): string {
  const hash = createHash('sha256').update(program).digest();
  return String.fromCharCode(...hash.subarray(0, 6).map((byte) => 65 + (byte % 26)));
}

/** The array `W` of 9.7.4.3: a first code and the widths from it on. */
function widthsOf(all: readonly { readonly code: number; readonly width: string }[]): string {
  const parts: string[] = [];
  let run: string[] = [];
  for (const [i, { code, width }] of all.entries()) {
    run.push(width);
    if (all[i + 1]?.code === code + 1) continue;
    parts.push(`${code - run.length + 1} [${run.join(' ')}]`);
    run = [];
  }
  return parts.join(' ');
}

/** As many lines stand in one block of a map at most (9.10.3, and the format's own rule). */
const BLOCK = 100;

/** The map from codes to characters that readers of text use. */
function characterMap(all: readonly { readonly code: number; readonly codePoint: number }[]): string {
  const lines = all.map(
    ({ code, codePoint }) => `<${hex(code)}> <${utf16Hex(String.fromCodePoint(codePoint))}>`,
  );
  const blocks: string[] = [];
  for (let from = 0; from < lines.length; from += BLOCK) {
    const block = lines.slice(from, from + BLOCK);
    blocks.push(`${block.length} beginbfchar\n${block.join('\n')}\nendbfchar\n`);
  }
  return `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo <<
  /Registry (Adobe)
  /Ordering (UCS)
  /Supplement 0
>> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
<0000> <ffff>
endcodespacerange
${blocks.join('')}endcmap
CMapName currentdict /CMap defineresource pop
end
end
`;
}
