/** From solved cuts to one printed document: pages, bookmarks, title. */

import { cameraChartPages } from '../sheet/camera-chart.js';
import { chartPages } from '../sheet/charts.js';
import type { Look } from '../sheet/look.js';
import type { Bookmark, Document, Page } from '../sheet/marks.js';
import { moveTablePages } from '../sheet/move-table.js';
import { overlayPages } from '../sheet/overlay.js';
import { sheetPages } from '../sheet/sheet.js';
import { stripPages } from '../sheet/strip.js';
import type { SolvedShot } from '../solve/solved.js';
import { PARTS, type PartName } from './parts.js';

/** Printed at 100 % to lay on the drawing table, many pages long: only when asked for. */
const TRUE_SIZE: readonly PartName[] = ['strip', 'overlay'];

const MAKE: Readonly<Record<PartName, (solved: SolvedShot, look: Look) => Page[]>> = {
  sheet: sheetPages,
  charts: chartPages,
  camera: cameraChartPages,
  table: moveTablePages,
  strip: stripPages,
  overlay: overlayPages,
};

const PART_TITLES: Readonly<Record<PartName, { readonly en: string; readonly ja: string }>> = {
  sheet: { en: 'Sheet', ja: 'シート' },
  charts: { en: 'In-between charts', ja: '中割り' },
  camera: { en: 'Camera chart', ja: 'カメラワーク' },
  table: { en: 'Move table', ja: '移動表' },
  strip: { en: 'Scale strip, true size', ja: '目盛り 原寸' },
  overlay: { en: 'Field overlay, true size', ja: 'フレーム 原寸' },
};

/** The printed pages of one cut, and how the outline names them. */
export interface Printed {
  readonly title: string;
  readonly parts: readonly { readonly title: string; readonly pages: readonly Page[] }[];
}

/** `only`: one part; `trueSize`: the true-size prints too; `pages`: which of what would be printed, counted from 1. */
export interface Choice {
  readonly only?: PartName | undefined;
  readonly trueSize?: boolean | undefined;
  readonly pages?: ((page: number) => boolean) | undefined;
}

/** Makes the pages of one cut. */
export function printedCut(solved: SolvedShot, look: Look, { only, trueSize, pages }: Choice = {}): Printed {
  const { labels } = look.settings;
  const { cut, title } = solved.shot;
  let number = 0;
  const chosen = (part: PartName): boolean =>
    only === undefined ? trueSize === true || !TRUE_SIZE.includes(part) : part === only;
  const parts = PARTS.filter(chosen)
    .map((part) => ({
      title: PART_TITLES[part][labels],
      pages: MAKE[part](solved, look).filter(() => {
        number += 1;
        return pages === undefined || pages(number);
      }),
    }))
    .filter((part) => part.pages.length > 0);
  const name = labels === 'ja' ? `カット ${cut}` : `Cut ${cut}`;
  return { title: title ? `${name} ${title}` : name, parts };
}

export function pageCount(printed: Printed): number {
  return printed.parts.reduce((sum, part) => sum + part.pages.length, 0);
}

/** Binds printed cuts into one document: an outline of cut, parts and pages. */
export function bindDocument(
  cuts: readonly Printed[],
  more: { title: string; author: string; language: string },
): Document {
  const pages: Page[] = [];
  const bookmarks: Bookmark[] = cuts.map((cut) => {
    const page = pages.length;
    const children = cut.parts.map((part): Bookmark => {
      const first = pages.length;
      pages.push(...part.pages);
      return {
        title: part.title,
        page: first,
        children: part.pages.map(({ label }, i) => ({ title: label, page: first + i, children: [] })),
      };
    });
    return { title: cut.title, page, children };
  });
  const trueSize = pages.some(({ part }) => part === 'strip' || part === 'overlay');
  return { ...more, pages, bookmarks, trueSize };
}

/** What the document of one cut is called: work, episode and cut. */
export function documentTitle({ shot }: SolvedShot, printed: Printed): string {
  const work = [shot.settings.title, shot.settings.episode].filter(Boolean).join(' ');
  return work ? `${work} · ${printed.title}` : printed.title;
}
