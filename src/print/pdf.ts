import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import type { Bookmark, Document, Form, Page } from '../sheet/marks.js';
import { openCodes } from './codes.js';
import { Content } from './content.js';
import type { Fonts } from './fonts.js';
import type { PdfDocument, PdfOutline, PdfReference } from './pdfkit.js';
import { openPdf } from './pdfkit.js';

/** Points in a millimetre (a point is 1/72 inch, an inch 25.4 mm: ISO 32000-1, 8.3.2.3). */
const POINTS = 72 / 25.4;

/**
 * Prints pages into the bytes of a PDF 1.7 file. The same document gives the same bytes: no date is written, and the
 * file's identifier is a hash of what is on the pages. Throws MissingGlyph.
 */
export async function printPdf(document: Document, fonts: Fonts): Promise<Uint8Array> {
  const pdf = await openPdf({
    pdfVersion: '1.7',
    lang: document.language,
    displayTitle: document.title !== '',
    autoFirstPage: false,
    font: null,
    info: information(document),
  });
  // Gathered at once instead of streamed; the header already waits in the stream.
  const chunks: Uint8Array[] = [pdf.read()];
  pdf.push = (chunk) => chunk !== null && chunks.push(chunk) > 0;
  // pdfkit's XMP packet repeats the title without escaping it, and needs a date; the information dictionary has all.
  pdf.endMetadata = () => {};
  delete pdf.info.CreationDate;

  const printer = new Printer(pdf, fonts);
  for (const page of document.pages) printer.page(page);
  for (const bookmark of document.bookmarks) outline(pdf.outline, bookmark, document.pages.length);
  catalog(pdf, document);
  pdf._id = printer.identifier(document);
  pdf.end();
  // What zlib leaves to be closed is held until the event loop turns, which a long batch would otherwise never let it.
  await setImmediate();
  return Buffer.concat(chunks);
}

/** A form in the file. */
interface Placed {
  readonly name: string;
  readonly ref: PdfReference;
}

/**
 * Pages of one document as they are written: the forms and fonts that they share.
 */
class Printer {
  private readonly content: Content;
  private readonly fonts: Readonly<Record<string, PdfReference>>;
  private readonly forms = new Map<string, Placed>();
  private readonly hash = createHash('sha256');

  constructor(
    private readonly pdf: PdfDocument,
    fonts: Fonts,
  ) {
    const regular = pdf.font(fonts.regular.font)._font;
    const bold = pdf.font(fonts.bold.font)._font;
    this.content = new Content({
      regular: openCodes(fonts.regular, 'regular', regular),
      bold: openCodes(fonts.bold, 'bold', bold),
    });
    this.fonts = { [regular.id]: regular.ref(), [bold.id]: bold.ref() };
  }

  /** Throws MissingGlyph. */
  page(page: Page): void {
    const form = page.form && this.form(page.form, page);
    const { content: writer } = this;
    const scale = POINTS.toFixed(6);
    writer.raw(`${scale} 0 0 -${scale} 0 ${(page.heightMm * POINTS).toFixed(6)} cm`);
    writer.tints(page.marks);
    if (form) writer.raw(`/${form.name} Do`);
    writer.marks(page.marks);
    this.pdf.addPage({ size: [page.widthMm * POINTS, page.heightMm * POINTS], margin: 0 });
    const { fonts, xobjects, content } = this.pdf.page;
    Object.assign(fonts, this.fonts);
    if (form) xobjects[form.name] = form.ref;
    // In place of what pdfkit has begun the stream with.
    content.buffer = [];
    content.write(this.taken());
  }

  /** 16 bytes that differ where the pages, their order, labels or the title differ. */
  identifier(document: Document): Uint8Array {
    const labels = document.pages.map((page) => page.label);
    this.hash.update(
      JSON.stringify([document.title, document.author, document.language, labels, document.bookmarks]),
    );
    return this.hash.digest().subarray(0, 16);
  }

  private form(form: Form, page: Page): Placed {
    const known = this.forms.get(form.id);
    if (known) return known;
    this.content.tints(form.marks);
    this.content.marks(form.marks);
    const ref = this.pdf.ref({
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [0, 0, page.widthMm, page.heightMm],
      Resources: { Font: { ...this.fonts } },
    });
    ref.end(this.taken());
    const made = { name: `X${this.forms.size + 1}`, ref };
    this.forms.set(form.id, made);
    return made;
  }

  private taken(): Uint8Array {
    const bytes = this.content.take();
    this.hash.update(bytes);
    return bytes;
  }
}

function information(document: Document): Record<string, string> {
  return {
    ...(document.title === '' ? {} : { Title: document.title }),
    ...(document.author === '' ? {} : { Author: document.author }),
    Creator: 'cutwright',
    Producer: 'cutwright',
  };
}

function outline(parent: PdfOutline, bookmark: Bookmark, pages: number): void {
  if (!(bookmark.page >= 0 && bookmark.page < pages)) {
    throw new RangeError(`the bookmark “${bookmark.title}” leads to page ${bookmark.page} of ${pages}`);
  }
  const item = parent.addItem(bookmark.title, { pageNumber: bookmark.page, fit: true });
  for (const child of bookmark.children) outline(item, child, pages);
}

/** Page labels, and no scaling by the viewer where a page is to be printed at its true size. */
function catalog(pdf: PdfDocument, document: Document): void {
  const root = pdf._root.data;
  root.PageLabels = { Nums: document.pages.flatMap((page, index) => [index, { P: new String(page.label) }]) };
  if (!document.trueSize) return;
  root.ViewerPreferences ??= pdf.ref({});
  (root.ViewerPreferences as PdfReference).data.PrintScaling = 'None';
}
