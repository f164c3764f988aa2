import type { Entries, Sentence } from './entry.js';

export interface HandoverMessages {
  readonly 'edit-speeds': Sentence;
  readonly 'edit-dissolve': Sentence;
  readonly 'edit-list-limit': Sentence;
  readonly 'edit-list-long': Sentence;
  readonly 'pixels-shape': Sentence;
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
  'edit-list-long': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit edl, where two cuts dissolve over 300 frames',
      mended: 'cutwright export cuts/ --edit otio',
    },
  },
  'pixels-shape': {
    severity: 'warning',
    example: {
      kind: 'situation',
      failing: 'cutwright export c012.cut --pixels, where episode.yaml says output: 1440x1080',
      mended: 'the same with output: 1920x1080',
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
