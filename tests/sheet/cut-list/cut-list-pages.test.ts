/** Pages of the list that can be read on every paper, and say what the rows say. */

import { describe, expect, test } from 'vitest';
import { artistLines, cutListPages, summaryLines } from '../../../src/sheet/cut-list/cut-list-pages.js';
import { listPaper } from '../../../src/sheet/cut-list/cut-list-paper.js';
import type { Page } from '../../../src/sheet/display-list.js';
import { smallestTextMm } from '../../../src/sheet/sheet-geometry.js';
import { type Convention, PAPERS, type Settings } from '../../../src/shot/settings.js';
import { listOf, row } from '../../count/rows.js';
import { everyMark, offThePaper, struckOut, textClashes, tooSmall } from '../clashes.js';
import { lookOf, said, textsOf } from '../laid.js';
import { listOfCuts } from './lists.js';

const LOOKS: Pick<Settings, 'paper' | 'convention' | 'labels'>[] = PAPERS.flatMap((paper) =>
  (['japan', 'west'] as const).flatMap((convention) =>
    (['en', 'ja'] as const).map((labels) => ({ paper, convention, labels })),
  ),
);

const lists = [1, 27, 300].map((cuts) => ({ cuts, list: listOfCuts(cuts) }));

const faults = (page: Page, paper: Settings['paper']): string[] => [
  ...offThePaper(page),
  ...tooSmall(page, smallestTextMm(paper)),
  ...textClashes(everyMark(page)),
  ...struckOut(page),
];

describe.each(LOOKS)('$paper $convention $labels', (look) => {
  test.each(lists)('print of $cuts cuts is apart, in reach, large enough and free of lines', ({ list }) => {
    const pages = cutListPages(list, lookOf(look));
    expect(pages.flatMap((page) => faults(page, look.paper).map((one) => `${page.label}: ${one}`))).toEqual(
      [],
    );
  });
});

describe('the pages', () => {
  const list = listOfCuts(300);
  const pages = cutListPages(list, lookOf());

  test('show each cut once, in order', () => {
    const numbers = pages.flatMap((page) => {
      const left = Math.min(
        ...textsOf(page.marks)
          .filter(({ text }) => text === 'cut')
          .map(({ x }) => x),
      );
      return textsOf(page.marks)
        .filter(({ x, weight }) => Math.abs(x - left) < 0.3 && weight === 'bold')
        .map(({ text }) => text);
    });
    const expected = list.rows.map(({ cut, sound }) => (sound ? cut : `${cut} !`));
    expect(numbers.filter((text) => /^\d+A?( !)?$/.test(text))).toEqual(expected);
  });

  test('repeat the heads of the columns', () => {
    for (const page of pages.slice(0, -1))
      for (const head of ['cut', 'title', 'feet', 'keys', 'artist']) expect(said(page)).toContain(head);
  });

  test('are numbered and labelled', () => {
    const count = pages.length;
    expect(count).toBeGreaterThan(4);
    expect(said(pages[1]!)).toContain(`page 2 / ${count}`);
    expect(said(cutListPages(list, lookOf({ convention: 'west' }))[1]!)).toContain('Scene list  page 2 / ');
    expect(pages.map(({ label }) => label)).toEqual(pages.map((_, i) => `cut list ${i + 1}`));
  });

  test('bear the stamp', () => {
    for (const page of pages) expect(said(page)).toContain('1a2b3c4d');
  });

  test('stand upright where that is wide enough, else on their side', () => {
    const shape = (paper: Settings['paper']) => {
      const [first] = cutListPages(listOfCuts(27), lookOf({ paper }));
      return first!.widthMm < first!.heightMm ? 'upright' : 'side';
    };
    expect(shape('A3')).toBe('upright');
    expect(shape('B5')).toBe('side');
  });

  test('shorten no title, camera word or name', () => {
    const words = pages.map(said).join(' ').replace(/\s+/g, '');
    for (const { title, artists } of list.rows) {
      expect(words).toContain(title.replace(/\s+/g, ''));
      for (const name of artists) expect(words).toContain(name.replace(/\s+/g, ''));
    }
    expect(words).toContain('FIX,doubleexposure,glow');
  });
});

describe('what stands under the last cut', () => {
  const last = (list: Parameters<typeof cutListPages>[0], look: Partial<Settings> = {}) =>
    said(cutListPages(list, lookOf(look)).at(-1)!);
  const two = [
    row('1', { time: 48 }, { artists: ['H. Tarn'] }),
    row('2', { time: 72 }, { artists: ['H. Tarn', 'L. Quoy'] }),
  ];

  test.each([
    [96, "running time 5+0 (7'08)  budget 4+0 (6'00): 1+0 (1'08) over"],
    [120, "running time 5+0 (7'08)  budget 5+0 (7'08): to the frame"],
    [150, "running time 5+0 (7'08)  budget 6+6 (9'06): 1+6 (1'14) under"],
    [null, "running time 5+0 (7'08)"],
  ])('against a budget of %s', (budget, sentence) => {
    expect(last(listOf(two, { budget }))).toContain(sentence);
  });

  test('in the west feet come first', () => {
    expect(last(listOf(two, { budget: 96 }), { convention: 'west' })).toContain(
      "budget 6'00 (4+0): 1'08 (1+0) over",
    );
  });

  test('cuts of several artists count for each, and the page says so', () => {
    const text = last(listOf(two));
    expect(text).toContain('H. Tarn 2 5+0 0');
    expect(text).toContain('L. Quoy 1 3+0 0');
    expect(text).toContain('1 cut of several artists: counted for each of them here, once in the total.');
  });

  test('cuts that nobody is named for have a line of their own', () => {
    expect(last(listOf([row('1', { time: 24 })]))).toContain('nobody named 1 1+0 0 total 1 1+0 0');
  });

  test('cuts with errors are told of', () => {
    const list = listOf([row('1', {}), row('2', null, { sound: false, pages: null })]);
    expect(last(list)).toContain(
      '1 cut with errors (!): counted as far as could be read, not printed; the time of 1 is',
    );
  });

  test('under full times both sums are told', () => {
    const list = listOf(
      [
        row('1', { time: 96, overlap: { in: 0, out: 24 } }),
        row('2', { time: 72, overlap: { in: 24, out: 0 } }),
      ],
      { overlap: 'full' },
    );
    expect(last(list)).toContain('running time 6+0');
    expect(last(list)).toContain("The times of the cuts come to 7+0 (10'08); overlaps run once.");
  });

  test('two hundred artists go on over pages', () => {
    const rows = Array.from({ length: 200 }, (_, i) =>
      row(String(i + 1), {}, { artists: [`Artist ${i + 1}`] }),
    );
    const pages = cutListPages(listOf(rows), lookOf());
    expect(pages.flatMap((page) => faults(page, 'A4'))).toEqual([]);
    const text = pages.map(said).join(' ');
    expect(Array.from({ length: 200 }, (_, i) => text.split(`Artist ${i + 1} 1 1+0 0`).length)).toEqual(
      Array(200).fill(2),
    );
  });
});

test('every label and figure is there of one cut', () => {
  const list = listOf([
    row(
      '12A',
      {
        time: 100,
        levels: 7,
        counts: { keys: 11, breakdowns: 13, inbetweens: 17, drawings: 41, reused: 19, backgrounds: 0 },
      },
      {
        title: 'Rope',
        scene: '6',
        artists: ['R. Esk'],
        pages: { sheet: 23, all: 29 },
        problems: { errors: 0, warnings: 31 },
      },
    ),
  ]);
  const [page] = cutListPages(list, lookOf());
  expect(said(page!)).toContain("12A Rope 6 4+4 100 6'04 100 7 11 13 17 41 19 FIX 23 29 R. Esk 0, 31");
});

// ---- what stands under the list

const COUNTS = { keys: 4, breakdowns: 0, inbetweens: 8, drawings: 12, reused: 0, backgrounds: 0 };
const paper = (convention: Convention = 'japan') => listPaper(lookOf({ convention }), false);
const rows = [row('1', { time: 48, counts: COUNTS }), row('2', { time: 24, counts: COUNTS })];
const lines = (list: ReturnType<typeof listOf>, convention?: Convention) =>
  summaryLines(paper(convention), list).map(({ text }) => text);

describe('the episode in sentences', () => {
  test('runs so long, and that is over, under or at the budget', () => {
    expect(lines(listOf(rows))[0]).toBe("running time 3+0 (4'08)");
    const judged = (budget: number) => lines(listOf(rows, { budget }))[0]!.split('): ').at(-1);
    expect(judged(60)).toBe("0+12 (0'12) over");
    expect(judged(96)).toBe("1+0 (1'08) under");
    expect(judged(72)).toBe('to the frame');
  });

  test('tells feet first in the west', () => {
    expect(lines(listOf(rows), 'west')[0]).toBe("running time 4'08 (3+0)");
  });

  test('tells new drawings a second and how long a cut runs on average', () => {
    expect(lines(listOf(rows))).toContain('8.0 new drawings a second; a cut runs 1+12 on average');
    expect(lines(listOf([row('1', null)])).join()).not.toContain('a second');
  });

  test('tells backgrounds, problems and cuts of several artists where there are some', () => {
    const list = listOf([
      row(
        '1',
        { time: 24, counts: { ...COUNTS, backgrounds: 2 } },
        { artists: ['M. Arai', 'L. Quoy'], problems: { errors: 0, warnings: 1 } },
      ),
    ]);
    const told = lines(list).join('\n');
    expect(told).toContain('2 backgrounds painted');
    expect(told).toContain('0 errors, 1 warning');
    expect(told).toContain('1 cut of several artists');
    expect(lines(listOf(rows))).toHaveLength(2);
  });
});

describe('the artists', () => {
  const named = [
    row('1', { time: 48, counts: COUNTS }, { artists: ['M. Arai'] }),
    row('2', { time: 24, counts: COUNTS }, { artists: [] }),
  ];

  test('have a line each, those of nobody one, and one for all', () => {
    expect(
      artistLines(paper(), listOf(named)).map(({ name, cuts, running, drawings }) => [
        name,
        cuts,
        running,
        drawings,
      ]),
    ).toEqual([
      ['M. Arai', 1, 48, 12],
      ['nobody named', 1, 24, 12],
      ['total', 2, 72, 24],
    ]);
  });

  test('have no line of nobody where each cut has somebody', () => {
    expect(artistLines(paper(), listOf(named.slice(0, 1))).map(({ name }) => name)).toEqual([
      'M. Arai',
      'total',
    ]);
  });
});
