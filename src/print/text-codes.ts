import type { Weight } from '../sheet/display-list.js';
import { codeOf } from './embedded-font.js';
import { composed, type Face, MissingGlyph } from './fonts.js';
import { isLatin } from './latin-font.js';
import { hex } from './pdf-objects.js';

/** A text as every file writes it. */
export interface CodedText {
  /** Name of its font in the resources. */
  readonly resource: FontResource;
  /** Its codes as the inside of a hexadecimal string. */
  readonly hex: string;
  /** Its advance. */
  readonly ems: number;
  /** Its characters, where they are not all in the Latin subset. */
  readonly characters: readonly number[];
}

/** The Latin subsets of both weights, and what else is needed of them. */
export type FontResource = 'F1' | 'F2' | 'F3' | 'F4';

export const LATIN = { regular: 'F1', bold: 'F2' } as const;
export const OTHER = { regular: 'F3', bold: 'F4' } as const;

/** Texts that are kept, so that those of every page are coded once. */
const MOST = 20_000;

/** Gives the texts of one weight their codes. */
export class TextCodes {
  private readonly known = new Map<string, CodedText>();

  constructor(
    private readonly face: Face,
    private readonly weight: Weight,
  ) {}

  /** Throws MissingGlyph. */
  of(text: string): CodedText {
    let known = this.known.get(text);
    if (!known) {
      known = this.coded(text);
      if (this.known.size >= MOST) this.known.clear();
      this.known.set(text, known);
    }
    return known;
  }

  /** A text with one other character stands in the other font as a whole, so that it stays one text for whoever reads it back. */
  private coded(text: string): CodedText {
    const { face, weight } = this;
    const characters = Array.from(composed(text), (character) => character.codePointAt(0)!);
    let ems = 0;
    for (const codePoint of characters) {
      const advance = face.advance(codePoint);
      if (advance === null) throw new MissingGlyph(String.fromCodePoint(codePoint), weight, text);
      ems += advance;
    }
    if (characters.every(isLatin)) {
      return { resource: LATIN[weight], hex: characters.map(hex).join(''), ems, characters: [] };
    }
    const codes = characters.map((codePoint) => codeOf(face.whole(), codePoint));
    return { resource: OTHER[weight], hex: codes.map(hex).join(''), ems, characters };
  }
}

/** The fonts that something printed needs, and which characters of them. Plain data. */
export interface UsedFonts {
  readonly latin: ReadonlySet<FontResource>;
  readonly other: Readonly<Record<Weight, ReadonlySet<number>>>;
}

/** Gathers the fonts that a page or a file needs. */
export class FontUse implements UsedFonts {
  readonly latin = new Set<FontResource>();
  readonly other: Readonly<Record<Weight, Set<number>>> = { regular: new Set(), bold: new Set() };

  add(text: CodedText, weight: Weight): void {
    if (text.characters.length === 0) this.latin.add(text.resource);
    else for (const one of text.characters) this.other[weight].add(one);
  }

  addAll(use: UsedFonts): void {
    for (const one of use.latin) this.latin.add(one);
    for (const weight of ['regular', 'bold'] as const)
      for (const one of use.other[weight]) this.other[weight].add(one);
  }
}
