/** The card: the whole language on one page, to hang beside the desk. Landscape; the print is as large as the paper allows. */

import type { UserLanguage } from '../../language/user-language.js';
import { packShelves } from '../../layout/shelf-packing.js';
import type { Mark, Metrics, Page } from '../../sheet/display-list.js';
import { line, pale, textAt } from '../../sheet/mark-builders.js';
import { PAPER_MM } from '../../sheet/sheet-geometry.js';
import { cachedMetrics, wrap } from '../../sheet/text-fitting.js';
import type { Paper } from '../../shot/settings.js';
import { referenceWords } from '../reference-language.js';
import {
  type CardRow,
  type CardSection,
  type CardStrip,
  drawnStrip,
  sections,
  strips,
} from './card-content.js';

const MARGIN = 8;
const COLUMNS = 4;
const GAP = 5;
/** Sizes of print that are tried, mm: 6 pt is the least that is read at arm's length. */
const LARGEST = 4.6;
const LEAST = 2.12;
const STEP = 0.02;

/** The same metrics and commands give the same page. The reference of the language has to be loaded. */
export function cardPage(
  paper: Paper,
  language: UserLanguage,
  commands: readonly CardRow[],
  metrics: Metrics,
): Page {
  const { widthMm: short, heightMm: long } = PAPER_MM[paper];
  const [widthMm, heightMm] = [long, short];
  const kept = cachedMetrics(metrics);
  const head = headMarks(widthMm, language, kept);
  const all = sections(language, commands);
  for (let sizeMm = LARGEST; sizeMm >= LEAST; sizeMm -= STEP) {
    const marks = columnMarks(all, sizeMm, { widthMm, from: head.bottom + 3, to: heightMm - MARGIN }, kept);
    if (marks)
      return {
        widthMm,
        heightMm,
        label: 'card',
        part: 'card',
        form: null,
        marks: [...head.marks, ...marks],
        rows: [],
      };
  }
  throw new Error(`the card does not fit on ${paper}`);
}

/** The title and the strips. */
function headMarks(
  widthMm: number,
  language: UserLanguage,
  metrics: Metrics,
): { marks: Mark[]; bottom: number } {
  const { card } = referenceWords(language);
  const drawn = strips(language);
  const k = Math.max(1, widthMm / PAPER_MM.A4.heightMm);
  const each = (widthMm - 2 * MARGIN) / drawn.length;
  const beside = 9.2 * k;
  const sizeMm = wholeWords(drawn, each - beside - 1, 2.3 * k, metrics);
  const top = MARGIN + 12 * k;
  let bottom = top;
  const marks: Mark[] = [
    textAt(MARGIN, MARGIN + 2 * k, card.title, {
      sizeMm: 4.2 * k,
      weight: 'bold',
      anchor: 'start',
    }),
    textAt(widthMm - MARGIN, MARGIN + 2 * k, card.about, { sizeMm: 2.8 * k, anchor: 'end' }),
  ];
  for (const [i, { typed, meaning }] of drawn.entries()) {
    const left = MARGIN + i * each;
    marks.push(textAt(left, top - 3.5 * k, typed, { sizeMm: 2.9 * k, weight: 'bold', anchor: 'start' }));
    const strip = drawnStrip(typed, language, left + 4.2 * k, top, k, metrics);
    marks.push(...strip.marks);
    for (const [row, text] of wrap(metrics, meaning, each - beside - 1, sizeMm).entries())
      marks.push(textAt(left + beside, top + 2 * k + row * sizeMm * 1.26, text, { sizeMm, anchor: 'start' }));
    bottom = Math.max(bottom, top + strip.heightMm);
  }
  marks.push(line(MARGIN, bottom + 2, widthMm - MARGIN, bottom + 2, pale(0.3)));
  return { marks, bottom: bottom + 2 };
}

/** What a line is not broken in: words, and each letter of a script without blanks. */
const UNBROKEN = /[!-~]+|\S/gu;

/** The size at which every word of the strips has a line's room. */
function wholeWords(drawn: readonly CardStrip[], width: number, most: number, metrics: Metrics): number {
  const words = drawn.flatMap(({ meaning }) => meaning.match(UNBROKEN) ?? []);
  const widest = Math.max(...words.map((word) => metrics.width(word, 1, 'regular')));
  return Math.max(LEAST, Math.min(most, width / widest));
}

interface Room {
  readonly widthMm: number;
  readonly from: number;
  readonly to: number;
}

/** A row of a section; the section's title stands over its first one, and is never parted from it. */
interface Block {
  readonly title: string | null;
  readonly lines: readonly (readonly Piece[])[];
}

/** From a section's title to its first row, its rule between them, and after its last row, in lines. */
const TITLE_LINES = 1.3;
const AFTER_SECTION = 0.5;

/** All sections in columns, at one size; null where they do not fit. */
function columnMarks(
  all: readonly CardSection[],
  sizeMm: number,
  { widthMm, from, to }: Room,
  metrics: Metrics,
): Mark[] | null {
  const width = (widthMm - 2 * MARGIN - (COLUMNS - 1) * GAP) / COLUMNS;
  const leading = sizeMm * 1.3;
  const indent = sizeMm * 1.6;
  const packed = packShelves(
    all.map(({ title, rows }) => ({
      of: title,
      heading: 0,
      after: AFTER_SECTION * leading,
      runs: rows.map(([typed, meaning], i) => {
        const lines = set(typed, meaning, width, indent, sizeMm, metrics);
        const holds: Block = { title: i === 0 ? title : null, lines };
        const high = lines.length + (i === 0 ? TITLE_LINES : 0);
        return [{ holds, sizes: [{ width, height: high * leading }] }];
      }),
    })),
    { x: 0, y: from, width, height: to - from, between: 0 },
  );
  if (packed.length > COLUMNS) return null;
  return packed.flatMap(({ places }, column) => {
    const x = MARGIN + column * (width + GAP);
    return places.flatMap(({ holds, y }) => blockMarks(holds, x, y, { width, sizeMm, leading }));
  });
}

function blockMarks(
  { title, lines }: Block,
  x: number,
  top: number,
  { width, sizeMm, leading }: { width: number; sizeMm: number; leading: number },
): Mark[] {
  const put = ({ text, dx, weight }: Piece, y: number): Mark =>
    textAt(x + dx, y + leading / 2, text, { sizeMm, weight, anchor: 'start' });
  const y = title === null ? top : top + TITLE_LINES * leading;
  const rule = top + leading;
  return [
    ...(title === null
      ? []
      : [put({ text: title, dx: 0, weight: 'bold' }, top), line(x, rule, x + width, rule, pale(0.3))]),
    ...lines.flatMap((pieces, i) => pieces.map((piece) => put(piece, y + i * leading))),
  ];
}

interface Piece {
  readonly text: string;
  readonly dx: number;
  readonly weight: 'regular' | 'bold';
}

/** What is typed in bold, its meaning behind it where there is room, else under it. */
function set(
  typed: string,
  meaning: string,
  width: number,
  indent: number,
  sizeMm: number,
  metrics: Metrics,
): Piece[][] {
  const behind = metrics.width(typed, sizeMm, 'bold') + sizeMm;
  const first: Piece = { text: typed, dx: 0, weight: 'bold' };
  if (behind + metrics.width(meaning, sizeMm, 'regular') <= width)
    return [[first, { text: meaning, dx: behind, weight: 'regular' }]];
  const head = wrap(metrics, typed, width, sizeMm, 'bold').map((text, i): Piece[] => [
    { text, dx: i === 0 ? 0 : indent, weight: 'bold' },
  ]);
  const under = wrap(metrics, meaning, width - indent, sizeMm).map((text): Piece[] => [
    { text, dx: indent, weight: 'regular' },
  ]);
  return [...head, ...under];
}
