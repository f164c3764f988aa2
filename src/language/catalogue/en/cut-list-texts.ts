import type { CutListMessages } from '../cut-list-codes.js';
import { asGiven, type Texts } from '../texts.js';

export const cutList: Texts<CutListMessages> = {
  'list-cut-errors': {
    title: 'a cut of the list has errors',
    explanation:
      'The cut stays in the list, marked, with what could be read of it, so that the list is whole; but its figures may change, and it is not printed. What is wrong is not repeated here: cutwright check says it, with the lines.',
    message: asGiven,
  },
  'list-over-budget': {
    title: 'the cuts run longer than the budget',
    explanation:
      'The running time of all cuts of the episode, dissolves counted once, is over the budget that the manifest allows. list says so in its totals; with --check it is an error, for scripts. Shorten cuts, or change the budget.',
    message: asGiven,
  },
};
