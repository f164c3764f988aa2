import { expect, test } from 'vitest';
import type { Diagnostic } from '../../../src/language/diagnostic.js';
import { github } from '../../../src/language/report/github-report.js';
import { FILE, read } from './read-report.js';

test('for GitHub', () => {
  const { all } = read('A, B: 1');
  const sources = new Map([[FILE, 'A, B: 1']]);
  const [line] = github(all, sources).split('\n');
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
  expect(github([odd], sources)).toBe(
    '::notice file=a%2Cb%3Ac.cut,title=unknown-word::`100 %25%0Amore` is no word of the language.\n',
  );
});

test('over several lines it has no columns', () => {
  const text = 'cut 1\ntime 1\n';
  const { all } = read('?');
  const wide: Diagnostic = { ...all[0]!, span: { file: FILE, start: 2, end: 9 } };
  expect(github([wide], new Map([[FILE, text]]))).toMatch(/^::error file=c012\.cut,line=1,endLine=2,title=/);
});
