import { entries } from './entry.js';

/** Faults of handing an episode over to the cutting room. */
export const handover = entries({
  'edit-speeds': {
    severity: 'error',
    title: 'cuts of different speeds in one edit',
    explanation:
      'An edit counts all its cuts in frames of one length, so cuts of 24 and of 12 frames a second cannot stand in one. Usually an fps statement was left over in one cut; or export the cuts of each speed by themselves.',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit otio, where one of the cuts says fps 12',
      mended: 'the same without the line fps 12',
    },
  },
  'edit-dissolve': {
    severity: 'error',
    title: 'dissolves that make no edit',
    explanation:
      'A dissolve belongs to two cuts that follow each other, and both must name the same length: overlap out 24 in the first, overlap in 24 in the second. And a cut must be there alone, or at least for a moment, between the dissolve before it and the one after it.',
    example: {
      kind: 'situation',
      failing:
        'cutwright export cuts/ --edit edl, where cut 1 says overlap out 12 and cut 2 says overlap in 8',
      mended: 'both say 12',
    },
  },
  'edit-list-limit': {
    severity: 'error',
    title: 'more than an edit list can hold',
    explanation:
      'The CMX 3600 edit list is an old format: it counts 24, 25 or 30 frames a second, numbers 999 events, gives dissolves three digits, and its timecode ends at 24 hours. Export the episode in parts, or with --edit otio, which has none of these limits.',
    example: {
      kind: 'situation',
      failing: 'cutwright export cuts/ --edit edl, where the cuts run at 12 frames a second',
      mended: 'cutwright export cuts/ --edit otio',
    },
  },
});
