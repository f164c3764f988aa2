import type { Entries } from './catalogue-entry.js';

/** A cell of a table, row and column counted from 1. */
interface Cell {
  readonly row: number;
  readonly column: number;
}

/** What a cell of a table of exposures holds that it cannot, or what its row lacks. */
export type CellFault =
  | {
      readonly variant: 'no-rows' | 'no-frame-column' | 'no-level-column';
    }
  | { readonly variant: 'row-length'; readonly columns: number; readonly header: number }
  | { readonly variant: 'unknown-column'; readonly name: string; readonly guess: string | null }
  | { readonly variant: 'no-column'; readonly name: string }
  | {
      readonly variant: 'no-cut-number' | 'no-level-name' | 'no-frame' | 'no-drawing' | 'no-kind' | 'no-cel';
      readonly found: string;
    }
  | { readonly variant: 'cel-twice'; readonly drawing: string }
  | { readonly variant: 'level-twice'; readonly level: string }
  /** `cut`: '' where the table has no numbers. */
  | {
      readonly variant: 'uneven';
      readonly cut: string;
      readonly level: string;
      readonly frames: number;
      readonly longest: string;
      readonly most: number;
    }
  | { readonly variant: 'too-many-frames'; readonly most: number }
  /** `level`: null where a frame is one of the whole sheet. */
  | {
      readonly variant: 'frame-again' | 'frame-missing';
      readonly frame: number;
      readonly wanted: number;
      readonly level: string | null;
    }
  | { readonly variant: 'kind-without-drawing'; readonly kind: string }
  | { readonly variant: 'kind-unfit'; readonly drawing: string; readonly kind: string };

export interface TypingMessages {
  readonly 'number-two-counts': {
    readonly from: string;
    readonly to: string;
    readonly level: string;
    readonly count: number;
  };
  readonly 'would-overwrite':
    | { readonly variant: 'file-for-folder'; readonly path: string }
    | { readonly variant: 'there'; readonly paths: readonly string[] };
  readonly 'number-taken': { readonly cut: string; readonly file: string };
  readonly 'watch-impossible': /** `by`: the process, null for this one; `reason`: as the machine gives it. */
    | { readonly variant: 'second-watch'; readonly folder: string; readonly by: number | null }
    | { readonly variant: 'folder-gone'; readonly folder: string }
    | { readonly variant: 'system'; readonly reason: string }
    /** `kept`: the system keeps it for others; else another program has it. */
    | { readonly variant: 'port'; readonly port: number; readonly kept: boolean };
  readonly 'table-faulty': /** `message`: as the CSV reader gives it. */
    | { readonly variant: 'empty' | 'open-quote' }
    | { readonly variant: 'no-csv'; readonly message: string }
    | (Cell & CellFault);
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
