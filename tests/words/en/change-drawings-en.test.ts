/** What levels show, in English. */

import { describe, expect, test } from 'vitest';
import { drawings } from '../../../src/words/en/change-drawings-en.js';
import {
  between,
  cycle,
  cycleChange,
  EMPTY,
  exposure,
  inBetweens,
  key,
  moved,
  replaced,
  say,
  shown,
} from '../sentence-samples.js';

const told = (body: Parameters<typeof say>[1], rows: Parameters<typeof say>[2] = null) =>
  say(drawings, body, rows);
const [a, b] = [between('1.1', 2, '1', '2'), between('1.2', 3, '1', '2')];

describe('a hold', () => {
  test('of one drawing says how much longer or shorter', () => {
    expect(told(exposure())).toBe('A: key 1 held 4 frames longer, 16 frames (was 12), from 0+1');
    expect(told(exposure({ first: a, last: a, frames: { old: 3, now: 2 }, inCycle: true }))).toBe(
      'A: A2 (1.1) held 1 frame shorter, 2 frames (was 3), from 0+1, in each pass of the cycle',
    );
  });

  test('of several drawings says what each has', () => {
    const several = exposure({ last: key('3'), count: 3, frames: { old: 2, now: 3 } });
    expect(told(several)).toBe('A: keys 1 to 3 (3 exposures) held 3 frames (was 2) each, from 0+1');
    expect(told({ ...several, first: a })).toMatch(/^A: A2 \(1\.1\) to key 3 \(3 exposures\)/);
  });

  test('says what follows, and up to where', () => {
    expect(told(exposure({ follows: { by: 4, last: null } }))).toMatch(
      /; what follows comes 4 frames later$/,
    );
    expect(told(exposure({ follows: { by: -4, last: cycle('2', '3') } }))).toMatch(
      /; what follows up to the cycle 2-3 comes 4 frames earlier$/,
    );
  });
});

describe('what comes earlier or later', () => {
  test('one thing is on a row, the last one from it', () => {
    expect(told(moved())).toBe('A: key 2 comes 6 frames later, on 0+19 (was 0+13)');
    expect(told(moved({ toEnd: true }))).toBe('A: key 2 comes 6 frames later, from 0+19 (was 0+13)');
  });

  test('several things by their ends', () => {
    expect(told(moved({ last: key('4') }))).toBe('A: keys 2 to 4 come 6 frames later, from 0+19 (was 0+13)');
  });

  test('everything to the end by the first, where its numbers fall', () => {
    expect(told(moved({ last: key('1'), toEnd: true, by: -6 }))).toBe(
      'A: everything from key 2 on comes 6 frames earlier, from 0+19 (was 0+13)',
    );
  });

  test('nothing at all is empty', () => {
    expect(told(moved({ first: EMPTY, last: EMPTY }))).toBe('A: empty 6 frames later, from 0+19 (was 0+13)');
  });
});

describe('what is shown', () => {
  test('is added where it is new, and shown again where it is not', () => {
    expect(told(replaced({ now: shown([key('7')]) }))).toBe('A: key 7 added from 0+13 for 2 frames');
    expect(told(replaced({ now: shown([key('7'), key('2')], false) }))).toBe(
      'A: key 7, key 2 shown again from 0+13 for 4 frames',
    );
  });

  test('is dropped, or not shown again', () => {
    expect(told(replaced({ old: shown([key('7')]) }))).toBe('A: key 7 dropped (was on 0+9, 2 frames)');
    expect(told(replaced({ old: shown([key('7')], false) }))).toBe(
      'A: key 7 not shown again (was on 0+9, 2 frames)',
    );
  });

  test('stands in the place of something else, with its time where that differs', () => {
    const [now, old] = [shown([key('7')]), shown([a])];
    expect(told(replaced({ now, old }))).toBe('A: key 7 instead of 1 in-between from 0+13');
    expect(told(replaced({ now: shown([key('7')], true, 6), old }))).toBe(
      'A: key 7 instead of 1 in-between from 0+13 for 6 frames (was 2)',
    );
  });

  test('two in-betweens of one name are told apart by their keys', () => {
    expect(told(replaced({ now: shown([between('1.1', 2, '1', '3')]), old: shown([a]) }))).toBe(
      'A: A2 (1>3.1) instead of A2 (1>2.1) from 0+13',
    );
  });

  test('nothing comes and goes as empty', () => {
    expect(told(replaced({ now: shown([EMPTY]) }))).toBe('A: empty from 0+13 for 2 frames');
    expect(told(replaced({ old: shown([EMPTY]) }))).toBe('A: no longer empty (was on 0+9, 2 frames)');
  });

  test('takes the time of its neighbour, or gives it', () => {
    expect(told(replaced({ now: shown([key('7')]), holder: key('3') }))).toMatch(
      /, key 3 held that much less$/,
    );
    expect(told(replaced({ old: shown([key('7')]), holder: key('3') }))).toMatch(/, key 3 held instead$/);
    expect(told(replaced({ now: shown([key('7')]), holder: EMPTY }))).toMatch(/, where it was empty$/);
    expect(told(replaced({ old: shown([key('7')]), holder: EMPTY }))).toMatch(/, empty instead$/);
  });
});

describe('in-betweens of a passage', () => {
  test('are counted, new ones and those that are gone named', () => {
    expect(told(inBetweens({ added: [{ drawing: '1.3', cel: 4 }] }))).toBe(
      'A: 3 in-betweens from key 1 to key 2 (was 2), from 0+3, new: A4 (1.3)',
    );
    expect(told(inBetweens({ count: { old: 1, now: 0 }, dropped: [{ drawing: '1.1', cel: 2 }] }))).toBe(
      'A: no in-between from key 1 to key 2 (was 1), from 0+3, gone: A2 (1.1)',
    );
  });

  test('more of them take the time of a hold, fewer give it', () => {
    expect(told(inBetweens({ holder: key('2') }))).toMatch(/; key 2 held less for it$/);
    expect(told(inBetweens({ holder: key('2'), count: { old: 3, now: 2 } }))).toMatch(
      /; key 2 held more for it$/,
    );
  });

  test('lie elsewhere on the way', () => {
    const drawing = { drawing: '1.2', cel: 3, old: 2 / 3, now: 0.5 };
    expect(told({ kind: 'places', level: 'A', from: '1', to: '2', drawings: [drawing] })).toBe(
      'A: on the way from key 1 to key 2 lies A3 (1.2) at 1/2 (was 2/3)',
    );
  });

  test('a chart is told by its name, one that was marked by its shares', () => {
    const chart = (old: string, now: string) =>
      told({
        kind: 'chart',
        level: 'A',
        from: '1',
        to: '2',
        chart: { old, now },
        fractions: { old: [1 / 3, 2 / 3], now: [0.25, 0.5] },
      });
    expect(chart('early', 'both')).toBe(
      'A: in-betweens from key 1 to key 2 crowding both keys (was crowding the earlier key)',
    );
    expect(chart('even', 'fractions')).toBe(
      'A: in-betweens from key 1 to key 2 at 1/4 1/2 (was evenly spaced)',
    );
  });

  test('one becomes a breakdown, or is none any more', () => {
    const breakdown = { kind: 'breakdown', level: 'A', drawing: '1.1', cel: 2 } as const;
    expect(told({ ...breakdown, now: true })).toBe('A: A2 (1.1) is a breakdown now');
    expect(told({ ...breakdown, now: false })).toBe('A: A2 (1.1) is no breakdown any more');
  });
});

describe('a cycle', () => {
  test('runs more or fewer times', () => {
    expect(told(cycleChange())).toBe('B: the cycle 1-2 runs 4 times (was 3), from 1+1');
    expect(told(cycleChange({ times: { old: 2, now: 1 } }))).toBe(
      'B: the cycle 1-2 runs 1 time (was 2), from 1+1',
    );
  });

  test('lasts longer or shorter', () => {
    expect(told(cycleChange({ what: 'length', frames: { old: 24, now: 30 } }))).toBe(
      'B: the cycle 1-2 lasts 1+6 (was 1+0), from 1+1',
    );
  });

  test('goes there and back, or one way', () => {
    expect(told(cycleChange({ what: 'bounce', bounce: { old: false, now: true } }))).toBe(
      'B: the cycle 1-2 there and back (was one way), from 1+1',
    );
    expect(told(cycleChange({ what: 'bounce', bounce: { old: true, now: false } }))).toBe(
      'B: the cycle 1-2 one way only (was there and back), from 1+1',
    );
  });
});

test('a key in another’s place', () => {
  expect(told({ kind: 'key', level: 'A', frame: 25, old: '2', now: '2a' })).toBe(
    'A: key 2a instead of key 2, from 1+1',
  );
});

describe('numbers', () => {
  const renumbered = (...numbers: [old: number, now: number][]) =>
    told({
      kind: 'renumbered',
      level: 'A',
      numbers: numbers.map(([old, now]) => ({ drawing: `${old}`, old, now })),
    });

  test('that move alike are told as a run', () => {
    expect(renumbered([2, 5], [4, 7], [5, 8])).toBe('A: numbers: A2 is now A5, A4 to A5 are now A7 to A8');
  });

  test('in more than six runs are told by the first six, and how many they are', () => {
    const many = [1, 3, 5, 7, 9, 11, 13].map((old): [number, number] => [old, old + 20]);
    expect(renumbered(...many)).toMatch(/, A11 is now A31 … \(7 drawings\)$/);
  });
});

test('rows that show something else, where it is known which', () => {
  expect(told({ kind: 'rows', level: 'A' }, { from: 3, to: 8 })).toBe('A: other drawings on 0+3 to 0+8');
  expect(told({ kind: 'rows', level: 'A' })).toBe('A: other drawings');
});

test('in-betweens are counted where they stand in the place of others', () => {
  expect(told(replaced({ now: shown([a]), old: shown([a, b]) }))).toBe(
    'A: 1 in-between instead of 2 in-betweens from 0+13 for 2 frames (was 4)',
  );
});
