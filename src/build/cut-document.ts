/** What is printed of a cut as a document: which of its pages, bookmarks, titles. */

import type { Bookmark, Document, Page } from '../sheet/display-list.js';
import type { Settings } from '../shot/settings.js';
import type { SolvedShot } from '../solve/solved-shot.js';

/** The printed pages of one cut, and how the outline names them. `P`: laid out, or written already. */
export interface CutPages<P = Page> {
  readonly title: string;
  readonly parts: readonly { readonly title: string; readonly pages: readonly P[] }[];
}

/** What is left of a cut when only some of its pages are printed; `keep` counts them from 1. */
export function selectPages(printed: CutPages, keep: (page: number) => boolean): CutPages {
  let number = 0;
  const parts = printed.parts
    .map(({ title, pages }) => ({ title, pages: pages.filter(() => keep(++number)) }))
    .filter(({ pages }) => pages.length > 0);
  return { title: printed.title, parts };
}

export function pageCount(printed: CutPages<unknown>): number {
  return printed.parts.reduce((sum, part) => sum + part.pages.length, 0);
}

/** The branch of the outline for a cut whose first page is page `first` (from 0) of the document. */
export function bookmarkOf(
  printed: CutPages<Pick<Page, 'label'>>,
  first: number,
  { eachPage }: { eachPage: boolean },
): Bookmark {
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
export function hasTrueSize(printed: CutPages<Pick<Page, 'part'>>): boolean {
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
