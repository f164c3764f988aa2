import { describe, expect, test } from 'vitest';
import { DocumentHighlightKind, FoldingRangeKind, SymbolKind } from 'vscode-languageserver';
import { foldsOf, highlightsAt, symbolsOf } from '../../src/lsp/outline.js';
import { opened } from './opened.js';

describe('the outline', () => {
  const symbols = async (text: string) =>
    symbolsOf((await opened(text)).analysis).map(({ name, kind, detail }) => [name, kind, detail]);

  test('has a line a statement: names by themselves, other statements as they are typed', async () => {
    expect(
      await symbols(
        'cut 1 "Quay"\ntime 1+0\nfield B full\nmark hit 1+0\nphrase p = 1\nA "Nao": p @hit 2..\nfix B\n',
      ),
    ).toEqual([
      ['cut 1 "Quay"', SymbolKind.Module, undefined],
      ['time 1+0', SymbolKind.Number, '1+0 on the sheet'],
      ['B', SymbolKind.Variable, 'field'],
      ['hit', SymbolKind.Event, 'mark'],
      ['p', SymbolKind.Function, 'phrase'],
      ['A', SymbolKind.Class, 'Nao'],
      ['fix B', SymbolKind.Property, undefined],
    ]);
  });

  test('tells moves, sounds and settings apart', async () => {
    const found = await symbols(
      'cut 1\ntime 1+0\nfps 24\nvoice "Nao" 1..6 "Oh"\npan full@1 > full@24\nA: 1..\n',
    );
    expect(found.map(([name, kind]) => [(name as string).split(' ')[0], kind])).toEqual([
      ['cut', SymbolKind.Module],
      ['time', SymbolKind.Number],
      ['fps', SymbolKind.Property],
      ['voice', SymbolKind.String],
      ['pan', SymbolKind.Operator],
      ['A', SymbolKind.Class],
    ]);
  });

  test('cuts a statement of more than 70 characters', async () => {
    const [, , memo] = await symbols(`cut 1\ntime 1+0\nmemo "${'x'.repeat(90)}"\nA: 1..\n`);
    expect([memo![0]!.toString().length, memo![0]!.toString().endsWith('x…')]).toEqual([70, true]);
  });
});

describe('folding', () => {
  const folds = async (text: string) =>
    foldsOf((await opened(text)).analysis).map(({ startLine, endLine, kind }) => [startLine, endLine, kind]);

  test('takes statements of several lines, also broken ones', async () => {
    expect(await folds('cut 1\ntime 1+0\nA: 1:6\n   2:6\n   3..\nzzz\n  zzz\n')).toEqual([
      [2, 4, undefined],
      [5, 6, undefined],
    ]);
  });

  test('takes comments that stand under each other alone on their lines', async () => {
    const text = '# one\n# two\n\n# alone\ncut 1 # beside\n# three\n# four\ntime 1+0\nA: 1..\n';
    expect(await folds(text)).toEqual([
      [0, 1, FoldingRangeKind.Comment],
      [5, 6, FoldingRangeKind.Comment],
    ]);
  });

  test('takes nothing of one line', async () => {
    expect(await folds('cut 1\ntime 1+0\nA: 1..\n')).toEqual([]);
  });
});

test('the same name elsewhere is read, or written where it is defined; another kind of that name is not', async () => {
  const { analysis, at } = await opened('cut 1\ntime 1+0\nphrase A = 1-2\nA: A*2 A..\n');
  expect(
    highlightsAt(analysis, at('A*2')).map(({ range, kind }) => [
      range.start.line,
      range.start.character,
      kind,
    ]),
  ).toEqual([
    [2, 7, DocumentHighlightKind.Write],
    [3, 3, DocumentHighlightKind.Read],
    [3, 7, DocumentHighlightKind.Read],
  ]);
  expect(highlightsAt(analysis, 0)).toEqual([]);
});
