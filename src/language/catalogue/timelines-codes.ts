/** What can be wrong with timelines, their drawings and numbers. */

import type { Entries, None } from './catalogue-entry.js';
import type { NoKeyAfter, NoKeyBefore } from './message-terms.js';

const HEAD = 'cut 1\ntime 1+0\n';

const lines = (failing: string, mended: string) =>
  ({ kind: 'text', failing: `${HEAD}${failing}\n`, mended: `${HEAD}${mended}\n` }) as const;

export interface TimelineMessages {
  readonly 'key-after-group': /** What the number was perhaps meant as. */ {
    readonly variant: 'times' | 'length';
    readonly key: string;
  };
  readonly 'timeline-short': {
    readonly level: string;
    readonly shown: number;
    readonly time: number;
    readonly rows: number;
  };
  readonly 'timeline-long': /** `shown`: null where it is beyond all measure. */ {
    readonly level: string;
    readonly shown: number | null;
    readonly time: number;
    readonly rows: number;
  };
  readonly 'at-backwards': /** `seen`, `until`: the frame that the item before is first seen on, or exposed until. */
    | { readonly variant: 'unseen'; readonly frame: number; readonly seen: number }
    | { readonly variant: 'exposed'; readonly frame: number; readonly until: number };
  readonly 'at-gap': /** The last frame of the item before, and the frame of the `@`. */ {
    readonly last: number;
    readonly frame: number;
  };
  readonly 'at-nothing': None;
  readonly 'at-past-end': { readonly frame: number; readonly time: number; readonly rows: number };
  readonly 'at-in-group': None;
  readonly 'direct-misplaced': None;
  readonly 'after-open': None;
  readonly 'open-in-group': None;
  readonly 'length-and-open': None;
  readonly 'length-zero': None;
  readonly 'repeat-zero': None;
  readonly 'group-empty': /** `phrase`: null where it is a group in brackets. */ {
    readonly phrase: string | null;
  };
  readonly 'too-deep': { readonly most: number };
  readonly 'between-from': { readonly why: NoKeyBefore };
  readonly 'between-to': { readonly why: NoKeyAfter };
  readonly 'group-begins-between': None;
  readonly 'bounce-ends': None;
  readonly 'two-counts': {
    readonly from: string;
    readonly to: string;
    readonly here: number;
    readonly before: number;
  };
  readonly 'way-back': /** `names`: the drawings of the way there, backwards. */ {
    readonly level: string;
    readonly from: string;
    readonly to: string;
    readonly count: number;
    readonly names: readonly string[];
  };
  readonly 'reference-missing': /** `to`: the key that the reference names; `way`: the one that its key leads to; `count`: the in-betweens there. */ {
    readonly level: string;
    readonly drawing: string;
    readonly key: string;
    readonly to: string | null;
    readonly way: string | null;
    readonly count: number;
  };
  readonly 'reference-ambiguous': /** `keys`: the first few that it leads to. */ {
    readonly level: string;
    readonly drawing: string;
    readonly key: string;
    readonly keys: readonly string[];
  };
  readonly 'unknown-chart': { readonly name: string; readonly guess: string | null };
  readonly 'chart-count': {
    readonly fractions: number;
    readonly inbetweens: number;
    readonly from: string;
    readonly to: string;
  };
  readonly 'chart-not-rising': None;
  readonly 'chart-outside': None;
  readonly 'chart-narrow': { readonly from: string; readonly to: string };
  readonly 'chart-drawn': {
    readonly level: string;
    readonly from: string;
    readonly to: string;
    readonly moved: readonly {
      readonly cel: number;
      readonly name: string /** Shares of the way. */;
      readonly was: number;
      readonly is: number;
    }[];
  };
  readonly 'chart-twice': { readonly from: string; readonly to: string };
  readonly 'chart-unused': { readonly key: string; readonly level: string };
  readonly 'cels-count': {
    readonly from: string;
    readonly to: string;
    readonly shown: number;
    readonly pinned: readonly string[];
  };
  readonly 'cels-ambiguous': { readonly key: string; readonly keys: readonly string[] };
  readonly 'cels-passage': /** `to`: the key that it leads to now; `next`: the one that stands behind it in the line. */ {
    readonly key: string;
    readonly to: string;
    readonly drawing: string;
    readonly next: string;
  };
  readonly 'reuse-number':
    | {
        readonly variant: 'number';
        readonly drawing: string;
        readonly number: number;
        readonly level: string;
        readonly cut: string;
        readonly pinned: number;
      }
    | {
        readonly variant: 'drawing';
        readonly pinned: number;
        readonly level: string;
        readonly cut: string;
        readonly there: string;
        readonly drawing: string;
      };
  readonly 'reuse-count': {
    readonly from: string;
    readonly to: string;
    readonly level: string;
    readonly cut: string;
    readonly there: number;
    readonly here: number;
  };
  readonly 'level-empty': { readonly level: string };
  readonly 'drawing-never-seen': { readonly level: string; readonly keys: readonly string[] };
  readonly 'one-frame-flash': /** `drawing`: null where the level is empty. */ {
    readonly level: string;
    readonly drawing: string | null;
    readonly frame: number;
  };
  readonly 'key-jump': /** The numbers from `first` to `last` are left out. */ {
    readonly key: string;
    readonly level: string;
    readonly after: string;
    readonly first: number;
    readonly last: number;
  };
  readonly 'key-zero': { readonly level: string };
  readonly 'key-backwards': {
    readonly key: string;
    readonly level: string;
    readonly frame: number;
    readonly after: string;
  };
}

export const timelines: Entries<TimelineMessages> = {
  'key-after-group': {
    severity: 'hint',
    example: lines('A: (1-2-)3..', 'A: (1-2-) 3..'),
  },
  'timeline-short': {
    severity: 'error',
    example: lines('A: 1--2', 'A: 1--2..'),
  },
  'timeline-long': {
    severity: 'error',
    example: lines('A: 1:12--2:12', 'A: 1:12--2..'),
  },
  'at-backwards': {
    severity: 'error',
    example: lines('A: 1--2 @6 3..', 'A: 1--2 @9 3..'),
  },
  'at-gap': {
    severity: 'error',
    example: lines('A: 1:6 @12 2..', 'A: 1 @12 2..'),
  },
  'at-nothing': {
    severity: 'error',
    example: lines('A: 1.. @12', 'A: 1.. @12 2..'),
  },
  'at-past-end': {
    severity: 'error',
    example: lines('A: 1 @30 2..', 'A: 1 @20 2..'),
  },
  'at-in-group': {
    severity: 'error',
    example: lines('A: (1 @6 2)..', 'A: (1:5 2)..'),
  },
  'direct-misplaced': {
    severity: 'error',
    example: lines('A: 1 direct --2..', 'A: 1 direct 2..'),
  },
  'after-open': {
    severity: 'error',
    example: lines('A: 1.. 2', 'A: 1.. @12 2..'),
  },
  'open-in-group': {
    severity: 'error',
    example: lines('A: (1 2..)*3', 'A: (1 2:6)*3'),
  },
  'length-and-open': {
    severity: 'error',
    example: lines('A: 1:6..', 'A: 1..'),
  },
  'length-zero': {
    severity: 'error',
    example: lines('A: 1:0 2..', 'A: 1:1 2..'),
  },
  'repeat-zero': {
    severity: 'error',
    example: lines('A: (1-2-)*0 3..', 'A: (1-2-)*1 3..'),
  },
  'group-empty': {
    severity: 'error',
    example: lines('A: (on 3) 1..', 'A: on 3 1..'),
  },
  'too-deep': {
    severity: 'error',
    example: {
      kind: 'text',
      failing: `${HEAD}${chain(60)}A: p0..\n`,
      mended: `${HEAD}${chain(20)}A: p0..\n`,
    },
  },
  'between-from': {
    severity: 'error',
    example: lines('A: --1..', 'A: 1--2..'),
  },
  'between-to': {
    severity: 'error',
    example: lines('A: 1-- x..', 'A: 1--2 x..'),
  },
  'group-begins-between': {
    severity: 'error',
    example: lines('A: 1(--2-3)*2 4..', 'A: 1--(2-3)*2 4..'),
  },
  'bounce-ends': {
    severity: 'error',
    example: lines('A: (1--2--)<>..', 'A: (1--2)<>..'),
  },
  'two-counts': {
    severity: 'warning',
    example: lines('A: 1--2 x:2 1-2..', 'A: 1--2 x:2 1--2..'),
  },
  'way-back': {
    severity: 'hint',
    example: lines('A: 1--2--1..', 'A: 1--2 1.2 1.1 1..'),
  },
  'reference-missing': {
    severity: 'error',
    example: lines('A: 1--2 1.3..', 'A: 1--2 1.2..'),
  },
  'reference-ambiguous': {
    severity: 'error',
    example: lines('A: 1-2:6 x:2 1-3 1.1..', 'A: 1-2:6 x:2 1-3 1>3.1..'),
  },
  'unknown-chart': {
    severity: 'error',
    example: lines('A: 1{lates}--2..', 'A: 1{late}--2..'),
  },
  'chart-count': {
    severity: 'error',
    example: lines('A: 1{1/4 1/2}---2..', 'A: 1{1/4 1/2 7/8}---2..'),
  },
  'chart-not-rising': {
    severity: 'error',
    example: lines('A: 1{1/2 1/4}--2..', 'A: 1{1/4 1/2}--2..'),
  },
  'chart-outside': {
    severity: 'error',
    example: lines('A: 1{1/2 3/2}--2..', 'A: 1{1/2 3/4}--2..'),
  },
  'chart-narrow': {
    severity: 'hint',
    example: lines('A: 1{late}-----2..', 'A: 1{late}---2..'),
  },
  'chart-twice': {
    severity: 'error',
    example: lines('A: 1{late}--2 x:2 1{early}--2..', 'A: 1{late}--2 x:2 1--2..'),
  },
  'chart-drawn': {
    severity: 'warning',
    example: lines(
      'A: 1{1/4 1/2 3/4}---2..\ncels A 1 1.1 1.2 2 1.2a',
      'A: 1{1/3 2/3 5/6}---2..\ncels A 1 1.1 1.2 2 1.2a',
    ),
  },
  'chart-unused': {
    severity: 'warning',
    safeFix: true,
    example: lines('A: 1{late} 2..', 'A: 1{late}--2..'),
  },
  'cels-count': {
    severity: 'error',
    example: lines('A: 1---2..\ncels A 1 1.1 1.2 2', 'A: 1---2..\ncels A 1 1.1 1.2 2 1.1a'),
  },
  'cels-ambiguous': {
    severity: 'error',
    example: lines('A: 1--2 x:2 1-3..\ncels A 1 2 1.1 1.2', 'A: 1--2 x:2 1-3..\ncels A 1 2 1>2.1 1>2.2'),
  },
  'cels-passage': {
    severity: 'warning',
    example: lines('A: (1-2-)*2 3..\ncels A 1 1.1 2 2.1 3', 'A: (1-2-)*2 3..\ncels A 1 1.1 2 2>1.1 3'),
  },
  'reuse-number': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing:
        'cut 9 has `level C reuse 8/C` and `cels C 1 2`, and number 2 of level C in cut 8 is drawing 1.1',
      mended: 'the `cels` line left out, or begun as the other cut numbers its drawings: `cels C 1 1.1 2`',
    },
  },
  'reuse-count': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cut 9 has `level C reuse 8/C` and shows `1---2`, and cut 8 has `1--2` on its level C',
      mended: 'cut 9 shows `1--2`',
    },
  },
  'level-empty': {
    severity: 'warning',
    example: lines('A: x..', 'A: x:6 1..'),
  },
  'drawing-never-seen': {
    severity: 'warning',
    example: lines('A: (1:12 2:12 3)..', 'A: (1:12 2:8 3)..'),
  },
  'one-frame-flash': {
    severity: 'warning',
    example: lines('A: 1:12 2:1 1..', 'A: 1:12 2:2 1..'),
  },
  'key-jump': {
    severity: 'warning',
    example: lines('A: 1--3..', 'A: 1--2..'),
  },
  'key-zero': {
    severity: 'hint',
    example: lines('A: 0:12 1..', 'A: x:12 1..'),
  },
  'key-backwards': {
    severity: 'warning',
    example: lines('A: 1--3--2..', 'A: 1--2--3..'),
  },
};

/** Phrases that each play the next one. */
function chain(length: number): string {
  const names = Array.from({ length }, (_, i) => `phrase p${i} = p${i + 1}\n`);
  return `${names.join('')}phrase p${length} = 1-2-\n`;
}
