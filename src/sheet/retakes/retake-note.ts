/** The retake note of a cut on paper: each change with the rows that it concerns, and room for why, who asked and the answer. */

import { fillPages } from '../../layout/page-filling.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import { wordsOf } from '../../words/words.js';
import type { Mark, Metrics, Page } from '../display-list.js';
import { type Box, black, frame, inShares, line, pale, textAt } from '../mark-builders.js';
import { pageFrame } from '../page-frame.js';
import type { PageLook, RowPlace } from '../page-look.js';
import { largerPrint, smallestTextMm } from '../sheet-geometry.js';
import { cachedMetrics, fitLine, wrap } from '../text-fitting.js';
import { type ChangedRows, type ChangedThing, type RetakeStrip, retakeStrip } from './retake-strip.js';

/** A change as it is told on paper. */
export interface RetakeChange {
  /** In the language of the form, one line. */
  readonly text: string;
  /** Null: it concerns the cut as a whole. */
  readonly place: RowPlace | null;
  /** Rows of the sheet after it. Null: none differs by it. */
  readonly rows: ChangedRows | null;
  /** One a row of that sheet: whether it gets a bar. */
  readonly differs: readonly boolean[];
  /** The one move or light that it is about. Null: none, or many. */
  readonly camera: ChangedThing | null;
  /** What its level was called before, where that is not what it is called now. */
  readonly earlierLevel: string | null;
}

export interface RetakeCut {
  readonly was: SolvedShot;
  readonly is: SolvedShot;
  readonly changes: readonly RetakeChange[];
  /** What the earlier version is called: `HEAD~1`, `take-1`. */
  readonly against: string;
  /** Printed where somebody would write it; '' leaves the room free. */
  readonly askedBy: string;
  readonly reason: string;
}

/** Shares of the width of a page. */
const COLUMNS = { number: 6, change: 50, names: 10, before: 24, after: 24, reason: 37, answer: 46 };
/** Sizes on A4, mm. */
const TITLE = 8;
const HEADS = 4.2;
const TEXT = 2.7;
const LEADING = 1.28;
const ROW = 3.7;
const PADDING = 1.6;
/** Room to write in. */
const LEAST_HEIGHT = 17;

interface Entry {
  readonly number: number;
  readonly lines: readonly string[];
  readonly strip: RetakeStrip | null;
  readonly heightMm: number;
}

/** At least one page, with the head of the cut. */
export function retakePages(cut: RetakeCut, look: PageLook): Page[] {
  const { is } = cut;
  const words = wordsOf(look.settings).retakes;
  const { body } = pageFrame(is.shot, look, words.notePage(1), 1);
  const note = new Note(cut, look, body);
  const pages = note.pages();
  return pages.map((entries, i) => {
    const label = words.notePage(i + 1);
    const page = pageFrame(is.shot, look, label, pages.length);
    return {
      widthMm: page.widthMm,
      heightMm: page.heightMm,
      label,
      part: 'note',
      form: page.form,
      marks: [...page.marks, ...note.marks(entries)],
      rows: [],
    };
  });
}

class Note {
  private readonly scale: number;
  private readonly least: number;
  private readonly metrics: Metrics;
  private readonly columns: { readonly [C in keyof typeof COLUMNS]: Box };

  constructor(
    private readonly cut: RetakeCut,
    private readonly look: PageLook,
    private readonly body: Box,
  ) {
    const { paper } = look.settings;
    this.scale = largerPrint(paper);
    this.least = smallestTextMm(paper);
    this.metrics = cachedMetrics(look.metrics);
    const boxes = inShares(body, Object.values(COLUMNS));
    this.columns = Object.fromEntries(
      Object.keys(COLUMNS).map((name, i) => [name, boxes[i]!]),
    ) as Note['columns'];
  }

  /** The changes of each page. A change is never broken; one alone is never higher than a page. */
  pages(): Entry[][] {
    const room = this.body.height - (TITLE + HEADS) * this.scale;
    return fillPages(
      this.cut.changes.map((change, i) => this.entry(change, i + 1)),
      room,
    );
  }

  private entry(change: RetakeChange, number: number): Entry {
    const { text, place, rows, earlierLevel, differs, camera } = change;
    const { columns, cut, least, look, metrics, scale } = this;
    const sizeMm = Math.max(least, TEXT * scale);
    const lines = wrap(metrics, text, columns.change.width - 2 * PADDING, sizeMm);
    const strip =
      place && rows
        ? retakeStrip(cut.was, cut.is, { place, rows, earlierLevel, differs, camera }, look, {
            namesMm: columns.names.width,
            versionMm: columns.before.width,
            rowMm: ROW * scale,
            leastTextMm: least,
          })
        : null;
    return {
      number,
      lines,
      strip,
      heightMm: Math.max(
        LEAST_HEIGHT * scale,
        lines.length * sizeMm * LEADING + 2 * PADDING,
        (strip?.heightMm ?? 0) + 2 * PADDING,
      ),
    };
  }

  marks(entries: readonly Entry[]): Mark[] {
    const { body, scale } = this;
    const top = body.y + TITLE * scale;
    const heads = top + HEADS * scale;
    const marks = [...this.title(), ...this.heads(top, heads)];
    let y = heads;
    for (const entry of entries) {
      marks.push(...this.entryMarks(entry, y));
      y += entry.heightMm;
    }
    const { columns } = this;
    for (const x of [columns.change.x, columns.names.x, columns.reason.x, columns.answer.x])
      marks.push(line(x, top, x, y, pale(0.25)));
    marks.push(frame({ x: body.x, y: top, width: body.width, height: y - top }, pale(0.36)));
    return marks;
  }

  private title(): Mark[] {
    const { body, cut, least, look, metrics, scale } = this;
    const words = wordsOf(look.settings).retakes;
    const middle = body.y + (TITLE * scale) / 2;
    const most = 4.6 * scale;
    const name = metrics.width(words.note, most, 'bold');
    const told = `${words.against(cut.against)} · ${words.changes(cut.changes.length)}`;
    const fit = fitLine(metrics, told, body.width - name - 6, { most: 3 * scale, least });
    return [
      textAt(body.x + 0.5, middle, words.note, { sizeMm: most, weight: 'bold', anchor: 'start' }),
      textAt(body.x + body.width - 0.5, middle, told, {
        sizeMm: fit.sizeMm,
        squeeze: fit.squeeze,
        anchor: 'end',
      }),
    ];
  }

  private heads(top: number, bottom: number): Mark[] {
    const { body, columns, least, look, metrics, scale } = this;
    const { heads } = wordsOf(look.settings).retakes;
    const head = (name: keyof typeof COLUMNS, text: string): Mark => {
      const { x, width } = columns[name];
      const fit = fitLine(metrics, text, width - 0.8, { most: 2.2 * scale, least });
      return textAt(x + width / 2, (top + bottom) / 2, text, {
        sizeMm: fit.sizeMm,
        squeeze: fit.squeeze,
        ink: 'grey',
      });
    };
    return [
      head('number', heads.number),
      head('change', heads.change),
      head('before', heads.before),
      head('after', heads.after),
      head('reason', heads.reason),
      head('answer', heads.answer),
      line(body.x, bottom, body.x + body.width, bottom, pale(0.25)),
    ];
  }

  private entryMarks({ number, lines, strip, heightMm }: Entry, y: number): Mark[] {
    const { body, columns, cut, least, look, metrics, scale } = this;
    const { heads } = wordsOf(look.settings).retakes;
    const sizeMm = Math.max(least, TEXT * scale);
    const first = y + PADDING + sizeMm * 0.6;
    const { x, width } = columns.reason;
    const small = Math.max(least, 2 * scale);
    const signed = y + heightMm - 5.2 * scale;
    const written = (text: string, at: number, left: number): Mark[] => {
      if (text === '') return [];
      const fit = fitLine(metrics, text, x + width - left - 1, { most: TEXT * scale, least });
      return [textAt(left, at, text, { sizeMm: fit.sizeMm, squeeze: fit.squeeze, anchor: 'start' })];
    };
    const caption = metrics.width(heads.askedBy, small, 'regular');
    const reason = wrap(metrics, cut.reason, width - 2 * PADDING, sizeMm).slice(
      0,
      Math.max(1, Math.floor((signed - y - PADDING) / (sizeMm * LEADING))),
    );
    return [
      textAt(columns.number.x + columns.number.width / 2, first, String(number), { sizeMm, weight: 'bold' }),
      ...lines.map((text, i) =>
        textAt(columns.change.x + PADDING, first + i * sizeMm * LEADING, text, { sizeMm, anchor: 'start' }),
      ),
      ...(strip ? strip.at(columns.names.x, y + PADDING) : []),
      ...reason.map((text, i) =>
        textAt(x + PADDING, first + i * sizeMm * LEADING, text, { sizeMm, anchor: 'start' }),
      ),
      line(x, signed, x + width, signed, pale(0.18)),
      textAt(x + 0.8, signed + 2.6 * scale, heads.askedBy, { sizeMm: small, ink: 'grey', anchor: 'start' }),
      ...written(cut.askedBy, signed + 2.6 * scale, x + caption + 2.2),
      line(body.x, y + heightMm, body.x + body.width, y + heightMm, black(0.14)),
    ];
  }
}
