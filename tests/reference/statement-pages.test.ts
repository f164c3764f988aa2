/** The pages of the statements, in grammar/statements/. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Code, catalogue } from '../../src/language/catalogue/index.js';
import { laterWordsOf } from '../../src/language/grammar-queries.js';
import { statementTable } from '../../src/language/statements/statement-table.js';
import {
  holdsWord,
  idleWords,
  type PageExample,
  pageName,
  ruleOf,
  statementPages,
} from '../../src/reference/statement-pages.js';
import { compileText, said } from '../compile.js';
import { kept, picture } from '../pictures.js';
import { PICTURES, pictureName, statementPage } from '../statement-page.js';

const names = Object.keys(statementPages);
const FOLDER = 'grammar/statements';

test('every statement has a page, every page a statement and a file', () => {
  expect([...names].sort()).toEqual(statementTable.map(pageName).sort());
  expect(readdirSync(FOLDER).sort()).toEqual(names.map((name) => `${name}.md`).sort());
  expect(Object.keys(PICTURES).sort()).toEqual([...names].sort());
});

describe.each(names)('%s', (name) => {
  const page = statementPages[name]!;

  test('is written as the reference says (UPDATE=1 writes it)', () => {
    const [is, should] = kept(`${FOLDER}/${name}.md`, statementPage(name));
    expect(is).toBe(should);
  });

  test('has two or three examples that hold and use it', () => {
    expect(page.examples.length).toBeGreaterThanOrEqual(2);
    for (const one of page.examples) {
      const { diagnostics, solved } = compileText(whole(one), one.files ?? {});
      const got = diagnostics.map(({ severity, code }) => `${severity}=${code}`).join(' ');
      expect(got, said(diagnostics).join('\n')).toBe(one.expect ?? '');
      expect(solved).not.toBeNull();
      if (name !== 'timeline') expect(one.text).toMatch(new RegExp(`^${name} `, 'm'));
    }
  });

  test('shows what its first example prints (UPDATE=1 writes the pictures)', () => {
    const [first] = page.examples;
    const { solved } = compileText(whole(first!), first!.files ?? {});
    for (const crop of PICTURES[name]!) {
      const [is, should] = kept(
        `grammar/pictures/statements/${pictureName(name, crop)}`,
        picture(solved!, crop),
      );
      expect(is).toBe(should);
      expect(should.length).toBeLessThan(60_000);
    }
  });

  test('leads to pages, sections and messages that are there', () => {
    for (const one of page.see) expect(names).toContain(one);
    const [file, section] = page.subject.split('#');
    const titles = [...readFileSync(`grammar/${file}`, 'utf8').matchAll(/^#+ (.*)$/gm)].map(([, title]) =>
      anchor(title!),
    );
    if (section) expect(titles).toContain(section);
    expect(new Set(page.codes).size).toBe(page.codes.length);
    for (const code of page.codes) expect(Object.keys(catalogue)).toContain(code);
  });

  test('gives a meaning to every word that may stand in it', () => {
    const words = laterWordsOf(ruleOf(name));
    const text = statementPage(name);
    for (const word of words) expect(text, word).toContain(word);
  });
});

/** Moves share what may stand behind them; what has no meaning for one is told so on its page, and is an error. */
const TAILS: Readonly<Record<string, string>> = {
  ease: 'ease 2',
  curve: 'curve 0.4 0 0.6 1',
  steps: 'steps 1*8',
  fair: 'fair ア@5 60%',
  graduated: 'graduated',
  on: 'on 2',
  log: 'log',
  carry: 'carry B',
  about: 'about 1,1',
  cw: 'cw',
  loop: 'loop 420mm',
  sideways: 'sideways',
};
const MOVES: Readonly<Record<string, readonly string[]>> = {
  pan: ['pan full@1 > P@9'],
  truck: ['truck full@1 > T@9', 'truck quick full@1 > T@9', 'truck level A 100%@1 > 90%@9'],
  pull: ['pull A left 8mm 1..8'],
  follow: ['follow A left 8mm 1..8'],
  slide: ['slide A (0,0)@1 > (8,0)@9'],
  turn: ['turn level A 0@1 > 30@9'],
  shake: ['shake 3mm 1..8'],
  sway: ['sway A 3mm 1..8 every 8'],
};
const REFUSED: readonly Code[] = ['option-misplaced', 'fairing-misplaced', 'steps-without-distance'];

describe.each(Object.keys(MOVES))('behind %s', (name) => {
  test.each(Object.entries(TAILS))('%s has a meaning if its page has one', (word, tail) => {
    const refused = MOVES[name]!.every((move) => {
      const text = `cut 1\ntime 1+0\nA: 1..\nB: 1..\nlevel A free\nlevel B free\nfield P full at 8,0\nfield T 97%\n${move} ${tail}\n`;
      return compileText(text).diagnostics.some(({ code }) => REFUSED.includes(code));
    });
    expect(idleWords(name).includes(word)).toBe(refused);
  });
});

test('only moves share words that have no meaning in some of them', () => {
  const others = Object.keys(statementPages).filter((name) => !Object.hasOwn(MOVES, name));
  expect(others).toContain('wipe');
  expect(others.filter((name) => idleWords(name).length > 0)).toEqual([]);
});

test('a message that blames a statement stands on its page', () => {
  const missing = Object.entries(catalogue).flatMap(([code, { example }]) => {
    if (example.kind !== 'text') return [];
    const found = compileText(example.failing, example.files ?? {}).diagnostics.find(
      (one) => one.code === code,
    );
    const start = example.failing.slice(0, found?.span.start ?? 0).lastIndexOf('\n') + 1;
    const line = example.failing.slice(start);
    const word = /^\p{L}+(?= )/u.exec(line)?.[0] ?? '';
    const name = /^\p{L}[\p{L}\p{N}]*( "[^"]*")?:/u.test(line) ? 'timeline' : word;
    const page = Object.hasOwn(statementPages, name) ? statementPages[name] : undefined;
    return !page || page.codes.includes(code as Code) || OF_ALL.includes(code as Code)
      ? []
      : [`${name}: ${code}`];
  });
  expect(missing).toEqual([]);
});

/** Of any statement alike, or said of the whole cut, on its first line. */
const OF_ALL: readonly Code[] = [
  'artwork-long',
  'loop-short',
  'unknown-character',
  'number-too-large',
  'stray-dot',
  'indented-statement',
  'glued-number',
  'spaced-number',
  'stops-short',
  'does-not-fit',
];

const anchor = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, '')
    .replaceAll(' ', '-');

function whole({ text, time = '5+0' }: PageExample): string {
  const head = [/^cut /m.test(text) ? '' : 'cut 1\n', /^time /m.test(text) ? '' : `time ${time}\n`].join('');
  return head + text;
}

test('a word is held where it stands for itself, not within another', () => {
  expect(holdsWord('pan A@1 > B@9 log', 'log')).toBe(true);
  expect(holdsWord('(log)', 'log')).toBe(true);
  expect(holdsWord('logo', 'log')).toBe(false);
  expect(holdsWord('log2', 'log')).toBe(false);
  expect(holdsWord('ログlog', 'log')).toBe(false);
});

test('the page of timelines, which have no word, is called timeline', () => {
  expect(pageName(ruleOf('timeline'))).toBe('timeline');
  expect(ruleOf('timeline').word).toBe('');
  expect(ruleOf('pan').word).toBe('pan');
});
