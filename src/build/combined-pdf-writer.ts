/** One file for many cuts, written as they come: nothing of a cut is kept but its branch of the outline. */

import type { Host, Reading, TemporaryFile } from '../host/host.js';
import type { Fonts } from '../print/fonts.js';
import type { WrittenPage } from '../print/page-writer.js';
import { PdfFile } from '../print/pdf.js';
import type { Bookmark } from '../sheet/display-list.js';
import { bookmarkOf, type CutPages, hasTrueSize } from './cut-document.js';
import { printBytes, type Target } from './output-targets.js';

/** Hands on so many bytes at a time. */
const PIECE = 1 << 20;

export class CombinedPdfWriter {
  private readonly bookmarks: Bookmark[] = [];
  private readonly authors = new Set<string>();
  private trueSize = false;

  private constructor(
    private readonly pdf: PdfFile,
    private readonly out: Out,
  ) {}

  static async open(
    host: Host,
    target: Target,
    fonts: Fonts,
    about: { title: string; language: string },
  ): Promise<Reading<CombinedPdfWriter>> {
    const draft: Reading<TemporaryFile> =
      target.path === null ? { ok: true, value: standardOutput(host) } : host.openTemporary(target.path);
    if (!draft.ok) return draft;
    const out = new Out(draft.value);
    const pdf = PdfFile.open(about, fonts, (bytes) => out.add(bytes));
    return { ok: true, value: new CombinedPdfWriter(pdf, out) };
  }

  get pages(): number {
    return this.pdf.pages;
  }

  /** Adds the pages of a cut. */
  add(cut: string, printed: CutPages<WrittenPage>, artists: readonly string[]): Reading<null> {
    const first = this.pdf.pages;
    for (const page of printed.parts.flatMap((part) => part.pages))
      this.pdf.add(page, `${cut}/${page.label}`);
    // Three levels of outline for thousands of cuts are more than any viewer shows.
    this.bookmarks.push(bookmarkOf(printed, first, { eachPage: false }));
    for (const artist of artists) this.authors.add(artist);
    this.trueSize ||= hasTrueSize(printed);
    return this.out.state;
  }

  /** Adds a page that several cuts share, whose titles these are. */
  addShared(page: WrittenPage, titles: readonly string[], artists: readonly string[]): Reading<null> {
    const at = this.pdf.pages;
    this.pdf.add(page, page.label);
    this.bookmarks.push(...titles.map((title) => ({ title, page: at, children: [] })));
    for (const artist of artists) this.authors.add(artist);
    return this.out.state;
  }

  async finish(record: string): Promise<Reading<null>> {
    const { bookmarks, trueSize } = this;
    await this.pdf.close({ author: [...this.authors].join(', '), bookmarks, trueSize, record });
    return this.out.finish();
  }

  drop(): void {
    this.out.drop();
  }
}

/** Gathers small pieces into larger ones; what goes wrong once is kept. */
class Out {
  state: Reading<null> = { ok: true, value: null };
  private pieces: Uint8Array[] = [];
  private length = 0;

  constructor(private readonly draft: TemporaryFile) {}

  add(bytes: Uint8Array): void {
    this.pieces.push(bytes);
    this.length += bytes.length;
    if (this.length >= PIECE) this.flush();
  }

  finish(): Reading<null> {
    this.flush();
    if (!this.state.ok) {
      this.drop();
      return this.state;
    }
    return this.draft.finish();
  }

  drop(): void {
    this.draft.drop();
  }

  private flush(): void {
    if (this.state.ok) this.state = this.draft.add(Buffer.concat(this.pieces));
    this.pieces = [];
    this.length = 0;
  }
}

/** Standard output gets a file that is whole, or nothing. */
function standardOutput(host: Host): TemporaryFile {
  const pieces: Uint8Array[] = [];
  return {
    path: null,
    add(bytes) {
      pieces.push(bytes);
      return { ok: true, value: null };
    },
    finish: () => printBytes(host, Buffer.concat(pieces)),
    drop() {},
  };
}
