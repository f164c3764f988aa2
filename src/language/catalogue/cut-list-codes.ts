/** What is said of a cut list. */

import type { Entries, Sentence } from './entry.js';

export interface CutListMessages {
  readonly 'list-cut-errors': Sentence;
  readonly 'list-over-budget': Sentence;
}

export const cutList: Entries<CutListMessages> = {
  'list-cut-errors': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright list, where c004.cut holds `A: 1--` and ends before its keys do',
      mended: 'A: 1--2..',
    },
  },
  'list-over-budget': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright list --check, with `budget: 120+0` and cuts of 121+12 in all',
      mended: 'the same cuts with `budget: 122+0`',
    },
  },
};
