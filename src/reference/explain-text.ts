/** Pages for a terminal: wrapped lines, examples indented. */

import stringWidth from 'string-width';
import { laterWordsOf, productions } from '../language/grammar-queries.js';
import type { Piece, Production } from '../language/grammar-rule.js';
import { wrapped } from '../language/text-wrap.js';
import type { UserLanguage } from '../language/user-language.js';
import { PLACEHOLDERS } from './english-reference.js';
import { type PlaceholderName, pageIn, referenceWords } from './reference-language.js';
import { holdsWord, idleWords, ruleOf, type StatementPage, statementPages } from './statement-pages.js';

const WIDTH = 80;
/** A left column wider than this has its meaning on the next line. */
const WIDEST = 22;

/** The page of a statement as plain text. */
export function plainPage(name: string, language: UserLanguage): string {
  const page = pageIn(name, language);
  const words = referenceWords(language);
  const { line, places } = syntaxLine(ruleOf(name).rule);
  const rest = idleWords(name);
  const sections = [
    `${name}: ${page.title}`,
    hanging(line, '    '),
    columns(places.map((place) => [place, words.placeholders[place]])),
    ...page.text.split('\n\n').map((one) => wrap(one)),
    columns(page.parts),
    ...(rest.length > 0 ? [wrap(words.idle(ticked(rest)))] : []),
    ...page.examples.flatMap((one) => [wrap(one.says), indent(one.text)]),
    wrap(words.see(page.see.join(', '), page.subject.split('#')[0]!)),
    wrap(words.messages(page.codes.join(', '))),
    words.explainsAny,
  ];
  return `${sections.join('\n\n')}\n`;
}

/** What a word means that stands inside statements; null where none has it. */
export function plainWord(word: string, language: UserLanguage): string | null {
  const meanings = new Map<string, { part: StatementPage['parts'][number]; names: string[] }>();
  for (const name of Object.keys(statementPages)) {
    if (!laterWordsOf(ruleOf(name)).includes(word)) continue;
    const part = pageIn(name, language).parts.find(([written]) => holdsWord(written, word));
    if (!part) continue;
    const known = meanings.get(part[1]);
    if (known) known.names.push(name);
    else meanings.set(part[1], { part, names: [name] });
  }
  if (meanings.size === 0) return null;
  const words = referenceWords(language);
  const sections = [...meanings.values()].map(
    ({ part, names }) => `${words.inStatements(names.join(', '))}\n${columns([part])}`,
  );
  return `${[words.insideWord(word), ...sections].join('\n\n')}\n`;
}

/** Statements, a line each. */
export function plainList(language: UserLanguage): string {
  return columns(
    Object.keys(statementPages).map((name) => [name, pageIn(name, language).title]),
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

const JAPANESE = /[\u3040-\u30ff\u4e00-\u9fff]/;

export function wrap(text: string, width = WIDTH): string {
  if (JAPANESE.test(text)) return wrapped(text, width);
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

const RULES: Readonly<Record<string, PlaceholderName>> = {
  position: 'TIME',
  length: 'LENGTH',
  range: 'RANGE',
  text: 'TEXT',
  name: 'NAME',
  list: 'LEVELS',
  item: 'ITEM',
  panGoal: 'GOAL',
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

function written({ pieces }: Production, rule: string): string {
  return pieces.map((piece) => writtenPiece(piece, rule)).join(' ');
}

function writtenPiece(piece: Piece, rule: string): string {
  switch (piece.kind) {
    case 'token': {
      const { name, text } = piece.type;
      if (text === null) return TOKENS[name]!;
      return BRACKETS.has(text) ? `'${text}'` : text;
    }
    case 'rule': {
      const { name, production } = piece.rule;
      if (name === 'name' && Object.hasOwn(NAMED, rule)) return NAMED[rule]!;
      if (name === 'tail') return '[ HOW ]';
      return RULES[name] ?? written(production, name);
    }
    case 'choice': {
      const ways = new Set(piece.ways.map((one) => written(one, rule)));
      return ways.size === 1 ? [...ways][0]! : `( ${[...ways].join(' | ')} )`;
    }
    case 'optional':
      return `[ ${bare(written(piece.part, rule))} ]`;
    case 'many':
      return `[ ${bare(written(piece.part, rule))} ]…`;
    case 'some': {
      const inner = written(piece.part, rule);
      return /^(\S+|\( [^()]* \))$/.test(inner) ? `${inner}…` : `( ${inner} )…`;
    }
  }
}

/** One pair of brackets is enough. */
const bare = (text: string): string => /^\( ([^()]*) \)$/.exec(text)?.[1] ?? text;
