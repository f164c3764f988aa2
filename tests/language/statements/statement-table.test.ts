import { describe, expect, test } from 'vitest';
import { byWord, statementTable, timelineRule } from '../../../src/language/statements/statement-table.js';
import { readAll } from '../read-text.js';

describe('every statement of the table', () => {
  test.each(statementTable)('$example', ({ example }) => {
    const { statements } = readAll(example).tree;
    expect(statements).toHaveLength(1);
    expect(example.slice(statements[0]!.span.start, statements[0]!.span.end)).toBe(example);
  });
});

test('statements are found by their first words, each once', () => {
  const words = statementTable.map(({ word }) => word);
  expect(new Set(words).size).toBe(words.length);
  for (const entry of statementTable) if (entry !== timelineRule) expect(byWord.get(entry.word)).toBe(entry);
});
