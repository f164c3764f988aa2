/** The columns of the cut list: what stands in each, and how wide each is. */

import type { CutList } from '../../count/list.js';
import type { CutRow } from '../../count/row.js';
import { feetAndFrames, secondsAndFrames } from '../../shot/time.js';
import type { CutListWords } from '../../words/cut-list-words.js';
import type { Metrics } from '../marks.js';

export interface Column {
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

const time: Column = {
  key: 'time',
  align: 'end',
  bold: true,
  of: ({ counted }) => (counted ? secondsAndFrames(counted.time, counted.fps) : '?'),
  total: ({ totals, fps }) => secondsAndFrames(totals.time, fps),
};
const frames: Column = {
  key: 'frames',
  align: 'end',
  of: ({ counted }) => number(counted?.time),
  total: ({ totals }) => String(totals.time),
};
const feet: Column = {
  key: 'feet',
  align: 'end',
  of: ({ counted }) => (counted ? feetAndFrames(counted.time) : '?'),
  total: ({ totals }) => feetAndFrames(totals.time),
};

/** In the order of the page. The measure that the convention goes by stands first. */
export function columnsOf(west: boolean): Column[] {
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

/** Ems of a blank column that a pencil can use. */
const REMARKS = 8;
const PADDING = 0.9;

export interface Placed {
  readonly column: Column;
  readonly x: number;
  readonly width: number;
}

/** Room between a column's edges and its text, one side, mm. */
export const paddingMm = (sizeMm: number): number => (sizeMm * PADDING) / 2;

/** The widest line of a heading. */
const headPiece = (metrics: Metrics, head: string, sizeMm: number): number =>
  Math.max(...head.split('\n').map((piece) => metrics.width(piece, sizeMm, 'regular')));

/**
 * Widths at a size of print, mm; null where the columns do not go into `room`. What is left goes to words that had to be
 * broken, then to the remarks.
 */
export function placeColumns(
  columns: readonly Column[],
  list: CutList,
  words: CutListWords,
  metrics: Metrics,
  { x, room, sizeMm, headMm }: { x: number; room: number; sizeMm: number; headMm: number },
): Placed[] | null {
  const widths = columns.map((column) => {
    const weight = column.bold ? 'bold' : 'regular';
    const texts = list.rows.map(column.of);
    if (column.total) texts.push(column.total(list));
    const widest = texts.reduce(
      (most, text) => Math.max(most, metrics.width(text, sizeMm, column.total ? 'bold' : weight)),
      0,
    );
    const head = headPiece(metrics, words.columns[column.key], headMm);
    const padding = 2 * paddingMm(sizeMm);
    const wanted = Math.max(widest, head) + padding;
    const least =
      column.wraps === undefined ? wanted : Math.min(wanted, Math.max(column.wraps * sizeMm, head + padding));
    return column.key === 'remarks' ? { wanted: Infinity, least: REMARKS * sizeMm } : { wanted, least };
  });
  let spare = room - widths.reduce((sum, { least }) => sum + least, 0);
  if (spare < 0) return null;
  let at = x;
  return columns.map((column, i) => {
    const { wanted, least } = widths[i]!;
    const more = Math.min(wanted - least, spare);
    spare -= more;
    const placed = { column, x: at, width: least + more };
    at += placed.width;
    return placed;
  });
}
