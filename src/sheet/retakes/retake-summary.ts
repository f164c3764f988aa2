/** The first pages of an episode's retake notes: a row for each cut that changed, came or went, and room to tick it off. */

import { fillPages } from '../../layout/page-filling.js';
import { wordsOf } from '../../words/words.js';
import { listFoot, listPaper } from '../cut-list/cut-list-paper.js';
import type { Mark, Metrics, Page } from '../display-list.js';
import { type Box, frame, inShares, line, pale, textAt } from '../mark-builders.js';
import type { PageLook } from '../page-look.js';
import { cutToFit, fitLine, wrap } from '../text-fitting.js';

export interface SummaryRow {
  readonly cut: string;
  readonly title: string;
  /** As it is written: `5+12`, or `5+12 → 6+0`. */
  readonly time: string;
  /** What is said of it: where it changed, or that it is new or gone. */
  readonly where: string;
  /** Of its note; 0: it has none. */
  readonly changes: number;
}

export interface RetakeSummary {
  /** Work and episode. */
  readonly work: string;
  readonly against: string;
  readonly rows: readonly SummaryRow[];
}

/** Sizes on A4, mm. */
const TITLE = 11;
const HEADS = 4.6;
const TEXT = 2.8;
const LEADING = 1.25;
/** High enough to write in. */
const LEAST_HEIGHT = 8;
const SHARES = { cut: 13, title: 52, time: 27, number: 13, where: 50, done: 42 };

type Column = keyof typeof SHARES;

interface PlacedRow {
  readonly row: SummaryRow;
  readonly title: readonly string[];
  readonly where: readonly string[];
  readonly heightMm: number;
}

export function retakeSummaryPages(summary: RetakeSummary, look: PageLook): Page[] {
  const paper = listPaper(look, false);
  const { widthMm, heightMm, scale, least, metrics, body } = paper;
  const words = wordsOf(look.settings);
  const { retakes } = words;
  const names = Object.keys(SHARES) as Column[];
  const boxes = inShares(body, Object.values(SHARES));
  const columns = Object.fromEntries(names.map((name, i) => [name, boxes[i]!])) as Record<Column, Box>;
  const sizeMm = Math.max(least, TEXT * scale);
  const head = { ...body, y: body.x, height: TITLE * scale };
  const top = head.y + (TITLE + HEADS) * scale;
  const placed = summary.rows.map((row): PlacedRow => {
    const title = wrap(metrics, row.title, columns.title.width - 2, sizeMm);
    const where = wrap(metrics, row.where, columns.where.width - 2, sizeMm);
    const lines = Math.max(1, title.length, where.length);
    return { row, title, where, heightMm: Math.max(LEAST_HEIGHT * scale, (lines * LEADING + 0.6) * sizeMm) };
  });
  const pages = fillPages(placed, body.y + body.height - top);
  const shared = { look, metrics, scale, least, sizeMm, columns };
  return pages.map((rows, i) => {
    const label = `${retakes.summary} ${i + 1}`;
    const height = rows.reduce((sum, row) => sum + row.heightMm, 0);
    const table = { ...body, y: top - HEADS * scale, height: HEADS * scale + height };
    return {
      widthMm,
      heightMm,
      label,
      part: 'note',
      form: null,
      marks: [
        ...titleMarks(summary, head, shared),
        ...tableMarks(rows, table, shared),
        ...listFoot(
          paper,
          look,
          summary.work,
          `${retakes.summary}  ${words.sheet.pageOf(String(i + 1), pages.length)}`,
        ),
      ],
      rows: [],
    };
  });
}

interface Shared {
  readonly look: PageLook;
  readonly metrics: Metrics;
  readonly scale: number;
  readonly least: number;
  readonly sizeMm: number;
  readonly columns: Readonly<Record<Column, Box>>;
}

function titleMarks({ work, against, rows }: RetakeSummary, box: Box, shared: Shared): Mark[] {
  const { look, metrics, scale, least } = shared;
  const { retakes } = wordsOf(look.settings);
  const middle = box.y + box.height / 2;
  const most = 5.2 * scale;
  const named = cutToFit(
    metrics,
    work === '' ? retakes.summary : `${retakes.summary}  ${work}`,
    box.width * 0.6,
    {
      most,
      least,
      weight: 'bold',
    },
  );
  const told = `${retakes.against(against)} · ${retakes.cuts(rows.length)}`;
  const fit = fitLine(metrics, told, box.width * 0.38, { most: 3 * scale, least });
  return [
    textAt(box.x + 0.5, middle, named.text, {
      sizeMm: named.sizeMm,
      squeeze: named.squeeze,
      weight: 'bold',
      anchor: 'start',
    }),
    textAt(box.x + box.width - 0.5, middle, told, {
      sizeMm: fit.sizeMm,
      squeeze: fit.squeeze,
      anchor: 'end',
    }),
  ];
}

function tableMarks(rows: readonly PlacedRow[], box: Box, shared: Shared): Mark[] {
  const { look, metrics, scale, least, sizeMm, columns } = shared;
  const { heads, changeCount } = wordsOf(look.settings).retakes;
  const captions: Readonly<Record<Column, string>> = {
    cut: heads.cut,
    title: heads.title,
    time: heads.time,
    number: changeCount,
    where: heads.where,
    done: heads.done,
  };
  const under = box.y + HEADS * scale;
  const marks: Mark[] = [];
  for (const [name, { x, width }] of Object.entries(columns)) {
    const text = captions[name as Column];
    const fit = fitLine(metrics, text, width - 0.8, { most: 2.2 * scale, least });
    marks.push(
      textAt(x + width / 2, box.y + (HEADS * scale) / 2, text, {
        sizeMm: fit.sizeMm,
        squeeze: fit.squeeze,
        ink: 'grey',
      }),
    );
    if (x > box.x) marks.push(line(x, box.y, x, box.y + box.height, pale(0.25)));
  }
  const one = (name: Column, text: string, y: number, bold = false): Mark[] => {
    if (text === '') return [];
    const { x, width } = columns[name];
    const weight = bold ? 'bold' : 'regular';
    const fit = cutToFit(metrics, text, width - 2, { most: bold ? sizeMm * 1.25 : sizeMm, least, weight });
    return [textAt(x + width / 2, y, fit.text, { sizeMm: fit.sizeMm, squeeze: fit.squeeze, weight })];
  };
  let y = under;
  for (const { row, title, where, heightMm } of rows) {
    const middle = y + heightMm / 2;
    const lined = (name: Column, lines: readonly string[]): Mark[] =>
      lines.map((text, i) =>
        textAt(columns[name].x + 1, middle + (i - (lines.length - 1) / 2) * sizeMm * LEADING, text, {
          sizeMm,
          anchor: 'start',
        }),
      );
    marks.push(
      line(box.x, y, box.x + box.width, y, pale(0.25)),
      ...one('cut', row.cut, middle, true),
      ...lined('title', title),
      ...one('time', row.time, middle),
      ...one('number', row.changes === 0 ? '' : String(row.changes), middle),
      ...lined('where', where),
    );
    y += heightMm;
  }
  return [...marks, frame(box, pale(0.36))];
}
