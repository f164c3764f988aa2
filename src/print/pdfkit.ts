import type { Font } from 'fontkit';

/**
 * What this adapter uses of pdfkit beyond its documented interface (0.20.2, pinned for that reason): objects of the
 * file, the catalog, the content of a page and the table of glyphs of an embedded font.
 */

/** An indirect object of the file. */
export interface PdfReference {
  readonly id: number;
  data: Record<string, unknown>;
  buffer: Uint8Array[];
  write(chunk: Uint8Array): void;
  end(chunk?: Uint8Array): void;
}

export interface EmbeddedFont {
  readonly id: string;
  readonly subset: { readonly glyphs: number[]; includeGlyph(id: number): number };
  /** Code points that a code stands for, and its width in thousandths of the em, by code. */
  readonly unicode: number[][];
  readonly widths: number[];
  ref(): PdfReference;
}

export interface PdfPage {
  readonly fonts: Record<string, PdfReference>;
  readonly xobjects: Record<string, PdfReference>;
  readonly content: PdfReference;
}

export interface PdfOutline {
  addItem(title: string, options: { pageNumber: number; fit: true }): PdfOutline;
}

export interface PdfDocument {
  readonly _root: PdfReference;
  readonly _font: EmbeddedFont;
  _id: Uint8Array;
  readonly info: Record<string, unknown>;
  readonly page: PdfPage;
  readonly outline: PdfOutline;
  ref(data: Record<string, unknown>): PdfReference;
  font(font: Font): PdfDocument;
  addPage(options: { size: readonly [number, number]; margin: number }): PdfDocument;
  end(): void;
  read(): Uint8Array;
  push(chunk: Uint8Array | null): boolean;
  endMetadata(): void;
}

export interface PdfOptions {
  readonly pdfVersion: '1.7';
  readonly lang: string;
  readonly displayTitle: boolean;
  readonly autoFirstPage: false;
  readonly font: null;
  readonly info: Readonly<Record<string, string>>;
}

/** Loads pdfkit when it is first needed, and makes a document. */
export async function openPdf(options: PdfOptions): Promise<PdfDocument> {
  const { default: PDFDocument } = await import('pdfkit');
  return new PDFDocument(options as unknown as PDFKit.PDFDocumentOptions) as unknown as PdfDocument;
}
