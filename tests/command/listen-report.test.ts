import { expect, test } from 'vitest';
import { rowText, speechLines } from '../../src/command/listen-report.js';
import type { Position } from '../../src/language/tree.js';
import { compileText } from '../compile.js';

const like = (form: Position['form']) => ({ form }) as Position;

test('a row is typed as the one beside it', () => {
  const write = rowText(compileText('cut 1\nfps 25\ntime 4+0\nA: 1..\n').shot!);
  expect([write(50, like('frames')), write(50, like('seconds')), write(50, like('feet'))]).toEqual([
    '50',
    '1+25',
    "3'02",
  ]);
  expect(write(51, like('mark'))).toBe('2+1');
});

test('a statement to be filled in for each stretch of speech', () => {
  const compiled = compileText('cut 1\ntime 4+0\nA: 1..\n');
  expect(speechLines(compiled, { lines: [], speech: [{ from: 25, to: 48 }] })).toEqual([
    'voice "" 1+1..1+24 ""',
  ]);
});
