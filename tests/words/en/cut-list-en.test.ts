/** The cut list in English. */

import { expect, test } from 'vitest';
import { cutListIn } from '../../../src/words/en/cut-list-en.js';
import { JAPAN_TERMS, WEST_TERMS } from '../../../src/words/en/terms-en.js';

const japan = cutListIn(JAPAN_TERMS);
const west = cutListIn(WEST_TERMS);

test('one of several artists, or several', () => {
  expect(japan.sharedNote(1)).toBe(
    '1 cut of several artists: counted for each of them here, once in the total.',
  );
  expect(west.sharedNote(3)).toMatch(/^3 scenes of several artists:/);
});

test('cuts with errors, and those of them whose time is not known', () => {
  expect(japan.unsoundNote(2, 0)).toBe(
    '2 cuts with errors (!): counted as far as could be read, not printed.',
  );
  expect(japan.unsoundNote(2, 1)).toBe(
    '2 cuts with errors (!): counted as far as could be read, not printed; the time of 1 is not known and not in the total.',
  );
});

test('errors and warnings are counted each', () => {
  expect(japan.problemsNote(1, 2)).toBe('1 error, 2 warnings');
});

test('a title begins with a capital, a scene is short before its name', () => {
  expect([japan.list, west.list]).toEqual(['Cut list', 'Scene list']);
  expect([japan.scene('3'), west.scene('3')]).toEqual(['sc. 3', 'seq. 3']);
});
