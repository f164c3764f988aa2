import type { TrueTypeFont } from './truetype-font.js';

/**
 * A TrueType font of some glyphs of another: glyph 0, then these in their order. It has the tables that ISO 32000-1, 9.9, asks of
 * a font program for glyphs that are chosen by their numbers. Throws where a glyph is composed of others, which none of the
 * shipped font is.
 */
export function subsetOf(font: TrueTypeFont, glyphs: readonly number[]): Uint8Array {
  const kept = [0, ...glyphs];
  const outlines = kept.map((glyph) => {
    const outline = font.outlineOf(glyph);
    // Its count of contours is negative then (ISO/IEC 14496-22, `glyf`).
    if (outline.length > 0 && outline[0]! >= 0x80) throw new Error(`glyph ${glyph} is composed of others`);
    return outline;
  });
  return fontFile([
    ['cvt ', font.table('cvt ')],
    ['fpgm', font.table('fpgm')],
    ['glyf', joined(outlines)],
    ['head', changed(font.table('head'), (head) => head.setInt16(50, 1))],
    ['hhea', changed(font.table('hhea'), (hhea) => hhea.setUint16(34, kept.length))],
    ['hmtx', metrics(font, kept)],
    ['loca', offsets(outlines)],
    ['maxp', changed(font.table('maxp'), (maxp) => maxp.setUint16(4, kept.length))],
    ['prep', font.table('prep')],
  ]);
}

const padded = (length: number): number => (length + 3) & ~3;

function joined(outlines: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(outlines.reduce((sum, { length }) => sum + padded(length), 0));
  let at = 0;
  for (const outline of outlines) {
    all.set(outline, at);
    at += padded(outline.length);
  }
  return all;
}

function offsets(outlines: readonly Uint8Array[]): Uint8Array {
  const loca = new DataView(new ArrayBuffer(4 * (outlines.length + 1)));
  let at = 0;
  for (const [i, { length }] of outlines.entries()) {
    at += padded(length);
    loca.setUint32(4 * (i + 1), at);
  }
  return new Uint8Array(loca.buffer);
}

function metrics(font: TrueTypeFont, glyphs: readonly number[]): Uint8Array {
  const hmtx = new DataView(new ArrayBuffer(4 * glyphs.length));
  for (const [i, glyph] of glyphs.entries()) {
    hmtx.setUint16(4 * i, font.advanceOf(glyph));
    hmtx.setInt16(4 * i + 2, font.bearingOf(glyph));
  }
  return new Uint8Array(hmtx.buffer);
}

function changed(table: Uint8Array, change: (view: DataView) => void): Uint8Array {
  const copy = Uint8Array.from(table);
  change(new DataView(copy.buffer));
  return copy;
}

/** Where `head` has the number that makes the sum of the whole file come out, and that sum. */
const ADJUSTMENT = 8;
const WHOLE_SUM = 0xb1b0afba;

/** Tables, sorted by their tags, behind a directory of them; empty ones are left out. */
function fontFile(tables: readonly (readonly [tag: string, bytes: Uint8Array])[]): Uint8Array {
  const kept = tables.filter(([, { length }]) => length > 0);
  const start = 12 + 16 * kept.length;
  const file = new Uint8Array(kept.reduce((sum, [, { length }]) => sum + padded(length), start));
  const view = new DataView(file.buffer);
  const power = Math.floor(Math.log2(kept.length));
  view.setUint32(0, 0x00010000);
  view.setUint16(4, kept.length);
  view.setUint16(6, 16 << power);
  view.setUint16(8, power);
  view.setUint16(10, 16 * kept.length - (16 << power));
  let at = start;
  let head = 0;
  for (const [i, [tag, bytes]] of kept.entries()) {
    const entry = 12 + 16 * i;
    for (let c = 0; c < 4; c++) file[entry + c] = tag.charCodeAt(c);
    file.set(bytes, at);
    if (tag === 'head') {
      head = at;
      view.setUint32(at + ADJUSTMENT, 0);
    }
    view.setUint32(entry + 4, sum(view, at, padded(bytes.length)));
    view.setUint32(entry + 8, at);
    view.setUint32(entry + 12, bytes.length);
    at += padded(bytes.length);
  }
  view.setUint32(head + ADJUSTMENT, (WHOLE_SUM - sum(view, 0, file.length)) >>> 0);
  return file;
}

function sum(view: DataView, from: number, length: number): number {
  let all = 0;
  for (let at = from; at < from + length; at += 4) all = (all + view.getUint32(at)) >>> 0;
  return all;
}
