import { expect, test } from 'vitest';
import { lensesIn } from '../../src/lsp/code-lenses.js';
import { opened, uri } from './opened.js';

const CUT = 'cut 1\ntime 2+0\nA: 1--2..\n';

test('above the cut stands what it comes to', async () => {
  const { analysis } = await opened(`# head\n${CUT}`);
  const [lens, ...more] = lensesIn(analysis, new Set());
  expect(more).toEqual([]);
  expect(lens!.range.start.line).toBe(1);
  expect(lens!.command!.title).toBe('2+0: 4 drawings (2 keys, 2 in-betweens)');
});

test('commands stand there where the editor knows them', async () => {
  const { analysis } = await opened(CUT);
  const lenses = lensesIn(analysis, new Set(['cutwright.print', 'cutwright.other']));
  expect(lenses[0]!.command).toEqual({
    title: 'Print',
    command: 'cutwright.print',
    arguments: [uri('c1.cut')],
  });
  expect(lenses).toHaveLength(2);
});

test('a file that is no cut has none', async () => {
  expect(lensesIn((await opened('phrase walk = 1-2\n')).analysis, new Set(['cutwright.print']))).toEqual([]);
});
