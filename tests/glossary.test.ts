/** grammar/glossary.md against what is printed and said: its paper columns against src/words, its retired words against all texts. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { statementTable } from '../src/language/statements/statement-table.js';
import { type Words, wordsOf } from '../src/words/words.js';

interface Entry {
  readonly word: string;
  readonly english: string;
  readonly japanese: string;
  readonly retired: readonly string[];
  readonly link: string;
}

const page = readFileSync('grammar/glossary.md', 'utf8');
const entries: Entry[] = page.split('\n').flatMap((line) => {
  const cells = line.split(/ *\| */).slice(1, -1);
  if (cells.length !== 6 || cells[0] === 'word' || cells[0]!.startsWith('-')) return [];
  const [word, english, japanese, , not, see] = cells as [string, string, string, string, string, string];
  return [{ word, english, japanese, retired: not.split(', ').filter(Boolean), link: see }];
});

/** All words of a table: its texts, and those of its functions as they stand in the source. */
function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value === 'function') return [String(value)];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsOf) : [];
}

const formOf = (labels: 'en' | 'ja'): Words => wordsOf({ labels, convention: 'japan' });
/** What the sheet prints in every language alike. */
const SIGNS = ['T.U', 'O.L', 'F.I'];

test('the glossary has all words of the trade, each once', () => {
  expect(entries.length).toBeGreaterThan(60);
  const words = entries.map(({ word }) => word);
  expect(words).toEqual([...new Set(words)]);
});

describe.each([
  ['English', 'en', 'english'],
  ['Japanese', 'ja', 'japanese'],
] as const)('on paper, in %s', (_, labels, column) => {
  const printed = [...textsOf(formOf(labels)), ...SIGNS];
  test.each(entries.filter((entry) => entry[column] !== '—'))(
    `a form prints $word as $${column}`,
    (entry) => {
      expect(printed.filter((text) => text.includes(entry[column]))).not.toEqual([]);
    },
  );

  test('every move and light of a form is in the glossary', () => {
    const { kinds, exposure, glow, effect, fairing, fix } = formOf(labels).moves;
    const { missing, reused, added, runsOn, stack } = formOf(labels).sheet;
    const names = [
      ...textsOf(kinds),
      exposure,
      glow,
      effect,
      fairing,
      fix,
      missing,
      reused,
      added,
      runsOn,
      stack,
    ];
    const known = new Set(entries.map((entry) => entry[column]));
    expect(names.map((name) => name.trim()).filter((name) => name !== '' && !known.has(name))).toEqual([]);
  });
});

/** Words of statements that are names of a thing of this program and none of the trade, or have a page only. */
const PLAIN = ['fps', 'numbering', 'cels', 'use', 'mouth', 'on'];

test('every statement is in the glossary', () => {
  const known = entries.flatMap(({ word }) => word.split(', '));
  const words = statementTable.map(({ word }) => word).filter((word) => word !== '' && !PLAIN.includes(word));
  expect(words.filter((word) => !known.includes(word))).toEqual([]);
});

test('every entry leads to a page that is there', () => {
  for (const { word, link } of entries) {
    const [, path] = /^\[[^\]]+\]\(([^)#]+)(?:#[^)]*)?\)$/.exec(link) ?? [];
    expect(path !== undefined && existsSync(join('grammar', path)), word).toBe(true);
  }
});

// ---- words that nobody reads any more

/** The literals of a source, its comments and names left out. */
const literals = (source: string): string =>
  (source.replace(/^\s*(\/\/|\/?\*).*$/gm, '').match(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g) ?? []).join(
    '\n',
  );

/** Where an old word has to stand: its own hint, the plain word that explains an overlap, names of open formats. */
const ALLOWED = [
  /^.*\b(word-renamed|RETIRED)\b.*$/gm,
  /\broll A 7mm/g,
  /\b`roll`|`ticks`|`acme`/g,
  /\bcross-dissolve\b/g,
  /SMPTE_Dissolve/g,
];

const READABLE: readonly (readonly [folder: string, names: RegExp])[] = [
  ['grammar', /\.md$|\.1$|snippets\.json$/],
  ['examples', /\.(cut|yaml)$/],
  ['src/language/catalogue/en', /\.ts$/],
  ['src/reference', /\.ts$/],
  ['src/words/en', /\.ts$/],
];

const readable = (): string[] => [
  'README.md',
  ...READABLE.flatMap(([folder, names]) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => names.test(name) && !name.endsWith('glossary.md'))
      .map((name) => join(folder, name)),
  ),
];

test('no text for users has a word that the glossary has retired', () => {
  const retired = entries.flatMap((entry) => entry.retired);
  const pattern = new RegExp(`\\b(?:${retired.join('|')})\\b`, 'gi');
  const files = readable();
  expect(files.length).toBeGreaterThan(100);
  const found = files.flatMap((name) => {
    const text = readFileSync(name, 'utf8');
    const shown = ALLOWED.reduce(
      (left, one) => left.replace(one, ''),
      name.endsWith('.ts') ? literals(text) : text,
    );
    return shown.split('\n').flatMap((line) => {
      const words = line.match(pattern);
      return words ? [`${name}: ${words.join(', ')}: ${line.trim().slice(0, 90)}`] : [];
    });
  });
  expect(found).toEqual([]);
});
