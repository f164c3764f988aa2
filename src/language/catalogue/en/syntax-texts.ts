import type { Texts } from '../catalogue-entry.js';
import type { WordMessages } from '../syntax-codes.js';
import { anyOf, codePoint, meant, misplaced, statementName } from './terms-texts.js';

/** What belongs together in a number. */
const PARTS = {
  seconds: 'Seconds and frames',
  feet: 'Feet and frames',
  unit: 'A number and its unit',
} as const;

export const words: Texts<WordMessages> = {
  'control-character': {
    title: 'a character that cannot be printed',
    explanation:
      'The text holds a character of control, such as NUL or BELL, or half of a character. It cannot be seen or printed, and mostly comes from a copy that went wrong. Leave it out.',
    message: ({ character }) =>
      `A character that cannot be seen or printed (${codePoint(character)}) stands in the text.`,
  },
  'unclosed-text': {
    title: 'text without its closing quote',
    explanation:
      'Text stands in "…" or 「…」 on one line. A line break inside a text is written \\n, a quote inside it \\".',
    message: {
      text: () => 'This text has no closing quote on its line.',
      statement: () => 'The quotes of this statement do not pair up: one is missing.',
    },
  },
  'unknown-escape': {
    title: 'a backslash that means nothing',
    explanation:
      'Inside a text a backslash says that the next character is special: \\" is a quote, \\\\ a backslash, \\n a new line. Other pairs mean nothing.',
    message: ({ pair }) => `\`${pair}\` means nothing in a text; a backslash itself is typed twice.`,
  },
  'unknown-character': {
    title: 'a character of no use',
    explanation:
      'Outside of texts and comments the language uses letters, digits and a few signs. Full-width forms and the usual dashes are understood; this character is not.',
    message: ({ found, guess }) => `\`${found}\` means nothing outside a text${meant(guess)}`,
  },
  'indented-start': {
    title: 'an indented line with nothing above it',
    explanation:
      'An indented line goes on with the statement above. At the top of a text there is none. Move the line to the left edge.',
    message: () => 'This line is indented, but there is no statement above that it could go on with.',
  },
  'indented-statement': {
    title: 'a statement that is indented',
    explanation:
      'A statement starts at the left edge; an indented line goes on with the statement above. This one reads like a statement of its own.',
    message: {
      unread: ({ found, statement }) =>
        `\`${found}\` is indented, and so goes on with the ${statementName(statement)} above, where it does not fit.`,
      phrase: ({ name }) =>
        `\`${name}\` is indented, and so is a phrase that the timeline above plays; there is none of that name.`,
    },
  },
  'statement-start': {
    title: 'a line that starts with no word',
    explanation:
      'What stands at the left edge starts a statement, and a statement starts with a word of the language or with the name of a level. A line that only goes on with the one above has to be indented.',
    message: ({ found }) =>
      `A line that starts at the left edge says something new and starts with a word, but this one starts with \`${found}\`.`,
  },
  'unknown-word': {
    title: 'a first word that the language does not know',
    explanation:
      'A statement starts with a word of the language (`time`, `stack`, `voice` …) or, for a timeline, with the name of a level and a colon.',
    message: ({ found, guess }) => `\`${found}\` is no word of the language${meant(guess)}`,
  },
  'word-renamed': {
    title: 'a word that has another name now',
    explanation:
      'One thing has one word in cuts, on paper and in messages. The old word is still read and means the same; write the new one when you next open the file.',
    message: ({ word, written }) => `\`${word}\` is called \`${written}\` now.`,
  },
  'trade-word': {
    title: 'a word of the trade that is another one here',
    explanation:
      'The trade has many words for one thing; the language has one of them, so that everybody can read a cut. `cutwright explain` finds its pages by the others as well: `cutwright explain T.U`.',
    message: {
      called: ({ found, here }) => `\`${found}\` is called \`${here}\` here.`,
      drawn: ({ found, here }) => `For \`${found}\` a timeline has signs: \`${here}\`.`,
      manifest: ({ found, here }) =>
        `\`${found}\` is said for all cuts in \`episode.yaml\`, as in \`${here}\`.`,
      instead: ({ found, here }) =>
        `There is no statement for \`${found}\`; \`${here}\` tells the compositor.`,
      command: ({ found, here }) => `\`${found}\` is no matter of a cut's text; the command is \`${here}\`.`,
      written: ({ found, here }) => `\`${found}\` is written \`${here}\` here.`,
      towards: ({ found, here }) =>
        `A direction says where it goes to, not where it comes from: \`${found}\` is written \`${here}\` here.`,
      'either-end': ({ found }) =>
        `\`${found}\` is said of both ends; here \`ease 12 0\` leaves slowly over 12 frames, \`ease 0 12\` arrives slowly.`,
      'left-out': ({ found }) => `\`${found}\` is left out here.`,
    },
  },
  'missing-colon': {
    title: 'a timeline without its colon',
    explanation: 'A timeline is the name of a level, its title if it has one, a colon, and the drawings.',
    message: ({ found }) =>
      `\`${found}\` is no word of the language; a timeline has a colon after its level.`,
  },
  'spaced-number': {
    title: 'blanks inside a number',
    explanation:
      "The sheet prints 5 + 0, but in the text seconds and frames stand together, and so do feet and frames: 5+0 and 8'04. With blanks between, a list of times could not be told from a sum.",
    message: ({ parts, joined }) => `${PARTS[parts]} are written with no blanks between: ${joined}.`,
  },
  'glued-number': {
    title: 'something glued to a number',
    explanation:
      'A number may be followed by a unit of the language (mm, cm, in, deg, %), and the number of a key by one letter (3a). Anything else needs a blank between.',
    message: {
      'feet-alone': ({ found }) => `\`${found}\` has feet but no frames.`,
      glued: ({ found }) => `\`${found}\` is neither a number nor a name: something is glued to the number.`,
    },
  },
  'number-too-large': {
    title: 'a number beyond all measure',
    explanation: 'Numbers have nine digits at most. Nothing in a cut is counted so high.',
    message: ({ found }) => `\`${found}\` is too large a number.`,
  },
  'stray-dot': {
    title: 'a dot too many or too few',
    explanation:
      'Two dots make a range (1+1..5+0) or a hold (6..), one dot stands inside a number or the name of an in-between (1.2). No number starts or ends with a dot.',
    message: {
      'too-many': () => 'There are too many dots here: a range and a hold have two.',
      single: () =>
        'A single dot means nothing here: a number has a digit on both sides of its dot, a hold has two dots.',
      leading: ({ number }) => `A number does not start with a dot: ${number}.`,
    },
  },
  'times-sign': {
    title: 'a repeat written with ×',
    explanation:
      'A cycle is repeated with a star: (1--2-)*3. The sign × is what an empty level is written with, so it cannot also count.',
    message: ({ times }) => `A group is repeated with a star: *${times}.`,
  },
  'missing-quotes': {
    title: 'text without quotes',
    explanation:
      'What is to be printed as it stands (speakers, lines, memos, names of people) is put in quotes.',
    message: ({ found }) => `Text stands in quotes, but \`${found}\` has none.`,
  },
  'unclosed-group': {
    title: 'a group without its bracket',
    explanation: 'A group of drawings that repeats stands between ( and ). The closing bracket is missing.',
    message: () => 'This group is never closed: its `)` is missing.',
  },
  'nested-too-deep': {
    title: 'groups too deep inside groups',
    explanation:
      'Groups may stand inside groups, but nobody can read so many brackets. Name the inner ones with `phrase`.',
    message: ({ most }) => `Groups stand in groups more than ${most} deep here.`,
  },
  'stops-short': {
    title: 'a statement that is not complete',
    explanation: 'Something that the statement needs is not there yet. The note shows a whole one.',
    message: ({ statement, wanted, last }) =>
      `The ${statementName(statement)} stops too soon: ${anyOf(wanted)} should follow \`${last}\`.`,
  },
  'does-not-fit': {
    title: 'something in the wrong place',
    explanation:
      'The statement was understood up to this place, and what stands here does not fit. The note shows how such a statement is written. The other statements were read all the same.',
    message: {
      'level-meant': ({ found, statement }) =>
        `\`${found}\` does not fit here; a level is meant, with the word \`level\` before it${statement === 'truck' ? ', and `truck` alone moves the camera from field to field' : ''}.`,
      'word-with-colon': ({ word }) =>
        `With its colon this is the timeline of a level called \`${word}\`; the ${statementName(word)} has none.`,
      'word-meant': ({ found, guess }) => `\`${found}\` does not fit here; did you mean \`${guess}\`?`,
      wanted: ({ found, wanted }) => `\`${found}\` does not fit here, where ${anyOf(wanted)} should stand.`,
      misplaced: ({ found, why }) => `\`${found}\` does not fit here: ${misplaced[why]}.`,
      'not-shown': ({ found }) => `\`${found}\` is nothing that a timeline can show.`,
      'too-much': ({ found, statement }) =>
        `\`${found}\` is too much: the ${statementName(statement)} is complete before it.`,
    },
  },
  'part-twice': {
    title: 'the same thing said twice of a level, a mouth or a move',
    explanation:
      'Each of `size`, `at`, `free`, `carry`, `flash`, `reuse` and `picture` is said once of a level, `on`, `lead` and `flaps` once of a mouth, and each option such as `on 2` once of a move.',
    message: ({ part, of }) => `\`${part}\` is said twice of one ${of}.`,
  },
  'quick-level': {
    title: 'a quick truck of a level',
    explanation:
      'A quick truck is one of the camera: its fairing is worked out on the field. A level is made larger or smaller with `truck level` and an ease or a curve.',
    message: () => 'A quick truck is one of the camera, not of a level.',
  },
  'reading-stopped': {
    title: 'too much that cannot be read',
    explanation:
      'After a thousand unreadable statements the rest of a text is left out: it is probably no cut at all, or one early slip runs through it.',
    message: ({ most }) => `More than ${most} statements cannot be read; the rest was left out.`,
  },
};
