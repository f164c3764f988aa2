/** Pages for a terminal: wrapped lines, examples indented. */

import stringWidth from 'string-width';
import { laterWordsOf, type Production, productions } from '../language/grammar-queries.js';
import { holdsWord, idleWords, ruleOf, type StatementPage, statementPages } from './statement-pages.js';

const WIDTH = 80;
/** A left column wider than this has its meaning on the next line. */
const WIDEST = 22;

/** The page of a statement as plain text. */
export function plainPage(name: string): string {
  const page = statementPages[name]!;
  const { line, places } = syntaxLine(ruleOf(name).rule);
  const rest = idleWords(name);
  const sections = [
    `${name}: ${page.title}`,
    hanging(line, '    '),
    columns(places.map((place) => [place, PLACEHOLDERS[place]])),
    ...page.text.split('\n\n').map((one) => wrap(one)),
    columns(page.parts),
    ...(rest.length > 0 ? [wrap(`Without a meaning here, and an error: ${ticked(rest)}.`)] : []),
    ...page.examples.flatMap((one) => [wrap(one.says), indent(one.text)]),
    wrap(`See also: ${page.see.join(', ')}; grammar/${page.subject.split('#')[0]}.`),
    wrap(`Messages: ${page.codes.join(', ')}.`),
    'cutwright explain WORD explains any of these.',
  ];
  return `${sections.join('\n\n')}\n`;
}

/** What a word means that stands inside statements; null where none has it. */
export function plainWord(word: string): string | null {
  const meanings = new Map<string, { part: StatementPage['parts'][number]; names: string[] }>();
  for (const [name, page] of Object.entries(statementPages)) {
    if (!laterWordsOf(ruleOf(name)).includes(word)) continue;
    const part = page.parts.find(([written]) => holdsWord(written, word));
    if (!part) continue;
    const known = meanings.get(part[1]);
    if (known) known.names.push(name);
    else meanings.set(part[1], { part, names: [name] });
  }
  if (meanings.size === 0) return null;
  const sections = [...meanings.values()].map(
    ({ part, names }) => `In ${names.join(', ')}:\n${columns([part])}`,
  );
  return `${[`${word}: a word inside statements`, ...sections].join('\n\n')}\n`;
}

/** Statements, a line each. */
export function plainList(): string {
  return columns(
    Object.entries(statementPages).map(([name, { title }]) => [name, title]),
    '',
  );
}

const ticked = (words: readonly string[]): string => words.map((one) => `\`${one}\``).join(', ');

function columns(rows: readonly (readonly [string, string])[], margin = '  '): string {
  const width = Math.min(WIDEST, Math.max(...rows.map(([left]) => stringWidth(left)))) + 2;
  return rows
    .map(([left, right]) => {
      const lines = wrap(right, WIDTH - margin.length - width).split('\n');
      const pad = ' '.repeat(margin.length + width);
      const first =
        stringWidth(left) + 2 > width
          ? `${margin}${left}\n${pad}${lines[0]}`
          : `${margin}${left}${' '.repeat(width - stringWidth(left))}${lines[0]}`;
      return [first, ...lines.slice(1).map((one) => pad + one)].join('\n');
    })
    .join('\n');
}

function hanging(text: string, margin: string): string {
  return wrap(text, WIDTH - 2 * margin.length)
    .split('\n')
    .map((line, i) => (i === 0 ? margin : margin + margin) + line)
    .join('\n');
}

export function indent(text: string): string {
  return text
    .replace(/\n+$/, '')
    .split('\n')
    .map((line) => (line === '' ? '' : `    ${line}`))
    .join('\n');
}

export function wrap(text: string, width = WIDTH): string {
  const lines = [''];
  for (const word of text.match(/(?:`[^`]*`|\S)+/g) ?? []) {
    const line = lines.at(-1)!;
    if (line !== '' && stringWidth(line) + 1 + stringWidth(word) > width) lines.push(word);
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`;
  }
  return lines.join('\n');
}

// ----
// The syntax of a statement on one line, out of the grammar: words and signs as typed, CAPITALS for what is filled in.

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
  CODE: 'the code of a message, which stands behind its place: c012.cut:9:1: strobing',
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
