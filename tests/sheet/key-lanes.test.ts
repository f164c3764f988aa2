/** Brackets beside cycles, and words beside the line of a hold. */

import { describe, expect, it } from 'vitest';
import type { Mark } from '../../src/sheet/display-list.js';
import { type ColumnGiven, drawnColumns } from './key-column.js';
import { laid, linesOf, said, type Text, textsOf } from './laid.js';

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

/**
 * The words at the right of the numbers, block for block: `middle`, `top` and `end` of a word that lies on its side; those of its first and
 * last character of one that stands upright. The middle of a line of figures is 0.37 em above its baseline.
 */
function wordsBeside(lines: string, given: ColumnGiven = {}) {
  const { blocks, memo } = drawnColumns(lines, given);
  const middle = (given.numbersMm ?? 8) / 2;
  const words = blocks.map(({ keys }) => {
    const found: {
      text: string;
      middle: number;
      top: number;
      end: number;
      sizeMm: number;
      squeeze: number;
    }[] = [];
    let above: Text | undefined;
    for (const mark of textsOf(keys).filter(({ x }) => x !== middle)) {
      const { text, sizeMm, squeeze = 1 } = mark;
      if (mark.turn) {
        const end = mark.y + text.length * sizeMm * 0.5 * squeeze;
        found.push({ text, middle: mark.x + 0.37 * sizeMm, top: mark.y, end, sizeMm, squeeze });
      } else {
        const [top, end] = [mark.y - 0.37 * sizeMm - sizeMm / 2, mark.y - 0.37 * sizeMm + sizeMm / 2];
        const word = found.at(-1);
        if (word && above && above.x === mark.x && mark.y - above.y < 1.1 * sizeMm)
          Object.assign(word, { text: word.text + text, end });
        else found.push({ text, middle: mark.x, top, end, sizeMm, squeeze });
      }
      above = mark;
    }
    return found;
  });
  return { words, memo };
}
const near = (value: number) => expect.closeTo(value, 9);

describe('a word beside a hold', () => {
  const beside = (lines: string, given: ColumnGiven = {}) =>
    wordsBeside(`time 2+0\n${lines}`, { labels: 'ja', ...given });

  it('stands in the middle between the line of the hold, 0.4 mm from it, and the edge of the column', () => {
    // The line is at 4, the edge at 8.
    expect(beside('A: 1..').words).toMatchObject([[{ text: '止メ', middle: near(6.2) }]]);
    // The line is at 2.5, the edge at 5.
    expect(beside('A: 1..', { numbersMm: 5 }).words).toMatchObject([[{ middle: near(3.95) }]]);
  });

  it('is a tenth larger than the smallest print, smaller where its half of the column is narrower, at last squeezed', () => {
    const size = (numbersMm: number) => beside('A: 1..', { numbersMm }).words[0]!;
    expect(size(8)).toMatchObject([{ sizeMm: near(2.2), squeeze: 1 }]);
    expect(size(5)).toMatchObject([{ sizeMm: near(2.1), squeeze: 1 }]);
    // 1.7 of 2 mm.
    expect(size(4.2)).toMatchObject([{ sizeMm: 2, squeeze: near(0.85), middle: near(3.35) }]);
  });

  it('is left out where it would have to be squeezed below four fifths; the line alone says that a key is held', () => {
    expect(beside('A: 1..', { numbersMm: 4 }).words).toMatchObject([[{ squeeze: near(0.8) }]]);
    expect(beside('A: 1..', { numbersMm: 3.9 })).toEqual({ words: [[]], memo: [] });
  });

  it('stands in a narrow column all the same where it says that no in-betweens are meant', () => {
    expect(beside('A: 1:20 direct 2:20 3..', { numbersMm: 3.9 })).toMatchObject({
      words: [[{ text: '中なし', squeeze: 0.8 }]],
      memo: [],
    });
  });

  it('that lies on its side is not squeezed in a narrow column', () => {
    const { words } = wordsBeside('time 2+0\nA: 1:20 direct 2:20 3..', { numbersMm: 4.2 });
    expect(words).toMatchObject([[{ text: 'no in-b.', sizeMm: 2, squeeze: 1, end: near(4.2 + 8) }]]);
  });

  it('takes from the lanes of brackets what it needs, where none has a bracket beside the hold', () => {
    // 2.2 mm from 2.5 on; without the lane of the later cycle there would be 1.7 mm.
    const inLane = { sizeMm: near(2.2), squeeze: 1, middle: near(3.6) };
    const given = { numbersMm: 4.2 };
    expect(beside('A: 1:30 (2 3)*2', given).words[0]).toMatchObject([inLane, { text: '2回' }]);
    expect(beside('A: (2 3)*2 1..', given).words[0]).toMatchObject([inLane, { text: '2回' }]);
  });

  it.each([
    ['(1:30 2)..', 'リピート', 'a bracket beside it'],
    ['1:10 (2:30 3)..', 'リピート', 'a bracket that begins with it'],
    ['(1:1)*2 2..', '2回', 'the word of a bracket of two rows, which may reach into the fourth row'],
    ['(1:1)*3 2..', '止メ3回', 'a bracket of three rows, whose word ends above the fifth row'],
  ])('beside %s: %s, as there is %s', (items, expected) => {
    const [words] = beside(`A: ${items}`).words;
    expect(words!.map(({ text }) => text).join('')).toBe(expected);
  });

  it('is there at the head of a block, although a short cycle ended on the block before', () => {
    const { words } = beside('A: 1:10 (2:1)*2 3..', { rows: 12 });
    expect(words.map((all) => all.map(({ text }) => text))).toEqual([['2回'], ['止メ'], [], []]);
  });

  it('that no in-betweens are meant goes to the memo, with the row of the next key, where its rows are too few', () => {
    // Three characters of 2 mm, set 1.8 mm apart at the closest, need 5.4 mm; two rows below the key have 7.5, one has 3.5.
    expect(beside('A: 1:3 direct 2..').memo).toEqual([]);
    expect(beside('A: 1:2 direct 2..').memo).toEqual(['A 0+3: 1→2 中なし']);
    // Three rows of 1.9 mm are 5.7 mm, of which 0.2 above the word and 0.3 below it stay free.
    expect(beside('A: 1:4 direct 2..', { rowMm: 1.9 }).memo).toEqual(['A 0+5: 1→2 中なし']);
    expect(beside('A: 1:4 direct 2..', { rowMm: 2 }).memo).toEqual([]);
    expect(wordsBeside('time 24\nA: 1:16 2:2 direct 3..', { convention: 'west' }).memo).toEqual([
      "A 1'03: 2→3 no in-b.",
    ]);
  });

  it('begins 0.2 mm below the row of its key, or half a millimetre below a cut point that is ruled across', () => {
    const top = (lines: string) => beside(lines).words[0]!.map((word) => word.top);
    // Characters of 2.2 mm stand 2.244 mm apart, so that each has 0.022 mm above it.
    expect(top('A: 1..')).toEqual([near(4.2 + 0.022)]);
    // Half of an overlap of 8 lies before the cut: its point is the edge above row 5, another half after its end, above row 53.
    expect(top('overlap in 8\nA: 1..')).toEqual([near(16.5 + 0.022)]);
    expect(top('overlap in 8\nA: 1:4 2..')).toEqual([near(20.2 + 0.022)]);
    expect(top('overlap in 8\nA: 1:3 2..')).toEqual([near(16.5 + 0.022)]);
  });

  it.each([
    // The cut ends on row 48, its handle on row 52: the cut point is the edge above row 49, 192 mm down.
    ['A: 1:43 2:4 direct 3..', [[176.2, 'the key ends above it']]],
    ['A: 1:44 2:7 direct 3..', [[192.5, 'below the point']]],
    ['A: 1:40 2:11 direct 3..', [[164.2, 'more than six rows above it']]],
    ['A: 1:42 2:9 direct 3..', [[192.5, 'six rows above it']]],
  ] as const)('at the tail of a cut, %s: %j', (items, expected) => {
    const { words } = beside(`overlap out 8\n${items}`);
    const direct = words[0]!.filter(({ text }) => text === '中なし');
    expect(direct.map(({ top }) => top)).toEqual(expected.map(([mm]) => expect.closeTo(mm, 0)));
  });
});

describe('the bracket beside a cycle', () => {
  const upright = (marks: readonly Mark[]) =>
    linesOf(marks)
      .filter(({ x1, x2, stroke }) => x1 === x2 && stroke.widthMm === 0.2)
      .map(({ x1, y1, y2 }) => [x1, y1, y2]);

  it('stands in a lane of its depth, the outermost at the edge of the column', () => {
    // A lane is 1.15 of the smallest print: 2.3 mm. The column is 8 mm and two lanes wide.
    const { blocks } = drawnColumns('time 1+0\nA: ((1 2)*2 3)..');
    const [outer, ...inner] = upright(blocks[0]!.keys);
    expect(outer![0]).toBeCloseTo(8 + 2.3 + 0.1, 9);
    for (const one of inner) expect(one[0]).toBeCloseTo(8 + 0.1, 9);
    // Ticks point at the numbers.
    const ticks = linesOf(blocks[0]!.keys).filter(
      ({ y1, y2, stroke }) => y1 === y2 && stroke.widthMm === 0.2,
    );
    expect(new Set(ticks.map(({ x1, x2 }) => `${x1.toFixed(2)} ${x2.toFixed(2)}`))).toEqual(
      new Set(['9.85 10.40', '7.55 8.10']),
    );
  });

  it('has its word at its head, in the lane at its right', () => {
    const { words } = wordsBeside('time 1+0\nA: 1:4 (2 3)..');
    // The line at 8.1 begins 0.08 of a row below the edge of row 5; the edge of the column is at 10.3.
    const top = 16 + 0.32 + 0.3;
    expect(words).toMatchObject([
      [{ text: 'cycle', sizeMm: 2, squeeze: 1, top: near(top), end: near(top + 5), middle: near(9.27) }],
    ]);
  });

  it('has the word of three rows where it has fewer, if nothing is below it', () => {
    // Seven characters need 5.6 mm. Two rows of 2.2 mm hold 3.65 mm of text, three 5.85.
    const texts = (items: string, rows?: number) => {
      const { words, memo } = wordsBeside(`time 1+0\nA: ${items}`, { rowMm: 2.2, ...(rows ? { rows } : {}) });
      return [...words.map((all) => all.map(({ text }) => text).join()), ...memo];
    };
    expect(texts('(1:1)*2 3..')).toEqual(['2 times']);
    expect(texts('1:4 (1:1)*2 3..', 7)[0]).toBe('2 times');
    expect(texts('1:4 (1:1)*2 3..', 6)).toEqual(['', '', '', '', 'A 0+5: 2 times']);
    expect(texts('1:22 (2:1)*2')).toEqual(['', 'A 0+23: 2 times']);
  });

  it.each([
    ['(1:1)*2 (3:1)*2 4..', ['2 times'], ['A 0+1: 2 times'], 'directly below'],
    ['(1:1)*2 5:1 (3:1)*2 4..', ['2 times', '2 times'], [], 'a row below'],
    ['((1:1)*2 5:1)*2 4..', ['2 times', '2 times', '2 times'], [], 'about it, in its own lane'],
    [
      '(5:2 (1:1)*2)*2 (3:1)*4 4..',
      ['2 times', '2 times', '2 times', '4 times'],
      [],
      'below, in another lane',
    ],
  ])('%s: its word keeps out of the rows of another bracket %j', (items, expected, told) => {
    const { words, memo } = wordsBeside(`time 1+0\nA: ${items}`, { rowMm: 2.2 });
    expect(words[0]!.map(({ text }) => text)).toEqual(expected);
    expect(memo).toEqual(told);
  });

  it('that goes on in the next block has its word there again, where there is room, and nothing in the memo', () => {
    const { blocks } = drawnColumns('time 1+0\nA: (1 2)..', { rows: 12 });
    expect(blocks.map(({ keys }) => upright(keys))).toEqual([
      [[near(8.1), near(0.32), near(47.68)]],
      [[near(8.1), near(0.32), near(47.68)]],
    ]);
    const texts = (rows: number) => {
      const { words, memo } = wordsBeside('time 1+0\nA: 1:2 (2 3)*2 4..', { rows });
      return [...words.map((all) => all.map(({ text }) => text).join()), ...memo];
    };
    expect(texts(12)).toEqual(['2 times', '']);
    // Of rows 3 to 10, on rows 7 to 10 and on row 10.
    expect(texts(9)).toEqual(['2 times', '', '']);
    expect(texts(6)).toEqual(['2 times', '2 times', '', '']);
  });

  it('is told in the memo by the row of its level, in the west by feet', () => {
    const { memo } = wordsBeside('time 2+0\nA: 1:46 (2:1)*2', { convention: 'west', rowMm: 2.2 });
    expect(memo).toEqual(["A 2'15: 2 times"]);
  });
});
