/** Cuts to paper and back: many cuts in one document, which is opened once. */

import { printPdf } from '../../src/print/pdf.js';
import type { Page } from '../../src/sheet/display-list.js';
import { sheetPages } from '../../src/sheet/exposure-sheet.js';
import { chartPages } from '../../src/sheet/inbetween-chart-pages.js';
import type { MarkedChanges } from '../../src/sheet/page-look.js';
import type { Settings } from '../../src/shot/settings.js';
import type { SolvedShot } from '../../src/solve/solved-shot.js';
import { testFonts } from '../fonts.js';
import { openPrinted, type Paper } from '../pdf.js';
import { barDifferences } from './bars.js';
import { chartDifferences, readLadders } from './charts.js';
import { differences } from './compare.js';
import { readSheet } from './sheet.js';

/** A cut, and how it is to be printed. */
export interface Case {
  readonly name: string;
  readonly solved: SolvedShot;
  readonly settings: Settings;
  readonly marked?: MarkedChanges | undefined;
}

export interface Laid extends Case {
  readonly pages: readonly Page[];
  /** Whether the charts are among the pages. */
  readonly charts: boolean;
}

export function layOut(one: Case, charts = true): Laid {
  const { settings, marked } = one;
  const look = { settings, metrics: testFonts().metrics, stamp: '1a2b3c4d', marked };
  const pages = sheetPages(one.solved, look);
  return { ...one, charts, pages: charts ? [...pages, ...chartPages(one.solved, look)] : pages };
}

/** The pages of each case as they come back from the file. */
export async function printAndOpen(laid: readonly Laid[]): Promise<Paper[][]> {
  const document = {
    title: 'Read back',
    language: 'en',
    author: '',
    pages: laid.flatMap((one) => one.pages),
    bookmarks: [],
    trueSize: false,
  };
  const { pages } = await openPrinted(await printPdf(document, testFonts()));
  let at = 0;
  return laid.map((one) => {
    at += one.pages.length;
    return pages.slice(at - one.pages.length, at);
  });
}

/** What a case's papers say otherwise than the solver. A paper that cannot be read is told like any other fault. */
export function faults(one: Laid, papers: readonly Paper[]): string[] {
  const { convention, labels } = one.settings;
  const of = (part: Page['part']) => papers.filter((_, i) => one.pages[i]!.part === part);
  try {
    const charts = one.charts
      ? chartDifferences(of('charts').flatMap(readLadders), one.solved, convention)
      : [];
    const sheets = of('sheet').map(readSheet);
    return [
      ...differences(sheets, one.solved, convention, labels),
      ...barDifferences(sheets, one.marked, one.solved),
      ...charts,
    ];
  } catch (error) {
    return [String(error)];
  }
}

/** The case with one page replaced. */
export function withPage(one: Laid, index: number, page: Page): Laid {
  return { ...one, pages: one.pages.map((old, i) => (i === index ? page : old)) };
}
