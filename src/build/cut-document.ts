/** From a solved cut to what is printed of it: pages, bookmarks, title. */

import { needsCameraChart } from '../sheet/camera/needed-camera-chart.js';
import { cameraChartPages, chartWithTable } from '../sheet/camera-pages/camera-chart.js';
import { overlayPages } from '../sheet/camera-pages/field-overlay.js';
import { moveTablePages } from '../sheet/camera-pages/move-table.js';
import { stripPages } from '../sheet/camera-pages/scale-strip.js';
import type { Bookmark, Document, Page } from '../sheet/display-list.js';
import { sheetPages } from '../sheet/exposure-sheet.js';
import { chartPages, neededChartPages } from '../sheet/inbetween-chart-pages.js';
import type { PageLook } from '../sheet/page-look.js';
import type { Settings } from '../shot/settings.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import { wordsOf } from '../words/words.js';
import { PARTS, type PartName, type PartSelection } from './print-plan.js';

/** The printed pages of one cut, and how the outline names them. */
export interface CutPages {
  readonly title: string;
  readonly parts: readonly { readonly title: string; readonly pages: readonly Page[] }[];
}

/**
 * Makes the pages of one cut. By default what somebody works from: its sheets; charts of passages that are not even or were changed;
 * the camera chart where something moves that a line of the memo cannot tell, with the table of moves on it or behind it.
 */
export function cutPages(solved: SolvedShot, look: PageLook, selection: PartSelection = {}): CutPages {
  const words = wordsOf(look.settings).documents;
  const { cut, title } = solved.shot;
  const made = partPages(solved, look, selection);
  const parts = PARTS.map((part) => ({ title: words.parts[part], pages: made[part]?.() ?? [] })).filter(
    ({ pages }) => pages.length > 0,
  );
  const name = words.cut(cut);
  return { title: title ? `${name} ${title}` : name, parts };
}

type Made = { readonly [P in PartName]?: () => Page[] };

function partPages(solved: SolvedShot, look: PageLook, { only, trueSize, parts }: PartSelection): Made {
  const all = parts === 'all';
  const whole: Required<Made> = {
    sheet: () => sheetPages(solved, look),
    charts: () => chartPages(solved, look),
    camera: () => cameraChartPages(solved, look),
    table: () => moveTablePages(solved, look),
    strip: () => stripPages(solved, look),
    overlay: () => overlayPages(solved, look),
  };
  if (only !== undefined) return { [only]: whole[only] };
  const { sheet, charts, table, strip, overlay } = whole;
  const camera =
    all || needsCameraChart(solved) ? chartWithTable(solved, look) : { pages: [], holdsTable: true };
  return {
    sheet,
    charts: all ? charts : () => neededChartPages(solved, look),
    camera: () => camera.pages,
    ...(camera.holdsTable ? {} : { table }),
    ...(all || trueSize ? { strip, overlay } : {}),
  };
}

/** What is left of a cut when only some of its pages are printed; `keep` counts them from 1. */
export function selectPages(printed: CutPages, keep: (page: number) => boolean): CutPages {
  let number = 0;
  const parts = printed.parts
    .map(({ title, pages }) => ({ title, pages: pages.filter(() => keep(++number)) }))
    .filter(({ pages }) => pages.length > 0);
  return { title: printed.title, parts };
}

export function pageCount(printed: CutPages): number {
  return printed.parts.reduce((sum, part) => sum + part.pages.length, 0);
}

/** The branch of the outline for a cut whose first page is page `first` (from 0) of the document. */
export function bookmarkOf(printed: CutPages, first: number, { eachPage }: { eachPage: boolean }): Bookmark {
  let page = first;
  const children = printed.parts.map(({ title, pages }): Bookmark => {
    const start = page;
    page += pages.length;
    const leaves = eachPage ? pages : [];
    return {
      title,
      page: start,
      children: leaves.map(({ label }, i) => ({ title: label, page: start + i, children: [] })),
    };
  });
  return { title: printed.title, page: first, children };
}

/** Whether it holds pages to be printed at 100 %. */
export function hasTrueSize(printed: CutPages): boolean {
  return printed.parts.some(({ pages }) => pages.some(({ part }) => part === 'strip' || part === 'overlay'));
}

/** One printed cut as a document: an outline of cut, parts and pages. */
export function cutDocument(
  printed: CutPages,
  more: { title: string; author: string; language: string },
): Document {
  const pages = printed.parts.flatMap((part) => part.pages);
  return {
    ...more,
    pages,
    bookmarks: [bookmarkOf(printed, 0, { eachPage: true })],
    trueSize: hasTrueSize(printed),
  };
}

/** What an episode is called: its work and its number. */
export function workTitle({ title, episode }: Settings): string {
  return [title, episode].filter(Boolean).join(' ');
}

/** What the document of one cut is called: work, episode and cut. */
export function documentTitle({ shot }: SolvedShot, printed: CutPages): string {
  const work = workTitle(shot.settings);
  return work ? `${work} · ${printed.title}` : printed.title;
}
