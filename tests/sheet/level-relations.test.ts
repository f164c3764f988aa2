/** Levels drawn to one another, and masks, on the sheet. */

import { describe, expect, test } from 'vitest';
import { relationLines, relationsOf } from '../../src/sheet/level-relations.js';
import { wordsOf } from '../../src/words/words.js';
import { laid, said, solvedCut } from './laid.js';

const TEXT =
  'cut 14\ntime 1+0\nstack BG A B C\nlevel B with A\nlevel C masks A,B\nA: 1--2..\nB: 1--2..\nC: 1..\n';
const { shot } = solvedCut(TEXT);
const english = wordsOf({ labels: 'en', convention: 'japan' }).sheet;
const japanese = wordsOf({ labels: 'ja', convention: 'japan' }).sheet;

describe('over its column a level', () => {
  test('names its partner, what it masks and what masks it', () => {
    const over = (name: string) => relationsOf(name, shot.levels, english);
    expect(over('A')).toEqual(['with B', 'masked by C']);
    expect(over('B')).toEqual(['with A', 'masked by C']);
    expect(over('C')).toEqual(['mask of A,B']);
    expect(over('BG')).toEqual([]);
    expect(relationsOf('A', shot.levels, japanese)).toEqual(['Bと組み', 'Cでマスク']);
  });
});

test('the memo has each pair once', () => {
  expect(relationLines(shot.levels, english)).toEqual([
    'A, B: drawn to one another, in register',
    'C: mask of A, B, hides what lies under its paint',
  ]);
  expect(relationLines(shot.levels, japanese)[0]).toBe('A・B：組み');
});

test('the sheet prints both', () => {
  const [page] = laid(TEXT);
  for (const text of ['with A', 'masked by C', 'A, B: drawn to one another'])
    expect(said(page!)).toContain(text);
});
