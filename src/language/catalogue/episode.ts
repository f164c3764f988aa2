import { entries } from './entry.js';

/** What cuts of one episode have to do with each other. */
export const episode = entries({
  'overlap-differs': {
    severity: 'error',
    title: 'two cuts name different lengths for their dissolve',
    explanation:
      'A dissolve is shot from two sheets, and both must say how long it lasts. Here they do not agree, so no picture can be made of the two. Ask which length is meant, and write it in both cuts. The same frames may be written in several ways: at 24 frames a second 24 is 1+0.',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 at the end of cut 12, and overlap in 12 at the beginning of cut 13',
      mended: 'overlap out 24 at the end of cut 12, and overlap in 24 at the beginning of cut 13',
    },
  },
  'overlap-fps': {
    severity: 'error',
    title: 'two cuts that dissolve run at different speeds',
    explanation:
      'In a dissolve the two cuts are mixed frame by frame, so both must have the same number of frames a second. One of the two has an fps line that the other has not.',
    example: {
      kind: 'situation',
      failing: 'cut 12 with fps 12 and overlap out 24, and cut 13 at 24 with overlap in 24',
      mended: 'both cuts without an fps line',
    },
  },
  'overlap-unanswered': {
    severity: 'warning',
    title: 'the next cut knows nothing of this dissolve',
    explanation:
      'This cut dissolves with its neighbour, whose text has no overlap on that side, so the other sheet lacks its rows. The neighbour is the cut before or after this one in the manifest; where the cut that is meant is not written yet, nothing is wrong.',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 in cut 12, and no overlap in cut 13',
      mended: 'overlap out 24 in cut 12, and overlap in 24 in cut 13',
    },
  },
  'overlap-missing': {
    severity: 'warning',
    title: 'the neighbouring cut dissolves with this one, which does not say so',
    explanation:
      'The cut before or after this one ends or begins in a dissolve with it. Both sheets need the rows of the dissolve, so this cut needs the same line from its side. Its timelines then count the rows of the handle, too.',
    example: {
      kind: 'situation',
      failing: 'cut 13 without an overlap, where cut 12 says: overlap out 24',
      mended: 'cut 13 says: overlap in 24',
    },
  },
  'overlap-alone': {
    severity: 'warning',
    title: 'there is no cut to dissolve with',
    explanation:
      'The first cut of an episode begins in a dissolve, or the last one ends in one: there is no other cut on that side. From or to black it is a fade.',
    example: {
      kind: 'situation',
      failing: 'overlap in 24 in the first cut of the episode',
      mended: 'fade in 1..24',
    },
  },
  'overlap-unchecked': {
    severity: 'hint',
    title: 'whether the neighbour agrees on the dissolve cannot be told',
    explanation:
      'The neighbouring cut has errors that keep its overlap from being read, so the two lengths could not be compared. Mend that cut first.',
    example: {
      kind: 'situation',
      failing: 'overlap out 24 in cut 12, where cut 13 says: overlap in',
      mended: 'overlap out 24 in cut 12, where cut 13 says: overlap in 24',
    },
  },
  'reuse-circle': {
    severity: 'error',
    title: 'levels reuse each other in a circle',
    explanation:
      'Each level takes its drawings from the next, and the last from the first, so nobody draws them. The message shows the chain; the cut for which the drawings are made has no reuse.',
    example: {
      kind: 'situation',
      failing: 'level C reuse 8/C in cut 9, and level C reuse 9/C in cut 8',
      mended: 'level C reuse 8/C in cut 9, and cut 8 without it',
    },
  },
  'reuse-nothing': {
    severity: 'hint',
    title: 'a level reuses nothing of the other one',
    explanation:
      'The level is said to reuse that of another cut, but none of the drawings that it shows is there, so all of them are new and are numbered on from the other cut’s. Perhaps the cut or the level is a slip.',
    example: {
      kind: 'situation',
      failing: 'level C reuse 8/C and C: 5--6.., where level C of cut 8 shows 1--2',
      mended: 'level C reuse 8/C and C: 1--2..',
    },
  },
});
