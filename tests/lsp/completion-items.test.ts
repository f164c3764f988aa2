import { describe, expect, test } from 'vitest';
import { InsertTextFormat } from 'vscode-languageserver';
import type { Item } from '../../src/language/tree.js';
import { headings, itemLabel, line, namesOffered, statementWords } from '../../src/lsp/completion-items.js';
import { opened } from './opened.js';

describe('a statement in one line', () => {
  test('has its line ends and its blanks drawn together', () => {
    expect(line('  phrase walk =\n    1--2--  ')).toBe('phrase walk = 1--2--');
  });

  test('is cut where it is longer than 60 characters', () => {
    expect(line('x'.repeat(60))).toBe('x'.repeat(60));
    expect(line('x'.repeat(61))).toBe(`${'x'.repeat(59)}…`);
  });
});

describe('names', () => {
  test('have what defines them as their detail, wherever that stands', async () => {
    const { analysis } = await opened('cut 1\ntime 1+0\nA: walk..\nphrase walk = 1--2--\nmark hit 1+0\n');
    expect(namesOffered(analysis, 'phrase').map(({ label, detail }) => [label, detail])).toEqual([
      ['walk', 'phrase walk = 1--2--'],
    ]);
    expect(namesOffered(analysis, 'mark').map(({ label }) => label)).toEqual(['hit']);
  });

  test('of fields have the standard field among them', async () => {
    const { analysis } = await opened('cut 1\ntime 1+0\nfield near 60%\nA: 1..\n');
    expect(namesOffered(analysis, 'field').map(({ label, detail }) => [label, detail])).toEqual([
      ['full', 'the standard field'],
      ['near', 'field near 60%'],
    ]);
  });
});

describe('words that begin a statement', () => {
  test('have their example as a snippet, with stops where it is filled in', () => {
    const mark = statementWords(true).find(({ label }) => label === 'mark')!;
    expect(mark.insertTextFormat).toBe(InsertTextFormat.Snippet);
    expect(mark.insertText).toMatch(/^mark \$\{1:[^}]+\} \$\{2:[^}]+\}/);
  });

  test('are only the word for an editor that takes no snippets', () => {
    for (const { label, insertText, insertTextFormat } of statementWords(false))
      expect([insertText, insertTextFormat]).toEqual([label, undefined]);
  });
});

test('levels without a timeline are offered as the beginning of one, but not the background', async () => {
  const { analysis } = await opened('cut 1\ntime 1+0\nstack BG A B\nA: 1..\n');
  expect(headings(analysis).map(({ label, insertText }) => [label, insertText])).toEqual([['B', 'B: ']]);
});

test('an item is called by what it shows', async () => {
  const { analysis } = await opened('cut 1\ntime 1+0\nphrase walk = 1-2\nA: 1-2 1>2.1 x (3) walk..\n');
  const statement = analysis.compiled!.tree!.statements.find(({ kind }) => kind === 'timeline')!;
  const { items } = statement as unknown as { items: readonly Item[] };
  expect(items.map(itemLabel)).toEqual([
    '1',
    'the in-between',
    '2',
    '1>2.1',
    'the empty level',
    'the group',
    'walk',
  ]);
});
