/**
 * Reads a TrueType font (ISO/IEC 14496-22, "Open Font Format"; in brackets the chapters) as far as printing needs it: which glyph
 * a character has, how wide glyphs are, their outlines as they stand in the file. All measures are in units of the font.
 */

/** Bytes and a view of the same. */
interface Table {
  readonly bytes: Uint8Array;
  readonly view: DataView;
}

export class TrueTypeFont {
  readonly unitsPerEm: number;
  readonly glyphCount: number;
  /** Left, bottom, right, top of the box that holds every glyph. */
  readonly bounds: readonly [number, number, number, number];
  readonly ascent: number;
  readonly descent: number;
  readonly capHeight: number;
  readonly xHeight: number;
  private readonly tables = new Map<string, Table>();
  private readonly longOffsets: boolean;
  private readonly metricCount: number;
  /** Where the groups of the character map begin in its table, and how many there are. */
  private readonly groups: { readonly map: DataView; readonly at: number; readonly count: number };

  /** Throws where it is no TrueType font with a full character map. */
  constructor(bytes: Uint8Array) {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
    for (let i = 0; i < view.getUint16(4); i++) {
      const at = 12 + 16 * i;
      const tag = String.fromCharCode(...bytes.subarray(at, at + 4));
      const start = view.getUint32(at + 8);
      const own = bytes.subarray(start, start + view.getUint32(at + 12));
      this.tables.set(tag, { bytes: own, view: new DataView(own.buffer, own.byteOffset, own.length) });
    }
    const head = this.view('head');
    this.unitsPerEm = head.getUint16(18);
    this.bounds = [head.getInt16(36), head.getInt16(38), head.getInt16(40), head.getInt16(42)];
    this.longOffsets = head.getInt16(50) === 1;
    this.glyphCount = this.view('maxp').getUint16(4);
    const hhea = this.view('hhea');
    this.ascent = hhea.getInt16(4);
    this.descent = hhea.getInt16(6);
    this.metricCount = hhea.getUint16(34);
    const os2 = this.view('OS/2');
    this.xHeight = os2.getInt16(86);
    this.capHeight = os2.getInt16(88);
    this.groups = characterGroups(this.view('cmap'));
  }

  /** The bytes of a table; empty where the font has none. */
  table(tag: string): Uint8Array {
    return this.tables.get(tag)?.bytes ?? new Uint8Array();
  }

  /** The glyph of a code point, 0 where the font has none. */
  glyphOf(codePoint: number): number {
    const { map, at } = this.groups;
    const group = this.groupOf(codePoint);
    if (group < 0) return 0;
    const entry = at + 12 * group;
    return map.getUint32(entry + 8) + codePoint - map.getUint32(entry);
  }

  /** How many of the font's characters have a code point from 0x10000 up to this one, itself left out. */
  rankBeyondBmp(codePoint: number): number {
    const { map, at, count } = this.groups;
    let rank = 0;
    for (let group = 0; group < count; group++) {
      const start = map.getUint32(at + 12 * group);
      const end = map.getUint32(at + 12 * group + 4);
      if (start >= codePoint) break;
      if (start > 0xffff) rank += Math.min(end + 1, codePoint) - start;
    }
    return rank;
  }

  /** Every code point that has a glyph, rising. */
  codePoints(): number[] {
    const { map, at, count } = this.groups;
    const all: number[] = [];
    for (let group = 0; group < count; group++) {
      const start = map.getUint32(at + 12 * group);
      const end = map.getUint32(at + 12 * group + 4);
      for (let codePoint = start; codePoint <= end; codePoint++)
        if (this.glyphOf(codePoint) !== 0) all.push(codePoint);
    }
    return all;
  }

  advanceOf(glyph: number): number {
    return this.view('hmtx').getUint16(4 * Math.min(glyph, this.metricCount - 1));
  }

  /** From the origin to the left edge of the outline (`hmtx`). */
  bearingOf(glyph: number): number {
    const hmtx = this.view('hmtx');
    if (glyph < this.metricCount) return hmtx.getInt16(4 * glyph + 2);
    return hmtx.getInt16(4 * this.metricCount + 2 * (glyph - this.metricCount));
  }

  /** The outline as it stands in the file; empty for a blank. */
  outlineOf(glyph: number): Uint8Array {
    const loca = this.view('loca');
    const at = (index: number) =>
      this.longOffsets ? loca.getUint32(4 * index) : 2 * loca.getUint16(2 * index);
    return this.table('glyf').subarray(at(glyph), at(glyph + 1));
  }

  private view(tag: string): DataView {
    const table = this.tables.get(tag);
    if (!table) throw new Error(`the font has no table ‘${tag}’`);
    return table.view;
  }

  private groupOf(codePoint: number): number {
    const { map, at, count } = this.groups;
    let low = 0;
    let high = count - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const entry = at + 12 * middle;
      if (codePoint < map.getUint32(entry)) high = middle - 1;
      else if (codePoint > map.getUint32(entry + 4)) low = middle + 1;
      else return middle;
    }
    return -1;
  }
}

/** The map of all of Unicode (`cmap`, format 12): ranges of code points with rising glyphs. */
function characterGroups(map: DataView) {
  for (let i = 0; i < map.getUint16(2); i++) {
    const at = map.getUint32(4 + 8 * i + 4);
    if (map.getUint16(at) === 12) return { map, at: at + 16, count: map.getUint32(at + 12) };
  }
  throw new Error('the font has no character map of format 12');
}
