import type { Entries, Sentence } from './entry.js';

export interface HandoverMessages {
  readonly 'edit-speeds': Sentence;
  readonly 'edit-dissolve': Sentence;
  readonly 'edit-list-limit': Sentence;
}

/** Faults of handing an episode over to the cutting room. */
export const handover: Entries<HandoverMessages> = {
  'edit-speeds': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit otio, where one of the cuts says fps 12',
      mended: 'the same without the line fps 12',
    },
  },
  'edit-dissolve': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing:
        'cutwright export cuts/ --edit edl, where cut 1 says overlap out 12 and cut 2 says overlap in 8',
      mended: 'both say 12',
    },
  },
  'edit-list-limit': {
    severity: 'error',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit edl, where the cuts run at 12 frames a second',
      mended: 'cutwright export cuts/ --edit otio',
    },
  },
};
