/** Syntax on one line. */

import { expect, test } from 'vitest';
import { ruleOf, statementPages } from '../../src/reference/statement-pages.js';
import { PLACEHOLDERS, syntaxLine } from '../../src/reference/syntax-line.js';
import { statementPage } from '../statement-page.js';

const names = Object.keys(statementPages);

test('capitals of the syntax lines are all explained and all used', () => {
  const used = new Set(
    names.flatMap((name) => [...statementPage(name).matchAll(/([A-Z]{3,}) is /g)].map(([, place]) => place)),
  );
  expect([...used].sort()).toEqual(
    Object.keys(PLACEHOLDERS)
      .filter((one) => one.length > 2)
      .sort(),
  );
});

const lineOf = (name: string) => syntaxLine(ruleOf(name).rule).line;

test('words and signs stand as they are typed, what is filled in in capitals', () => {
  expect(lineOf('time')).toBe('time LENGTH');
  expect(lineOf('slide')).toBe(
    "slide LEVELS [ NAME ] '(' MM,MM ')'@TIME ( > [ NAME ] '(' MM,MM ')'@TIME [ HOW ] )…",
  );
});

test('what may be left out stands in square brackets, a choice in round ones, in one pair where both', () => {
  expect(lineOf('fade')).toBe('fade ( in | out ) [ white ] RANGE [ white ]');
  expect(lineOf('voice')).toBe('voice TEXT [ off | mono ] RANGE ( [@TIME ] TEXT )…');
});

test('what may be repeated has dots behind it', () => {
  expect(lineOf('stack')).toBe('stack LEVEL…');
  expect(lineOf('phrase')).toBe('phrase PHRASE = ITEM…');
});

test('a name is told by what it names', () => {
  expect([lineOf('fix'), lineOf('mark')]).toEqual(['fix FIELD', 'mark NAME TIME']);
});

test('capitals are told once, in the order of their use', () => {
  expect(syntaxLine(ruleOf('expose').rule).places).toEqual(['LEVELS', 'SHARE', 'RANGE']);
});
