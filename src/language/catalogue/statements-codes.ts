/** What can be wrong with a cut's statements taken together: names, times, settings. */

import type { Entries, None } from './catalogue-entry.js';

const HEAD = 'cut 1\ntime 1+0\n';
const BODY = 'A: 1--2..\n';

const text = (failing: string, mended: string, files: Readonly<Record<string, string>> = {}) =>
  ({ kind: 'text', failing, mended, files }) as const;

export interface StatementMessages {
  readonly 'cut-missing': None;
  readonly 'time-missing': None;
  readonly 'time-zero': None;
  readonly 'time-too-long': { readonly longest: string };
  readonly 'statement-twice': /** A statement by its first word and the name behind it; '' for the timeline of a level. */ {
    readonly statement: string;
    readonly name: string | null;
  };
  readonly 'name-twice': { readonly of: 'field' | 'mark' | 'phrase'; readonly name: string };
  readonly 'position-zero':
    | { readonly variant: 'zero' }
    | { readonly variant: 'before'; readonly frames: number };
  readonly 'length-mark': { readonly mark: string };
  readonly 'unknown-mark': { readonly name: string; readonly guess: string | null };
  readonly 'mark-circle': /** The last is the first again. */ { readonly marks: readonly string[] };
  readonly 'mark-unused': { readonly mark: string };
  readonly 'range-backwards': { readonly from: number; readonly to: number };
  readonly 'time-in-frames': /** `seconds`: the same number as seconds. */ {
    readonly frames: number;
    readonly seconds: string;
  };
  readonly 'frames-past-second': /** `meant`: the same time with fewer frames than a second has. */ {
    readonly seconds: number;
    readonly frames: number;
    readonly fps: number;
    readonly meant: string;
  };
  readonly 'range-starts-late': { readonly seconds: number };
  readonly 'fps-range': { readonly most: number };
  readonly 'on-range': { readonly most: number };
  readonly 'unknown-numbering': { readonly name: string };
  readonly 'unknown-level': { readonly name: string; readonly guess: string | null };
  readonly 'level-outside': { readonly name: string; readonly guess: string | null };
  readonly 'stack-twice': { readonly level: string };
  readonly 'size-zero': { readonly level: string };
  readonly 'reuse-self': { readonly level: string };
  readonly 'level-to-itself': { readonly part: 'with' | 'masks'; readonly level: string };
  readonly 'cels-twice': { readonly drawing: string };
  readonly 'words-outside': { readonly frame: number; readonly from: number; readonly to: number };
  readonly 'words-not-rising': { readonly frame: number; readonly before: number };
  readonly 'dialogue-past-end': {
    readonly heard: 'voice' | 'sound' | 'music';
    readonly from: number;
    readonly to: number;
    readonly rows: number;
  };
  readonly 'note-past-end': { readonly frame: number; readonly rows: number };
  readonly 'unknown-phrase': { readonly name: string; readonly guess: string | null };
  readonly 'phrase-circle': /** The last is the first again. */ { readonly phrases: readonly string[] };
  readonly 'phrase-unused': { readonly phrase: string };
  readonly 'accept-unknown': /** `name`: the code as typed. */ {
    readonly name: string;
    readonly guess: string | null;
  };
  readonly 'accept-error': { readonly accepted: string };
  readonly 'accept-unused': { readonly accepted: string };
}

export const statements: Entries<StatementMessages> = {
  'cut-missing': {
    severity: 'error',
    example: text(`time 1+0\n${BODY}`, `${HEAD}${BODY}`),
  },
  'time-missing': {
    severity: 'error',
    example: text(`cut 1\n${BODY}`, `${HEAD}${BODY}`),
  },
  'time-zero': {
    severity: 'error',
    example: text(`cut 1\ntime 0+0\n${BODY}`, `${HEAD}${BODY}`),
  },
  'time-too-long': {
    severity: 'error',
    example: text(`cut 1\ntime 3600+0\n${BODY}`, `cut 1\ntime 36+0\n${BODY}`),
  },
  'statement-twice': {
    severity: 'error',
    example: text(`${HEAD}time 2+0\n${BODY}`, `${HEAD}${BODY}`),
  },
  'name-twice': {
    severity: 'error',
    example: text(
      `${HEAD}mark hit 9\nmark hit 12\nA: 1 @hit 2..\n`,
      `${HEAD}mark hit 9\nmark echo 12\nA: 1 @hit 2 @echo 3..\n`,
    ),
  },
  'position-zero': {
    severity: 'error',
    example: text(`${HEAD}${BODY}note 0 "wind"\n`, `${HEAD}${BODY}note 1 "wind"\n`),
  },
  'length-mark': {
    severity: 'error',
    example: text(`${HEAD}mark hit 9\nA: 1:hit 2..\n`, `${HEAD}mark hit 9\nA: 1 @hit 2..\n`),
  },
  'unknown-mark': {
    severity: 'error',
    example: text(`${HEAD}mark hit 9\nA: 1 @hitt 2..\n`, `${HEAD}mark hit 9\nA: 1 @hit 2..\n`),
  },
  'mark-circle': {
    severity: 'error',
    example: text(
      `${HEAD}mark hit echo-6\nmark echo hit+6\nA: 1 @hit 2 @echo 3..\n`,
      `${HEAD}mark hit 9\nmark echo hit+6\nA: 1 @hit 2 @echo 3..\n`,
    ),
  },
  'mark-unused': {
    severity: 'hint',
    example: text(`${HEAD}mark hit 9\n${BODY}`, `${HEAD}mark hit 9\nA: 1 @hit 2..\n`),
  },
  'range-backwards': {
    severity: 'error',
    example: text(`${HEAD}${BODY}sound 12..6 "door"\n`, `${HEAD}${BODY}sound 12..18 "door"\n`),
  },
  'time-in-frames': {
    severity: 'hint',
    example: text('cut 1\ntime 5\nA: 1..\n', 'cut 1\ntime 5+0\nA: 1..\n'),
  },
  'frames-past-second': {
    severity: 'hint',
    example: text('cut 1\ntime 3+30\nA: 1..\n', 'cut 1\ntime 4+6\nA: 1..\n'),
  },
  'range-starts-late': {
    severity: 'hint',
    example: text(
      `cut 1\ntime 3+0\n${BODY}sound 1+0..2+0 "waves"\n`,
      `cut 1\ntime 3+0\n${BODY}sound 1+1..2+0 "waves"\n`,
    ),
  },
  'fps-range': {
    severity: 'error',
    example: text(`${HEAD}fps 0\n${BODY}`, `${HEAD}fps 25\n${BODY}`),
  },
  'on-range': {
    severity: 'error',
    example: text(`${HEAD}on 0\n${BODY}`, `${HEAD}on 3\n${BODY}`),
  },
  'unknown-numbering': {
    severity: 'error',
    example: text(`${HEAD}numbering frames\n${BODY}`, `${HEAD}numbering frame\n${BODY}`),
  },
  'unknown-level': {
    severity: 'error',
    example: text(`${HEAD}${BODY}cels B 1 1.1 1.2 2\n`, `${HEAD}${BODY}cels A 1 1.1 1.2 2\n`),
  },
  'level-outside': {
    severity: 'error',
    example: text(`${HEAD}stack BG A\n${BODY}B: 1..\n`, `${HEAD}stack BG A B\n${BODY}B: 1..\n`),
  },
  'stack-twice': {
    severity: 'error',
    example: text(`${HEAD}stack BG A A\n${BODY}`, `${HEAD}stack BG A\n${BODY}`),
  },
  'size-zero': {
    severity: 'error',
    example: text(`${HEAD}${BODY}level BG size 0x200mm\n`, `${HEAD}${BODY}level BG size 560x200mm\n`),
  },
  'reuse-self': {
    severity: 'error',
    example: text(`${HEAD}${BODY}level A reuse 1/A\n`, `${HEAD}${BODY}level A reuse 8/C\n`),
  },
  'level-to-itself': {
    severity: 'error',
    example: text(`${HEAD}A: 1..\nB: 1..\nlevel A with A\n`, `${HEAD}A: 1..\nB: 1..\nlevel A with B\n`),
  },
  'cels-twice': {
    severity: 'error',
    example: text(`${HEAD}A: 1-2..\ncels A 1 1.1 2 1\n`, `${HEAD}A: 1-2..\ncels A 1 1.1 2 _\n`),
  },
  'words-outside': {
    severity: 'error',
    example: text(
      `${HEAD}${BODY}voice "Nao" 6..12 "Wait" @18 "for me!"\n`,
      `${HEAD}${BODY}voice "Nao" 6..20 "Wait" @18 "for me!"\n`,
    ),
  },
  'words-not-rising': {
    severity: 'error',
    example: text(
      `${HEAD}${BODY}voice "Nao" 6..20 "Wait" @18 "for" @12 "me!"\n`,
      `${HEAD}${BODY}voice "Nao" 6..20 "Wait" @12 "for" @18 "me!"\n`,
    ),
  },
  'dialogue-past-end': {
    severity: 'warning',
    example: text(
      `${HEAD}${BODY}voice "Nao" 6..30 "Wait for me!"\n`,
      `${HEAD}${BODY}voice "Nao" 6..20 "Wait for me!"\n`,
    ),
  },
  'note-past-end': {
    severity: 'warning',
    example: text(`${HEAD}${BODY}note 30 "wind"\n`, `${HEAD}${BODY}note 20 "wind"\n`),
  },
  'unknown-phrase': {
    severity: 'error',
    example: text(`${HEAD}phrase walk = 1--2--\nA: wakl..\n`, `${HEAD}phrase walk = 1--2--\nA: walk..\n`),
  },
  'phrase-circle': {
    severity: 'error',
    example: text(
      `${HEAD}phrase step = 1-- turn\nphrase turn = 2-- step\nA: step..\n`,
      `${HEAD}phrase step = 1-- turn\nphrase turn = 2--\nA: step..\n`,
    ),
  },
  'phrase-unused': {
    severity: 'hint',
    example: text(`${HEAD}phrase walk = 1--2--\n${BODY}`, `${HEAD}phrase walk = 1--2--\nA: walk..\n`),
  },
  'accept-unknown': {
    severity: 'error',
    example: text(
      `${HEAD}mark hit 9\n${BODY}accept mark-unsed "for the retake"\n`,
      `${HEAD}mark hit 9\n${BODY}accept mark-unused "for the retake"\n`,
    ),
  },
  'accept-error': {
    severity: 'error',
    example: text(`${HEAD}A: 1--2\naccept timeline-short "drawn as far as there"\n`, `${HEAD}A: 1--2..\n`),
  },
  'accept-unused': {
    severity: 'hint',
    example: text(
      `${HEAD}mark hit 9\nA: 1 @hit 2..\naccept mark-unused "for the retake"\n`,
      `${HEAD}mark hit 9\nA: 1 @hit 2..\n`,
    ),
  },
};
