/** In-betweens, charts and finished numbers of two versions. */

import { describe, expect, test } from 'vitest';
import { nameBoth } from '../../src/compare/names.js';
import { chartChanges, comparePassages, drawingChanges } from '../../src/compare/passages.js';
import { edits, SHEET } from './edits.js';
import { levelOf, note } from './say.js';

edits(SHEET, [
  [
    '1--2-',
    '1---2-',
    'A: 3 in-betweens from key 1 to key 2 (was 2), from 0+15, new: A4 (1.3); what follows comes 2 frames later',
    'A: numbers: A4 to A11 are now A5 to A12',
  ],
  [
    '1--2-',
    '1-2-',
    'A: 1 in-between from key 1 to key 2 (was 2), from 0+15, gone: A3 (1.2); what follows comes 2 frames earlier',
    'A: numbers: A4 to A11 are now A3 to A10',
  ],
  [
    '2-3:',
    '2 3:',
    'A: no in-between from key 2 to key 3 (was 1), from 0+21, gone: A5 (2.1); what follows comes 2 frames earlier',
    'A: numbers: A6 to A11 are now A5 to A10',
  ],
  ['1--2-3', '1=-2-3', 'A: A2 (1.1) is a breakdown now'],
  [
    '(1--2--)',
    '(1--2-=-)',
    'B: 3 in-betweens from key 2 to key 1 (was 2), from 1+9, new: B7 (2.3)',
    'B: B6 (2.2) is a breakdown now',
  ],
  [
    '4-5-',
    '4-5--',
    'A: 2 in-betweens from key 5 to key 4 (was 1), from 2+5, new: A11 (5.2); what follows comes 6 frames later',
    'A: numbers: A11 is now A12',
  ],
  [
    '{late}',
    '{early}',
    'C: in-betweens from key 2 to key 3 crowding the earlier key (was crowding the later key)',
  ],
  ['{late}', '{1/4 1/2}', 'C: in-betweens from key 2 to key 3 at 1/4 1/2 (was crowding the later key)'],
]);

describe('a passage on paper', () => {
  const cut = (timeline: string, names: string) => `cut 1\ntime 1+0\nA: ${timeline}\ncels A ${names}\n`;
  const old = cut('1--2..', '1 1.1 1.2 2');

  test('says nothing of places while its drawings stay where they lie', () => {
    expect(note(old, cut('1---2..', '1 1.1 1.2 2 1.2a')).join('\n')).not.toContain(' lies ');
  });

  test('says where a drawing lies that a chart has moved', () => {
    const now = cut('1{1/3 1/2 3/4}---2..', '1 1.1 1.2 2 1.2a');
    expect(note(old, now)).toContain('A: on the way from key 1 to key 2 lies A3 (1.2) at 1/2 (was 2/3)');
    expect(note(old, now, 'ja').join('\n')).toContain('A：原画1→2 の割り A3 (1.2) 1/2');
  });
});

const names = (old: string, now: string) => nameBoth(levelOf(old), levelOf(now));

describe('passages of two versions', () => {
  test('of the same keys and count are the same drawings', () => {
    const { same, counts } = comparePassages(names('1--2 3..', '1--2-3..'));
    expect(same.map(([old, now]) => [old.drawings, now.drawings])).toEqual([
      [
        ['1.1', '1.2'],
        ['1.1', '1.2'],
      ],
    ]);
    expect(counts).toMatchObject([{ from: '2', to: '3', old: null, now: { drawings: ['2.1'] } }]);
  });

  test('are another count where the keys still follow each other, with the names of all in-betweens', () => {
    const { counts } = comparePassages(names('1-2..', '1--2..'));
    expect(counts.map(({ symbols }) => [...symbols])).toEqual([['1>2.1', '1>2.2']]);
  });

  test('are no other count where another key stands between', () => {
    expect(comparePassages(names('1-2..', '1 5 2..')).counts).toEqual([]);
  });

  test('of a key that took another’s place go by its new name', () => {
    const { same, counts } = comparePassages(names('1-2-3..', '1-9-3..'));
    expect(counts).toEqual([]);
    expect(same).toHaveLength(2);
  });
});

test('a chart changes where its shares do, whatever it is called', () => {
  const charts = (old: string, now: string) => chartChanges('A', comparePassages(names(old, now)));
  expect(charts('1-2..', '1{1/2}-2..')).toEqual([]);
  expect(charts('1--2..', '1{late}--2..')).toMatchObject([
    { chart: { old: 'even', now: 'late' }, rows: { from: 3, to: 3 } },
  ]);
});

test('numbers that changed are sorted by what they were, and mark no row', () => {
  const { renumbered } = drawingChanges('A', names('1 2 3..', '3 1 2..'));
  expect(renumbered).toMatchObject([
    {
      rows: null,
      numbers: [
        { drawing: '1', old: 1, now: 2 },
        { drawing: '2', old: 2, now: 3 },
        { drawing: '3', old: 3, now: 1 },
      ],
    },
  ]);
});
