import { createHash } from 'node:crypto';
import { setImmediate } from 'node:timers/promises';
import type { Document } from '../sheet/display-list.js';
import { documentParts } from './document-parts.js';
import { type EmbeddedFont, embeddedFont, writeFont } from './embedded-font.js';
import type { Face, Fonts } from './fonts.js';
import { type CompressedForm, FORM, PageWriter, POINTS, type WrittenPage } from './page-writer.js';
import { PdfObjects, type Sink } from './pdf-objects.js';
import { type FontResource, FontUse, LATIN, OTHER } from './text-codes.js';

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
  const file = PdfFile.open(document, fonts, (chunk) => void chunks.push(chunk));
  const writer = PageWriter.of(fonts);
  for (const page of document.pages) file.add(writer.write(page), page.label);
  await file.close({ ...document, record });
  return Buffer.concat(chunks);
}

/** A file that is printed page by page, so that nobody has to hold all its pages. */
export class PdfFile {
  private readonly objects: PdfObjects;
  private readonly labels: string[] = [];
  private readonly use = new FontUse();
  /** Their objects by their ids. */
  private readonly forms = new Map<string, number>();
  private readonly pageIds: number[] = [];
  private readonly hash = createHash('sha256');
  /** Numbers of objects that pages refer to and that are written last. */
  private readonly tree: number;
  private readonly fontList: number;

  private constructor(
    private readonly opening: Opening,
    private readonly fonts: Fonts,
    sink: Sink,
  ) {
    this.objects = new PdfObjects(sink);
    this.tree = this.objects.next();
    this.fontList = this.objects.next();
  }

  static open(opening: Opening, fonts: Fonts, sink: Sink): PdfFile {
    return new PdfFile(opening, fonts, sink);
  }

  get pages(): number {
    return this.labels.length;
  }

  /** Adds a page; `label`: how it is called by the viewer. */
  add(page: WrittenPage, label: string): void {
    this.place(page);
    this.labels.push(label);
  }

  /** The last bytes go to the sink before it resolves. Throws RangeError where a bookmark leads to no page. */
  async close(closing: Closing): Promise<void> {
    const { objects, opening, labels, pageIds } = this;
    const { author, bookmarks } = closing;
    this.writeFonts();
    objects.add(
      this.tree,
      `<<\n/Type /Pages\n/Count ${pageIds.length}\n/Kids [${pageIds.map((id) => `${id} 0 R`).join(' ')}]\n>>`,
    );
    const { root, info } = documentParts(objects, {
      ...opening,
      ...closing,
      tree: this.tree,
      pages: pageIds.map((id, i) => ({ id, label: labels[i]! })),
    });
    // 16 bytes that differ where the pages, their order or what is said about them differ.
    const about = JSON.stringify([opening.title, author, opening.language, labels, bookmarks]);
    objects.end(root, info, this.hash.update(about).digest().subarray(0, 16));
    // What zlib leaves to be closed is held until the event loop turns, which a long batch would otherwise never let it.
    await setImmediate();
  }

  private place(page: WrittenPage): void {
    const { form, bytes, use } = page;
    const { objects } = this;
    this.use.addAll(use);
    const drawn = form ? `\n/XObject << /${FORM} ${this.placed(form, page)} 0 R >>` : '';
    this.hash.update(bytes);
    const [id, contents] = [objects.next(), objects.next()];
    this.pageIds.push(id);
    objects.add(
      id,
      `<<\n/Type /Page\n/Parent ${this.tree} 0 R
/MediaBox [0 0 ${points(page.widthMm)} ${points(page.heightMm)}]
/Contents ${contents} 0 R\n/Resources <<\n/Font ${this.fontList} 0 R${drawn}\n>>\n>>`,
    );
    objects.stream(contents, '', bytes);
  }

  /** The object of a form, which is written where it is first needed. */
  private placed(form: CompressedForm, { widthMm, heightMm }: WrittenPage): number {
    const known = this.forms.get(form.id);
    if (known !== undefined) return known;
    const id = this.objects.next();
    this.forms.set(form.id, id);
    this.hash.update(form.bytes);
    this.objects.stream(
      id,
      `/Type /XObject\n/Subtype /Form\n/BBox [0 0 ${widthMm} ${heightMm}]\n/Resources <<\n/Font ${this.fontList} 0 R\n>>`,
      form.bytes,
    );
    return id;
  }

  private writeFonts(): void {
    const { objects, use, fonts } = this;
    const list: string[] = [];
    for (const weight of WEIGHTS) {
      const face = fonts[weight];
      const embedded: (readonly [FontResource, EmbeddedFont])[] = [];
      if (use.latin.has(LATIN[weight])) embedded.push([LATIN[weight], face.latin.embedded]);
      if (use.other[weight].size > 0) embedded.push([OTHER[weight], otherFont(face, use.other[weight])]);
      for (const [resource, font] of embedded) {
        const id = objects.next();
        writeFont(objects, id, font);
        list.push(`/${resource} ${id} 0 R`);
      }
    }
    objects.add(this.fontList, `<<\n${list.join('\n')}\n>>`);
  }
}

const WEIGHTS = ['regular', 'bold'] as const;

const points = (mm: number): string => String(Math.round(mm * POINTS * 1e6) / 1e6);

/** How many subsets are kept: whoever watches a cut prints the same characters again and again. */
const MOST_SUBSETS = 16;

const subsets = new WeakMap<Face, Map<string, EmbeddedFont>>();

/** The characters of a file that are not all in the Latin subset, as a font. */
function otherFont(face: Face, characters: ReadonlySet<number>): EmbeddedFont {
  let known = subsets.get(face);
  if (!known) {
    known = new Map();
    subsets.set(face, known);
  }
  const sorted = [...characters].sort((a, b) => a - b);
  const id = sorted.join(' ');
  let font = known.get(id);
  if (!font) {
    font = embeddedFont(face.whole(), face.name, sorted);
    if (known.size >= MOST_SUBSETS) known.clear();
    known.set(id, font);
  }
  return font;
}
