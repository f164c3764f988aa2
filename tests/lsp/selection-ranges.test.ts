import { expect, test } from 'vitest';
import type { SelectionRange } from 'vscode-languageserver';
import { selectionRangeAt } from '../../src/lsp/selection-ranges.js';
import { opened } from './opened.js';

async function selections(typed: string): Promise<string[]> {
  const { analysis, cursor } = await opened(typed);
  const found: string[] = [];
  for (let one: SelectionRange | undefined = selectionRangeAt(analysis, cursor); one; one = one.parent) {
    const { text } = analysis;
    found.push(text.text.slice(text.offset(one.range.start), text.offset(one.range.end)));
  }
  return found;
}

test('grow from a name to its item, the groups around it, the statement and the text', async () => {
  const text = 'cut 1\nA: 1 (2 (3:6| 4)*2 5)..\n';
  expect(await selections(text)).toEqual([
    '6',
    '3:6',
    '(3:6 4)*2',
    '(2 (3:6 4)*2 5)..',
    'A: 1 (2 (3:6 4)*2 5)..',
    text.replace('|', ''),
  ]);
});

test('between statements there is the text alone', async () => {
  expect(await selections('cut 1\n\n|\nA: 1..\n')).toEqual(['cut 1\n\n\nA: 1..\n']);
});
