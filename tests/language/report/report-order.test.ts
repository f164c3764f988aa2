import { describe, expect, test } from 'vitest';
import { diagnose } from '../../../src/language/diagnostic.js';
import { parse } from '../../../src/language/parse.js';
import { github, jsonReport } from '../../../src/language/report/machine-reports.js';
import {
  inOrder,
  limited,
  MOST_PRINTED,
  saidOfLeftOut,
  tableOf,
} from '../../../src/language/report/report-order.js';
import { FILE, plain, read } from './read-report.js';

describe('order', () => {
  test('by file as given, then by place, whatever order they were found in', () => {
    const { all } = read('? \nA: ?\n?');
    const other = parse('a.cut', '?').diagnostics;
    const sources = new Map([
      [FILE, ''],
      ['a.cut', ''],
    ]);
    const sorted = inOrder([...all, ...other], sources);
    expect(inOrder([...other, ...all].reverse(), sources)).toEqual(sorted);
    expect(sorted.map(({ span }) => [span.file, span.start])).toEqual([
      [FILE, 0],
      [FILE, 6],
      [FILE, 8],
      ['a.cut', 0],
    ]);
  });

  test('what is said twice of one place is told once', () => {
    const { all, sources } = read('?');
    expect(inOrder([...all, ...all], sources)).toEqual(all);
  });

  test('a flood is stopped, and it is said', () => {
    const text = 'time\n'.repeat(MOST_PRINTED + 57);
    const lines = plain(text).trimEnd().split('\n');
    expect(lines.filter((line) => line.startsWith('Error: '))).toHaveLength(MOST_PRINTED);
    expect(lines.at(-1)).toBe('57 more errors of c012.cut are not shown: mend the first 100 and look again');
    const { all, sources } = read(text);
    expect(jsonReport(all, sources).leftOut).toEqual([{ file: FILE, severity: 'error', count: 57 }]);
    expect(github(all, sources, 'en').trimEnd().split('\n')).toHaveLength(MOST_PRINTED + 1);
  });
});

describe('a flood', () => {
  const span = (start: number, file = FILE) => ({ file, start, end: start + 1 });
  const many = (count: number, file = FILE) =>
    Array.from({ length: count }, (_, i) =>
      diagnose('unknown-word', span(i, file), { found: `w${i}`, guess: null }),
    );
  const none = new Map<string, string>();

  test('of a hundred is printed', () => {
    expect(limited(many(MOST_PRINTED), none)).toMatchObject({ shown: many(MOST_PRINTED), leftOut: [] });
  });

  test('is counted for each file by itself', () => {
    const { leftOut } = limited([...many(MOST_PRINTED + 1), ...many(MOST_PRINTED + 2, 'b.cut')], none);
    expect(leftOut.map(({ file, count }) => [file, count])).toEqual([
      ['b.cut', 2],
      [FILE, 1],
    ]);
  });

  test.each([
    [1, '1 more warning of a.cut is not shown: mend the first 100 and look again'],
    [2, '2 more warnings of a.cut are not shown: mend the first 100 and look again'],
  ])('%d left out', (count, words) => {
    expect(saidOfLeftOut({ file: 'a.cut', severity: 'warning', count }, 'en')).toBe(words);
  });
});

test('the table of a text is made once, and none for a file without text', () => {
  let made = 0;
  const table = tableOf(new Map([[FILE, 'abc']]), (text) => {
    made++;
    return text.length;
  });
  expect([table(FILE), table(FILE), table('gone.cut')]).toEqual([3, 3, undefined]);
  expect(made).toBe(1);
});
