/** What stands in the camera column, and which moves stand beside which. */

import { describe, expect, test } from 'vitest';
import { cameraPlan } from '../../../src/sheet/camera/lane-assignment.js';
import { solvedCut } from '../laid.js';

const HEAD =
  'cut 1\ntime 4+0\nA: 1..\nlevel A free\nlevel BG free\nfield P full\nfield Q full at 40,0\nfield R 60%\n';
const plan = (text: string, west = false) =>
  cameraPlan(
    solvedCut(HEAD + text),
    { labels: 'en', convention: west ? 'west' : 'japan', lengths: 'mm' },
    undefined,
  );

describe('lanes', () => {
  const lanesOf = (text: string) => plan(text).placed.map(({ item, lane }) => [item.first, lane]);

  test('are as many as moves run at the same time', () => {
    expect(lanesOf('pan P@1 > Q@24\nshake 2mm 12..30\nfade out 3+1..4+0\n')).toEqual([
      [1, 0],
      [12, 1],
      [73, 0],
    ]);
  });

  test('begin with the camera where it and a level begin on one row', () => {
    const { placed } = plan('roll A 5mm 1..24 every 12\npan P@1 > Q@24\n');
    expect(placed.map(({ item }) => item.names[0]!.includes('PAN'))).toEqual([true, false]);
  });

  test('of graduated moves are twice as wide', () => {
    expect(plan('pan P@1 > Q@24\n').lanes).toEqual([1]);
    expect(plan('pan P@1 > Q@24 ticks\nshake 2mm 12..30\n').lanes).toEqual([2, 1]);
  });

  test('are one for a move that leaves on the row on which another arrives at the same place', () => {
    const { placed } = plan('pan P@1 > Q@24\ntruck Q@24 > R@48\n');
    expect(placed.map(({ lane, goesOn }) => [lane, goesOn])).toEqual([
      [0, false],
      [0, true],
    ]);
  });
});

describe('an item', () => {
  test('is told in the memo with its rows, as the convention names them', () => {
    expect(plan('shake 2mm 12..30\n').items[0]!.memo).toMatch(/ {2}0\+12–1\+6$/);
    expect(plan('shake 2mm 12..30\n', true).items[0]!.memo).toMatch(/ {2}0'12–1'14$/);
  });

  test('of a graduated pull needs the row before its bar, where graduation 0 is', () => {
    const [pull] = plan('pull BG left 24mm 13..24 ticks\n').items;
    expect([pull!.from, pull!.first, pull!.last]).toEqual([12, 13, 24]);
    expect(pull!.numbers.get(12)).toMatchObject({ number: 0 });
    expect(plan('pull BG left 24mm 13..24\n').items[0]!.from).toBe(13);
  });

  test('names its places on their rows', () => {
    const [pan] = plan('pan P@13 > Q@24\n').items;
    expect([...pan!.labels]).toEqual([
      [13, 'P'],
      [24, 'Q'],
    ]);
  });
});

test('a camera that rests is fixed on its field, the standard field has no name', () => {
  expect(plan('').fixed).toBe('FIX');
  expect(plan('fix R\n').fixed).toBe('FIX R');
  expect(plan('pan P@1 > Q@24\n').fixed).toBeNull();
});
