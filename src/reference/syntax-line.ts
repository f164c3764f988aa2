/** The syntax of a statement on one line, out of the grammar: words and signs as typed, CAPITALS for what is filled in. */

import { type Production, productions } from '../language/grammar-queries.js';

/** What the CAPITALS stand for. */
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
  CODE: 'what stands in square brackets in a message: warning[strobing]',
  HOW: 'how the way is spread, and what else may stand behind: see the table',
} as const;

export type PlaceholderName = keyof typeof PLACEHOLDERS;

const RULES: Readonly<Record<string, PlaceholderName>> = {
  position: 'TIME',
  length: 'LENGTH',
  range: 'RANGE',
  text: 'TEXT',
  name: 'NAME',
  list: 'LEVELS',
  item: 'ITEM',
  label: 'NUMBER',
  code: 'CODE',
  whole: 'WHOLE',
  size: 'SIZE',
  point: 'PLACE',
  signed: 'MM',
  recordingTime: 'HEARD',
  measure: 'MM',
  percent: 'SHARE',
  degrees: 'ANGLE',
};

const TOKENS: Readonly<Record<string, PlaceholderName>> = {
  Percent: 'SHARE',
  FieldNumber: 'FIELDS',
  FieldPart: 'FIELDS',
  ChartStep: 'STEP',
  ChartPart: 'STEP',
  Length: 'MM',
  Integer: 'MM',
  Decimal: 'MM',
  Degrees: 'ANGLE',
  Rate: 'RATE',
  Key: 'KEY',
  Between: 'BETWEEN',
};

/** What a name is in the rule where it stands, if it is more than a name. */
const NAMED: Readonly<Record<string, PlaceholderName>> = {
  timeline: 'LEVEL',
  names: 'LEVEL',
  levelStatement: 'LEVEL',
  celsStatement: 'LEVEL',
  cutLevel: 'LEVEL',
  fixStatement: 'FIELD',
  panStop: 'FIELD',
  truckStop: 'FIELD',
  phraseStatement: 'PHRASE',
};

const BRACKETS = new Set(['(', ')', '[', ']', '{', '}', '|']);

export interface SyntaxLine {
  readonly line: string;
  /** The capitals that it holds, in the order of their first use. */
  readonly places: readonly PlaceholderName[];
}

export function syntaxLine(rule: string): SyntaxLine {
  const line = written(productions().get(rule)!, rule)
    .replace(/ ?@ ?/g, '@')
    .replace(/ ([,:])/g, '$1')
    .replace(/, /g, ',');
  const names = [...line.matchAll(/[A-Z]{2,}/g)].map(([name]) => name as PlaceholderName);
  return { line, places: [...new Set(names)].filter((name) => Object.hasOwn(PLACEHOLDERS, name)) };
}

function written(piece: Production, rule: string): string {
  switch (piece.kind) {
    case 'literal':
      return BRACKETS.has(piece.text) ? `'${piece.text}'` : piece.text;
    case 'token':
      return TOKENS[piece.name]!;
    case 'rule': {
      if (piece.name === 'name' && Object.hasOwn(NAMED, rule)) return NAMED[rule]!;
      if (piece.name === 'tail') return '[ HOW ]';
      return RULES[piece.name] ?? written(productions().get(piece.name)!, piece.name);
    }
    case 'sequence':
      return piece.pieces.map((one) => written(one, rule)).join(' ');
    case 'choice': {
      const ways = new Set(piece.pieces.map((one) => written(one, rule)));
      return ways.size === 1 ? [...ways][0]! : `( ${[...ways].join(' | ')} )`;
    }
    case 'optional':
      return `[ ${bare(written(piece.piece, rule))} ]`;
    case 'many':
      return `[ ${bare(written(piece.piece, rule))} ]…`;
    case 'some': {
      const inner = written(piece.piece, rule);
      return /^(\S+|\( [^()]* \))$/.test(inner) ? `${inner}…` : `( ${inner} )…`;
    }
  }
}

/** One pair of brackets is enough. */
const bare = (text: string): string => /^\( ([^()]*) \)$/.exec(text)?.[1] ?? text;
