/** Marks of the key and cel columns. */

import { describe, expect, it } from 'vitest';
import { columnEntries, type KeySign } from '../../src/sheet/column-entries.js';
import type { Mark } from '../../src/sheet/display-list.js';
import { inBrackets, levelRoom, signMarks } from '../../src/sheet/drawing-columns.js';
import { bracketRoom } from '../../src/sheet/key-lanes.js';
import { NARROWEST_SQUEEZE } from '../../src/sheet/text-fitting.js';
import type { Convention } from '../../src/shot/settings.js';
import { testFonts } from '../fonts.js';
import { type ColumnGiven, drawnColumns } from './key-column.js';
import { type Line, laid, linesOf, said, solvedCut, type Text, textsOf } from './laid.js';

it('draws a stroke under a breakdown, inside its row', () => {
  const [page] = laid('cut 1\ntime 12\nA: 1-=-2..\n', { convention: 'west' });
  const { rowMm } = { rowMm: page!.rows[0]!.height };
  const row = page!.rows[4]!;
  const under = linesOf(page!.marks).filter(
    ({ y1, y2, stroke }) =>
      stroke.ink === 'black' && y1 === y2 && y1 > row.y + rowMm / 2 && y1 < row.y + rowMm,
  );
  expect(under).toHaveLength(1);
});

it('says what is held in square brackets on the first row of each block and page', () => {
  const pages = laid('cut 1\ntime 8+0\nA: 1:4+0 x..\nB: 1--2..\n', { paper: 'A4' });
  expect(pages.map(({ label }) => label)).toEqual(['1', '2']);
  const firstOfPage2 = pages[1]!.rows[0]!;
  const onRow = textsOf(pages[1]!.marks).filter(
    ({ x, y }) =>
      x < firstOfPage2.x + firstOfPage2.width &&
      y > firstOfPage2.y &&
      y < firstOfPage2.y + firstOfPage2.height,
  );
  expect(onRow.map(({ text }) => text).filter((text) => text.startsWith('['))).toEqual([
    '[×]',
    '[2]',
    '[×]',
    '[4]',
  ]);
});

it('draws a hold line from the row below the number to just above the end of the last held row', () => {
  const [page] = laid('cut 1\ntime 10\nA: 1:7 2:1 3:2\n');
  const rows = page!.rows;
  const holds = linesOf(page!.marks).filter(
    ({ x1, x2, y1, stroke }) => stroke.ink === 'black' && x1 === x2 && y1 > rows[0]!.y,
  );
  const h = rows[0]!.height;
  const spans = holds.map(({ y1, y2 }) => [(y1 - rows[0]!.y) / h, (y2 - rows[0]!.y) / h]);
  // Key column and cel column: frames 2–7 and frame 10; nothing for the drawing of one frame.
  expect(spans.map(([from]) => Math.round(from! * 1000) / 1000)).toEqual([1, 9, 1, 9]);
  for (const [, to] of spans) expect(Math.ceil(to!) - to!).toBeCloseTo(0.18, 5);
  expect(spans.map(([, to]) => Math.ceil(to!))).toEqual([7, 10, 7, 10]);
});

it('brackets a cycle with its count, or an arrow where it runs on', () => {
  const arrows = (timeline: string): number =>
    laid(`cut 1\ntime 24\nA: ${timeline}\n`)[0]!.marks.filter(
      (mark) => mark.kind === 'path' && mark.fill === 'black' && mark.points.length === 3,
    ).length;
  expect(said(laid('cut 1\ntime 24\nA: (1-2-)*3\n')[0]!)).toContain('3 times');
  expect(arrows('(1-2-)*3')).toBe(0);
  expect(said(laid('cut 1\ntime 24\nA: (1-2-)..\n')[0]!)).toContain('cycle');
  expect(arrows('(1-2-)..')).toBe(1);
  expect(said(laid('cut 1\ntime 24\nA: (1-2-)*3\n', { labels: 'ja' })[0]!)).toMatch(/3 回/);
});

describe('rows of the columns', () => {
  /** What stands on which row of a column, `frame text`, and lines in rows from the top of the first one. */
  function columns(items: string, settings: object = {}, frames = 24) {
    const [page] = laid(`cut 1\ntime ${frames}\nA: ${items}\n`, { labels: 'en', ...settings });
    const [first] = page!.rows;
    const row = (y: number) => Math.round(((y - first!.y) / first!.height) * 1000) / 1000;
    const left = (column: 'key' | 'cel') => (x: number) =>
      column === 'key' ? x > first!.x + 6 && x < first!.x + 20 : x > first!.x + 40 && x < first!.x + 55;
    const texts = (column: 'key' | 'cel') =>
      textsOf(page!.marks)
        .filter(({ x, y, turn }) => left(column)(x) && y > first!.y && !turn)
        .map(({ text, y }) => `${Math.ceil(row(y))} ${text}`);
    const drawn = (column: 'key' | 'cel', widthMm: number) =>
      linesOf(page!.marks).filter(
        ({ x1, y1, stroke }) => left(column)(x1) && y1 > first!.y && stroke.widthMm === widthMm,
      );
    const holds = (column: 'key' | 'cel') => drawn(column, 0.24).map(({ y1, y2 }) => [row(y1), row(y2)]);
    const brackets = () =>
      drawn('key', 0.2).map(({ x1, x2, y1, y2 }) => (x1 === x2 ? [row(y1), row(y2)] : row(y1)));
    const words = textsOf(page!.marks).filter(({ turn }) => turn);
    return { texts, holds, brackets, words, page: page! };
  }

  it('have a number on the row on which it changes, and none where it stays', () => {
    const { texts } = columns('1:4 2:6 x:2 1..');
    expect(texts('key')).toEqual(['1 1', '5 2', '11 ×', '13 1']);
    expect(texts('cel')).toEqual(['1 1', '5 2', '11 ×', '13 1']);
  });

  it('say in the cel column only what is exposed anew, in the key column also where a cycle opens', () => {
    const { texts } = columns('1:12 (1-2-)..');
    expect(texts('key').filter((one) => one.endsWith(' 1'))).toEqual(['1 1', '13 1', '21 1']);
    expect(texts('cel').slice(0, 2)).toEqual(['1 1', '15 2']);
  });

  it('are ruled down where something is held, not where the level is empty', () => {
    const { holds } = columns('1:4 2:1 3:3 x:4 4..');
    const expected = [
      [1, 3.82],
      [6, 7.82],
      [13, 23.82],
    ];
    expect(holds('key')).toEqual(expected);
    expect(holds('cel')).toEqual(expected);
  });

  it('have a bracket beside a cycle from its first row to its last, with a tick at both ends', () => {
    expect(columns('1:2 (2-)*2 3..').brackets()).toEqual([[2.08, 9.92], 2.08, 9.92]);
  });

  it('have an arrow in place of the lower tick where it runs on', () => {
    const { brackets, page } = columns('1:2 (2-)..');
    expect(brackets()).toEqual([[2.08, 23.92], 2.08]);
    const arrow = page.marks.find((mark) => mark.kind === 'path' && mark.fill === 'black');
    const [line] = linesOf(page.marks).filter(({ stroke }) => stroke.widthMm === 0.2);
    const [upperLeft, upperRight, point] = (arrow as Extract<Mark, { kind: 'path' }>).points;
    expect(point).toEqual([line!.x1, line!.y2]);
    expect(upperLeft![0] + upperRight![0]).toBeCloseTo(2 * line!.x1, 9);
    expect([upperLeft![1], upperRight![1]].every((y) => y < point![1] - 1)).toBe(true);
  });

  it('have the brackets of a cycle within another one nearer to the numbers', () => {
    const { page, words } = columns('((1 2)*2 3)*2 4..');
    const upright = linesOf(page.marks).filter(({ stroke, x1, x2 }) => stroke.widthMm === 0.2 && x1 === x2);
    const [outer, ...inner] = upright;
    expect(inner.length).toBeGreaterThan(0);
    for (const one of inner) expect(one.x1).toBeLessThan(outer!.x1 - 2);
    // Each says how often it is played, on the right of its line.
    expect(words.filter(({ text }) => text === '2 times')).toHaveLength(upright.length);
    for (const { x1 } of upright) expect(words.some(({ x }) => x > x1 && x < x1 + 2.2)).toBe(true);
  });

  it('go on after a break with what is held in brackets, and no tick where the cycle does not begin', () => {
    const settings = { labels: 'en' } as const;
    const [page] = laid('cut 1\ntime 6+0\nA: 1:2 (2:40 3:40)..\n', settings);
    const upright = linesOf(page!.marks).filter(({ stroke, x1, x2 }) => stroke.widthMm === 0.2 && x1 === x2);
    const ticks = linesOf(page!.marks).filter(
      ({ stroke, y1, y2 }) => stroke.widthMm === 0.2 && y1 === y2 && stroke.ink === 'black',
    );
    expect(upright).toHaveLength(2);
    expect(ticks).toHaveLength(1);
    expect(page!.marks.filter((mark) => mark.kind === 'path' && mark.fill === 'black')).toHaveLength(1);
    expect(textsOf(page!.marks).filter(({ text }) => text === '[3]')).toHaveLength(2);
  });
});

describe('a sign', () => {
  const metrics = testFonts().metrics;
  const paper = (rowMm: number, leastTextMm = 1.5) => ({
    geometry: { rowMm, leastTextMm },
    plan: { metrics },
  });
  const marks = (sign: KeySign, rowMm = 5, width = 6) => signMarks(paper(rowMm), sign, 10, 20, width);
  const middle = { x: 10, y: 20 };

  it('for an in-between is a short stroke through the middle of its row, shorter in a low row', () => {
    expect(marks({ form: 'dash' })).toMatchObject([{ kind: 'line', x1: 9.25, y1: 20, x2: 10.75, y2: 20 }]);
    expect(marks({ form: 'dash' }, 2)).toMatchObject([{ x1: 9.5, x2: 10.5 }]);
  });

  it('for one that exists already is a small open ring', () => {
    expect(marks({ form: 'again' })).toMatchObject([{ kind: 'circle', ...middle, r: 0.55, fill: null }]);
    expect(marks({ form: 'again' }, 2)).toMatchObject([{ r: 0.4 }]);
  });

  it.each(['breakdown', 'reused breakdown'] as const)(
    'for a %s has its brackets alike on both sides, and they touch nothing',
    (form) => {
      for (const [rowMm, width] of [
        [5, 6],
        [3, 6],
        [5, 3],
      ] as const) {
        const [inside, left, right] = marks({ form }, rowMm, width) as [Mark, Text, Text];
        expect([left.text, right.text, left.y]).toEqual(['(', ')', right.y]);
        // Two thirds of a row high, as far as that is no smaller than the smallest print.
        expect(left.sizeMm).toBeCloseTo({ 3: 1.98, 5: width === 3 ? 1.86 : 2.6 }[rowMm], 9);
        expect(left.x + right.x).toBeCloseTo(20, 9);
        const half = right.x - 10;
        expect(half).toBeGreaterThan(0.7);
        expect(half).toBeLessThan(Math.min(rowMm, width) / 2);
        const reach = inside.kind === 'line' ? inside.x2 - 10 : (inside as { r: number }).r;
        expect(inside.kind).toBe(form === 'breakdown' ? 'line' : 'circle');
        expect(reach).toBeGreaterThan(0.25);
        if (form === 'reused breakdown')
          expect(reach).toBeLessThanOrEqual(Math.min(0.55, rowMm * 0.2) + 1e-9);
        // Brackets are 0.34 em wide in the font; a stroke has its own width besides.
        expect(reach + 0.17).toBeLessThan(half - 0.16 * right.sizeMm);
      }
    },
  );

  it('for a key is a ring inside its row and column, whatever its number', () => {
    for (const text of ['1', '12', '123b'])
      for (const [rowMm, width] of [
        [5, 6],
        [3, 4],
        [2.5, 8],
      ] as const) {
        const [ring, number] = marks({ form: 'key', text }, rowMm, width) as [Mark, Text];
        const points =
          ring.kind === 'circle'
            ? [
                [10 - ring.r, 20 - ring.r],
                [10 + ring.r, 20 + ring.r],
              ]
            : (ring as Extract<Mark, { kind: 'path' }>).points;
        for (const [x, y] of points) {
          expect(Math.abs(y! - 20)).toBeLessThan(rowMm / 2);
          expect(Math.abs(x! - 10)).toBeLessThanOrEqual(width / 2 - 0.149);
        }
        expect(number).toMatchObject({ text, x: 10, anchor: 'middle' });
      }
  });

  it.each([
    [{ form: 'named', text: '1.1' }, '1.1'],
    [{ form: 'number', text: '12' }, '12'],
    [{ form: 'empty' }, '×'],
  ] as [KeySign, string][])('%j is its text alone', (sign, text) => {
    expect(marks(sign)).toMatchObject([{ kind: 'text', text, x: 10, sizeMm: 3.2, anchor: 'middle' }]);
  });

  it('is never wider than its column, and no smaller than the smallest print', () => {
    for (const width of [3, 4, 6]) {
      const [number] = marks({ form: 'number', text: '12345' }, 5, width) as [Text];
      const wide = metrics.width('12345', number.sizeMm, 'regular') * (number.squeeze ?? 1);
      expect(number.sizeMm).toBeGreaterThanOrEqual(1.5);
      if (number.sizeMm > 1.5) expect(wide).toBeLessThanOrEqual(width - 0.5 + 1e-9);
    }
    expect((marks({ form: 'number', text: '1' }, 2) as [Text])[0].sizeMm).toBeCloseTo(1.5, 9);
    expect((marks({ form: 'number', text: '1' }, 3) as [Text])[0].sizeMm).toBeCloseTo(2.22, 9);
  });

  it('for a breakdown in the west has a stroke under its number, as wide as that and a little more', () => {
    for (const [text, rowMm, width] of [
      ['12', 3, 6],
      ['12', 5, 6],
      ['1234', 3, 3],
    ] as const) {
      const [number, under] = marks({ form: 'underlined', text }, rowMm, width) as [Text, Line];
      const half = (metrics.width(text, number.sizeMm, 'regular') * (number.squeeze ?? 1)) / 2;
      expect([under.x1, under.x2]).toEqual([
        expect.closeTo(10 - half - 0.15, 9),
        expect.closeTo(10 + half + 0.15, 9),
      ]);
      expect(under.y1).toBe(under.y2);
      expect(under.y1).toBeGreaterThan(number.y + 0.2);
      expect(under.y1).toBeLessThan(20 + rowMm / 2);
    }
  });

  it('that is held stands in square brackets, as wide as its column allows', () => {
    const held = inBrackets(paper(5), '123', 10, 20, 6) as Text;
    expect(held).toMatchObject({ text: '[123]', x: 10, anchor: 'middle' });
    expect(metrics.width('[123]', held.sizeMm, 'regular') * (held.squeeze ?? 1)).toBeLessThanOrEqual(
      5.5 + 1e-9,
    );
  });
});

it('a ring is ruled thinner in a low row', () => {
  const ringIn = (rowMm: number) => {
    const paper = { geometry: { rowMm, leastTextMm: 1.5 }, plan: { metrics: testFonts().metrics } };
    const [ring] = signMarks(paper, { form: 'key', text: '1' }, 10, 20, 6);
    return (ring as Extract<Mark, { kind: 'circle' }>).stroke!.widthMm;
  };
  expect(ringIn(5)).toBe(0.25);
  expect(ringIn(2.5)).toBeCloseTo(0.2, 9);
});

describe('a finished number', () => {
  const cels = (items: string, given: ColumnGiven = {}) => drawnColumns(`time 24\nA: ${items}`, given).blocks;

  it('stands in the middle of its column and row, a quarter of a millimetre from its edges at the least', () => {
    const [block] = cels('1---------2..', { numbersMm: 2.4 });
    const ten = textsOf(block!.cels).find(({ text }) => text === '10')!;
    expect(ten).toMatchObject({ x: 1.2, anchor: 'middle' });
    // Two figures of half an em.
    expect(ten.sizeMm * ten.squeeze!).toBeCloseTo(1.9, 9);
    expect(ten.y - 0.37 * ten.sizeMm).toBeCloseTo(18 * 4 + 2, 9);
  });

  it('stands in the block of its row only', () => {
    const texts = cels('1:4 2:6 3:6 4..', { rows: 12 }).map(({ cels, keys }) =>
      [cels, keys].map((marks) =>
        textsOf(marks)
          .map(({ text }) => text)
          .join(' '),
      ),
    );
    expect(texts).toEqual([
      ['1 2 3', '1 2 3'],
      ['[3] 4', '[3] 4'],
    ]);
  });

  it('is repeated in brackets at the head of a block, with its hold ruled on from there', () => {
    const [, second] = cels('1:4 2..', { rows: 12 });
    expect(textsOf(second!.cels).map(({ text }) => text)).toEqual(['[2]']);
    expect(linesOf(second!.cels).map(({ x1, y1, y2 }) => [x1, y1, y2])).toEqual([
      [4, 4, expect.closeTo(47.28, 9)],
    ]);
  });
});

describe('the room of a level', () => {
  const metrics = testFonts().metrics;
  const room = (lines: string, leastTextMm = 2, convention: Convention = 'japan') => {
    const { levels } = solvedCut(`cut 1\ntime 24\n${lines}\n`);
    const entries = new Map(levels.map((level) => [level, columnEntries(level, convention)]));
    return levelRoom({ levels, entries, metrics } as never, leastTextMm);
  };
  const narrowest = (text: string, sizeMm = 2) =>
    metrics.width(text, sizeMm, 'bold') * NARROWEST_SQUEEZE + 0.5;

  it('holds its widest number in brackets, in the smallest print', () => {
    // BG is as wide as that, too.
    expect(room('A: 1..')).toBeCloseTo(Math.max(narrowest('[1]'), narrowest('BG')), 9);
    expect(room('A: 1 123..')).toBeCloseTo(narrowest('[123]'), 9);
    expect(room('A: 1 123..', 3)).toBeCloseTo(narrowest('[123]', 3), 9);
    expect(room('A: 1-2:4 1.1 2..')).toBeCloseTo(Math.max(narrowest('[1.1]'), narrowest('BG')), 9);
  });

  it('holds the cross of an empty level as well', () => {
    expect(room('A: x:4 1..')).toBeCloseTo(narrowest('[×]'), 9);
  });

  it('holds its name, up to what a column may be wide', () => {
    expect(room('HAND: 1..')).toBeCloseTo(narrowest('HAND'), 9);
    expect(room('ELEPHANTHEADS: 1..')).toBe(11);
  });

  it('has a lane for the brackets of each depth of cycles', () => {
    const lanes = (items: string) => bracketRoom(solvedCut(`cut 1\ntime 24\nA: ${items}\n`).levels, 2);
    expect(lanes('1..')).toBe(0);
    expect(lanes('(1 2)..')).toBeCloseTo(2.3, 9);
    expect(lanes('((1 2)*2 3)..')).toBeCloseTo(4.6, 9);
    expect(bracketRoom([], 2)).toBe(0);
  });
});

it('the stroke under a breakdown lies a third of a millimetre below its figures, nearer in a low row', () => {
  const paper = (rowMm: number) => ({
    geometry: { rowMm, leastTextMm: 1.5 },
    plan: { metrics: testFonts().metrics },
  });
  const below = (rowMm: number) => {
    const [number, under] = signMarks(paper(rowMm), { form: 'underlined', text: '2' }, 10, 20, 6) as [
      Text,
      Line,
    ];
    return under.y1 - number.y;
  };
  expect(below(5)).toBeCloseTo(0.35, 9);
  // 0.42 of the row below its middle; the baseline is 0.37 em of 1.5 mm below it.
  expect(below(2)).toBeCloseTo(0.84 - 0.555, 9);
  // Never nearer than this.
  expect(below(1.7)).toBeCloseTo(0.22, 9);
});
