import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { reasonOf } from '../../src/host/host.js';

const thrownBy = (work: () => unknown): unknown => {
  try {
    work();
  } catch (error) {
    return error;
  }
  throw new Error('nothing was thrown');
};

test.each([
  ['no such file', () => readFileSync('/nowhere/at/all')],
  ['is a folder', () => readFileSync('.')],
  ['a part of the path is not a folder', () => readFileSync('package.json/a.cut')],
  ['the name is too long', () => readFileSync('a'.repeat(5000))],
  ['the name holds a character that no file name may hold', () => readFileSync('a\0b')],
])('what the system throws is told as “%s”', (reason, work) => {
  expect(reasonOf(thrownBy(work))).toBe(reason);
});

test('what has no phrase is named by its code', () => {
  expect(reasonOf(Object.assign(new Error('?'), { code: 'EWHATEVER' }))).toBe(
    'the system refuses (EWHATEVER)',
  );
});

test('what has no code is named as it is', () => {
  expect(reasonOf(new Error('out of luck'))).toBe('the system refuses (Error: out of luck)');
  expect(reasonOf(null)).toBe('the system refuses (null)');
});
