import { plural } from '../../../words/number-format.js';
import type { CutListMessages } from '../cut-list-codes.js';
import type { Texts } from '../text-types.js';

export const cutList: Texts<CutListMessages> = {
  'list-cut-errors': {
    title: 'a cut of the list has errors',
    explanation:
      'The cut stays in the list, marked, with what could be read of it, so that the list is whole; but its figures may change, and it is not printed. What is wrong is not repeated here: cutwright check says it, with the lines.',
    message: ({ cut, errors, warnings, timed, file }) => {
      const count = [
        ...(errors > 0 ? [plural(errors, 'error')] : []),
        ...(warnings > 0 ? [plural(warnings, 'warning')] : []),
      ];
      return `Cut ${cut} has ${count.join(' and ')}, so ${timed ? 'its figures may change' : 'not even its time is known'}; \`cutwright check ${file}\` says what is wrong.`;
    },
  },
  'list-over-budget': {
    title: 'the cuts run longer than the budget',
    explanation:
      'The running time of all cuts of the episode, dissolves counted once, is over the budget that the manifest allows. list says so in its totals; with --check it is an error, for scripts. Shorten cuts, or change the budget.',
    message: ({ running, over, budget, fps, untimed }) => {
      const length = (frames: number): string => `${Math.floor(frames / fps)}+${frames % fps}`;
      return `The cuts run ${untimed > 0 ? 'at least ' : ''}${length(running)}, which is ${length(over)} (${plural(over, 'frame')}) over the budget of ${length(budget)}.`;
    },
  },
};
