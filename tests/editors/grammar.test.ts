/** The grammar for editors: written out of the statements, and of one mind with the program's own lexer. */

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { catalogue } from '../../src/language/catalogue/index.js';
import { laterWordsOf } from '../../src/language/grammar-queries.js';
import { parse } from '../../src/language/parse.js';
import { byWord, statementTable } from '../../src/language/statements/statement-table.js';
import { languageWords } from '../../src/language/tokens.js';
import { cutTexts } from '../generate.js';
import { disagreements } from './agree.js';
import { textMateGrammar } from './textmate.js';
import { listing, scopesAt, type Tokenizer, tokenizer } from './tokenize.js';

const PATH = 'grammar/editors/cutwright.tmLanguage.json';
const UPDATE = process.env.UPDATE === '1';

let tokenize: Tokenizer;
beforeAll(async () => {
  const json = `${JSON.stringify(textMateGrammar(), null, 2)}\n`;
  if (UPDATE) writeFileSync(PATH, json);
  tokenize = await tokenizer(readFileSync(PATH, 'utf8'));
});

const disagree = (text: string): string[] => disagreements(text, scopesAt(tokenize(text)));
const scopesOf = (text: string, piece: string): string => {
  const at = text.indexOf(piece);
  return (scopesAt(tokenize(text)).get(at) ?? []).filter((one) => !one.startsWith('meta.')).join(' ');
};

test('the committed grammar is the one that the statements give (UPDATE=1 writes it)', () => {
  expect(readFileSync(PATH, 'utf8')).toBe(`${JSON.stringify(textMateGrammar(), null, 2)}\n`);
});

describe('the words of the language', () => {
  test.each([...byWord.values()])(
    '$word starts a statement, and its own words are told from names',
    (entry) => {
      expect(scopesOf(`${entry.word} 1`, entry.word)).toBe('keyword.other.statement');
      const own = new Set(laterWordsOf(entry));
      for (const word of languageWords().keys()) {
        // In drawings words have meanings of their own.
        if (entry.word === 'phrase' || entry.word === 'cels') continue;
        const text = `${entry.word} 1\n  ${word}`;
        const scopes = scopesAt(tokenize(text)).get(text.length - 1)!;
        expect(scopes.at(-1), text).toBe(own.has(word) ? 'keyword.other.option' : 'variable.other');
      }
    },
  );

  test('no other word starts a statement', () => {
    for (const word of languageWords().keys()) {
      if (!byWord.has(word)) expect(scopesOf(`${word} 1`, word)).toBe('invalid.illegal.unknown-statement');
    }
    expect(scopesOf('pann A@1 > B@2', 'pann')).toBe('invalid.illegal.unknown-statement');
  });

  test('a level may have any name', () => {
    for (const name of [...byWord.keys(), 'BG', 'ア', 'スカーフ', '空'])
      for (const text of [`${name}: 1..`, `${name} "t": 1..`, `${name}「t」：1..`])
        expect(scopesOf(text, name), text).toBe('entity.name.type.level');
  });
});

describe('what is wrong stays in its place', () => {
  const NEXT = 'pan A@1 > B@5+0 carry C';
  test.each([
    ['memo "never closed', 'text'],
    ['memo 「閉じない', 'Japanese text'],
    ['A: 1{late---2 3', 'a chart'],
    ['A: 1{', 'a chart at the end'],
    ['A: (1-2-', 'a group'],
    ['A "title: 1..', 'a title'],
    ['slide A (0,0@1 > (', 'a place'],
    ['((((', 'what is no statement'],
    ['12 "x', 'a number at column 1'],
    ['pan', 'a word alone'],
    ['nonsense here \\ ~', 'an unknown word'],
  ])('%s: %s left open', (broken) => {
    const alone = listing(tokenize(NEXT));
    expect(listing(tokenize(`${broken}\n${NEXT}`)).endsWith(`\n${alone}`)).toBe(true);
  });

  test('a statement goes on over indented lines, blank ones and comments', () => {
    const text = 'pan A@1\n# no end\n\n　> B@5+0 # here\n\tcarry C\nmemo "x"';
    expect(scopesOf(text, 'carry')).toBe('keyword.other.option');
    expect(scopesOf(text, '# no end')).toMatch(/^comment/);
    expect(scopesOf(text, 'memo')).toBe('keyword.other.statement');
  });

  test('indented lines at the top belong to nothing', () => {
    expect(scopesOf('  pan A@1\nmemo "x"', 'pan')).toBe('invalid.illegal.indented-start');
    expect(scopesOf('  pan A@1\nmemo "x"', 'memo')).toBe('keyword.other.statement');
  });
});

describe('the lexer and the grammar see the same', () => {
  const folders = ['examples', 'tests/cuts'];
  const files = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((one) => one.endsWith('.cut'))
      .map((one) => join(folder, one)),
  );
  test('there are cuts to look at', () => expect(files.length).toBeGreaterThan(30));

  test.each(files)('%s', (path) => {
    expect(disagree(readFileSync(path, 'utf8'))).toEqual([]);
  });

  test.each(readdirSync('grammar').filter((one) => one.endsWith('.md')))('the examples of %s', (page) => {
    const markdown = readFileSync(`grammar/${page}`, 'utf8');
    for (const [, text = ''] of markdown.matchAll(/^```cut.*\n([\s\S]*?)^```/gm))
      expect(disagree(text), text).toEqual([]);
  });

  test('every example of a statement and of a message, the faulty ones too', () => {
    for (const { example } of statementTable) expect(disagree(example), example).toEqual([]);
    for (const { example } of Object.values(catalogue))
      if (example.kind === 'text')
        for (const text of [example.failing, example.mended]) expect(disagree(text), text).toEqual([]);
  });

  test('random cuts', () => {
    fc.assert(
      fc.property(cutTexts(), (text) => {
        expect(disagree(text)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('random words of the language, plain and full-width, right and wrong', () => {
    fc.assert(
      fc.property(rubbish, (text) => {
        expect(disagree(text)).toEqual([]);
      }),
      { numRuns: 1500 },
    );
  });
});

const PIECES = [
  ...['"a \\" b"', '「音」', '“quote”', '＂ｗ＂', '"open', '「開', '"\\q"', '# a comment', '＃注'],
  ...[
    '560x200mm',
    '5６０×200',
    '3mm/f',
    '3ｍｍ／ｆ',
    '1.5in',
    '30deg',
    '60%',
    '６０％',
    '8F',
    '8.5F',
    '2N',
    '2.5N',
  ],
  ...[
    '5+12',
    '５＋１２',
    "8'04",
    '8’04',
    '1/2',
    '1・2',
    '1.2',
    '1。2',
    '3a',
    '3ア',
    '3アー',
    '1.1a',
    '37',
    '１２',
  ],
  ...[
    '0000000001',
    '1.2.3',
    '1+2+3',
    "8'",
    '.5',
    '1...5',
    '3mmm',
    '12pm',
    '3x',
    '3xy',
    '3×',
    ')x3',
    ')×3',
    '...',
  ],
  ...[
    '..',
    '。。',
    '<>',
    '＜＞',
    ':',
    '：',
    '-',
    'ー',
    '−',
    '–',
    '—',
    'ｰ',
    '=',
    '＝',
    '(',
    '（',
    ')',
    '）',
    '{',
    '｛',
    '}',
  ],
  ...[
    '*',
    '＊',
    '>',
    '＞',
    '@',
    '＠',
    ',',
    '、',
    '/',
    '・',
    '+',
    '＋',
    '_',
    '＿',
    '<',
    '~',
    '\\',
    '☓',
    "'",
    '%',
    '.',
  ],
  ...[
    'A',
    'ＢＧ',
    'BOOK1',
    'ア',
    'スカーフ',
    'BOOKー',
    'かー',
    'ガー',
    'が゙ー',
    '空',
    'é',
    'é',
    '𠮷野',
    '×',
    'walk',
  ],
  ...[
    'hit+6',
    'hit-3',
    'hit ー3',
    '@hit',
    ':hit',
    '@1+1',
    ':3',
    'on 2',
    'on',
    'x',
    'ｘ',
    'late',
    '{late}',
    '{1/4 1/2}',
  ],
  ...[...languageWordsOf()],
];
const rubbish = fc
  .array(
    fc.array(
      fc.record({
        before: fc.constantFrom('', '', ' ', ' ', ' ', '　', '\t', '\u00a0', '\n ', '\n　'),
        piece: fc.constantFrom(...PIECES),
      }),
      { minLength: 1, maxLength: 8 },
    ),
    { minLength: 1, maxLength: 3 },
  )
  .map((statements) =>
    statements.map((pieces) => pieces.map(({ before, piece }) => before + piece).join('')).join('\n'),
  );

function languageWordsOf(): string[] {
  // The statements have asked for their words by now.
  parse('', 'cut 1');
  return [...languageWords().keys()];
}

const SHOWN = ['examples/saltmarsh/cuts/c012.cut', 'tests/editors/shown.cut'];
test.each(SHOWN)('the scopes of %s are those that were accepted (UPDATE=1 writes them)', (path) => {
  const golden = `tests/editors/${path.replace(/^.*\//, '').replace(/\.cut$/, '.scopes')}`;
  const text = listing(tokenize(readFileSync(path, 'utf8')));
  if (UPDATE) writeFileSync(golden, text);
  expect(text).toBe(readFileSync(golden, 'utf8'));
});
