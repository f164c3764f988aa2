/** Marks of the key and cel columns. */

import { describe, expect, it } from 'vitest';
import { heldText, type KeySign, keySigns } from '../../src/sheet/drawing-columns.js';
import type { Convention } from '../../src/shot/settings.js';
import { laid, linesOf, said, solvedCut, textsOf } from './laid.js';

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
