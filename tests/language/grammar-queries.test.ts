import { describe, expect, test } from 'vitest';
import {
  exampleParts,
  laterWordsOf,
  nextTokens,
  productions,
  statementAtCursor,
} from '../../src/language/grammar-queries.js';
import { statementTable, timelineRule } from '../../src/language/statements/statement-table.js';
import { ebnf } from '../syntax-page.js';

test('the words of a statement come from its rule', () => {
  const level = statementTable.find(({ word }) => word === 'level')!;
  expect(laterWordsOf(level)).toEqual(expect.arrayContaining(['at', 'carry', 'free', 'reuse', 'size']));
  for (const foreign of ['level', 'off', 'on']) expect(laterWordsOf(level)).not.toContain(foreign);
});

describe('the productions', () => {
  const written = (rule: string) => ebnf(productions().get(rule)!);

  test('are those of all rules: literals, kinds of token, rules, what may be left out', () => {
    expect(written('cutStatement')).toBe("'cut' label text?");
    expect(written('list')).toBe("name ( ',' name )*");
    expect(written('names')).toBe('name+');
    expect(written('whole')).toBe('Integer');
    expect(written('fadeWay')).toBe("'in' | 'out'");
  });

  test('have one of each statement', () => {
    expect([...productions().keys()]).toEqual(expect.arrayContaining(statementTable.map(({ rule }) => rule)));
  });
});

describe('the statement at a cursor', () => {
  const at = (text: string) => {
    const cursor = text.indexOf('|');
    const found = statementAtCursor(text.replace('|', ''), cursor);
    return (
      found && {
        word: found.entry?.word ?? null,
        tokens: found.tokens.map(({ image }) => image),
        from: found.from,
        quoted: found.quoted,
        start: found.start,
      }
    );
  };

  test('has the tokens before it, without the word that it stands at the end of', () => {
    expect(at('cut 1\nlevel BG si|')).toEqual({
      word: 'level',
      tokens: ['level', 'BG'],
      from: 15,
      quoted: null,
      start: 6,
    });
    expect(at('level BG |')).toMatchObject({ word: 'level', tokens: ['level', 'BG'], from: 9 });
  });

  test('is none before the first, or in a comment', () => {
    expect(at('|cut 1')).toBeNull();
    expect(at('cut 1 # so|me')).toBeNull();
  });

  test('whose first word is still being typed is of no kind', () => {
    expect(at('cu|')).toMatchObject({ word: null, tokens: [], from: 0 });
  });

  test('that is a timeline has the kind of one', () => {
    expect(at('A "Nao": 1-|')).toMatchObject({ word: '', tokens: ['A', '"Nao"', ':', '1', '-'] });
  });

  test('knows the text that it stands in', () => {
    expect(at('memo "so|')).toMatchObject({ word: 'memo', tokens: ['memo'], quoted: 5 });
  });
});

describe('what may come next', () => {
  const kindsAfter = (text: string) => {
    const { entry, tokens } = statementAtCursor(text, text.length)!;
    return new Set(nextTokens(entry!, tokens).map(({ kind }) => kind));
  };

  test('is what the rule takes there', () => {
    expect(kindsAfter('fade ')).toEqual(new Set(["'in'", "'out'"]));
    expect(kindsAfter('fix ')).toEqual(new Set(['Name']));
  });

  test('is nothing where the tokens do not fit', () => {
    expect(kindsAfter('fade 3 ')).toEqual(new Set());
  });
});

test('an example is cut into what the language fixes and what the writer chooses', () => {
  const chosen = (example: string) =>
    exampleParts(example)
      .filter(({ fixed }) => !fixed)
      .map(({ text }) => text);
  expect(chosen('cut 12 "Rooftop, dusk"')).toEqual(['12', '"Rooftop, dusk"']);
  expect(chosen('pan A@1+1 > B@5+0')).toEqual(['A', '1+1', 'B', '5+0']);
  for (const { example } of [...statementTable, timelineRule])
    expect(
      exampleParts(example)
        .map(({ text }) => text)
        .join(''),
    ).toBe(example);
});
