import { asGiven, type Texts } from '../text-types.js';
import type { TypingMessages } from '../typing-codes.js';

export const typing: Texts<TypingMessages> = {
  'number-two-counts': {
    title: 'two counts for one pair of keys cannot be pinned',
    explanation:
      'A level goes from one key to another twice, with another number of in-betweens each time. They are other drawings, but the second ones have no name that a cels line could hold, so their numbers cannot be pinned. Give both places the same count, or let the second one lead to a key of its own, such as 2a for 2. Nothing was written for this cut.',
    message: ({ from, to, level, count }) =>
      `From key ${from} to key ${to} level ${level} has ${count} in-betweens here and another count before, so these have no names to be pinned by.`,
  },
  'would-overwrite': {
    title: 'a file is there already',
    explanation:
      'A command that begins new files never writes over old ones. Where one of its files is there already, none is written. Choose another name or folder, or move the old file away.',
    message: asGiven,
  },
  'number-taken': {
    title: 'the episode has a cut of that number',
    explanation:
      'A new cut needs a number of its own. Full-width forms and leading zeros do not matter: 012 is 12. A cut that is put in between is numbered with a letter, such as 12A.',
    message: ({ cut, file }) => `Cut ${cut} is there already: \`${file}\`.`,
  },
  'watch-impossible': {
    title: 'files cannot be watched',
    explanation:
      'A watch cannot begin, or cannot go on. Two watches that write into one folder would print over each other, so the second one is refused: end the first, or name all cuts in one call. Other reasons are a folder that is gone, a port that is taken, and a system that watches no more files; the message says which.',
    message: asGiven,
  },
  'table-faulty': {
    title: 'a table of exposures cannot be read',
    explanation:
      'The CSV that a cut was to be made of is not as it should be: a row has too many or too few columns, frames are missing or stand twice, or a cell holds what is no drawing. The message names row and column as a table shows them. The table is either as `cutwright export --table exposures` writes it, or a row a frame with a column a level, headed `frame,A,B`. Nothing was written.',
    message: asGiven,
  },
  'draft-unlike': {
    title: 'a level of a table cannot be typed just so',
    explanation:
      'The text that was made of a table shows the same frames, but on this level some names, breakdowns or numbers of drawings are others: the table shows a passage only in part, and its other in-betweens have no place in the text. Look at the level and put it right by hand.',
    message: ({ level, cut }) =>
      `Level ${level} of cut ${cut}: some names, breakdowns or numbers could not be typed as the table has them.`,
  },
};
