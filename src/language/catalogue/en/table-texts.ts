import { plural } from '../../../words/number-format.js';
import type { BudgetLeft, TableTexts } from '../table-entry.js';

const cuts = (count: number): string => plural(count, 'cut');

/** `; budget 120+0: 7+12 under`. */
const againstBudget = (left: BudgetLeft | null): string => {
  if (left === null) return '';
  const { budget, by } = left;
  return `; budget ${budget}: ${by === null ? 'to the frame' : `${by.length} ${by.over ? 'over' : 'under'}`}`;
};

const runningTime = (length: string, least: boolean, budget: BudgetLeft | null): string =>
  `running time ${least ? 'at least ' : ''}${length}${againstBudget(budget)}`;

export const tables: TableTexts = {
  leftOut: (heads) => `Left out here, for want of width: ${heads.join(', ')}.`,
  total: 'total',
  list: {
    heads: {
      cut: 'cut',
      title: 'title',
      scene: 'scene',
      time: 'time',
      feet: 'feet',
      levels: 'levels',
      keys: 'keys',
      breakdowns: 'breakd.',
      inbetweens: 'in-betw.',
      drawings: 'drawings',
      reused: 'reused',
      camera: 'camera',
      pages: 'pages',
      artist: 'artist',
      problems: 'problems',
      cuts: 'cuts',
    },
    running: (count, length, least, budget) => `${cuts(count)}, ${runningTime(length, least, budget)}`,
    times: (length) => `the times of the cuts come to ${length}; overlaps run once`,
    drawings: ({ drawings, keys, breakdowns, inbetweens, reused, backgrounds }, newOnesASecond) =>
      `${plural(drawings, 'drawing')}: ${plural(keys, 'key')}, ${plural(breakdowns, 'breakdown')}, ${plural(inbetweens, 'in-between')}; ${reused} reused; ${backgrounds > 0 ? `${plural(backgrounds, 'background')} besides; ` : ''}${newOnesASecond} new ones a second`,
    pages: (all, sheets) => `${plural(all, 'page')}, ${sheets} of them sheets`,
    unsound: (count, untimed) =>
      `${cuts(count)} with errors (!): counted as far as could be read, not printed${untimed > 0 ? `; the time of ${untimed} is not known and not in the total` : ''}`,
    withoutArtist: (count) => `${cuts(count)} without an artist`,
    shared: (count) => `${cuts(count)} of several artists: counted below for each of them, above once`,
  },
  since: {
    heads: {
      cut: 'cut',
      title: 'title',
      timeAt: (revision) => `time at ${revision}`,
      drawingsAt: (revision) => `drawings at ${revision}`,
      now: 'now',
      change: 'change',
    },
    cutNew: 'new',
    cutGone: 'gone',
    differ: (count, unchanged, reordered) =>
      `${count === 0 ? 'no cut differs' : `${cuts(count)} ${count === 1 ? 'differs' : 'differ'}`}${unchanged > 0 ? `; ${unchanged} with the same time and number of drawings` : ''}${reordered ? '; the cuts stand in another order' : ''}`,
    episode: (revision, count, drawings, length, least, budget) =>
      `${revision ?? 'now'}: ${cuts(count)}, ${plural(drawings, 'drawing')}, ${runningTime(length, least, budget)}`,
    runs: (by, sense) => `it runs ${sense === 'same' ? 'as long as before' : `${by} ${sense}`}`,
    budget: (by, sense) => `the budget is ${by} ${sense}`,
    unsound: 'cuts with errors (!) are counted as far as they could be read',
  },
  progress: {
    heads: {
      cut: 'cut',
      title: 'title',
      stage: 'stage',
      done: 'done',
      started: 'started',
      retake: 'retake',
      open: 'open',
      late: 'late',
      drawings: 'drawings',
      rate: 'rate',
      person: 'person',
      cuts: 'cuts',
      pay: 'to be paid',
    },
    states: { done: 'done', started: 'started', retake: 'retake', open: 'open' },
    nobody: '(nobody named)',
    doneOf: (done, all) => `${done} of ${all}`,
    rate: (amount, currency, unit) => `${amount} ${currency} per ${unit}`,
    summary: (count, date, through, retakes) =>
      `${cuts(count)} on ${date}: ${through} through the last stage, ${plural(retakes, 'retake')}`,
    late: (days, stage, due, names) =>
      `late by ${plural(days, 'day')}: ${stage}, due ${due}: ${names.join(', ')}`,
  },
};
