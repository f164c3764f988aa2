import { expect, test } from 'vitest';
import { foldCharacters, tokenize } from '../../../src/language/lexer.js';
import { exampleOf, STATEMENT_FORMS } from '../../../src/language/statements/statement-forms.js';
import { byWord } from '../../../src/language/statements/statement-table.js';
import { readAll } from '../read-text.js';

const FORMS = Object.entries(STATEMENT_FORMS).flatMap(([word, forms]) =>
  forms.map((form) => [form, word] as const),
);

const exampleFor = (text: string): string => {
  const tokens = tokenize(foldCharacters(text).text, 0, text.length);
  return exampleOf(byWord.get(tokens[0]!.image)!, tokens);
};

test.each(FORMS)('%s can be read, and is the example for its own words', (form, word) => {
  const { tree, diagnostics } = readAll(form);
  expect(diagnostics).toEqual([]);
  expect(tree.statements).toHaveLength(1);
  expect(form.startsWith(`${word} `)).toBe(true);
  expect(exampleFor(form)).toBe(form);
});

test.each([
  ['level A mask B', 'level M masks A'],
  ['level A 兼用 3', 'level C reuse 8/C'],
  ['level A 560', 'level BG size 560x200mm at 130,0'],
  ['truck quick full@1 > C@2+0 fair 70%', 'truck quick A@1 > B@30 fair ア@9 65%'],
  ['truck A@1 B@24', 'truck A@1 > B@3+0'],
  ['expose B 50% to', 'expose B 0%>100% 1..24'],
  ['fade out', 'fade out 4+1..5+0'],
])('%s: %s', (typed, example) => expect(exampleFor(typed)).toBe(example));

test('what is guessed counts like what was typed', () => {
  expect(exampleOf(byWord.get('shake')!, [], ['sideways'])).toBe('shake 4mm 1+1..1+12 sideways');
});
