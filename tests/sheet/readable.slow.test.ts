/** What a person at the far end of a copier must be able to count on, for every look and many kinds of cut. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Page } from '../../src/sheet/display-list.js';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { PAPERS, type Settings } from '../../src/shot/settings.js';
import { cutTexts } from '../generate.js';
import {
  everyMark,
  offThePaper,
  ringClashes,
  struckOut,
  textClashes,
  tooSmall,
  touchedRings,
} from './clashes.js';
import { CUTS } from './cuts.js';
import { laid, lookOf, solvedCut, textsOf } from './laid.js';

const CONVENTIONS = ['japan', 'west'] as const;
/** Every paper in both conventions; every mix of convention and labels on several papers. */
const LOOKS: Partial<Settings>[] = PAPERS.flatMap((paper, i) =>
  CONVENTIONS.map((convention, j) => ({
    paper,
    convention,
    labels: (i >> j) % 2 === 0 ? ('en' as const) : ('ja' as const),
    title: 'Samphire Ferry',
    episode: '3',
  })),
);

const leastMm = ({ paper }: Partial<Settings>): number =>
  ((paper === 'A3' || paper === 'tabloid' ? 5 : 5.5) * 25.4) / 72;

const solved = Object.entries(CUTS).map(([name, text]) => ({ name, cut: solvedCut(text) }));

describe.each(LOOKS)('$paper $convention $labels', (look) => {
  const pages = solved.flatMap(({ name, cut }) =>
    sheetPages(cut, lookOf(look)).map((page) => ({ where: `${name} page ${page.label}`, page })),
  );
  const found = (faults: (page: Page) => string[]): string[] =>
    pages.flatMap(({ where, page }) => faults(page).map((fault) => `${where}: ${fault}`));

  it('stays on the paper', () => {
    expect(found(offThePaper)).toEqual([]);
  });

  it('prints nothing smaller than 5 pt on the big papers and 5.5 pt on the others', () => {
    expect(found((page) => tooSmall(page, leastMm(look)))).toEqual([]);
  });

  it('sets no text over another', () => {
    expect(found((page) => textClashes(everyMark(page)))).toEqual([]);
  });

  it('keeps rings apart from each other', () => {
    expect(found(ringClashes)).toEqual([]);
  });

  it('keeps rings off what stands in them', () => {
    expect(found(touchedRings)).toEqual([]);
  });

  it('runs no black line through a text', () => {
    expect(found(struckOut)).toEqual([]);
  });
});

it('can be read for any cut on any paper', () => {
  const looks = fc.record({
    paper: fc.constantFrom(...PAPERS),
    convention: fc.constantFrom(...CONVENTIONS),
    labels: fc.constantFrom('en' as const, 'ja' as const),
    rows: fc.constantFrom(null, 48, 72, 96, 100),
    fps: fc.constantFrom(24, 25, 30, 12),
  });
  fc.assert(
    fc.property(cutTexts({ words: true, phrases: true, stack: true }), looks, (text, look) => {
      for (const page of laid(text, look)) {
        const faults = [
          ...offThePaper(page),
          ...tooSmall(page, leastMm(look)),
          ...textClashes(everyMark(page)),
          ...ringClashes(page),
          ...touchedRings(page),
          ...struckOut(page),
        ];
        expect(faults.map((fault) => `page ${page.label}: ${fault}`)).toEqual([]);
      }
    }),
    { numRuns: Number(process.env.RUNS ?? 60), seed: 1 },
  );
});

it('sees a number that touches its ring', () => {
  const [page] = laid('cut 1\ntime 1+0\nA: 1..\n');
  expect(touchedRings(page!)).toEqual([]);
  const marks = page!.marks.map((mark) => (mark.kind === 'circle' ? { ...mark, r: mark.r * 0.7 } : mark));
  expect(touchedRings({ ...page!, marks })).toHaveLength(1);
});

it('sees a text that is set over another', () => {
  const [page] = laid(CUTS['one level']!);
  const first = textsOf(page!.marks).find(({ text }) => text === 'Blink')!;
  const marks = [...everyMark(page!), { ...first, x: first.x + 1, text: 'Blot' }];
  expect(textClashes(marks)).toEqual(['“Blink” and “Blot”']);
});
