/**
 * The TextMate grammar, written out of the table of statements. An editor sees the text as it was typed, so every pattern here
 * takes the full-width twins of its characters too; what the twins are is the language's own list in src/language/lexer.ts.
 *
 * A statement's rule runs to the next line that starts at column 1, whatever stands in it: what is wrong is marked and never
 * colours the next statement. TextMate reads line by line: a level's name and its colon on different lines are not seen
 * as one.
 */

import { laterWordsOf } from '../../src/language/grammar-queries.js';
import { RETIRED_WORDS } from '../../src/language/retired-words.js';
import { type StatementRule, statementTable } from '../../src/language/statements/statement-table.js';
import {
  ALONE,
  any,
  BETWEEN,
  body,
  DIGIT,
  DOT,
  FEET,
  FIELD_KEY,
  FRAME,
  GLUED,
  INTEGER,
  KEY_LETTER,
  MORE,
  NAME,
  NUMBER,
  QUOTES,
  SECONDS,
  START,
  STOP,
  spelt,
  TEXT,
  TIMECODE,
  UNIT,
  WHOLE,
  word,
  X,
} from './patterns.js';

export interface Rule {
  readonly name?: string;
  readonly match?: string;
  readonly begin?: string;
  readonly end?: string;
  readonly captures?: Captures;
  readonly beginCaptures?: Captures;
  readonly endCaptures?: Captures;
  readonly include?: string;
  readonly patterns?: readonly Rule[];
}
type Captures = Readonly<Record<string, { readonly name?: string; readonly patterns?: readonly Rule[] }>>;

const include = (...names: string[]): Rule[] => names.map((name) => ({ include: `#${name}` }));
const rule = (name: string, match: string, captures?: Captures): Rule => ({
  name: `${name}.cut`,
  match,
  ...(captures ? { captures } : {}),
});
/** A match whose parts have scopes and the whole has none. */
const parts = (match: string, ...names: string[]): Rule => ({
  match,
  captures: Object.fromEntries(names.map((name, index) => [index + 1, { name: `${name}.cut` }])),
});

const AT = 'keyword.operator.at';
const TIME = 'constant.numeric.time';
const MARK = 'variable.other.mark';
const KEY = 'variable.other.enummember.key';
const LEVEL = 'entity.name.type.level';
/** What a statement defines that names something. */
const DEFINED: Readonly<Record<string, string>> = {
  level: LEVEL,
  field: 'variable.other.field',
  phrase: 'entity.name.function.phrase',
  mark: MARK,
};

const texts: Rule[] = [
  ...QUOTES.map((quotes) => ({
    name: `string.quoted.${quotes.id}.cut`,
    begin: `${quotes.open}(?=${body(quotes)}${quotes.close})`,
    end: quotes.close,
    beginCaptures: { 0: { name: 'punctuation.definition.string.begin.cut' } },
    endCaptures: { 0: { name: 'punctuation.definition.string.end.cut' } },
    patterns: [
      rule('constant.character.escape', '\\\\[n"“”＂」｣\\\\]'),
      rule('invalid.illegal.unknown-escape', '\\\\.'),
    ],
  })),
  // Text that is not closed ends with its line.
  rule('string.quoted.unclosed', '(["“”＂「｢]).*$', { 1: { name: 'invalid.illegal.unclosed-text.cut' } }),
];

/** `:8`, `@1+1`, `@hit-3`: a sign and the time behind it, where that stands on the same line. */
const timed = (sign: string, scope: string): Rule[] => [
  parts(
    `(${any(sign)})\\s*(${NAME})(?:([+＋\\-－−–—ーｰ])(${ALONE}))?`,
    scope,
    MARK,
    'keyword.operator.offset',
    TIME,
  ),
  parts(`(${any(sign)})\\s*(${SECONDS}|${FEET}|${ALONE})`, scope, TIME),
  rule(scope, any(sign)),
];

/** Numbers that are nothing else wherever they stand. */
const measures: Rule[] = [
  rule('constant.numeric.size', `${NUMBER}${UNIT}?${X}${NUMBER}${UNIT}?${STOP}`),
  rule('constant.numeric.rate', `${NUMBER}${UNIT}${any('/')}${FRAME}${STOP}`),
  rule('constant.numeric.length', `${NUMBER}${UNIT}${STOP}`),
  rule('constant.numeric.degrees', `${NUMBER}${spelt('deg')}${STOP}`),
  rule('constant.numeric.percent', `${NUMBER}${any('%')}${STOP}`),
  rule(TIME, `${SECONDS}|${FEET}`),
  rule('constant.numeric.fraction', `${WHOLE}${any('/')}${WHOLE}${STOP}`),
];
const numbers: Rule[] = [
  ...include('measure'),
  rule('constant.numeric.field', `${NUMBER}[FNSEWＦＮＳＥＷ]${STOP}`),
  rule(TIME, `${TIMECODE}|${NUMBER}${any('s')}${STOP}`),
  rule('constant.numeric.decimal', `${WHOLE}${DOT}${DIGIT}{1,9}${STOP}`),
];
const integer = rule('constant.numeric.integer', INTEGER);
const drawing: Rule[] = [
  ...include('measure'),
  rule('variable.other.property.inbetween', BETWEEN),
  rule(KEY, `${FIELD_KEY}|${WHOLE}${KEY_LETTER}${STOP}|${INTEGER}`),
];
/** Numbers of cuts and drawings. */
const labels: Rule[] = [
  rule('variable.other.property.inbetween', BETWEEN),
  rule(KEY, `${WHOLE}${KEY_LETTER}${STOP}`),
];
const wrong: Rule[] = [
  rule('invalid.illegal.times-sign', `(?<=[)）])${X}${DIGIT}+(?!${MORE})`),
  rule('invalid.illegal.number', GLUED),
  rule('invalid.illegal.dots', `${DOT}{3,}`),
];

const signs: Rule[] = [
  rule('keyword.operator.range', `${DOT}{2}`),
  rule('keyword.operator.bounce', `${any('<')}${any('>')}`),
  rule('keyword.operator.to', any('>')),
  rule('keyword.operator.minus', any('-')),
  rule('keyword.operator.plus', any('+')),
  rule('keyword.operator.assignment', any('=')),
  rule('keyword.operator.times', any('*')),
  rule('keyword.operator.of', any('/')),
  rule('punctuation.separator.comma', any(',')),
  rule('punctuation.section.parens.begin', any('(')),
  rule('punctuation.section.parens.end', any(')')),
  rule('punctuation.section.braces', `[{}｛｝]`),
  rule('constant.language.unused', any('_')),
  rule('invalid.illegal.character', '\\S'),
];

const items: Rule[] = [
  ...include('comment', 'text'),
  {
    name: 'meta.chart.cut',
    begin: any('{'),
    // A chart that is not closed ends at the first thing that no chart holds; a lengthening mark outside of a word is a dash.
    end: `(${any('}')})|(?=[^\\s\\p{L}\\p{M}\\p{Nd}×.．。/／・#＃]|[ーｰ]|${DOT}{2})|${START}`,
    beginCaptures: { 0: { name: 'punctuation.section.braces.begin.cut' } },
    endCaptures: { 1: { name: 'punctuation.section.braces.end.cut' } },
    patterns: [
      ...include('comment', 'number'),
      integer,
      ...include('label', 'wrong'),
      rule('keyword.other.chart', NAME),
      rule('invalid.illegal.character', '\\S'),
    ],
  },
  ...include('wrong-times', 'length', 'moment'),
  parts(`(${any('*')})\\s*(${ALONE})`, 'keyword.operator.times', 'constant.numeric.times'),
  rule('constant.language.empty', word('x')),
  parts(`(${word('on')})(?:\\s+(${ALONE}))?`, 'keyword.other.option', 'constant.numeric.frames'),
  ...include('drawing'),
  ...include('number', 'wrong'),
  rule(DEFINED.phrase!, NAME),
  rule('keyword.operator.hold', `${DOT}{2}`),
  rule('keyword.operator.inbetween', any('-')),
  rule('keyword.operator.breakdown', any('=')),
  ...include('sign'),
];

/** A word of the language, and the old names under which it is still read. */
const spellings = (now: string): string[] => [
  now,
  ...[...RETIRED_WORDS].flatMap(([old, written]) => (written === now ? [old] : [])),
];

/** What stands behind a statement's first word, the words of that statement told from names. */
function rest(words: readonly string[]): Rule[] {
  return [
    ...include('comment', 'text', 'wrong-times', 'moment'),
    ...(words.length > 0 ? [rule('keyword.other.option', word(...words.flatMap(spellings)))] : []),
    ...include('number', 'integer', 'label', 'wrong'),
    rule('variable.other', NAME),
    rule('punctuation.separator.colon', any(':')),
    ...include('sign'),
  ];
}

const drawings: Rule[] = [...include('comment', 'text', 'drawing'), ...rest([])];

function contents(entry: StatementRule): readonly Rule[] {
  if (entry.word === 'phrase') return include('items');
  if (entry.word === 'cels') return drawings;
  return rest(laterWordsOf(entry).toSorted());
}

function statementRule(entry: StatementRule): Rule {
  const first = word(...spellings(entry.word));
  const kind = DEFINED[entry.word];
  return {
    name: `meta.statement.${entry.word}.cut`,
    begin: entry.defines ? `^(${first})(?:\\s+(${NAME})(?:\\s*(${any('=')}))?)?` : `^(${first})`,
    beginCaptures: {
      1: { name: 'keyword.other.statement.cut' },
      ...(entry.defines
        ? {
            2: { name: `${kind ?? 'variable.other.definition'}.cut` },
            3: { name: 'keyword.operator.assignment.cut' },
          }
        : {}),
    },
    end: START,
    patterns: contents(entry),
  };
}

const timeline: Rule = {
  name: 'meta.statement.timeline.cut',
  begin: `^(${NAME})\\s*(${TEXT})?\\s*(${any(':')})`,
  beginCaptures: {
    1: { name: `${LEVEL}.cut` },
    2: { patterns: include('text') },
    3: { name: 'punctuation.separator.timeline.cut' },
  },
  end: START,
  patterns: include('items'),
};

/** A name alone on its line: its title and colon may follow on the next. */
const begun: Rule = {
  name: 'meta.statement.timeline.cut',
  begin: `^(${NAME})(?=\\s*(?:${TEXT})?\\s*(?:[#＃].*)?$)`,
  beginCaptures: { 1: { name: `${LEVEL}.cut` } },
  end: START,
  patterns: include('items'),
};

const unknown: Rule = {
  name: 'meta.statement.unknown.cut',
  begin: `^(${NAME})`,
  beginCaptures: { 1: { name: 'invalid.illegal.unknown-statement.cut' } },
  end: START,
  patterns: rest([]),
};

/** A statement that starts with no name. */
const nameless: Rule = {
  name: 'meta.statement.unknown.cut',
  begin: START,
  end: `(?!\\G)${START}`,
  patterns: rest([]),
};

export function textMateGrammar(): object {
  const statements = statementTable.filter((entry) => entry.word !== '');
  return {
    // Said in the file itself, for whoever would edit it by hand.
    information_for_contributors: [
      'Written by tests/editors/grammar.test.ts out of the table of statements: UPDATE=1 npx vitest run tests/editors/grammar.test.ts',
    ],
    name: 'Cut',
    scopeName: 'source.cut',
    fileTypes: ['cut'],
    patterns: [
      ...include('comment'),
      {
        name: 'invalid.illegal.indented-start.cut',
        begin: '^\\s+(?=[^\\s#＃])',
        end: '$',
        patterns: include('comment', 'text'),
      },
      ...include('timeline', ...statements.map((entry) => `statement-${entry.word}`)),
      ...include('begun', 'unknown', 'nameless'),
    ],
    repository: {
      comment: rule('comment.line.number-sign', '([#＃]).*$', {
        1: { name: 'punctuation.definition.comment.cut' },
      }),
      text: { patterns: texts },
      measure: { patterns: measures },
      number: { patterns: numbers },
      drawing: { patterns: drawing },
      integer,
      label: { patterns: labels },
      'wrong-times': wrong[0],
      wrong: { patterns: wrong },
      length: { patterns: timed(':', 'keyword.operator.length') },
      moment: { patterns: timed('@', AT) },
      sign: { patterns: signs },
      items: { patterns: items },
      timeline,
      begun,
      unknown,
      nameless,
      ...Object.fromEntries(statements.map((entry) => [`statement-${entry.word}`, statementRule(entry)])),
    },
  };
}
