import type { Entries, Sentence } from './entry.js';

export interface EpisodeMessages {
  readonly 'overlap-differs': Sentence;
  readonly 'overlap-fps': Sentence;
  readonly 'overlap-unanswered': Sentence;
  readonly 'overlap-missing': Sentence;
  readonly 'overlap-alone': Sentence;
  readonly 'overlap-unchecked': Sentence;
  readonly 'reuse-circle': Sentence;
  readonly 'reuse-nothing': Sentence;
}

/** What cuts of one episode have to do with each other. */
export const episode: Entries<EpisodeMessages> = {
  'overlap-differs': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 at the end of cut 12, and overlap in 12 at the beginning of cut 13',
      mended: 'overlap out 24 at the end of cut 12, and overlap in 24 at the beginning of cut 13',
    },
  },
  'overlap-fps': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cut 12 with fps 12 and overlap out 24, and cut 13 at 24 with overlap in 24',
      mended: 'both cuts without an fps line',
    },
  },
  'overlap-unanswered': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 in cut 12, and no overlap in cut 13',
      mended: 'overlap out 24 in cut 12, and overlap in 24 in cut 13',
    },
  },
  'overlap-missing': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cut 13 without an overlap, where cut 12 says: overlap out 24',
      mended: 'cut 13 says: overlap in 24',
    },
  },
  'overlap-alone': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'overlap in 24 in the first cut of the episode',
      mended: 'fade in 1..24',
    },
  },
  'overlap-unchecked': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 in cut 12, where cut 13 says: overlap in',
      mended: 'overlap out 24 in cut 12, where cut 13 says: overlap in 24',
    },
  },
  'reuse-circle': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'level C reuse 8/C in cut 9, and level C reuse 9/C in cut 8',
      mended: 'level C reuse 8/C in cut 9, and cut 8 without it',
    },
  },
  'reuse-nothing': {
    severity: 'hint',
    example: {
      kind: 'situation',
      failing: 'level C reuse 8/C and C: 5--6.., where level C of cut 8 shows 1--2',
      mended: 'level C reuse 8/C and C: 1--2..',
    },
  },
};
