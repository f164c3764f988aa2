/** Words beside the line of a hold. */

import { describe, expect, it } from 'vitest';
import { laid, linesOf, said, textsOf } from './laid.js';

describe('止メ', () => {
  const words = (text: string, settings: object = {}): number[] =>
    laid(text, { labels: 'ja', ...settings }).map(
      ({ marks }) => textsOf(marks).filter(({ text }) => text === '止').length,
    );

  it.each([
    ['1:24 2..', 'time 2+0', [0], 'a second is short'],
    ['1:25 2..', 'time 2+0', [1], 'a frame more is long'],
    ['1:12 -2:25 3..', 'time 2+0', [1], 'an in-between before it is none of its rows'],
    ['1:4 -:30 2..', 'time 2+0', [0], 'in-betweens are no keys'],
    ['1 x..', 'time 2+0', [0], 'nor is an empty level'],
    ['1:30 direct 2..', 'time 2+0', [0], 'the other word is there already'],
    ['1..', 'time 7+0', [1, 0], 'once a hold, where it begins'],
    ['1:60 2..', 'time 7+0', [2, 0], 'again at the next hold'],
    ['1:70 2..', 'time 6+0', [1], 'no room on the last row of a block'],
    ['(1-2)*2 3..', 'time 3+0', [1], 'where a cycle has its bracket above'],
  ] as const)('beside A: %s, %s: %j, %s', (items, time, expected, why) => {
    expect(words(`cut 1\n${time}\nA: ${items}\n`), why).toEqual(expected);
  });

  it('stands at the right of the line of the hold, beside its rows', () => {
    const [page] = laid('cut 1\ntime 2+0\nA: 1:3 2..\n', { labels: 'ja' });
    const [upper] = textsOf(page!.marks).filter(({ text }) => text === '止');
    const [lower] = textsOf(page!.marks).filter(({ text }) => text === 'メ');
    const row = page!.rows[4]!;
    expect(upper!.x).toBe(lower!.x);
    expect(upper!.y).toBeGreaterThan(row.y);
    expect(lower!.y).toBeGreaterThan(upper!.y);
    const hold = linesOf(page!.marks).find(
      ({ x1, x2, y1 }) => x1 === x2 && x1 < upper!.x && Math.abs(y1 - row.y) < 0.01,
    );
    expect(upper!.x - hold!.x1).toBeGreaterThan((upper!.sizeMm / 2) * (upper!.squeeze ?? 1) + 0.1);
  });

  it('is no word of an English sheet', () => {
    expect(words('cut 1\ntime 2+0\nA: 1..\n', { labels: 'en' })).toEqual([0]);
  });

  it('counts a second by the frames of the cut', () => {
    expect(words('cut 1\nfps 30\ntime 2+0\nA: 1:30 2..\n')).toEqual([0]);
    expect(words('cut 1\nfps 30\ntime 2+0\nA: 1:31 2:29\n')).toEqual([1]);
  });
});

describe('words beside a hold', () => {
  const page = (lines: string, settings: object = {}) =>
    laid(`cut 1\ntime 2+0\n${lines}\n`, { labels: 'ja', ...settings })[0]!;
  const rowOf = (lines: string, text: string) => {
    const { marks, rows } = page(lines);
    const [first] = rows;
    return textsOf(marks)
      .filter((one) => one.text === text && one.x < first!.x + 30)
      .map(({ y }) => Math.ceil((y - first!.y) / first!.height));
  };

  it('begin below the row on which the drawing begins, or below a cut point that is ruled across there', () => {
    expect(rowOf('A: 1..', '止')).toEqual([2]);
    expect(rowOf('A: 1:3 2..', '止')).toEqual([5]);
    // Half of an overlap of 8 frames lies before the cut, so that it is cut on row 5.
    expect(rowOf('overlap in 8\nA: 1..', '止')).toEqual([5]);
    expect(rowOf('overlap in 8\nA: 1:3 2..', '止')).toEqual([5]);
    expect(rowOf('overlap in 8\nA: 1:4 2..', '止')).toEqual([6]);
    // More than six rows below the drawing the point is no neighbour any more.
    expect(rowOf('overlap in 14\nA: 1..', '止')).toEqual([2]);
  });

  it('say that nothing is between two keys for those two only', () => {
    expect(rowOf('A: 1:10 direct 2:10 3:10 2:18', '中')).toEqual([2]);
    expect(rowOf('A: 1:10 direct 2:10 1:10 3:18', '中')).toEqual([2]);
    expect(rowOf('A: 1:10 direct 2:10 1:10 2:18', '中')).toEqual([2, 22]);
  });

  it('go into the memo with both keys where there is no room', () => {
    expect(said(page('A: 1:2 direct 2..'))).toMatch(/A \S+: 1→2 /);
    expect(said(page('A: 1:12 direct 2..'))).not.toMatch(/1→2/);
  });

  it('are none for an empty level, however long', () => {
    expect(rowOf('A: x:40 1..', '止')).toEqual([]);
  });
});
