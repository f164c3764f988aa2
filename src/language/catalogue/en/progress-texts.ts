import type { Texts } from '../catalogue-entry.js';
import type { ProgressMessages } from '../progress-codes.js';
import { meant, oneOf } from './terms-texts.js';

const by = (person: string): string => (person === '' ? '' : `, ${person}`);

export const progress: Texts<ProgressMessages> = {
  'progress-faulty': {
    title: 'a row of progress.csv cannot be read',
    explanation:
      'The table is CSV, a row for each thing that happened to a cut: its first row names the columns cut, stage and date, and where they are wanted state, person and note, in any order. A stage is one of the manifest, a state is started, done or retake (done where nothing is said), a day is written with the year first, 2027-03-19. The place is the line and the column of the file. A row that cannot be read counts for nothing; nothing in the file is changed.',
    message: {
      'open-quote': () => 'A quote that is opened here is never closed.',
      'no-csv': ({ message }) => `This is no CSV: ${message.charAt(0).toLowerCase()}${message.slice(1)}.`,
      'no-column': ({ name, found }) =>
        `The first row names no column \`${name}\`${found === null ? '.' : `; did you mean it by \`${found}\`?`}`,
      'column-twice': ({ name }) => `The column \`${name}\` stands here already.`,
      'too-many-cells': ({ cells, columns }) =>
        `This row has ${cells} cells under ${columns} columns: a text with a comma stands in quotes.`,
      'no-cut': () => 'This row names no cut.',
      'no-stage': () => 'This row names no stage.',
      stage: ({ found, words, guess }) =>
        guess === null
          ? `\`${found}\` is no stage; the stages are ${words.join(', ')}.`
          : `\`${found}\` is no stage${meant(guess)}`,
      state: ({ found, words, guess }) =>
        guess === null
          ? `\`${found}\` is no state: a cut is ${oneOf(words)}.`
          : `\`${found}\` is no state${meant(guess)}`,
      day: ({ found }) =>
        found === ''
          ? 'This row has no day; write it with the year first, such as 2027-03-19.'
          : `\`${found}\` is no day with the year first, such as 2027-03-19.`,
    },
  },
  'progress-cut': {
    title: 'progress is told of a cut that is not there',
    explanation:
      'A row of progress.csv, or a day under due in the manifest, names a cut whose number no cut of the episode has. It counts for nothing. Perhaps the number is a slip, or the cut has been taken out. Full-width forms and leading zeros do not matter: 012 is 12; 12A is another cut than 12.',
    message: ({ inRow, cut, guess }) =>
      inRow
        ? `The episode has no cut ${cut}${meant(guess)}`
        : `A day is due for cut ${cut}, which the episode does not have${meant(guess)}`,
  },
  'progress-twice': {
    title: 'a stage is done twice',
    explanation:
      'The stage was done before, and no retake stands between the two rows. Only the first one counts: it says who is paid. Perhaps two people wrote the same thing down, or the row of a retake is missing.',
    message: ({ state, cut, stage, date, person }) =>
      `Cut ${cut}: ${stage} ${state === 'done' ? 'is' : 'is started again, but it was'} done already, on ${date}${by(person)}; a row with \`retake\` would send it back.`,
  },
  'progress-order': {
    title: 'rows of a cut in an order that cannot be',
    explanation:
      'A stage is done while an earlier one is not, or is sent back before it was done. Often a row was forgotten, or a day is a slip. The rows count as they stand.',
    message: {
      early: ({ cut, stage, date, missing }) =>
        `Cut ${cut}: ${stage} is done on ${date}, but ${missing}, which comes before it, is not done by then.`,
      'retake-open': ({ cut, stage }) => `Cut ${cut}: ${stage} is sent back, but it was not done.`,
    },
  },
  'progress-open': {
    title: 'another program has progress.csv open',
    explanation:
      'A spreadsheet that has a table open leaves a lock file beside it. Who saves there later would write over a row that is added now, so none is written. Close the table there, or write the row there. If no program has it open, a crash has left the lock file behind: delete it. Another call of this program that writes a row is done in a moment: run the command again.',
    message: {
      spreadsheet: ({ file, lock }) =>
        `\`${file}\` is open in another program, which would lose a row that is written now: close it there first. If it is not, delete \`${lock}\`.`,
      process: ({ file, by: process }) =>
        `Process ${process} writes to \`${file}\` at this moment; run the command again.`,
    },
  },
};
