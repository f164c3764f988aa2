import { plural } from '../../../words/number-format.js';
import type { Texts } from '../catalogue-entry.js';
import type { PrintedPart } from '../message-terms.js';
import type { UsageMessages } from '../usage-codes.js';
import { meant, oneOf, rowsFault } from './terms-texts.js';

/** Why a part has no page. */
const NO_PAGE: Readonly<Record<PrintedPart, string>> = {
  cover: 'No cover',
  sheet: 'No sheet',
  charts: 'No in-between, so no chart',
  camera: 'No camera work, so no camera chart',
  table: 'Nothing moves, or only at constant speed or in swings, so no move table',
  strip: 'No graduations, so no scale strip',
  overlay: 'No camera work, so no field overlay',
};

/** What a command needs that stands alone, by the argument's name. */
const NEEDED: Readonly<Record<string, string>> = {
  files: 'files',
  what: 'to be told what to begin: episode or cut',
};

export const usage: Texts<UsageMessages> = {
  'unknown-command': {
    title: 'there is no such command',
    explanation: 'The first word is none of the commands. cutwright --help lists them.',
    message: {
      guess: ({ name, guess }) => `There is no command \`${name}\`${meant(guess)}`,
      file: ({ name }) => `\`${name}\` is no command; did you mean \`cutwright build ${name}\`?`,
      none: ({ name, commands }) =>
        `There is no command \`${name}\`; the commands are ${commands.join(', ')}.`,
    },
  },
  'unknown-option': {
    title: 'the command has no such option',
    explanation: 'Each command has its own options; its --help shows them with examples.',
    message: {
      'of-command': ({ command, option, guess }) =>
        `\`${command}\` has no option \`${option}\`${meant(guess)}`,
      'before-command': ({ option }) =>
        `The command stands first, then its options: \`cutwright build ${option} …\`.`,
    },
  },
  'option-value': {
    title: 'an option got a value that it does not take',
    explanation:
      'The option is known, but its value is missing, is none of its words, is out of its range, or fits nothing that would be printed.',
    message: {
      'no-value': ({ option }) => `\`${option}\` takes no value.`,
      'value-missing': ({ option }) => `\`${option}\` needs a value.`,
      choice: ({ option, words, guess }) => `\`${option}\` takes ${oneOf(words)}${meant(guess)}`,
      whole: ({ option, least, most }) => `\`${option}\` takes a whole number from ${least} to ${most}.`,
      count: ({ option, most }) => `\`${option}\` takes a number from 1 to ${most}.`,
      'rows-number': () => '`--rows` takes a number of rows, such as 144.',
      rows: ({ rows, fault }) => `\`--rows ${rows}\` does not do: ${rowsFault(fault)}.`,
      'page-range': () => '`--pages` takes pages counted from 1, such as 2, 2-3, 2- or 1,4-6.',
      'output-empty': () => '`--output` takes a file or a folder; nothing stands here.',
      'part-empty': ({ part, cuts }) => `${NO_PAGE[part]}, in ${plural(cuts, 'cut')}.`,
      'pages-empty': ({ pages, cuts }) => `\`--pages ${pages}\` chooses no page of ${plural(cuts, 'cut')}.`,
      'list-ending': () => '`--output` takes a file whose name ends in .pdf, .csv or .json.',
      revision: ({ option, revision, reason }) => `\`${option} ${revision}\` does not do: ${reason}.`,
      'pdf-ending': () => '`--output` takes a file whose name ends in .pdf.',
      'revision-without-cuts': ({ revision }) => `There were no cuts yet at \`${revision}\`.`,
      'compared-revision': ({ revision, reason }) => `\`${revision}\` cannot be read: ${reason}.`,
      'sheet-place': ({ option }) =>
        `\`${option}\` takes a place on the sheet, such as 37, 1+12 or 2'08; the first frame is 1.`,
      'to-before-from': ({ from, to }) => `\`--to ${to}\` lies before \`--from ${from}\`.`,
      'from-behind-end': ({ from, sheets, frames }) =>
        `\`--from ${from}\` lies behind the end: ${sheets > 1 ? 'the longest' : 'the'} sheet has ${frames} frames.`,
      'film-ending': ({ endings }) =>
        `\`--output\` takes a film whose name ends in ${oneOf(endings)}, a folder, or the names of pictures, such as frames/%04d.png.`,
      'picture-names': () =>
        'Names of pictures have one number in them and end in .png, such as frames/%04d.png.',
      'picture-size': ({ least, most }) =>
        `\`--size\` takes width and height in pixels, each from ${least} to ${most}, such as 960x540.`,
      'home-missing': () => '`--home` takes a folder that is there.',
      'level-not-shown': ({ level, guess }) => `There is no level \`${level}\` here${meant(guess)}`,
      'level-not-numbered': ({ level, guess }) => `There is no level \`${level}\`${meant(guess)}`,
      'start-time': () => '`--start` takes hours, minutes, seconds and frames, such as 01:00:00:00.',
      'start-frames': ({ fps }) =>
        `\`--start\` takes frames up to ${fps - 1}: the cuts run at ${fps} a second.`,
      'inbetween-name': ({ option }) =>
        `\`${option}\` takes a level and the name of an in-between, such as \`A:1.1a\`.`,
      'new-without-letter': ({ example }) =>
        `An in-between that was put in is named by the one before it and a letter, such as \`${example}\`.`,
      'not-pinned': ({ level }) => `The numbers of level ${level} are not pinned: it has no \`cels\` line.`,
      'not-in-cels': ({ level, drawing }) => `The \`cels\` line of level ${level} has no ${drawing}.`,
      'drawing-not-shown': () =>
        'The timeline does not show this drawing; write the in-between into it first, then number it.',
      'still-shown': ({ level, from, to }) =>
        `Level ${level} still shows as many in-betweens from key ${from} to key ${to} as are on paper; take the drawing out of the timeline first, then say that it is gone.`,
      'cut-number': () => 'A cut is numbered with letters and digits, such as 13 or 12A.',
      'cut-file-name': () => 'The name of a cut ends in .cut.',
      'new-levels': () => '`--levels` takes names of levels with commas between, such as A,B.',
      'new-time': ({ fault }, sentence) =>
        `\`--time\` takes a length such as 5+0, 120 or 8'04. ${sentence(fault)}`,
      'new-cut': ({ fault }, sentence) => `The new cut would not be one: ${sentence(fault)}`,
      'like-unknown': ({ cut, guess }) =>
        `The episode has no cut ${cut}${guess === null ? '.' : `; did you mean ${guess}?`}`,
      'like-nothing': ({ file }) =>
        `There is no episode here, and no file \`${file}\`, that a cut could be like.`,
      'progress-word': ({ what, found, words, guess }) =>
        guess === null
          ? `\`${found}\` is no ${what}, which would be ${oneOf(words)}.`
          : `\`${found}\` is no ${what}${meant(guess)}`,
      day: ({ option }) => `\`${option}\` takes a day with the year first, such as 2027-03-19.`,
      shell: ({ shells, guess }) => `\`completion\` is for ${oneOf(shells)}${meant(guess)}`,
      shard: () => '`--shard` takes a part of a number of parts, from 1/8 to 8/8.',
      jobs: ({ most }) => `\`--jobs\` takes a number of threads, from 1 to ${most}.`,
      port: () => '`--preview` takes a port from 1 to 65535, or nothing.',
    },
  },
  'wrong-arguments': {
    title: 'the command was given too little, too much or the wrong thing',
    explanation:
      'Something that the command needs is missing from the line, there is more on the line than it can use, or two things do not go together. The message says which.',
    message: {
      missing: ({ command, argument }) =>
        `\`${command}\` needs ${NEEDED[argument] ?? `a ${argument}`}; see \`${command} --help\`.`,
      'too-many': ({ command }) => `\`${command}\` takes fewer words than these; see its \`--help\`.`,
      'no-episode': ({ command }) =>
        `\`${command}\` needs files: this folder lies in no episode (there is no episode.yaml here or above); see \`${command} --help\`.`,
      library: ({ message }) => message,
      'needs-output': ({ option }) => `\`${option}\` is printed on the note: it goes with \`--output\`.`,
      'not-together': ({ one, other }) => `\`${one}\` and \`${other}\` do not go together.`,
      'one-output': ({ cuts, standardOutput }) =>
        `${cuts} cuts do not go into ${standardOutput ? 'standard output' : 'one file'}; name a folder.`,
      'one-json': ({ cuts }) => `${cuts} cuts do not go into one JSON text; name a folder with \`--output\`.`,
      'output-nameless': ({ ending }) =>
        `These cuts are not one whole episode, so their file has no name; give \`--output\` one, such as cuts${ending}.`,
      'film-standard-output': () =>
        'A film is no text for standard output; give `--output` a file or a folder.',
      'input-nameless': () => 'Standard input has no name; give `--output` a file.',
      'two-comparisons': () => '`--changed` and `--since` are two comparisons; give one of them.',
      'pages-changed-alone': () =>
        '`--pages changed` needs something to compare with: `--changed` (the last build) or `--since REV`.',
      'changed-standard-output': () =>
        '`--changed` compares with the file of the last build; standard output has none.',
      'pages-found': ({ option }) =>
        `\`${option}\` finds the pages itself; with it, \`--pages\` takes only \`changed\`.`,
      'input-revisions': ({ option }) => `Standard input has no revisions; \`${option}\` needs files.`,
      'marks-without-sheet': ({ part }) =>
        `\`--marked-against\` marks the sheets; \`--only ${part}\` prints none.`,
      'marks-changed-pages': () =>
        '`--marked-against` prints whole cuts, since their columns make room for the marks; leave out `--pages changed`.',
      'up-without-cover': () =>
        '`--up` puts the covers of several cuts on a page; it goes with `--only cover`.',
      'plan-folder': () => '`--plan` prints each cut into a file of its own; give `--output` a folder.',
      'plan-name': ({ tool, file }) => `${tool} cannot be told of a file with this name: \`${file}\`.`,
      'versions-missing': () => 'Name the old and the new version, or `--since` and a revision.',
      'versions-three': () => 'Two versions are compared, an old and a new one.',
      'versions-both-input': () => 'Standard input can be only one of the two.',
      'input-past': () => 'Standard input has no past; name a file with `--since`.',
      'bare-revision': ({ revision }) =>
        `\`${revision}\` is a revision: write \`${revision}:\` for all that it holds, \`${revision}:PATH\` for a part, or compare with \`--since ${revision}\`.`,
      'version-unreadable': ({ version, reason }) => `\`${version}\` cannot be read: ${reason}.`,
      'version-without-cut': ({ version, cut }) => `\`${version}\` holds no cut ${cut}.`,
      'version-shared': () => 'The file holds only what cuts share, and makes no cut that could be compared.',
      'git-words': () =>
        '`--git` takes the seven words that git gives to a diff command; git calls it, not you.',
      'list-episodes': ({ manifests }) =>
        `A list is of one episode, and these cuts belong to ${manifests.length}: ${manifests.map((file) => (file === null ? 'none' : `\`${file}\``)).join(', ')}.`,
      'edit-episodes': ({ episodes }) => `These cuts are of ${episodes} episodes; an edit is of one.`,
      'only-without-pdf': () => '`--only` says what to print; give `--output` a name that ends in .pdf.',
      'start-without-edit': () => '`--start` belongs to an edit: it goes with `--edit`.',
      'progress-words': ({ states }) =>
        `\`progress\` takes an episode, or a cut, a stage and ${oneOf(states)}, as in \`cutwright progress 12 key done\`.`,
      'progress-option': ({ option }) =>
        `\`${option}\` goes with a row that is written, as in \`cutwright progress 12 key done\`.`,
      'new-what': ({ guess }) =>
        `\`new\` makes an episode or a cut${meant(guess, ', so one of these words comes next.')}`,
      'new-cut-option': ({ option }) => `\`${option}\` is for a new cut; an episode has none.`,
      'new-cut-number': () => 'A new cut needs its number, as in `cutwright new cut 13`.',
      'table-without-number': () =>
        'The table does not say which cut it is; name its number, as in `cutwright new cut 13 --from-csv grid.csv`.',
      'table-one-file': ({ cuts }) => `The table has ${cuts} cuts; name a folder.`,
      'table-one-number': ({ cuts }) =>
        `The table has ${cuts} cuts, which have their own numbers; leave this one out.`,
      'retimed-several': () => 'Which drawing is new or gone is said of one cut at a time.',
      'watch-input': () => 'Standard input is not saved; name files.',
      'watch-output': () => '`watch` writes again and again; give `--output` a file or a folder.',
      'lsp-terminal': () =>
        'An editor starts `cutwright lsp` and speaks to it; `cutwright check` says what is wrong with a cut.',
      'explain-unknown': ({ word, guess }) =>
        `There is no statement, word or code \`${word}\`${meant(guess, '; `cutwright explain` lists all of them.')}`,
    },
  },
  'internal-fault': {
    title: 'the program itself failed',
    explanation:
      'This is a fault of the program and not of the text. The other cuts of the run are still done. Please report it with the cut; until it is mended, taking out the last change usually helps.',
    message: ({ onCut, error }) => `The program failed${onCut ? ' on this cut' : ''}: ${error}.`,
  },
};
