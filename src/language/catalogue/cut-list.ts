/** What is said of a cut list. */

import { entries } from './entry.js';

export const cutList = entries({
  'list-cut-errors': {
    severity: 'error',
    title: 'a cut of the list has errors',
    explanation:
      'The cut stays in the list, marked, with what could be read of it, so that the list is whole; but its figures may change, and it is not printed. What is wrong is not repeated here: cutwright check says it, with the lines.',
    example: {
      kind: 'situation',
      failing: 'cutwright list, where c004.cut holds `A: 1--` and ends before its keys do',
      mended: 'A: 1--2..',
    },
  },
  'list-over-budget': {
    severity: 'error',
    title: 'the cuts run longer than the budget',
    explanation:
      'The running time of all cuts of the episode, dissolves counted once, is over the budget that the manifest allows. list says so in its totals; with --check it is an error, for scripts. Shorten cuts, or change the budget.',
    example: {
      kind: 'situation',
      failing: 'cutwright list --check, with `budget: 120+0` and cuts of 121+12 in all',
      mended: 'the same cuts with `budget: 122+0`',
    },
  },
});
