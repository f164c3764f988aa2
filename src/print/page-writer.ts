import { deflateSync } from 'node:zlib';
import type { Page, SharedForm, Weight } from '../sheet/display-list.js';
import { Content } from './content-stream.js';
import type { Fonts } from './fonts.js';
import { FontUse, TextCodes, type UsedFonts } from './text-codes.js';

/** What every page calls the form that lies under it. */
export const FORM = 'X1';

/** A form as it stands in every file. */
export interface CompressedForm {
  /** That of the form: equal ones stand in a file once. */
  readonly id: string;
  readonly bytes: Uint8Array;
  readonly use: UsedFonts;
}

/** A page as it stands in every file, whatever else is in that file. Plain data, so that another thread can write it. */
export interface WrittenPage extends Pick<Page, 'label' | 'part' | 'widthMm' | 'heightMm'> {
  readonly form: CompressedForm | null;
  /** Its marks, compressed. */
  readonly bytes: Uint8Array;
  /** With those of the form. */
  readonly use: UsedFonts;
}

/** Points in a millimetre (a point is 1/72 inch, an inch 25.4 mm: ISO 32000-1, 8.3.2.3). */
export const POINTS = 72 / 25.4;

/** Forms that are kept; an episode has few. */
const MOST_FORMS = 100;

const writers = new WeakMap<Fonts, PageWriter>();

/** Writes pages as content streams. One writer serves all files that are printed with the same fonts, one page at a time. */
export class PageWriter {
  private readonly codes: Readonly<Record<Weight, TextCodes>>;
  private readonly content: Content;
  private readonly forms = new Map<string, CompressedForm>();
  private use = new FontUse();

  private constructor(fonts: Fonts) {
    this.codes = {
      regular: new TextCodes(fonts.regular, 'regular'),
      bold: new TextCodes(fonts.bold, 'bold'),
    };
    this.content = new Content((text, weight) => {
      const coded = this.codes[weight].of(text);
      this.use.add(coded, weight);
      return coded;
    });
  }

  static of(fonts: Fonts): PageWriter {
    let known = writers.get(fonts);
    if (!known) {
      known = new PageWriter(fonts);
      writers.set(fonts, known);
    }
    return known;
  }

  /** Throws MissingGlyph. */
  write(page: Page): WrittenPage {
    const { label, part, widthMm, heightMm } = page;
    const form = page.form ? this.form(page.form) : null;
    const use = new FontUse();
    if (form) use.addAll(form.use);
    const scale = POINTS.toFixed(6);
    const place = `${scale} 0 0 -${scale} 0 ${(heightMm * POINTS).toFixed(6)} cm`;
    return { label, part, widthMm, heightMm, form, bytes: deflateSync(this.page(page, place, use)), use };
  }

  /** What stands on a page, its form included. `place`: the operator that sets up millimetres; `use`: takes the fonts. Throws MissingGlyph. */
  page({ form, marks }: Page, place: string, use: FontUse): Uint8Array {
    return this.written(use, (content) => {
      content.raw(place);
      content.tints(marks);
      if (form) content.raw(`/${FORM} Do`);
      content.marks(marks);
    });
  }

  /** Throws MissingGlyph. */
  form({ id, marks }: SharedForm): CompressedForm {
    const known = this.forms.get(id);
    if (known) return known;
    const use = new FontUse();
    const bytes = this.written(use, (content) => {
      content.tints(marks);
      content.marks(marks);
    });
    const made = { id, bytes: deflateSync(bytes), use };
    if (this.forms.size >= MOST_FORMS) this.forms.clear();
    this.forms.set(id, made);
    return made;
  }

  private written(use: FontUse, write: (content: Content) => void): Uint8Array {
    this.use = use;
    try {
      write(this.content);
      return this.content.take();
    } catch (fault) {
      // What is half written must not stand on the next page.
      this.content.take();
      throw fault;
    }
  }
}
