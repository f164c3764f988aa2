/** What is said of a cut list. */

import type { Entries } from './catalogue-entry.js';

export interface CutListMessages {
  readonly 'list-cut-errors': /** `warnings`: only those that count as errors. */ {
    readonly cut: string;
    readonly errors: number;
    readonly warnings: number;
    readonly timed: boolean;
    readonly file: string;
  };
  readonly 'list-over-budget': /** In frames; `untimed`: cuts whose time is not known. */ {
    readonly running: number;
    readonly over: number;
    readonly budget: number;
    readonly fps: number;
    readonly untimed: number;
  };
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
