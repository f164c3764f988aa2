import { entries } from './entry.js';

/** Faults that stand in the way of commands that write texts. */
export const typing = entries({
  'number-two-counts': {
    severity: 'error',
    title: 'two counts for one pair of keys cannot be pinned',
    explanation:
      'A level goes from one key to another twice, with another number of in-betweens each time. They are other drawings, but the second ones have no name that a cels line could hold, so their numbers cannot be pinned. Give both places the same count, or let the second one lead to a key of its own, such as 2a for 2. Nothing was written for this cut.',
    example: {
      kind: 'situation',
      failing: 'cutwright number c012.cut, where level A has 1--2 and later 1---2',
      mended: 'write 1--2 at both places, or 1---2a at the second',
    },
  },
});
