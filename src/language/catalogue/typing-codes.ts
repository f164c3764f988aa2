import type { Entries, Sentence } from './catalogue-entry.js';

export interface TypingMessages {
  readonly 'number-two-counts': {
    readonly from: string;
    readonly to: string;
    readonly level: string;
    readonly count: number;
  };
  readonly 'would-overwrite': Sentence;
  readonly 'number-taken': { readonly cut: string; readonly file: string };
  readonly 'watch-impossible': Sentence;
  readonly 'table-faulty': Sentence;
  readonly 'draft-unlike': { readonly level: string; readonly cut: string };
}

/** Faults that stand in the way of commands that write texts. */
export const typing: Entries<TypingMessages> = {
  'number-two-counts': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright number c012.cut, where level A has 1--2 and later 1---2',
      mended: 'write 1--2 at both places, or 1---2a at the second',
    },
  },
  'would-overwrite': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright new episode harbour, where harbour/episode.yaml is there',
      mended: 'cutwright new episode harbour-2',
    },
  },
  'number-taken': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright new cut 12, in an episode that has a cut 12',
      mended: 'cutwright new cut 12A',
    },
  },
  'watch-impossible': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright watch c012.cut, while cutwright watch runs in the same folder',
      mended: 'end the first watch with Ctrl-C, or watch c012.cut in that one',
    },
  },
  'table-faulty': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright new cut 13 --from-csv grid.csv, where frame 3 is missing',
      mended: 'write the row of frame 3 into grid.csv',
    },
  },
  'draft-unlike': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright new cut 13 --from-csv grid.csv, where a breakdown 1.1 stands behind no key 1',
      mended: 'give the breakdown its keys in grid.csv',
    },
  },
};
