/** What can be wrong with the words themselves, before anybody asks what they mean together. */

import { entries } from './entry.js';

const HEAD = 'cut 1\ntime 1+0\n';
const BODY = 'A: 1--2..\n';

export const words = entries({
  'control-character': {
    severity: 'error',
    title: 'a character that cannot be printed',
    explanation:
      'The text holds a character of control, such as NUL or BELL, or half of a character. It cannot be seen or printed, and mostly comes from a copy that went wrong. Leave it out.',
    example: {
      kind: 'text',
      failing: `${HEAD}memo "Rain\u0007"\n${BODY}`,
      mended: `${HEAD}memo "Rain"\n${BODY}`,
    },
  },
  'unclosed-text': {
    severity: 'error',
    title: 'text without its closing quote',
    explanation:
      'Text stands in "…" or 「…」 on one line. A line break inside a text is written \\n, a quote inside it \\".',
    example: { kind: 'text', failing: `${HEAD}memo "Rain\n${BODY}`, mended: `${HEAD}memo "Rain"\n${BODY}` },
  },
  'unknown-escape': {
    severity: 'error',
    title: 'a backslash that means nothing',
    explanation:
      'Inside a text a backslash says that the next character is special: \\" is a quote, \\\\ a backslash, \\n a new line. Other pairs mean nothing.',
    example: {
      kind: 'text',
      failing: `${HEAD}memo "Rain \\ wind"\n${BODY}`,
      mended: `${HEAD}memo "Rain \\\\ wind"\n${BODY}`,
    },
  },
  'unknown-character': {
    severity: 'error',
    title: 'a character of no use',
    explanation:
      'Outside of texts and comments the language uses letters, digits and a few signs. Full-width forms and the usual dashes are understood; this character is not.',
    example: { kind: 'text', failing: `${HEAD}A: [1--2]..\n`, mended: `${HEAD}A: (1--2-)..\n` },
  },
  'indented-start': {
    severity: 'error',
    title: 'an indented line with nothing above it',
    explanation:
      'An indented line goes on with the statement above. At the top of a text there is none. Move the line to the left edge.',
    example: { kind: 'text', failing: `  cut 1\ntime 1+0\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'indented-statement': {
    severity: 'error',
    title: 'a statement that is indented',
    explanation:
      'A statement starts at the left edge; an indented line goes on with the statement above. This one reads like a statement of its own.',
    example: { kind: 'text', failing: `cut 1\n  time 1+0\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'statement-start': {
    severity: 'error',
    title: 'a line that starts with no word',
    explanation:
      'What stands at the left edge starts a statement, and a statement starts with a word of the language or with the name of a level. A line that only goes on with the one above has to be indented.',
    example: { kind: 'text', failing: `${HEAD}A: 1--2\n3..\n`, mended: `${HEAD}A: 1--2\n    3..\n` },
  },
  'unknown-word': {
    severity: 'error',
    title: 'a first word that the language does not know',
    explanation:
      'A statement starts with a word of the language (`time`, `stack`, `voice` …) or, for a timeline, with the name of a level and a colon.',
    example: { kind: 'text', failing: `cut 1\ntmie 1+0\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'missing-colon': {
    severity: 'error',
    title: 'a timeline without its colon',
    explanation: 'A timeline is the name of a level, its title if it has one, a colon, and the drawings.',
    example: { kind: 'text', failing: `${HEAD}A 1--2..\n`, mended: `${HEAD}${BODY}` },
  },
  'spaced-number': {
    severity: 'error',
    title: 'blanks inside a number',
    explanation:
      "The sheet prints 5 + 0, but in the text seconds and frames stand together, and so do feet and frames: 5+0 and 8'04. With blanks between, a list of times could not be told from a sum.",
    example: { kind: 'text', failing: `cut 1\ntime 1 + 0\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'glued-number': {
    severity: 'error',
    title: 'something glued to a number',
    explanation:
      'A number may be followed by a unit of the language (mm, cm, in, deg, %), and the number of a key by one letter (3a). Anything else needs a blank between.',
    example: {
      kind: 'text',
      failing: `${HEAD}level BG size 560x200mmm\n${BODY}`,
      mended: `${HEAD}level BG size 560x200mm\n${BODY}`,
    },
  },
  'number-too-large': {
    severity: 'error',
    title: 'a number beyond all measure',
    explanation: 'Numbers have nine digits at most. Nothing in a cut is counted so high.',
    example: { kind: 'text', failing: `${HEAD}A: 1--2:10000000000\n`, mended: `${HEAD}${BODY}` },
  },
  'stray-dot': {
    severity: 'error',
    title: 'a dot too many or too few',
    explanation:
      'Two dots make a range (1+1..5+0) or a hold (6..), one dot stands inside a number or the name of an in-between (1.2). No number starts or ends with a dot.',
    example: { kind: 'text', failing: `${HEAD}A: 1--2...\n`, mended: `${HEAD}${BODY}` },
  },
  'times-sign': {
    severity: 'error',
    title: 'a repeat written with ×',
    explanation:
      'A cycle is repeated with a star: (1--2-)*3. The sign × is what an empty level is written with, so it cannot also count.',
    example: { kind: 'text', failing: `${HEAD}A: (1-2-)×3\n`, mended: `${HEAD}A: (1-2-)*3\n` },
  },
  'missing-quotes': {
    severity: 'error',
    title: 'text without quotes',
    explanation:
      'What is to be printed as it stands (speakers, lines, memos, names of people) is put in quotes.',
    example: {
      kind: 'text',
      failing: `${HEAD}voice Nao 1+1.. "Wait!"\n${BODY}`,
      mended: `${HEAD}voice "Nao" 1..1+0 "Wait!"\n${BODY}`,
    },
  },
  'unclosed-group': {
    severity: 'error',
    title: 'a group without its bracket',
    explanation: 'A group of drawings that repeats stands between ( and ). The closing bracket is missing.',
    example: { kind: 'text', failing: `${HEAD}A: (1--2-\n`, mended: `${HEAD}A: (1--2-)..\n` },
  },
  'nested-too-deep': {
    severity: 'error',
    title: 'groups too deep inside groups',
    explanation:
      'Groups may stand inside groups, but nobody can read so many brackets. Name the inner ones with `phrase`.',
    example: {
      kind: 'text',
      failing: `${HEAD}A: ${'('.repeat(60)}1${')'.repeat(60)}..\n`,
      mended: `${HEAD}A: ((1))..\n`,
    },
  },
  'stops-short': {
    severity: 'error',
    title: 'a statement that is not complete',
    explanation: 'Something that the statement needs is not there yet. The note shows a whole one.',
    example: { kind: 'text', failing: `cut 1\ntime\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'does-not-fit': {
    severity: 'error',
    title: 'something in the wrong place',
    explanation:
      'The statement was understood up to this place, and what stands here does not fit. The note shows how such a statement is written. The other statements were read all the same.',
    example: { kind: 'text', failing: `cut 1\ntime 60%\n${BODY}`, mended: `${HEAD}${BODY}` },
  },
  'part-twice': {
    severity: 'error',
    title: 'the same thing said twice of a level or a move',
    explanation:
      'Each of `size`, `at`, `free`, `carry`, `flash` and `reuse` is said once of a level, and each option such as `on 2` once of a move.',
    example: {
      kind: 'text',
      failing: `${HEAD}level BG size 560x200mm size 600x200mm\n${BODY}`,
      mended: `${HEAD}level BG size 600x200mm\n${BODY}`,
    },
  },
  'quick-level': {
    severity: 'error',
    title: 'a quick truck of a level',
    explanation:
      'A quick truck is one of the camera: its fairing is worked out on the field. A level is made larger or smaller with `truck level` and ramps or a curve.',
    example: {
      kind: 'text',
      failing: `${HEAD}${BODY}truck quick level A 100%@1 > 140%@1+0\n`,
      mended: `${HEAD}${BODY}truck level A 100%@1 > 140%@1+0\n`,
    },
  },
  'reading-stopped': {
    severity: 'error',
    title: 'too much that cannot be read',
    explanation:
      'After a thousand unreadable statements the rest of a text is left out: it is probably no cut at all, or one early slip runs through it.',
    example: {
      kind: 'situation',
      failing: 'a text with more than a thousand statements that cannot be read',
      mended: 'the first ones mended, or the right file named',
    },
  },
});
