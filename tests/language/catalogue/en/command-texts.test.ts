import { expect, test } from 'vitest';
import type { Code, Messages } from '../../../../src/language/catalogue/index.js';
import { messageOf } from '../../../../src/language/message.js';

const said = <C extends Code>(code: C, parameters: Messages[C]): string =>
  messageOf({ code, parameters }, 'en');

test('one file is there already, several are', () => {
  expect(said('would-overwrite', { variant: 'there', paths: ['a.cut'] })).toBe(
    '`a.cut` is there already; nothing was written.',
  );
  expect(said('would-overwrite', { variant: 'there', paths: ['a.cut', 'b.cut'] })).toBe(
    '`a.cut`, `b.cut` are there already; nothing was written.',
  );
});

test('another watch is of this process, or of one with a number', () => {
  expect(said('watch-impossible', { variant: 'second-watch', folder: 'out', by: 4711 })).toMatch(
    /^`out` is written to by another watch already, process 4711: end that one/,
  );
  expect(said('watch-impossible', { variant: 'second-watch', folder: '.', by: null })).toContain(
    'already, this process: end',
  );
});

test('a port is kept by the system, or another program has it', () => {
  const port = (kept: boolean) => said('watch-impossible', { variant: 'port', port: 80, kept });
  expect(port(true)).toBe(
    'The pages cannot be shown at port 80: the system keeps it for others. Leave the port out, and a free one is taken.',
  );
  expect(port(false)).toContain('at port 80: another program listens there.');
});

test('a fault of a cell says row and column, one of the whole table does not', () => {
  const cell = { row: 3, column: 2 };
  expect(said('table-faulty', { variant: 'no-frame', found: '0', ...cell })).toBe(
    'Row 3, column 2: `0` is no frame, counted from 1.',
  );
  expect(said('table-faulty', { variant: 'no-csv', message: 'Bad Row' })).toBe('This is no CSV: bad Row.');
});

test('frames are those of a level, or of the sheet', () => {
  const missing = (level: string | null) =>
    said('table-faulty', { variant: 'frame-missing', frame: 3, wanted: 2, level, row: 4, column: 1 });
  expect(missing('A')).toBe('Row 4, column 1: Frame 2 of level A is missing before frame 3.');
  expect(missing(null)).toBe('Row 4, column 1: Frame 2 of the sheet is missing before frame 3.');
});

test('levels that are not equally long are of a cut, where it has a number', () => {
  const uneven = (cut: string) =>
    said('table-faulty', {
      variant: 'uneven',
      cut,
      level: 'B',
      frames: 1,
      longest: 'A',
      most: 2,
      row: 4,
      column: 1,
    });
  expect(uneven('8')).toBe('Row 4, column 1: Level B of cut 8 has 1 frames, level A 2.');
  expect(uneven('')).toBe('Row 4, column 1: Level B has 1 frames, level A 2.');
});
