/** The columns of the cut list: what stands in each. */

import type { CutList } from '../../count/list.js';
import type { CutRow } from '../../count/row.js';
import { feetAndFrames, secondsAndFrames } from '../../shot/time.js';
import type { CutListWords } from '../../words/cut-list-words.js';

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
