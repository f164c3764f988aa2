import { expect, test } from 'vitest';
import type { Diagnostic } from '../../../src/language/diagnostic.js';
import { json, jsonReport } from '../../../src/language/report/json-report.js';
import { FILE, read } from './read-report.js';

test('for programs', () => {
  const { all, sources } = read('cut 12\ntime 5 + 0');
  const place = {
    file: FILE,
    start: { offset: 12, line: 2, column: 6 },
    end: { offset: 17, line: 2, column: 11 },
  };
  expect(JSON.parse(json(all, sources))).toEqual({
    version: 1,
    diagnostics: [
      {
        code: 'spaced-number',
        severity: 'error',
        message: 'Seconds and frames are written with no blanks between: 5+0.',
        place,
        notes: [],
        fix: { title: 'leave the blanks out', edits: [{ place, text: '5+0' }] },
      },
    ],
    leftOut: [],
  });
});

test('a place in a file without text has no points', () => {
  const { all } = read('?');
  const span = { file: 'gone.cut', start: 0, end: 0 };
  const missing: Diagnostic = {
    ...all[0]!,
    span,
    notes: [{ note: 'stands-here', span }, { note: 'stack-here' }],
  };
  const [one] = jsonReport([missing], new Map()).diagnostics;
  const place = { file: 'gone.cut', start: null, end: null };
  expect(one!.place).toEqual(place);
  expect(one!.notes).toEqual([
    { message: 'it stands here', place },
    { message: 'the stack is given here', place: null },
  ]);
});

test('offsets count the text after a byte-order mark', () => {
  const { all, sources } = read('\ufefftime 5 + 0');
  expect(jsonReport(all, sources).diagnostics[0]!.place.start).toEqual({ offset: 5, line: 1, column: 6 });
});

test('nothing wrong is an empty list', () => {
  expect(jsonReport([], new Map([[FILE, 'cut 1']]))).toEqual({ version: 1, diagnostics: [], leftOut: [] });
});
