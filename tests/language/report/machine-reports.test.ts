import { expect, test } from 'vitest';
import type { Diagnostic } from '../../../src/language/diagnostic.js';
import { github, json, jsonReport } from '../../../src/language/report/machine-reports.js';
import { FILE, read } from './read-report.js';

test('for GitHub', () => {
  const { all } = read('A, B: 1');
  const sources = new Map([[FILE, 'A, B: 1']]);
  const [line] = github(all, sources, 'en').split('\n');
  expect(line).toMatch(
    /^::error file=c012\.cut,line=1,endLine=1,col=1,endColumn=2,title=unknown-word::`A` is no word/,
  );
  const odd: Diagnostic = {
    ...all[0]!,
    severity: 'hint',
    span: { file: 'a,b:c.cut', start: 0, end: 0 },
    parameters: { found: '100 %\nmore', guess: null },
    notes: [],
  };
  expect(github([odd], sources, 'en')).toBe(
    '::notice file=a%2Cb%3Ac.cut,title=unknown-word::`100 %25%0Amore` is no word of the language.\n',
  );
});

test('over several lines it has no columns', () => {
  const text = 'cut 1\ntime 1\n';
  const { all } = read('?');
  const wide: Diagnostic = { ...all[0]!, span: { file: FILE, start: 2, end: 9 } };
  expect(github([wide], new Map([[FILE, text]]), 'en')).toMatch(
    /^::error file=c012\.cut,line=1,endLine=2,title=/,
  );
});

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
