import type { Entries } from './catalogue-entry.js';
import type { ProgressColumn } from './message-terms.js';

interface UnknownWord {
  readonly found: string;
  readonly words: readonly string[];
  readonly guess: string | null;
}

/** Why a table of progress, or one row of it, cannot be read. */
type ProgressFault =
  | { readonly variant: 'open-quote' }
  /** `message`: as the CSV reader gives it. */
  | { readonly variant: 'no-csv'; readonly message: string }
  /** `found`: a column that might be meant. */
  | { readonly variant: 'no-column'; readonly name: ProgressColumn; readonly found: string | null }
  | { readonly variant: 'column-twice'; readonly name: ProgressColumn }
  | { readonly variant: 'too-many-cells'; readonly cells: number; readonly columns: number }
  | { readonly variant: 'no-cut' }
  | { readonly variant: 'no-stage' }
  | ({ readonly variant: 'stage' } & UnknownWord)
  | ({ readonly variant: 'state' } & UnknownWord)
  | { readonly variant: 'day'; readonly found: string };

export interface ProgressMessages {
  readonly 'progress-faulty': ProgressFault;
  readonly 'progress-cut': {
    /** In a row, or under `due`. */
    readonly inRow: boolean;
    readonly cut: string;
    readonly guess: string | null;
  };
  readonly 'progress-twice': {
    /** What the second row says. */
    readonly state: 'done' | 'started';
    readonly cut: string;
    readonly stage: string;
    readonly date: string;
    /** '': nobody is named. */
    readonly person: string;
  };
  readonly 'progress-order':
    | {
        readonly variant: 'early';
        readonly cut: string;
        readonly stage: string;
        readonly date: string;
        readonly missing: string;
      }
    | { readonly variant: 'retake-open'; readonly cut: string; readonly stage: string };
  readonly 'progress-open':
    | { readonly variant: 'spreadsheet'; readonly file: string; readonly lock: string }
    | { readonly variant: 'process'; readonly file: string; readonly by: number };
}

/** What is said of `progress.csv`, and of days in the manifest. */
export const progress: Entries<ProgressMessages> = {
  'progress-faulty': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'the row 12,key,done,19.3.27,L. Quoy in progress.csv',
      mended: '12,key,done,2027-03-19,L. Quoy',
    },
  },
  'progress-cut': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'a row of progress.csv for cut 112, where the episode has the cuts 1 to 20',
      mended: 'the row for cut 12',
    },
  },
  'progress-twice': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'two rows of progress.csv by which key of cut 12 is done',
      mended: 'one of them, or a row with retake between the two',
    },
  },
  'progress-order': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'a row of progress.csv by which in-between of cut 12 is done, and none for key',
      mended: 'rows for layout, key, check and in-between',
    },
  },
  'progress-open': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright progress 12 key done, while a spreadsheet has progress.csv open',
      mended: 'the same, when the spreadsheet is closed',
    },
  },
};
