import type { Texts } from '../catalogue-entry.js';
import type { TypingMessages } from '../command-codes.js';
import { meant } from './terms-texts.js';

/** Row and column are said, since a table is looked at in a program that shows them. */
const inCell =
  <P extends { readonly row: number; readonly column: number }>(sentence: (parameters: P) => string) =>
  (parameters: P): string =>
    `Row ${parameters.row}, column ${parameters.column}: ${sentence(parameters)}`;

/** Of which frames one is missing or stands twice. */
const ofWhat = (level: string | null): string => (level === null ? 'of the sheet' : `of level ${level}`);

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
    message: {
      'file-for-folder': ({ path }) => `\`${path}\` is a file; an episode needs a folder.`,
      there: ({ paths }) =>
        `${paths.map((path) => `\`${path}\``).join(', ')} ${paths.length > 1 ? 'are' : 'is'} there already; nothing was written.`,
    },
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
    message: {
      'second-watch': ({ folder, by }) =>
        `\`${folder}\` is written to by another watch already, ${by === null ? 'this process' : `process ${by}`}: end that one, or name all cuts in one call.`,
      'folder-gone': ({ folder }) => `The folder \`${folder}\` is gone, so nothing is watched any more.`,
      system: ({ reason }) => `The system does not let folders be watched: ${reason}.`,
      port: ({ port, kept }) =>
        `The pages cannot be shown at port ${port}: ${kept ? 'the system keeps it for others' : 'another program listens there'}. Leave the port out, and a free one is taken.`,
    },
  },
  'table-faulty': {
    title: 'a table of exposures cannot be read',
    explanation:
      'The CSV that a cut was to be made of is not as it should be: a row has too many or too few columns, frames are missing or stand twice, or a cell holds what is no drawing. The message names row and column as a table shows them. The table is either as `cutwright export --table exposures` writes it, or a row a frame with a column a level, headed `frame,A,B`. Nothing was written.',
    message: {
      empty: () => 'The table is empty: its first row should name its columns.',
      'open-quote': () => 'A quote that is opened here is never closed.',
      'no-csv': ({ message }) => `This is no CSV: ${message.charAt(0).toLowerCase()}${message.slice(1)}.`,
      'no-rows': inCell(() => 'The table has no row below its header.'),
      'no-frame-column': inCell(
        () =>
          'The first row names no column `frame`; a grid is headed `frame,A,B`, an exported table `cut,level,frame,…`.',
      ),
      'no-level-column': inCell(() => 'The table has no level beside its frames.'),
      'row-length': inCell(
        ({ columns, header }) => `This row has ${columns} columns; the header has ${header}.`,
      ),
      'unknown-column': inCell(
        ({ name, guess }) => `The table has no use for a column \`${name}\`${meant(guess)}`,
      ),
      'no-column': inCell(({ name }) => `The table has no column \`${name}\`.`),
      'no-cut-number': inCell(({ found }) => `\`${found}\` is no number of a cut.`),
      'no-level-name': inCell(({ found }) => `\`${found}\` is no name of a level, such as A, BG or ア.`),
      'no-frame': inCell(({ found }) => `\`${found}\` is no frame, counted from 1.`),
      'no-drawing': inCell(
        ({ found }) =>
          `\`${found}\` is no drawing: a key is 3 or 3a, an in-between 1.2 or 1>3.2, an empty level x.`,
      ),
      'no-kind': inCell(({ found }) => `\`${found}\` is none of key, breakdown, inbetween and empty.`),
      'no-cel': inCell(({ found }) => `\`${found}\` is no number of a finished drawing.`),
      'cel-twice': inCell(
        ({ drawing }) => `Drawing ${drawing} has had another number, or its number another drawing, before.`,
      ),
      'level-twice': inCell(({ level }) => `Level ${level} has two columns.`),
      uneven: inCell(
        ({ cut, level, frames, longest, most }) =>
          `Level ${level}${cut === '' ? '' : ` of cut ${cut}`} has ${frames} frames, level ${longest} ${most}.`,
      ),
      'too-many-frames': inCell(({ most }) => `A cut has no more than ${most} frames.`),
      'frame-again': inCell(
        ({ frame, wanted, level }) =>
          `Frame ${frame} ${ofWhat(level)} stands here again; frame ${wanted} was to come.`,
      ),
      'frame-missing': inCell(
        ({ frame, wanted, level }) => `Frame ${wanted} ${ofWhat(level)} is missing before frame ${frame}.`,
      ),
      'kind-without-drawing': inCell(({ kind }) => `There is no drawing for a row that is \`${kind}\`.`),
      'kind-unfit': inCell(({ drawing, kind }) => `Drawing ${drawing} cannot be \`${kind}\`.`),
    },
  },
  'draft-unlike': {
    title: 'a level of a table cannot be typed just so',
    explanation:
      'The text that was made of a table shows the same frames, but on this level some names, breakdowns or numbers of drawings are others: the table shows a passage only in part, and its other in-betweens have no place in the text. Look at the level and put it right by hand.',
    message: ({ level, cut }) =>
      `Level ${level} of cut ${cut}: some names, breakdowns or numbers could not be typed as the table has them.`,
  },
};
