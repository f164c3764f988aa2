import { expect, test } from 'vitest';
import { CsvFault, cellStart, csvRows } from '../../src/language/csv-rows.js';

/** What stands where a cell is said to begin. */
function at(text: string, row: number, column: number, delimiter = ','): string {
  const { raw, start } = csvRows(text, delimiter)[row]!;
  return text.slice(start + cellStart(raw, column, delimiter));
}

test('every cell is found in the text, whatever ends the lines', () => {
  for (const end of ['\n', '\r\n', '\r']) {
    const text = ['cut,stage,note', '12,key,"scarf, too short"', '13,key,wide'].join(end);
    expect(csvRows(text).map(({ cells }) => cells)).toEqual([
      ['cut', 'stage', 'note'],
      ['12', 'key', 'scarf, too short'],
      ['13', 'key', 'wide'],
    ]);
    expect(at(text, 1, 2).startsWith('"scarf, too short"')).toBe(true);
    expect(at(text, 2, 1)).toBe('key,wide');
  }
});

test('a quoted cell may hold quotes and line ends', () => {
  const text = 'cut,note\n12,"the ""red""\nscarf"\n13,x\n';
  expect(csvRows(text)[1]!.cells).toEqual(['12', 'the "red"\nscarf']);
  expect(at(text, 2, 0)).toBe('13,x\n');
});

test('another delimiter leaves commas alone', () => {
  expect(csvRows('a;b,c\n1;2', ';').map(({ cells }) => cells)).toEqual([
    ['a', 'b,c'],
    ['1', '2'],
  ]);
  expect(at('a;b,c\n1;2', 0, 1, ';')).toBe('b,c\n1;2');
});

test('rows may have any number of cells', () => {
  expect(csvRows('a,b\n\n1\n1,2,3\n').map(({ cells }) => cells.length)).toEqual([2, 1, 1, 3]);
});

test('a quote that is never closed is told apart from other faults', () => {
  const fault = (text: string): CsvFault => {
    try {
      csvRows(text);
    } catch (caught) {
      if (caught instanceof CsvFault) return caught;
    }
    throw new Error('no fault');
  };
  expect(fault('a\n"b\n').reason).toBeNull();
  expect(fault('a\n"b" c\n')).toMatchObject({ start: 2, reason: expect.stringContaining('Quote') });
});
