import { afterAll, beforeAll, expect, test } from 'vitest';
import { Grammar, theGrammar } from '../../src/language/grammar.js';
import { tokenize } from '../../src/language/lexer.js';
import { byWord, statementTable } from '../../src/language/statements/statement-table.js';

/** The parser library looks for faults of a grammar with a function that Node has from 21 on; nothing else of it asks for a newer Node than ours. */
const missing = !('groupBy' in Object);
beforeAll(() => {
  if (missing)
    Object.assign(Object, {
      groupBy<Item>(items: readonly Item[], keyOf: (item: Item) => string): Record<string, Item[]> {
        const groups: Record<string, Item[]> = {};
        for (const item of items) groups[keyOf(item)] = [...(groups[keyOf(item)] ?? []), item];
        return groups;
      },
    });
});
afterAll(() => {
  if (missing) Reflect.deleteProperty(Object, 'groupBy');
});

test('the grammar has no fault of its own', () => {
  const grammar = new Grammar({ validate: true });
  const rules = grammar.getSerializedGastProductions().map((rule) => (rule as { name?: string }).name);
  for (const { rule } of statementTable) expect(rules).toContain(rule);
});

test('a statement that does not fit leaves nothing behind for the next one', () => {
  const grammar = theGrammar();
  const read = (text: string) =>
    grammar.read(byWord.get('level')!, tokenize(text, 0, text.length), { file: 'this.cut', text });
  const twice = read('level A free free');
  expect([twice.statement?.kind, twice.problems.map(({ code }) => code)]).toEqual(['level', ['part-twice']]);
  const wrong = read('level A 3');
  expect([wrong.statement, wrong.error?.token.image, wrong.problems]).toEqual([null, '3', []]);
  const right = read('level A free');
  expect([right.statement?.span, right.error, right.problems]).toEqual([
    { file: 'this.cut', start: 0, end: 12 },
    null,
    [],
  ]);
});

test('what was wanted is told in keys, signs and words of the language, with blanks between', () => {
  const wanted = (word: string, text: string) =>
    theGrammar().read(byWord.get(word)!, tokenize(text, 0, text.length), { file: 'this.cut', text }).error
      ?.message;
  expect(wanted('phrase', 'phrase walk 1')).toBe('phrase-equals');
  expect(wanted('slide', 'slide A (1,2 @3')).toBe('`)`');
  expect(wanted('time', 'time 5 6')).toBe('');
});
