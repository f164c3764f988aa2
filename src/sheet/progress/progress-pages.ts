/**
 * The progress of an episode as pages: a line a cut with a column a stage, then the stages with their counts and the people with what is to be
 * paid. Upright where the columns fit, else on its side. No text is shortened.
 */

import type { CutStage, ProgressTable } from '../../count/count-stages.js';
import { amountText, type Sum } from '../../count/stage-rates.js';
import { widest } from '../../layout/line-breaking.js';
import { inProportion, type inTurn, layTable } from '../../layout/table.js';
import { type ProgressWords, stageWord } from '../../words/progress-words.js';
import { wordsOf } from '../../words/words.js';
import { headedMarks, type ListPaper, listPaper } from '../cut-list/cut-list-paper.js';
import type { Mark, Page } from '../display-list.js';
import { black, frame, pale, textAt } from '../mark-builders.js';
import type { PageLook } from '../page-look.js';
import { largerPrint } from '../sheet-geometry.js';
import { type PaperColumn, tableMarks } from '../table-marks.js';
import { fitLine, wrap } from '../text-fitting.js';

/** Height of print on A4, mm. */
const PRINT = 2.3;
const LEADING = 1.25;
/** Between two tables, mm on A4. */
const BETWEEN = 5;
/** A title takes no more lines: a longer one was pasted by mistake. */
const MOST_LINES = 6;

/** A table of texts, before it is laid out. */
interface TextTable {
  readonly columns: readonly TextTableColumn[];
  readonly rows: number;
  /** The last row is a sum. */
  readonly total: boolean;
}

interface TextTableColumn {
  readonly head: string;
  readonly align: 'start' | 'end';
  readonly bold?: boolean;
  /** May be broken into lines down to this share of its widest text. */
  readonly least?: number;
  /** A text a line, for each row. */
  readonly cells: readonly (readonly string[])[];
}

interface HeadedColumn extends PaperColumn {
  readonly head: string;
  readonly bold: boolean;
}

export function progressPages(table: ProgressTable, look: PageLook): Page[] {
  const words = wordsOf(look.settings).progress;
  const cuts = cutTable(table, words);
  const most = PRINT * largerPrint(look.settings.paper);
  const { paper, sizeMm } = roomFor(cuts, look, most);
  const builder = new PageBuilder(paper, sizeMm);
  builder.add(cuts, 'wide');
  builder.line(words.legend);
  builder.add(stageTable(table, words), 'narrow');
  if (table.people.length > 0) builder.add(personTable(table, words), 'narrow');
  const { title, episode } = look.settings;
  const late = table.totals.reduce((sum, one) => sum + one.late, 0);
  const { heads } = paper.words;
  return builder.pages.map((marks, i): Page => {
    const page = { title, episode, name: words.name, page: i + 1, pages: builder.pages.length };
    const head = headedMarks(paper, look, page, [
      [30, heads.title, title, 4, false],
      [9, heads.episode, episode, 4.4, false],
      [22, '', words.name, 5.2, true],
      [16, words.day, table.date, 4.4, true],
      [9, heads.cuts, String(table.cuts.length), 4.4, true],
      [9, words.late, String(late), 4.4, true],
      [11, words.retakes, String(table.retakes), 4.4, true],
    ]);
    return {
      widthMm: paper.widthMm,
      heightMm: paper.heightMm,
      label: words.page(i + 1),
      part: 'progress',
      form: null,
      marks: [...head, ...marks],
      rows: [],
    };
  });
}

/** The paper as it has to lie, and the largest print at which the columns go into its width. */
function roomFor(cuts: TextTable, look: PageLook, most: number): { paper: ListPaper; sizeMm: number } {
  for (const landscape of [false, true]) {
    const paper = listPaper(look, landscape);
    const lowest = landscape ? paper.least : Math.max(paper.least, most * 0.85);
    for (let sizeMm = most; ; sizeMm = Math.max(lowest, sizeMm * 0.95)) {
      const least = headed(paper, cuts, sizeMm).reduce((sum, column) => sum + column.least, 0);
      if (least <= paper.body.width || (landscape && sizeMm === lowest)) return { paper, sizeMm };
      if (sizeMm === lowest) break;
    }
  }
  throw new RangeError('the progress does not go into the width of the paper');
}

const insetOf = (sizeMm: number): number => sizeMm * 0.45;

function headed({ metrics }: ListPaper, { columns }: TextTable, sizeMm: number): HeadedColumn[] {
  return columns.map(({ head, align, bold = false, least = 1, cells }): HeadedColumn => {
    const weight = bold ? 'bold' : 'regular';
    const pad = 2 * insetOf(sizeMm);
    const wide = widest(cells.flat(), (text) => metrics.width(text, sizeMm, weight));
    const headMm = metrics.width(head, sizeMm * 0.85, 'regular');
    const wanted = Math.max(wide, headMm) + pad;
    const needed = Math.max(Math.min(wide, Math.max(wide * least, sizeMm * 6)), headMm) + pad;
    return {
      ...{ head, align, bold, wanted, least: needed },
      cells: (width) =>
        cells.map((lines) => {
          const broken = lines.flatMap((text) =>
            text === '' ? [] : wrap(metrics, text, width - pad + 1e-6, sizeMm, weight),
          );
          if (broken.length <= MOST_LINES) return broken;
          return [...broken.slice(0, MOST_LINES - 1), '…'];
        }),
    };
  });
}

/** Tables below each other, over as many pages as they need. */
class PageBuilder {
  readonly pages: Mark[][] = [[]];
  private y: number;

  constructor(
    private readonly paper: ListPaper,
    private readonly sizeMm: number,
  ) {
    this.y = paper.body.y;
  }

  line(text: string): void {
    const { paper, sizeMm } = this;
    const height = sizeMm * 1.8;
    if (this.y + height > paper.body.y + paper.body.height) this.turn();
    this.last().push(
      textAt(paper.body.x, this.y + height / 2, text, { sizeMm: sizeMm * 0.9, ink: 'grey', anchor: 'start' }),
    );
    this.y += height;
  }

  add(table: TextTable, width: 'wide' | 'narrow'): void {
    const { paper, sizeMm } = this;
    const { body, metrics, least } = paper;
    const columns = headed(paper, table, sizeMm);
    const rowMm = sizeMm * 1.8;
    const headMm = sizeMm * 1.9;
    const bottom = body.y + body.height;
    if (this.y > body.y) this.y += BETWEEN * paper.scale;
    // A head with three rows stays together.
    if (this.y + headMm + Math.min(3, table.rows) * rowMm > bottom) this.turn();
    const wanted = columns.reduce((sum, column) => sum + column.wanted, 0);
    const area = width === 'wide' ? body : { ...body, width: Math.min(body.width, wanted * 1.05) };
    const { pages } = layTable({
      columns,
      rows: table.rows,
      rowHeight: (lines) => rowMm + Math.max(0, lines - 1) * sizeMm * LEADING,
      headHeight: headMm,
      sharing: width === 'wide' && wanted <= body.width ? spread : inProportion,
      area,
      top: this.y,
      tooWide: 'overhang',
    })!;
    const sum = table.total ? table.rows - 1 : -1;
    pages.forEach(({ sets: [set] }, i) => {
      if (i > 0) this.turn();
      const marks = tableMarks(set!, {
        metrics,
        sizeMm,
        rowMm,
        leadingMm: sizeMm * LEADING,
        inset: [insetOf(sizeMm), insetOf(sizeMm)],
        least,
        bold: (column, row) => column.bold || row === sum,
        head: ({ head, align }, { x, y, width: across }) => {
          const room = across - 2 * insetOf(sizeMm);
          const fit = fitLine(metrics, head, room, { most: Math.max(least, sizeMm * 0.85), least });
          const at = align === 'start' ? x + insetOf(sizeMm) : x + across - insetOf(sizeMm);
          return [textAt(at, y + headMm / 2, head, { ...fit, anchor: align })];
        },
        headRule: pale(0.45),
        ruleUnder: (row) => (row === sum - 1 ? black(0.2) : pale(0.12)),
        upright: (_, index) => (index === 0 ? null : pale(0.12)),
        edge: null,
      });
      this.last().push(...marks, frame(set!, pale(0.45)));
      this.y = set!.y + set!.height;
    });
  }

  private turn(): void {
    this.pages.push([]);
    this.y = this.paper.body.y;
  }

  private last(): Mark[] {
    return this.pages.at(-1)!;
  }
}

/** Every column has what it wants, and the room that is left is shared out: somebody will write in it. */
const spread: typeof inTurn = (columns, room) => {
  const more = (room - columns.reduce((sum, { wanted }) => sum + wanted, 0)) / columns.length;
  return columns.map(({ wanted }) => wanted + more);
};

function cutTable(table: ProgressTable, words: ProgressWords): TextTable {
  const { cuts, stages } = table;
  const stageColumn = (stage: string, i: number): TextTableColumn => ({
    head: stageWord(words, stage),
    align: 'start',
    least: 0.7,
    cells: cuts.map((cut) => stageLines(cut.stages[i]!, table.date, words)),
  });
  return {
    rows: cuts.length,
    total: false,
    columns: [
      {
        head: words.columns.cut,
        align: 'start',
        bold: true,
        cells: cuts.map(({ cut, payable }) => [payable === null ? `${cut} !` : cut]),
      },
      {
        head: words.columns.title,
        align: 'start',
        least: 0.4,
        cells: cuts.map(({ title }) => [title.replace(/\s+/g, ' ').trim()]),
      },
      {
        head: words.columns.drawings,
        align: 'end',
        cells: cuts.map(({ payable }) => [payable ? String(payable.counts.drawings) : '']),
      },
      ...stages.map(stageColumn),
    ],
  };
}

/** `2027-03-19` in the year of another day as the language writes it, else whole. */
export function dayWords(date: string, of: string, words: ProgressWords): string {
  if (date.slice(0, 4) !== of.slice(0, 4)) return date;
  return words.dayOfYear(Number(date.slice(5, 7)), Number(date.slice(8, 10)));
}

function stageLines({ state, row, due, daysLate }: CutStage, today: string, words: ProgressWords): string[] {
  const lines: string[] = [];
  const day = row === null ? '' : dayWords(row.date, today, words);
  if (state === 'done') lines.push(day);
  else if (state !== 'open') lines.push(`${words.states[state]} ${day}`);
  if (row !== null && row.person !== '') lines.push(row.person);
  if (state === 'done') return lines;
  if (daysLate > 0) lines.push(words.daysLate(daysLate));
  else if (due !== null) lines.push(`(${dayWords(due, today, words)})`);
  return lines;
}

function stageTable({ totals, rates }: ProgressTable, words: ProgressWords): TextTable {
  const { columns, states } = words;
  const numbers = (head: string, of: (one: (typeof totals)[number]) => number): TextTableColumn => ({
    head,
    align: 'end',
    cells: totals.map((one) => [String(of(one))]),
  });
  const rateOf = (stage: string): string => {
    const rate = rates.get(stage);
    return rate ? words.rate(amountText(rate), rate.currency, words.units[rate.unit]) : '';
  };
  return {
    rows: totals.length,
    total: false,
    columns: [
      {
        head: columns.stage,
        align: 'start',
        bold: true,
        cells: totals.map(({ stage }) => [stageWord(words, stage)]),
      },
      numbers(states.done, (one) => one.done),
      numbers(states.started, (one) => one.started),
      numbers(states.retake, (one) => one.retake),
      numbers(states.open, (one) => one.open),
      numbers(words.late, (one) => one.late),
      {
        head: columns.drawings,
        align: 'end',
        cells: totals.map(({ drawings }) => [drawings ? `${drawings.done} / ${drawings.all}` : '']),
      },
      { head: columns.rate, align: 'start', cells: totals.map(({ stage }) => [rateOf(stage)]) },
    ],
  };
}

const sumLines = (pay: readonly Sum[]): string[] => pay.map((sum) => `${amountText(sum)} ${sum.currency}`);

function personTable({ people, pay }: ProgressTable, words: ProgressWords): TextTable {
  const { columns } = words;
  const paid = pay.length > 0;
  const more = <T>(cells: T[], last: T): T[] => (paid ? [...cells, last] : cells);
  const first = (i: number): boolean => people[i]!.person !== people[i - 1]?.person;
  return {
    rows: people.length + (paid ? 1 : 0),
    total: paid,
    columns: [
      {
        head: columns.person,
        align: 'start',
        cells: more(
          people.map(({ person }, i) => [first(i) ? person || words.nobody : '']),
          [words.total],
        ),
      },
      {
        head: columns.stage,
        align: 'start',
        cells: more(
          people.map(({ stage }) => [stageWord(words, stage)]),
          [],
        ),
      },
      {
        head: columns.cuts,
        align: 'end',
        cells: more(
          people.map(({ cuts }) => [String(cuts)]),
          [],
        ),
      },
      {
        head: columns.drawings,
        align: 'end',
        cells: more(
          people.map(({ drawings }) => [drawings === null ? '' : String(drawings)]),
          [],
        ),
      },
      ...(paid
        ? [
            {
              head: columns.pay,
              align: 'end' as const,
              cells: more(
                people.map((one) => sumLines(one.pay)),
                sumLines(pay),
              ),
            },
          ]
        : []),
    ],
  };
}
