/** The header and the memos of two versions. */

import { describe, expect, test } from 'vitest';
import { headChanges, memoChanges } from '../../src/compare/compare-cuts.js';
import { edits, SHEET } from './edits.js';
import { solved } from './say.js';

edits(SHEET, [
  ['time 5+0', 'time 5+12', 'cut 12 frames longer: 5+12 (was 5+0)'],
  ['"Rooftop"', '"The roof"', 'title “The roof” (was “Rooftop”)'],
  ['scene 6', 'scene 7', 'scene 7 (was 6)'],
  ['scene 6', 'scene 6\ntake 2', 'take 2 (was none)'],
  ['"M. Arai"', '"L. Quoy"', 'artist L. Quoy (was M. Arai)'],
  ['left."', 'right."', 'memo reworded: “Wind from screen right.” (was “Wind from screen left.”)'],
  ['memo "Wind from screen left."\n', '', 'memo dropped: “Wind from screen left.”'],
  ['left."', 'left."\nmemo "No rain."', 'memo added: “No rain.”'],
]);

const between = (old: string, now: string) =>
  headChanges(solved(`${old}\nA: 1..\n`), solved(`${now}\nA: 1..\n`));

test('full-width digits and leading zeros make no other number of a cut', () => {
  expect(between('cut 012\ntime 1+0', 'cut １２\ntime 1+0')).toEqual([]);
  expect(between('cut 12\ntime 1+0', 'cut 12b\ntime 1+0')).toMatchObject([
    { kind: 'cut', old: '12', now: '12b' },
  ]);
});

test('other frames a second are told, and the time in frames that comes with them', () => {
  expect(between('cut 1\ntime 1+0', 'cut 1\nfps 30\ntime 1+0')).toMatchObject([
    { kind: 'time', old: 24, now: 30 },
    { kind: 'fps', old: 24, now: 30 },
  ]);
});

test('the handles of an overlap are told with the overlap', () => {
  expect(between('cut 1\ntime 2+0', 'cut 1\ntime 2+0\noverlap out 24')).toEqual([]);
});

test('another standard field is told by its size', () => {
  const cut = solved('cut 1\ntime 1+0\nA: 1..\n');
  const field = { widthMm: 300, heightMm: 200 };
  const other = { ...cut, shot: { ...cut.shot, settings: { ...cut.shot.settings, field } } };
  expect(headChanges(cut, other)).toMatchObject([{ kind: 'standard-field', now: field }]);
  expect(headChanges(cut, cut)).toEqual([]);
});

describe('memos', () => {
  const memos = (...texts: string[]) =>
    solved(`cut 1\ntime 1+0\n${texts.map((text) => `memo "${text}"\n`).join('')}A: 1..\n`);
  const told = (old: string[], now: string[]) =>
    memoChanges(memos(...old), memos(...now)).map((one) => one.kind === 'memo' && [one.old, one.now]);

  test('are told apart by their order: one in another’s place is that one, reworded', () => {
    expect(told(['a', 'b', 'c'], ['a', 'x', 'c'])).toEqual([['b', 'x']]);
  });

  test('come and go where they have no counterpart', () => {
    expect(told(['a', 'c'], ['a', 'b', 'c'])).toEqual([[null, 'b']]);
    expect(told(['a', 'b', 'c'], ['b', 'd', 'e'])).toEqual([
      ['a', null],
      ['c', 'd'],
      [null, 'e'],
    ]);
  });
});
