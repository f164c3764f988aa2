import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import type { Bookmark, Document, Page, SharedForm } from '../sheet/display-list.js';
import { Content } from './content-stream.js';
import type { Fonts } from './fonts.js';
import { PRIVATE_KEY } from './info-dictionary.js';
import type { PdfDocument, PdfOutline, PdfReference } from './pdfkit.js';
import { openPdf } from './pdfkit.js';
import { openCodes } from './subset-encoding.js';

/** Points in a millimetre (a point is 1/72 inch, an inch 25.4 mm: ISO 32000-1, 8.3.2.3). */
const POINTS = 72 / 25.4;

/** Where the bytes of a file go as they come; nothing is kept of them here. */
export type Sink = (bytes: Uint8Array) => void;

/** What a file is opened with. */
export type Opening = Pick<Document, 'title' | 'language'>;

/** What is known once its pages are. `record`: private words of the program's, ASCII, that `privateWords` reads back. */
export interface Closing extends Pick<Document, 'author' | 'bookmarks' | 'trueSize'> {
  readonly record?: string | undefined;
}

/**
 * Prints a document into the bytes of a PDF 1.7 file. The same document gives the same bytes: no date is written, and the
 * file's identifier is a hash of what is on the pages. Throws MissingGlyph.
 */
export async function printPdf(document: Document, fonts: Fonts, record?: string): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  const file = await PdfFile.open(document, fonts, (chunk) => void chunks.push(chunk));
  for (const page of document.pages) file.add([{ page, label: page.label }]);
  await file.close({ ...document, record });
  return Buffer.concat(chunks);
}

/** A file that is printed page by page, so that nobody has to hold all its pages. */
export class PdfFile {
  private readonly printer: Printer;
  private readonly labels: string[] = [];

  private constructor(
    private readonly pdf: PdfDocument,
    private readonly opening: Opening,
    fonts: Fonts,
  ) {
    this.printer = new Printer(pdf, fonts);
  }

  static async open(opening: Opening, fonts: Fonts, sink: Sink): Promise<PdfFile> {
    const pdf = await openPdf({
      pdfVersion: '1.7',
      lang: opening.language,
      displayTitle: opening.title !== '',
      autoFirstPage: false,
      font: null,
      info: {},
    });
    // Handed on at once instead of streamed; the header already waits in the stream.
    sink(pdf.read());
    pdf.push = (chunk) => {
      if (chunk !== null) sink(chunk);
      return true;
    };
    // pdfkit's XMP packet repeats the title without escaping it, and needs a date; the information dictionary has all.
    pdf.endMetadata = () => {};
    return new PdfFile(pdf, opening, fonts);
  }

  get pages(): number {
    return this.labels.length;
  }

  /** Adds all of these pages, or none: throws MissingGlyph, and the file is as it was before. */
  add(pages: readonly Labelled[]): void {
    const written = pages.map(({ page }) => this.printer.write(page));
    for (const one of written) this.printer.place(one);
    this.labels.push(...pages.map(({ label }) => label));
  }

  /** The last bytes go to the sink before it resolves. */
  async close(closing: Closing): Promise<void> {
    const { pdf, opening, labels, printer } = this;
    const { author, bookmarks, record } = closing;
    delete pdf.info.CreationDate;
    Object.assign(pdf.info, information(opening.title, author, record));
    for (const bookmark of bookmarks) outline(pdf.outline, bookmark, labels.length);
    catalog(pdf, labels, closing.trueSize);
    pdf._id = printer.identifier([opening.title, author, opening.language, labels, bookmarks]);
    pdf.end();
    // What zlib leaves to be closed is held until the event loop turns, which a long batch would otherwise never let it.
    await setImmediate();
  }
}

/** A page, and how it is called by the viewer. */
export interface Labelled {
  readonly page: Page;
  readonly label: string;
}

/** A page that is written but not yet in the file. */
interface Written {
  readonly size: readonly [number, number];
  readonly form: Placed | null;
  readonly bytes: Uint8Array;
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

  /** Writes what is on a page. Throws MissingGlyph. */
  write(page: Page): Written {
    const { content: writer } = this;
    try {
      const form = page.form && this.form(page.form, page);
      const scale = POINTS.toFixed(6);
      writer.raw(`${scale} 0 0 -${scale} 0 ${(page.heightMm * POINTS).toFixed(6)} cm`);
      writer.tints(page.marks);
      if (form) writer.raw(`/${form.name} Do`);
      writer.marks(page.marks);
      return { size: [page.widthMm * POINTS, page.heightMm * POINTS], form, bytes: writer.take() };
    } catch (fault) {
      // What is half written must not stand on the next page.
      writer.take();
      throw fault;
    }
  }

  place({ size, form, bytes }: Written): void {
    this.hash.update(bytes);
    this.pdf.addPage({ size, margin: 0 });
    const { fonts, xobjects, content } = this.pdf.page;
    Object.assign(fonts, this.fonts);
    if (form) xobjects[form.name] = form.ref;
    // In place of what pdfkit has begun the stream with.
    content.buffer = [];
    content.write(bytes);
  }

  /** 16 bytes that differ where the pages, their order or what is said `about` them differ. */
  identifier(about: unknown): Uint8Array {
    this.hash.update(JSON.stringify(about));
    return this.hash.digest().subarray(0, 16);
  }

  private form(form: SharedForm, page: Page): Placed {
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
    const bytes = this.content.take();
    this.hash.update(bytes);
    ref.end(bytes);
    const made = { name: `X${this.forms.size + 1}`, ref };
    this.forms.set(form.id, made);
    return made;
  }
}

function information(title: string, author: string, record: string | undefined): Record<string, string> {
  return {
    ...(title === '' ? {} : { Title: title }),
    ...(author === '' ? {} : { Author: author }),
    Creator: 'cutwright',
    Producer: 'cutwright',
    ...(record === undefined ? {} : { [PRIVATE_KEY]: record }),
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
function catalog(pdf: PdfDocument, labels: readonly string[], trueSize: boolean): void {
  const root = pdf._root.data;
  root.PageLabels = { Nums: labels.flatMap((label, index) => [index, { P: new String(label) }]) };
  if (!trueSize) return;
  root.ViewerPreferences ??= pdf.ref({});
  (root.ViewerPreferences as PdfReference).data.PrintScaling = 'None';
}
