/** Tables as lines for a terminal. */

import fc from 'fast-check';
import stringWidth from 'string-width';
import { describe, expect, test } from 'vitest';
import { cellByCell } from '../../src/layout/table.js';
import {
  BOXED,
  broken,
  hanging,
  inWidth,
  layTextTable,
  OPEN,
  tableLines,
  widthOf,
} from '../../src/layout/text-table.js';
import { tables } from './tables.js';

describe('as lines of text', () => {
  test('all lines of a set are equally wide, no wider than the terminal, and say what the cells say', () => {
    fc.assert(
      fc.property(
        tables({ groups: false, optional: false }),
        fc.constantFrom(BOXED, OPEN),
        fc.integer({ min: 40, max: 120 }),
        ({ columns, rows, names }, border, width) => {
          const { pages } = layTextTable({ columns, rows, names, sharing: cellByCell, border, width });
          for (const { sets } of pages)
            for (const set of sets) {
              const lines = tableLines(set, border, () => null);
              expect(new Set(lines.map(widthOf)).size).toBe(1);
              expect(widthOf(lines[0]!)).toBe(set.width);
              expect(set.width).toBeLessThanOrEqual(width);
              const over = (border.top ? 1 : 0) + 2;
              const texts = lines.slice(over, border.bottom ? -1 : undefined);
              const expected = set.rows.flatMap(({ cells, height }) =>
                Array.from({ length: height }, (_, n) => cells.map((cell) => cell[n] ?? '')),
              );
              expect(texts).toHaveLength(expected.length);
              texts.forEach((text, i) => {
                set.columns.forEach(({ x, width: own }, c) => {
                  const there = text.slice(x, x + own).trim();
                  const whole = expected[i]![c]!;
                  expect(there).toBe(whole.length <= own ? whole : `${whole.slice(0, own - 1)}…`);
                });
              });
            }
        },
      ),
    );
  });

  test('a rule stands over the rows that ask for one, heads without a text take no line', () => {
    const column = (heads: readonly string[], texts: readonly string[]) => ({
      heads,
      least: 3,
      wanted: 3,
      cells: () => texts.map((text) => [text]),
    });
    const columns = [column(['s+f', ''], ['0+1', '1+1']), column(['A', ''], ['渡', 'long'])];
    const [page] = layTextTable({
      columns,
      names: 1,
      rows: 2,
      sharing: cellByCell,
      border: BOXED,
      width: 40,
    }).pages;
    expect(tableLines(page!.sets[0]!, BOXED, (row) => (row === 1 ? 'double' : null))).toEqual([
      '┌─────┬─────┐',
      '│ s+f │ A   │',
      '├─────┼─────┤',
      '│ 0+1 │ 渡  │',
      '╞═════╪═════╡',
      '│ 1+1 │ lo… │',
      '└─────┴─────┘',
    ]);
  });
});

const linesOf = (columns: Parameters<typeof layTextTable>[0]['columns'], rows: number, border = OPEN) => {
  const { pages } = layTextTable({ columns, names: 0, rows, sharing: cellByCell, border, width: 40 });
  return tableLines(pages[0]!.sets[0]!, border, () => null);
};

test('numbers stand at the right of their column, words at the left', () => {
  const column = (head: string, align: 'start' | 'end', texts: readonly string[]) => ({
    heads: [head],
    least: 5,
    wanted: 5,
    align,
    cells: () => texts.map((text) => [text]),
  });
  expect(linesOf([column('cut', 'start', ['1', '12']), column('time', 'end', ['3+0', '12+6'])], 2)).toEqual([
    'cut     time',
    '-----  -----',
    '1        3+0',
    '12      12+6',
  ]);
});

test('a cell of several lines takes as many, and the others of its row are blank there', () => {
  const column = (cells: readonly (readonly string[])[]) => ({
    heads: [''],
    least: 4,
    wanted: 4,
    cells: () => cells.map((lines) => [...lines]),
  });
  expect(linesOf([column([['a', 'b'], ['c']]), column([['1'], ['2']])], 2)).toEqual([
    '----  ----',
    'a     1   ',
    'b         ',
    'c     2   ',
  ]);
});

describe('width', () => {
  // Independent reference: npm string-width, which follows Unicode Standard Annex 11, East Asian Width.
  test('of every character of a sheet is that of the library', () => {
    const narrow = '│┊╮╯┌├└╶×…–“”→←↑↓°';
    for (const character of [...narrow, ...'Ab(1) -=o*<>', 'ア', '渡', 'ｱ', '（', '🎬'])
      expect(widthOf(character), character).toBe(stringWidth(character));
    expect(widthOf(narrow)).toBe([...narrow].length);
  });

  test('a text is filled up or cut to exactly so many columns, also where a wide character stands across the end', () => {
    expect(inWidth('渡し場', 8)).toBe('渡し場  ');
    expect(inWidth('渡し場', 6)).toBe('渡し場');
    expect(inWidth('渡し場', 5)).toBe('渡し…');
    expect(inWidth('渡し場', 4)).toBe('渡… ');
    expect(inWidth('12', 4, 'right')).toBe('  12');
    expect(inWidth('12345', 3)).toBe('12…');
  });

  test('lines break between words and between kana, never wider than asked for', () => {
    expect(broken('Somebody rings, girl.', 10)).toEqual(['Somebody', 'rings,', 'girl.']);
    expect(broken('潮が満ちるよ', 5)).toEqual(['潮が', '満ち', 'るよ']);
    expect(hanging('wait for me', 8, 2)).toEqual(['wait', '  for me']);
  });
});
