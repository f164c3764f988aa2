/** An episode against an earlier state of it. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listSince } from '../../src/count/list-since.js';
import { listOf, NOTHING, row } from './rows.js';

const keyOf = (cut: string): string => cut.replace(/^0+/, '');
const drawn = (drawings: number) => ({ counts: { ...NOTHING.counts, drawings } });

describe('cuts since then', () => {
  const before = listOf(
    [row('1', { time: 48 }), row('2', { time: 30 }), row('003', { time: 10, ...drawn(4) }), row('5', null)],
    {
      budget: 100,
    },
  );
  const now = listOf(
    [
      row('1', { time: 48 }),
      row('3', { time: 16, ...drawn(7) }),
      row('4', { time: 20 }),
      row('5', { time: 8 }),
    ],
    {
      budget: 96,
    },
  );
  const since = listSince(before, now, keyOf);

  test('are those that differ, what is gone where it stood', () => {
    expect(since.cuts.map(({ cut, change }) => [cut, change])).toEqual([
      ['2', -30],
      ['3', 6],
      ['4', 20],
      ['5', null],
    ]);
    expect(since.unchanged).toBe(1);
    expect(since.cuts[0]!.now).toBeNull();
    expect(since.cuts[2]!.before).toBeNull();
    expect(since.cuts[1]).toMatchObject({
      before: { running: 10, drawings: 4 },
      now: { running: 16, drawings: 7 },
    });
  });

  test('have the totals and budgets of both', () => {
    expect(since.before).toMatchObject({ cuts: 4, running: 88, budget: 100, over: -12, untimed: 1 });
    expect(since.now).toMatchObject({ cuts: 4, running: 92, budget: 96, over: -4, untimed: 0 });
  });

  test('differ by a dissolve of full times that came: it runs once', () => {
    const cut = (number: string, more = {}) => row(number, { time: 48, ...more });
    const apart = listOf([cut('1'), cut('2')], { overlap: 'full' });
    const dissolved = listOf(
      [cut('1', { overlap: { in: 0, out: 13 } }), cut('2', { overlap: { in: 13, out: 0 } })],
      { overlap: 'full' },
    );
    const { cuts, now: after } = listSince(apart, dissolved, keyOf);
    expect(after.running).toBe(96 - 13);
    // The outgoing cut gives up the smaller half of an odd length (common practice).
    expect(cuts.map(({ cut: name, change }) => [name, change])).toEqual([
      ['1', -6],
      ['2', -7],
    ]);
  });

  test('are the same where only the frames a second of the episode changed, and the seconds did not', () => {
    const before = listOf([row('1', { time: 48, fps: 24 })], { fps: 24 });
    const after = listOf([row('1', { time: 50, fps: 25 })], { fps: 25 });
    expect(listSince(before, after, keyOf).cuts).toEqual([]);
  });

  test('can stand in another order', () => {
    const cuts = ['1', '2', '3'].map((one) => row(one, { time: 24 }));
    const other = [cuts[1]!, cuts[0]!, cuts[2]!];
    expect(listSince(listOf(cuts), listOf(other), keyOf)).toMatchObject({ cuts: [], reordered: true });
    expect(listSince(listOf(cuts), listOf(cuts.slice(1)), keyOf).reordered).toBe(false);
  });
});

test('the changes add up to the difference of the running times, whatever came, went or was retimed', () => {
  const rows = fc.uniqueArray(
    fc.record({ cut: fc.integer({ min: 1, max: 9 }), time: fc.integer({ min: 1, max: 200 }) }),
    { selector: ({ cut }) => cut },
  );
  const list = (all: readonly { cut: number; time: number }[]) =>
    listOf(all.map(({ cut, time }) => row(String(cut), { time })));
  fc.assert(
    fc.property(rows, rows, (before, now) => {
      const since = listSince(list(before), list(now), keyOf);
      const sum = since.cuts.reduce((all, { change }) => all + change!, 0);
      expect(sum).toBeCloseTo(since.now.running - since.before.running, 6);
      const shown = since.cuts.filter((one) => one.before && one.now).length;
      const both = before.filter(({ cut }) => now.some((one) => one.cut === cut));
      expect(since.unchanged + shown).toBe(both.length);
    }),
  );
});
