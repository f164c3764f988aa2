/** What can be wrong with mouths, and with the time that a line has. */

import type { Entries } from './catalogue-entry.js';

const HEAD = 'cut 1\ntime 2+0\n';
const LINE = 'voice "Nao" 7..1+20 "Wait for me!"\n';

const text = (failing: string, mended: string) =>
  ({ kind: 'text', failing: `${HEAD}${failing}`, mended: `${HEAD}${mended}` }) as const;

const mouthLine = (failing: string, mended: string) =>
  text(`mouth A ${failing}\n${LINE}`, `mouth A ${mended}\n${LINE}`);

export interface MouthMessages {
  readonly 'mouth-and-timeline': { readonly level: string };
  readonly 'mouth-drawings': { readonly level: string } & (
    | { readonly variant: 'three'; readonly count: number }
    | { readonly variant: 'no-vowel'; readonly key: string }
    | { readonly variant: 'twice'; readonly vowel: string }
    | { readonly variant: 'missing'; readonly vowels: readonly string[] }
  );
  readonly 'mouth-vowel': { readonly name: string; readonly guess: string | null };
  readonly 'lead-range': { readonly most: number };
  readonly 'mouth-silent':
    | { readonly variant: 'unseen'; readonly speaker: string }
    | /** `speakers`: those that do speak. */ {
        readonly variant: 'no-lines';
        readonly speaker: string;
        readonly guess: string | null;
        readonly speakers: readonly string[];
      };
  readonly 'mouth-unread': { readonly level: string };
  readonly 'line-too-fast': /** `rate`, `most`: morae or syllables a second; `time`, `wanted`: lengths of the line. */ {
    readonly unit: 'mora' | 'syllable';
    readonly count: number;
    readonly time: string;
    readonly rate: number;
    readonly most: number;
    readonly wanted: string;
  };
}

export const mouth: Entries<MouthMessages> = {
  'mouth-and-timeline': {
    severity: 'error',
    example: text(`A: 1..\nmouth A "Nao" 1 2 3\n${LINE}`, `A: 1..\nmouth B "Nao" 1 2 3\n${LINE}`),
  },
  'mouth-drawings': {
    severity: 'error',
    example: mouthLine('"Nao" 1 2', '"Nao" 1 2 3'),
  },
  'mouth-vowel': {
    severity: 'error',
    example: mouthLine('"Nao" 1 a 2 i 3 y 4 e 5 o 6', '"Nao" 1 a 2 i 3 u 4 e 5 o 6'),
  },
  'lead-range': {
    severity: 'error',
    example: mouthLine('"Nao" 1 2 3 lead 24', '"Nao" 1 2 3 lead 2'),
  },
  'mouth-silent': {
    severity: 'warning',
    example: mouthLine('"Noa" 1 2 3', '"Nao" 1 2 3'),
  },
  'mouth-unread': {
    severity: 'hint',
    example: text(
      'mouth A "Nao" 1 2 3\nvoice "Nao" 7..1+20 "鵺だ！"\n',
      'mouth A "Nao" 1 2 3\nvoice "Nao" 7..1+20 "鵺《ぬえ》だ！"\n',
    ),
  },
  'line-too-fast': {
    severity: 'hint',
    example: text(
      'A: 1..\nvoice "Nao" 7..1+2 "Wait for me at the harbour!"\n',
      'A: 1..\nvoice "Nao" 7..2+0 "Wait for me at the harbour!"\n',
    ),
  },
};
