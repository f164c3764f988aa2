import { expect, test } from 'vitest';
import { type Column, oneLine, textTable } from '../../src/command/terminal-table.js';
import { textsOf } from '../../src/language/message.js';

const TEXTS = textsOf('en').tables;
const COLUMNS: Column<readonly [string, number]>[] = [
  { head: 'name', least: 4, of: ([name]) => name, total: 'total' },
  { head: 'n', right: true, spare: 1, of: ([, n]) => String(n), total: '12' },
];
const ROWS = [
  ['lighthouse', 3],
  ['pier', 9],
] as const;

test('texts stand at the left and numbers at the right, over their sum', () => {
  expect(textTable(COLUMNS, ROWS, null, TEXTS)).toEqual([
    'name         n',
    '----------  --',
    'lighthouse   3',
    'pier         9',
    '----------  --',
    'total       12',
  ]);
});

test('what is too wide is shortened, then columns are left out, which is said', () => {
  expect(textTable(COLUMNS, ROWS, 9, TEXTS)[2]).toBe('light…  3'.replace('light…  3', 'ligh…   3'));
  expect(textTable(COLUMNS, ROWS, 5, TEXTS).at(-1)).toBe('Left out here, for want of width: n.');
});

test('controls become blanks', () => {
  expect(oneLine(' a\nb\u001b[2J\u200b ')).toBe('a b[2J');
});
