/** What can be wrong with timelines, their drawings and numbers. */

import type { Entries, None, Sentence } from './entry.js';

const HEAD = 'cut 1\ntime 1+0\n';

const lines = (failing: string, mended: string) =>
  ({ kind: 'text', failing: `${HEAD}${failing}\n`, mended: `${HEAD}${mended}\n` }) as const;

export interface TimelineMessages {
  readonly 'timeline-short': Sentence;
  readonly 'timeline-long': Sentence;
  readonly 'at-backwards': Sentence;
  readonly 'at-gap': Sentence;
  readonly 'at-nothing': Sentence;
  readonly 'at-past-end': Sentence;
  readonly 'at-in-group': None;
  readonly 'after-open': None;
  readonly 'open-in-group': None;
  readonly 'length-and-open': None;
  readonly 'length-zero': None;
  readonly 'repeat-zero': None;
  readonly 'group-empty': /** `phrase`: null where it is a group in brackets. */ {
    readonly phrase: string | null;
  };
  readonly 'too-deep': { readonly most: number };
  readonly 'between-from': Sentence;
  readonly 'between-to': Sentence;
  readonly 'group-begins-between': Sentence;
  readonly 'bounce-ends': Sentence;
  readonly 'two-counts': Sentence;
  readonly 'way-back': Sentence;
  readonly 'reference-missing': Sentence;
  readonly 'reference-ambiguous': Sentence;
  readonly 'unknown-chart': { readonly name: string; readonly guess: string | null };
  readonly 'chart-count': Sentence;
  readonly 'chart-not-rising': None;
  readonly 'chart-outside': None;
  readonly 'chart-narrow': Sentence;
  readonly 'chart-drawn': Sentence;
  readonly 'chart-twice': Sentence;
  readonly 'chart-unused': Sentence;
  readonly 'cels-count': Sentence;
  readonly 'cels-ambiguous': Sentence;
  readonly 'cels-way': Sentence;
  readonly 'reuse-number': Sentence;
  readonly 'reuse-count': Sentence;
  readonly 'level-empty': Sentence;
  readonly 'drawing-never-seen': Sentence;
  readonly 'one-frame-flash': Sentence;
  readonly 'key-jump': Sentence;
  readonly 'key-backwards': Sentence;
}

export const timelines: Entries<TimelineMessages> = {
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
  'cels-way': {
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
