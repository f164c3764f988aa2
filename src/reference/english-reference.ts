/** What the reference says around its pages, in English. */

import { ENGLISH_CARD } from './card/card-texts.js';
import type { ReferenceWords } from './reference-language.js';

/** What the CAPITALS of a line of syntax stand for. */
export const PLACEHOLDERS = {
  TIME: "37 frames, 5+12 seconds and frames, 8'04 feet and frames, or a mark: hit, hit+6",
  LENGTH: "37 frames, 5+12 seconds and frames, or 8'04 feet and frames of 35 mm film",
  RANGE: '1+1..5+0, both frames included; 1+1.. goes to the end of the sheet',
  TEXT: '"…" or 「…」',
  NAME: 'letters of any script, digits and _; a letter first',
  LEVEL: 'the name of a level',
  LEVELS: 'A or A,B',
  FIELD: 'the name of a field; full is always there',
  PHRASE: 'the name of a phrase',
  ITEM: 'a drawing, a group, a phrase: all that a timeline holds',
  NUMBER: '12, 12A or B',
  WHOLE: 'a whole number',
  SIZE: '560x200mm, width first',
  PLACE: '130,0: to the right, up; mm, or with cm or in',
  MM: 'a length: 3mm, 3 or 1.5in',
  SHARE: '60%',
  ANGLE: '30 or 30deg',
  RATE: '1.5mm/f, so much a frame',
  FIELDS: '8F: lines of the field chart',
  STEP: '2N, 3E: steps on the field chart',
  KEY: 'the name of a key: 2, 3a',
  HEARD: 'a time in the recording: 12.48s seconds, or 0:03:12:08 hours, minutes, seconds and frames',
  BETWEEN: 'the name of an in-between: 1.2, 1.1a',
  CODE: 'the code of a message, which stands behind its place: c012.cut:9:1: strobing',
  GOAL: 'a field on its frame, B@5+0, or a new field that graduations lead to, B right steps 1 2 4*3',
  HOW: 'how the way is spread, and what else may stand behind: see the table',
} as const;

export const ENGLISH_REFERENCE: ReferenceWords = {
  placeholders: PLACEHOLDERS,
  idle: (words) => `Without a meaning here, and an error: ${words}.`,
  see: (names, page) => `See also: ${names}; grammar/${page}.`,
  messages: (codes) => `Messages: ${codes}.`,
  explainsAny: 'cutwright explain WORD explains any of these.',
  insideWord: (word) => `${word}: a word inside statements`,
  inStatements: (names) => `In ${names}:`,
  lists: { statements: 'Statements', messages: 'Messages' },
  severities: { error: 'error', warning: 'warning', hint: 'hint' },
  about: (code, severity, title) => `${code} (${severity}): ${title}`,
  withFile: (name) => `With ${name}:`,
  failing: 'Goes wrong:',
  mended: 'Mended:',
  ofStatements: (names) => `Statements: ${names}.`,
  card: ENGLISH_CARD,
  situations: {},
};
