/** The table of the cut list: a row a cut, the sum of them all, heads on every page. */

import type { CutList } from '../../count/count-episode.js';
import type { CutRow } from '../../count/cut-row.js';
import { widest } from '../../layout/line-breaking.js';
import { type ColumnExtent, inTurn, type LaidTable, layTable, type TableSet } from '../../layout/table.js';
import { feetAndFrames, secondsAndFrames } from '../../shot/time-notation.js';
import type { CutListWords } from '../../words/document-words.js';
import type { Mark, Stroke, Weight } from '../display-list.js';
import { black, pale } from '../mark-builders.js';
import { type PaperColumn, tableMarks } from '../table-marks.js';
import { setInBox, wrap } from '../text-fitting.js';
import type { ListPaper } from './cut-list-paper.js';

interface ListColumn extends PaperColumn {
  readonly column: CutListColumn;
}

export interface ListTable extends LaidTable<ListColumn> {
  readonly sizeMm: number;
  readonly headMm: number;
}

const LEADING = 1.2;
/** Both sides of a column, ems. */
const PADDING = 0.9;
/** Ems of a blank column that a pencil can use. */
const REMARKS = 8;
/** No text takes more lines: one that does was pasted by mistake, and would leave no room for other cuts. */
const MOST_LINES = 12;

/** Height of a row of one line. */
const rowOf = (sizeMm: number): number => sizeMm * 1.95;
/** Room between a column's edges and its text, one side. */
const insetOf = (sizeMm: number): number => (sizeMm * PADDING) / 2;

/**
 * The table at the largest print, up to `most`, whose columns go into the width; null where none over `above` does, nor the
 * smallest of the paper.
 */
export function listTable(paper: ListPaper, list: CutList, most: number, above = 0): ListTable | null {
  for (let sizeMm = most; sizeMm > above; sizeMm = Math.max(paper.least, sizeMm * 0.95)) {
    const headMm = Math.max(paper.least, sizeMm * 0.82);
    const laid = layTable({
      columns: cutListColumns(paper.west).map((column) => listColumn(paper, list, column, sizeMm, headMm)),
      rows: list.rows.length + 1,
      rowHeight: (lines) => rowOf(sizeMm) + (lines - 1) * sizeMm * LEADING,
      headHeight: headMm * 2.9,
      // What is left goes to words that had to be broken, then to the remarks.
      sharing: inTurn,
      area: paper.body,
      tooWide: 'refuse',
    });
    if (laid) return { ...laid, sizeMm, headMm };
    if (sizeMm === paper.least) return null;
  }
  return null;
}

function listColumn(
  paper: ListPaper,
  list: CutList,
  column: CutListColumn,
  sizeMm: number,
  headMm: number,
): ListColumn {
  const { metrics, words } = paper;
  const texts = list.rows.map(column.of);
  const total = column.key === 'title' ? words.total : (column.total?.(list) ?? '');
  const weight = column.bold ? 'bold' : 'regular';
  return {
    column,
    align: column.align,
    ...extentOf(paper, column, column.total ? [...texts, total] : texts, sizeMm, headMm),
    cells: (width) => {
      const room = width - 2 * insetOf(sizeMm) + 1e-6;
      const broken = (text: string): string[] => {
        if (column.wraps === undefined || text === '') return [text];
        const lines = wrap(metrics, text, room, sizeMm, weight);
        return lines.length <= MOST_LINES ? lines : [...lines.slice(0, MOST_LINES - 1), '…'];
      };
      return [...texts.map(broken), [total]];
    },
  };
}

function extentOf(
  { metrics, words }: ListPaper,
  column: CutListColumn,
  texts: readonly string[],
  sizeMm: number,
  headMm: number,
): ColumnExtent {
  if (column.key === 'remarks') return { wanted: Number.POSITIVE_INFINITY, least: REMARKS * sizeMm };
  const measured = (size: number, weight: Weight) => (text: string) => metrics.width(text, size, weight);
  const padding = 2 * insetOf(sizeMm);
  const head = widest(words.columns[column.key].split('\n'), measured(headMm, 'regular')) + padding;
  const own = widest(texts, measured(sizeMm, column.bold || column.total ? 'bold' : 'regular')) + padding;
  const wanted = Math.max(own, head);
  const least = column.wraps === undefined ? wanted : Math.min(wanted, Math.max(column.wraps * sizeMm, head));
  return { wanted, least };
}

export function listTableMarks(
  paper: ListPaper,
  { sizeMm, headMm }: ListTable,
  set: TableSet<ListColumn>,
  list: CutList,
): Mark[] {
  const { metrics, words, least } = paper;
  const inset = insetOf(sizeMm);
  const sum = list.rows.length;
  return tableMarks(set, {
    metrics,
    sizeMm,
    rowMm: rowOf(sizeMm),
    leadingMm: sizeMm * LEADING,
    inset: [inset, inset],
    least: null,
    bold: ({ column }, row) => row === sum || column.bold === true,
    head: ({ column }, { x, y, width, height }) => {
      const box = { x: x + inset * 0.8, y: y + 0.3, width: width - 2 * inset * 0.8, height: height - 0.6 };
      const across = column.align === 'end' ? 'end' : 'start';
      return setInBox(metrics, words.columns[column.key], box, { most: headMm, least, across }).marks;
    },
    headRule: pale(0.45),
    ruleUnder: (row) => ruleUnder(list, row),
    upright: (_, i) => pale(i === 0 ? 0.45 : 0.12),
    edge: pale(0.45),
  });
}

/** Heavier after every fifth cut, black before a new scene and at the end. */
function ruleUnder({ rows }: CutList, row: number): Stroke {
  const next = rows[row + 1];
  if (!next) return black(0.35);
  if (next.scene !== rows[row]!.scene) return black(0.18);
  return pale((row + 1) % 5 === 0 ? 0.3 : 0.1);
}

export interface CutListColumn {
  readonly key: keyof CutListWords['columns'];
  readonly align: 'start' | 'end';
  readonly bold?: boolean;
  /** Words may be broken over several lines, from so many ems on. */
  readonly wraps?: number;
  readonly of: (row: CutRow) => string;
  /** Under the last row. */
  readonly total?: (list: CutList) => string;
}

const number = (value: number | null | undefined): string => (value == null ? '–' : String(value));
/** Nothing is left blank, so that a copy that lost ink is not taken for a zero; but nothing reused is said by silence. */
const some = (value: number | undefined): string =>
  value === undefined ? '–' : value === 0 ? '' : String(value);

const time: CutListColumn = {
  key: 'time',
  align: 'end',
  bold: true,
  of: ({ counted }) => (counted ? secondsAndFrames(counted.time, counted.fps) : '?'),
  total: ({ totals, fps }) => secondsAndFrames(totals.time, fps),
};
const frames: CutListColumn = {
  key: 'frames',
  align: 'end',
  of: ({ counted }) => number(counted?.time),
  total: ({ totals }) => String(totals.time),
};
const feet: CutListColumn = {
  key: 'feet',
  align: 'end',
  of: ({ counted }) => (counted ? feetAndFrames(counted.time) : '?'),
  total: ({ totals }) => feetAndFrames(totals.time),
};

/** In the order of the page. The measure that the convention goes by stands first. */
export function cutListColumns(west: boolean): CutListColumn[] {
  return [
    {
      key: 'cut',
      align: 'start',
      bold: true,
      wraps: 4,
      of: ({ cut, sound }) => `${cut}${sound ? '' : ' !'}`,
    },
    { key: 'title', align: 'start', wraps: 16, of: ({ title }) => title },
    { key: 'scene', align: 'start', wraps: 3, of: ({ scene }) => scene },
    ...(west ? [{ ...feet, bold: true }, { ...time, bold: false }, frames] : [time, frames, feet]),
    {
      key: 'rows',
      align: 'end',
      of: ({ counted }) => number(counted?.rows),
      total: ({ totals }) => String(totals.rows),
    },
    { key: 'levels', align: 'end', of: ({ counted }) => number(counted?.levels) },
    {
      key: 'keys',
      align: 'end',
      of: ({ counted }) => number(counted?.counts.keys),
      total: ({ totals }) => String(totals.counts.keys),
    },
    {
      key: 'breakdowns',
      align: 'end',
      of: ({ counted }) => some(counted?.counts.breakdowns),
      total: ({ totals }) => String(totals.counts.breakdowns),
    },
    {
      key: 'inbetweens',
      align: 'end',
      of: ({ counted }) => number(counted?.counts.inbetweens),
      total: ({ totals }) => String(totals.counts.inbetweens),
    },
    {
      key: 'drawings',
      align: 'end',
      bold: true,
      of: ({ counted }) => number(counted?.counts.drawings),
      total: ({ totals }) => String(totals.counts.drawings),
    },
    {
      key: 'reused',
      align: 'end',
      of: ({ counted }) => some(counted?.counts.reused),
      total: ({ totals }) => String(totals.counts.reused),
    },
    { key: 'camera', align: 'start', wraps: 11, of: ({ counted }) => counted?.moves.join(', ') ?? '' },
    {
      key: 'sheetPages',
      align: 'end',
      of: ({ pages }) => number(pages?.sheet),
      total: ({ totals }) => String(totals.pages.sheet),
    },
    {
      key: 'pages',
      align: 'end',
      of: ({ pages }) => number(pages?.all),
      total: ({ totals }) => String(totals.pages.all),
    },
    { key: 'artist', align: 'start', wraps: 9, of: ({ artists }) => artists.join(', ') },
    {
      key: 'problems',
      align: 'start',
      of: ({ problems: { errors, warnings } }) => (errors + warnings === 0 ? '' : `${errors}, ${warnings}`),
      total: ({ totals: { problems } }) => `${problems.errors}, ${problems.warnings}`,
    },
    { key: 'remarks', align: 'start', of: () => '' },
  ];
}
