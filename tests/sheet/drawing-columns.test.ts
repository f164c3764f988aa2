/** Marks of the key and cel columns. */

import { describe, expect, it } from 'vitest';
import type { Mark } from '../../src/sheet/display-list.js';
import {
  bracketRoom,
  columnEntries,
  heldText,
  inBrackets,
  type KeySign,
  keySigns,
  levelRoom,
  signMarks,
} from '../../src/sheet/drawing-columns.js';
import { NARROWEST_SQUEEZE } from '../../src/sheet/text-fitting.js';
import type { Convention } from '../../src/shot/settings.js';
import { testFonts } from '../fonts.js';
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

// ---- what the key column says on each row

const short = (sign: KeySign | null): string => {
  if (!sign) return '';
  const forms: Record<KeySign['form'], string> = {
    key: 'O',
    dash: '-',
    breakdown: '(-)',
    again: 'o',
    'reused breakdown': '(o)',
    named: 'n',
    number: '#',
    underlined: '_',
    empty: 'x',
  };
  return 'text' in sign ? `${forms[sign.form]}${sign.text}` : forms[sign.form];
};

/** The signs of a level's own rows, held rows left out. */
function signs(timeline: string, frames: number, convention: Convention = 'japan'): string {
  const solved = solvedCut(`cut 1\ntime ${frames}\nA: ${timeline}\n`);
  return keySigns(solved.levels.find(({ name }) => name === 'A')!, convention)
    .map(short)
    .filter((one) => one !== '')
    .join(' ');
}

describe('key column in Japan', () => {
  it('rings keys, strokes in-betweens, brackets breakdowns, crosses emptiness', () => {
    expect(signs('1-=-2 x:4', 14)).toBe('O1 - (-) - O2 x');
  });

  it('shows in-betweens of a cycle as open rings after the first pass', () => {
    expect(signs('(1-2-)*3', 24)).toBe('O1 - O2 - O1 o O2 o O1 o O2 o');
  });

  it('shows them as open rings on the way back as well', () => {
    expect(signs('(1--2)<>*2', 24)).toBe('O1 - - O2 o o O1 o o O2 o o');
  });

  it('shows the key again where a cycle opens on it while it is held', () => {
    expect(signs('1:12 (1-2-)..', 24)).toBe('O1 O1 - O2 - O1 o');
    expect(signs('1:12 (1-2-)..', 24, 'west')).toBe('O1 O1 #2 O3 #4 O1 #2');
    // The last pass leaves 1 on, and the next cycle opens on it.
    expect(signs('(1 2)*2 1 (1 3)*2', 18)).toBe('O1 O2 O1 O2 O1 O1 O3 O1 O3');
    expect(signs('x:4 (x:2 1)..', 12)).toBe('x O1 x O1');
  });

  it('shows in-betweens of another cut as open rings from the first pass on', () => {
    const solved = solvedCut('cut 1\ntime 16\nA: (1-=-2)*2\nlevel A reuse 2/B\n');
    const all = keySigns(solved.levels.find(({ name }) => name === 'A')!, 'japan');
    expect(all.map(short).filter(Boolean).join(' ')).toBe('O1 o (o) o O2 O1 o o');
    expect([4, 6].map((frame) => heldText(all, frame))).toEqual(['○', '(○)']);
  });

  it('names an in-between that does not stand in its turn', () => {
    expect(signs('1-2:4 1.1 2..', 12)).toBe('O1 - O2 n1.1 O2');
  });

  it('goes on with strokes after an in-between that was named', () => {
    expect(signs('1--1.1-2', 12)).toBe('O1 - - n1.1 - O2');
  });
});

describe('key column in the west', () => {
  it('shows final numbers: keys ringed, in-betweens plain, breakdowns underlined', () => {
    expect(signs('1-=-2 x:4', 14, 'west')).toBe('O1 #2 _3 #4 O5 x');
  });

  it('writes cycles out in full', () => {
    expect(signs('(1-)*2', 8, 'west')).toBe('O1 #2 O1 #2');
  });
});

it('remembers over a break what is held', () => {
  const solved = solvedCut('cut 1\ntime 14\nA: 1-=-2 x:4\n');
  const all = keySigns(solved.levels.find(({ name }) => name === 'A')!, 'japan');
  expect([2, 4, 6, 10, 14].map((frame) => heldText(all, frame))).toEqual(['1', '–', '(–)', '2', '×']);
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
        expect(left.x + right.x).toBeCloseTo(20, 9);
        const half = right.x - 10;
        expect(half).toBeGreaterThan(0.7);
        expect(half).toBeLessThan(Math.min(rowMm, width) / 2);
        const reach = inside.kind === 'line' ? inside.x2 - 10 : (inside as { r: number }).r;
        expect(inside.kind).toBe(form === 'breakdown' ? 'line' : 'circle');
        expect(reach).toBeGreaterThan(0.25);
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
    for (const rowMm of [3, 5]) {
      const [number, under] = marks({ form: 'underlined', text: '12' }, rowMm) as [Text, Line];
      const half = (metrics.width('12', number.sizeMm, 'regular') * (number.squeeze ?? 1)) / 2;
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

it('a hold lasts from one sign to the next, and from one number to the next', () => {
  const [level] = solvedCut('cut 1\ntime 24\nA: 1:8 (1-)..\n').levels.filter(({ name }) => name === 'A');
  const { keyHolds, celHolds } = columnEntries(level!, 'japan');
  expect(keyHolds.slice(0, 3)).toEqual([
    { from: 1, to: 8 },
    { from: 9, to: 10 },
    { from: 11, to: 12 },
  ]);
  expect(celHolds.slice(0, 2)).toEqual([
    { from: 1, to: 10 },
    { from: 11, to: 12 },
  ]);
  expect(keyHolds.at(-1)!.to).toBe(24);
});

it('nothing is held before the first sign', () => {
  expect(heldText([null, null], 2)).toBe('');
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

it('an in-between is on its way back only within its own there and back', () => {
  expect(signs('(1-2)<>*2 3 1.1..', 24)).toBe('O1 - O2 o O1 o O2 o O3 n1.1');
  expect(signs('(1-2 1.1 2)..', 20)).toBe('O1 - O2 n1.1 O2 O1 o O2 n1.1 O2');
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
  expect(below(2)).toBeGreaterThanOrEqual(0.22);
  expect(below(2)).toBeLessThan(0.3);
});
