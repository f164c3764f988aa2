/** Change bars and the list of changes, for every look. What stands on paper is read back in tests/readback. */

import { describe, expect, it } from 'vitest';
import type { Page } from '../../src/sheet/display-list.js';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import type { LentLevel, MarkedChanges } from '../../src/sheet/page-look.js';
import { PAPERS, type Settings } from '../../src/shot/settings.js';
import { caseOf, MANY_LEVELS, picker, RICH, somewhatMarked } from '../readback/cuts.js';
import { CAMERAS } from './camera/cuts.js';
import { everyMark, offThePaper, ringClashes, struckOut, textClashes, tooSmall } from './clashes.js';
import { type Bounds, boundsOf, lookOf, overlap, said, solvedCut, textsOf } from './laid.js';

const CUT = `cut 12
time 7+0
stack BG A B
A: 1:12 1--2..
B: 1-2..
voice "Nao" 1+6..2+20 "Wait for me!"
note 5+1 "heads turn"
shake 3mm 1..12
`;
const solved = solvedCut(CUT);

function pagesOf(
  marked: Partial<MarkedChanges>,
  settings: Partial<Settings> = {},
  lent: LentLevel[] = [],
): Page[] {
  const look = lookOf(settings);
  return sheetPages(solved, {
    ...look,
    lent,
    marked: { against: 'HEAD~1', rows: [], ladders: [], lines: [], ...marked },
  });
}

const ROW = { place: { kind: 'level', level: 'A', column: 'keys' }, from: 13, to: 24 } as const;
const CEL_ROW = { ...ROW, place: { ...ROW.place, column: 'cels' } } as const;

/** Black rectangles below the heads of the columns. */
function barsOf(page: Page): Bounds[] {
  const top = page.rows[0]!.y;
  return page.marks.flatMap((mark) => {
    if (mark.kind !== 'path' || mark.fill !== 'black' || mark.points.length !== 4) return [];
    const [[left, from], , [right, to]] = mark.points as [[number, number], unknown, [number, number]];
    return from >= top ? [{ left, right, top: from, bottom: to }] : [];
  });
}

/** Texts and rings that a bar touches. */
function barred(page: Page): string[] {
  const things = page.marks.flatMap((mark) => {
    if (mark.kind === 'text') return [{ name: mark.text, bounds: boundsOf(mark) }];
    if (mark.kind !== 'circle') return [];
    const { x, y, r } = mark;
    return [{ name: 'a ring', bounds: { left: x - r, right: x + r, top: y - r, bottom: y + r } }];
  });
  return barsOf(page).flatMap((bar) =>
    things
      .filter(({ bounds }) => overlap({ ...bar, left: bar.left - 0.08, right: bar.right + 0.08 }, bounds, 0))
      .map(({ name }) => `a bar touches “${name}”`),
  );
}

const LOOKS: Partial<Settings>[] = PAPERS.flatMap((paper, i) =>
  (['japan', 'west'] as const).map((convention, j) => ({
    paper,
    convention,
    labels: (i + j) % 2 === 0 ? ('en' as const) : ('ja' as const),
  })),
);

describe.each(LOOKS)('$paper $convention $labels', (look) => {
  it('keeps bars and numbers apart, however many levels there are', () => {
    const least = ((look.paper === 'A3' || look.paper === 'tabloid' ? 5 : 4) * 25.4) / 72;
    let bars = 0;
    for (const text of [
      RICH,
      MANY_LEVELS,
      CUT,
      CAMERAS['four lanes']!,
      CAMERAS['all kinds of moves and light']!,
    ]) {
      const one = caseOf(text, text, look);
      const marked = somewhatMarked(one, picker(text.length));
      const lent = [{ level: 'A', cut: '15', as: 'A' }];
      for (const page of sheetPages(one.solved, { ...lookOf(look), marked, lent })) {
        if (page.rows.length > 0) bars += barsOf(page).length;
        const faults = [
          ...offThePaper(page),
          ...tooSmall(page, least),
          ...textClashes(everyMark(page)),
          ...ringClashes(page),
          ...struckOut(page),
          ...(page.rows.length > 0 ? barred(page) : []),
        ];
        expect(faults.map((fault) => `page ${page.label}: ${fault}`)).toEqual([]);
      }
    }
    expect(bars).toBeGreaterThan(40);
  });
});

describe('bars', () => {
  it('stand beside their rows in their column of a level', () => {
    const [page] = pagesOf({ rows: [ROW, CEL_ROW] });
    const rows = page!.rows;
    const bars = barsOf(page!);
    expect(bars).toHaveLength(2);
    for (const { top, bottom, left, right } of bars) {
      expect(top).toBeGreaterThan(rows[12]!.y);
      expect(top).toBeLessThan(rows[12]!.y + rows[12]!.height / 4);
      expect(bottom).toBeLessThan(rows[23]!.y + rows[23]!.height);
      expect(bottom).toBeGreaterThan(rows[23]!.y + rows[23]!.height * 0.75);
      expect(right - left).toBeGreaterThanOrEqual(0.7 - 1e-9);
    }
  });

  it('of rows that meet or overlap are one, and go on after a break', () => {
    const rows = [ROW, { ...ROW, from: 25, to: 30 }, { ...ROW, from: 20, to: 80 }];
    const [page] = pagesOf({ rows });
    // It goes on in the second block.
    expect(barsOf(page!)).toHaveLength(2);
  });

  it('have no place on rows after the end, or of levels without a column', () => {
    const rows = [
      { ...ROW, from: 169, to: 200 },
      { ...ROW, place: { kind: 'level', level: 'BG', column: 'keys' } as const },
      { ...ROW, place: { kind: 'level', level: 'D', column: 'cels' } as const },
    ];
    const pages = pagesOf({ rows, lines: ['Level D is gone'] });
    expect(pages.flatMap(barsOf)).toEqual([]);
    expect(said(pages[0]!)).toContain('Level D is gone');
  });

  it('leave the columns of a sheet without any as they were', () => {
    const columns = (pages: readonly Page[]) => pages.map(({ form }) => form!.id);
    expect(columns(pagesOf({ lines: ['something'] }))).toEqual(columns(sheetPages(solved, lookOf())));
    expect(columns(pagesOf({ rows: [ROW] }))).not.toEqual(columns(sheetPages(solved, lookOf())));
  });
});

describe('the memo', () => {
  it('names the other version and what a bar means, and lists what has changed', () => {
    const [page] = pagesOf({ rows: [ROW], lines: ['A: key 2 is held 12 frames longer', 'Level D is gone'] });
    const bold = textsOf(page!.marks).filter(({ weight }) => weight === 'bold');
    expect(bold.map(({ text }) => text)).toContain('Changed against HEAD~1 (bar: rows that differ)');
    expect(said(page!)).toContain('· A: key 2 is held 12 frames longer · Level D is gone');
    const [japanese] = pagesOf({ rows: [ROW], lines: ['D：なし'] }, { labels: 'ja' });
    expect(said(japanese!)).toContain('HEAD~1 からの変更（太線：変わったコマ） · D：なし');
  });

  it('has a bar beside the changes, and beside nothing else', () => {
    const [page] = pagesOf({ rows: [ROW], lines: ['A is longer', 'B is shorter'] });
    const texts = textsOf(page!.marks);
    const head = texts.find(({ text }) => text.startsWith('Changed'))!;
    const last = texts.find(({ text }) => text === '· B is shorter')!;
    const next = texts.find(({ text }) => text.startsWith('· shake'))!;
    const signs = page!.marks.filter(
      (mark) => mark.kind === 'path' && mark.fill === 'black' && mark.points[0]![1] < page!.rows[0]!.y - 30,
    );
    expect(signs).toHaveLength(1);
    const [sign] = signs;
    if (sign?.kind !== 'path') throw new Error('no sign');
    const [[, top], [right], [, bottom]] = sign.points as [
      [number, number],
      [number, number],
      [number, number],
    ];
    expect(right).toBeLessThan(Math.min(head.x, last.x));
    expect(Math.abs(top - boundsOf(head).top)).toBeLessThan(0.6);
    expect(bottom).toBeGreaterThan(boundsOf(last).bottom - 0.1);
    expect(bottom).toBeLessThan(boundsOf(next).top);
  });

  it('says so where nothing has changed, and nothing of bars where no row differs', () => {
    expect(said(pagesOf({})[0]!)).toContain('No change against HEAD~1');
    expect(said(pagesOf({}, { labels: 'ja' })[0]!)).toContain('HEAD~1 から変更なし');
    const text = said(pagesOf({ lines: ['The cut is new'] })[0]!);
    expect(text).toContain('Changed against HEAD~1 · The cut is new');
    expect(text).not.toContain('bar:');
  });

  it('tells again what bars mean on further pages that have some', () => {
    const rows = [{ ...ROW, from: 150, to: 160 }];
    const [first, second] = pagesOf({ rows, lines: ['A is longer'] });
    expect(said(first!)).toContain('A is longer');
    expect(said(second!)).toContain('Changed against HEAD~1 (bar: rows that differ)');
    expect(said(second!)).not.toContain('A is longer');
    const [, without] = pagesOf({ rows: [ROW], lines: ['A is longer'] });
    expect(said(without!)).not.toContain('bar:');
  });

  it('goes on on further sides with a long list, every line of it', () => {
    const lines = Array.from({ length: 150 }, (_, i) => `A: drawing number${i} now stands ${i} frames later`);
    const pages = pagesOf({ rows: [ROW], lines });
    expect(pages[1]!.label).toBe('1-b');
    // What the cut says stays on the first page, with the meaning of the bars.
    expect(said(pages[0]!)).toContain('shake 3 mm');
    expect(said(pages[0]!)).toContain('Changed against HEAD~1 (bar: rows that differ)');
    const words = pages.map(said).join(' ').split(/\s+/);
    for (let i = 0; i < 150; i++) expect(words).toContain(`number${i}`);
  });
});

describe('levels that other cuts show again', () => {
  const lent = [
    { level: 'A', cut: '15', as: 'A' },
    { level: 'A', cut: '22', as: 'D' },
    { level: 'BG', cut: '15', as: 'BG' },
  ];

  it('are told in the memo, several borrowers in one line, and over the column', () => {
    const [page] = pagesOf({}, { paper: 'A3' }, lent);
    expect(said(page!)).toContain('A is shown again in cuts 15 (as A) and 22 (as D)');
    expect(said(page!)).toContain('BG is shown again in cut 15 (as BG)');
    expect(said(page!).replace(/\s+/g, ' ')).toContain('again in c15 c22');
  });

  it('are told in Japanese', () => {
    const text = said(pagesOf({}, { labels: 'ja', paper: 'A3' }, lent)[0]!);
    expect(text).toContain('A：兼用先　カット15 の A、カット22 の D');
    expect(text).toContain('兼用先 c15');
  });

  it('are named in the memo alone where the head has no room', () => {
    const many = Array.from({ length: 30 }, (_, i) => ({ level: 'A', cut: String(100 + i), as: 'A' }));
    const text = said(pagesOf({}, {}, many)[0]!);
    expect(text).not.toContain('again in c100');
    expect(text).not.toContain('see memo');
    for (const { cut } of many) expect(text).toContain(`${cut} (as A)`);
  });
});
