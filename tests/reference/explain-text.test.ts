/** The reference in a terminal. */

import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import { PLACEHOLDERS } from '../../src/reference/english-reference.js';
import {
  indent,
  plainList,
  plainPage,
  plainWord,
  syntaxLine,
  wrap,
} from '../../src/reference/explain-text.js';
import { ruleOf, statementPages } from '../../src/reference/statement-pages.js';
import { statementPage } from '../statement-page.js';

const names = Object.keys(statementPages);

test.each(names)('the page of %s fits a terminal', (name) => {
  for (const line of plainPage(name, 'en').split('\n'))
    expect(stringWidth(line), line).toBeLessThanOrEqual(80);
});

test('a full-width mark does not push its meaning out of the column', () => {
  const column = (typed: string, meaning: string): number => {
    const line = plainPage('truck', 'en')
      .split('\n')
      .find((one) => one.trimStart().startsWith(typed))!;
    return stringWidth(line.slice(0, line.indexOf(meaning)));
  };
  expect(column('fair ウ@8 60%', 'of a quick')).toBe(column('log', 'the size'));
});

test('a page begins with its title and its syntax, and ends with where more is told', () => {
  const lines = plainPage('fade', 'en').split('\n');
  expect(lines[0]).toBe(`fade: ${statementPages.fade!.title}`);
  expect(lines[2]).toMatch(/^ {4}fade /);
  expect(lines.at(-2)).toBe('cutwright explain WORD explains any of these.');
});

test('a page says which words are an error in its statement, if any are', () => {
  expect(plainPage('shake', 'en')).toMatch(/Without a meaning here, and an error: `/);
  expect(plainPage('fade', 'en')).not.toContain('Without a meaning here');
});

describe('a word inside statements', () => {
  test('is told for each of its meanings, with the statements that have it', () => {
    const lines = plainWord('carry', 'en')!.split('\n');
    expect(lines[0]).toBe('carry: a word inside statements');
    expect(lines.filter((line) => line.startsWith('In '))).toEqual(['In level:', 'In pan:', 'In truck:']);
  });

  test('is told once where several statements mean the same by it', () => {
    expect(plainWord('left', 'en')).toMatch(/^In pull, follow:$/m);
  });

  test('that no statement has is not told', () => {
    expect(plainWord('lantern', 'en')).toBeNull();
  });
});

test('the list has a line for each statement', () => {
  const lines = plainList('en').split('\n');
  expect(lines.map((line) => line.split(' ')[0])).toEqual(names);
});

describe('wrapped text', () => {
  test('fills a line to its last column', () => {
    expect(wrap('aaa bbb ccc', 7)).toBe('aaa bbb\nccc');
    expect(wrap('aaa bbb ccc', 6)).toBe('aaa\nbbb\nccc');
  });

  test('does not part what stands in backticks', () => {
    expect(wrap('say `a b c` now', 9)).toBe('say\n`a b c`\nnow');
  });

  test('drops line breaks, and leaves what is too long whole', () => {
    expect(wrap('a\nb', 9)).toBe('a b');
    expect(wrap('lighthouse', 4)).toBe('lighthouse');
  });
});

test('examples are indented, but not their empty lines or what is empty at their end', () => {
  expect(indent('cut 1\n\nA: 1..\n\n')).toBe('    cut 1\n\n    A: 1..');
});

describe('syntax line', () => {
  // ---- syntax on one line

  const names = Object.keys(statementPages);

  test('capitals of the syntax lines are all explained and all used', () => {
    const used = new Set(
      names.flatMap((name) =>
        [...statementPage(name).matchAll(/([A-Z]{3,}) is /g)].map(([, place]) => place),
      ),
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
      "slide LEVELS [ NAME ] '(' MM,MM ')'@TIME ( > [ [ NAME ] '(' MM,MM ')' > ]… [ NAME ] '(' MM,MM ')'@TIME [ HOW ] )…",
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
});
