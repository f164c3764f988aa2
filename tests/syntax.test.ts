/** The syntax page says what the parser does. */

import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { productions } from '../src/language/grammar-queries.js';
import { tokenize } from '../src/language/lexer.js';
import { kept } from './pictures.js';
import { diagrams, everyRule, syntaxPage, TOKENS, tokensUsed } from './syntax-page.js';

const FOLDER = 'grammar/pictures/syntax';

test('syntax.md is what the parser says (UPDATE=1 writes it)', () => {
  const [is, should] = kept('grammar/syntax.md', syntaxPage());
  expect(is).toBe(should);
});

test('the diagrams are drawn out of the same rules (UPDATE=1 writes them)', () => {
  for (const [rule, svg] of diagrams()) {
    const [is, should] = kept(`${FOLDER}/${rule}.svg`, svg);
    expect(is, rule).toBe(should);
    expect(svg).not.toMatch(/NaN|undefined/);
  }
  expect(readdirSync(FOLDER).sort()).toEqual([...diagrams().keys()].map((rule) => `${rule}.svg`).sort());
});

test('every rule stands in it once', () => {
  expect(everyRule().sort()).toEqual([...productions().keys()].sort());
});

test('every token that a rule asks for is told in words, and nothing else', () => {
  expect(TOKENS.map(({ name }) => name).sort()).toEqual(tokensUsed());
});

test.each(TOKENS)('$name: what it is in words is what the lexer takes', ({ name, examples, not }) => {
  const isOne = (text: string): boolean => {
    const [first, ...more] = tokenize(text, 0, text.length);
    const kinds = first ? [first.type, ...first.type.categories] : [];
    return more.length === 0 && kinds.some((kind) => kind.name === name);
  };
  for (const text of examples) expect(isOne(text), text).toBe(true);
  for (const text of not) expect(isOne(text), text).toBe(false);
});

test('every picture and every section that it leads to is there', () => {
  const page = syntaxPage();
  const drawn = [...page.matchAll(/pictures\/syntax\/(\w+)\.svg/g)].map(([, rule]) => rule!);
  expect(drawn.sort()).toEqual([...diagrams().keys()].sort());
});
