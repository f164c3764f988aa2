/** A level's column in the terminal. */

import { describe, expect, test } from 'vitest';
import { levelColumn } from '../../../src/sheet/terminal/terminal-levels.js';
import { solvedCut } from '../laid.js';

const levelOf = (timeline: string, frames: number) =>
  solvedCut(`cut 1\ntime ${frames}\nA "Nao": ${timeline}\n`).levels.find(({ name }) => name === 'A')!;
const rowsTo = (last: number, from = 1) => Array.from({ length: last - from + 1 }, (_, i) => from + i);
/** The cells with one blank for several. */
const cells = (timeline: string, frames: number, rows: readonly number[] = rowsTo(frames)) =>
  levelColumn(levelOf(timeline, frames), rows)
    .cells(99)
    .map(([text]) => text!.replace(/ +/g, ' ').trim());

test('keys in brackets, strokes for in-betweens, each with its number; a line while they are held', () => {
  expect(cells('1-=-2 x:2', 12)).toEqual([
    '(1) 1',
    '│',
    '- 2',
    '│',
    '= 3',
    '│',
    '- 4',
    '│',
    '(2) 5',
    '│',
    '×',
    '',
  ]);
});

test('an in-between out of its turn has its name', () => {
  expect(cells('1-2 1.1', 8)).toEqual(['(1) 1', '│', '- 2', '│', '(2) 3', '│', '1.1 2', '│']);
});

describe('a cycle', () => {
  test('has a bracket with how often it is played', () => {
    expect(cells('(1 2)*2', 8)).toEqual([
      '(1) 1 ╮*2',
      '│ ┊',
      '(2) 2 ┊',
      '│ ┊',
      '(1) 1 ┊',
      '│ ┊',
      '(2) 2 ┊',
      '│ ╯',
    ]);
  });

  test('that goes on until further notice, or there and back, says so', () => {
    expect(cells('(1 2)..', 8)[0]).toBe('(1) 1 ╮..');
    expect(cells('(1 2 3)<>*2', 16)[0]).toBe('(1) 1 ╮<>*2');
  });

  test('has no head and no foot where they are on other rows', () => {
    expect(cells('(1 2)*2', 8, [3, 4])).toEqual(['(2) 2 ┊', '│ ┊']);
  });
});

test('what is held since before the first row stands in square brackets', () => {
  expect(cells('1:4 2:4', 8, [3, 4, 5])).toEqual(['[1] 1', '│', '(2) 2']);
  expect(cells('1-2', 6, [4, 5])).toEqual(['[-] 2', '(2) 3']);
});

test('a row tells of a drawing that came since the row before it', () => {
  expect(cells('1:3 2:5', 8, [1, 5])).toEqual(['(1) 1', '(2) 2']);
});

test('the column has name and title, and room for the title up to sixteen', () => {
  const { heads, least, wanted } = levelColumn(levelOf('1', 2), rowsTo(2));
  expect(heads).toEqual(['A', 'Nao']);
  expect(wanted).toBe(least);
  const long = { ...levelOf('1', 2), title: 'a very long title indeed' };
  expect(levelColumn(long, rowsTo(2)).wanted).toBe(16);
});
