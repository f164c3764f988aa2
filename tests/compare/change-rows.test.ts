/** Which rows get a change bar. */

import { describe, expect, test } from 'vitest';
import { markedLadders, markedRows } from '../../src/compare/change-rows.js';
import { compare } from '../../src/compare/compare-cuts.js';
import { solved } from './say.js';

describe('a cycle', () => {
  const cut = (line: string, time = '4+0') => `cut 1\ntime ${time}\nA: ${line}\n`;
  const rows = (old: string, now: string) =>
    markedRows(compare(solved(old), solved(now)), solved(now)).map(({ from, to }) => [from, to]);

  test('played more often is marked where it goes on, not where it is as it was', () => {
    expect(rows(cut('(1--2--)*2 3..'), cut('(1--2--)*3 3..'))[0]).toEqual([25, 36]);
    expect(rows(cut('(1--2--)..', '3+0'), cut('(1--2--)..', '4+0'))).toEqual([]);
  });

  test('played less often is marked where it ends', () => {
    expect(rows(cut('(1--2--)*3 3..'), cut('(1--2--)*2 3..'))[0]).toEqual([24, 24]);
  });

  test('of another speed is marked as a whole', () => {
    expect(rows(cut('(1--2--)*4 3..'), cut('on 3 (1--2--)*4 3..'))[0]![0]).toBeLessThan(3);
  });
});

test('a ladder is marked where its drawings, their places or their kind differ', () => {
  const cut = (line: string) => `cut 1\ntime 2+0\nA: ${line}\n`;
  const ladders = (old: string, now: string) =>
    markedLadders(compare(solved(cut(old)), solved(cut(now))), solved(cut(now))).map(
      ({ level, from, to }) => `${level} ${from}>${to}`,
    );
  expect(ladders('1--2--3..', '1{late}--2--3..')).toEqual(['A 1>2']);
  expect(ladders('1--2--3..', '1--2---3..')).toEqual(['A 2>3']);
  expect(ladders('1--2--3..', '1--2-=3..')).toEqual(['A 2>3']);
  expect(ladders('1--2--3..', '1:12--2--3..')).toEqual([]);
});
