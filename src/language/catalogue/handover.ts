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
  'edit-list-long': {
    severity: 'warning',
    title: 'a dissolve that many readers of edit lists do not know',
    explanation:
      'The list gives a dissolve three digits, but many machines and programs that read such lists take 255 frames at most. Ask the cutting room, or export with --edit otio.',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit edl, where two cuts dissolve over 300 frames',
      mended: 'cutwright export cuts/ --edit otio',
    },
  },
  'pixels-shape': {
    severity: 'warning',
    title: 'pixels of a picture that is not shaped as the field',
    explanation:
      'The standard field becomes the finished picture, so both need one shape, as 254mm x 142.875mm and 1920x1080. Otherwise a millimetre is not as many pixels up as it is across, and what moves at an angle moves at another one. Mend `field` or `output` in episode.yaml.',
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
