/** What a run is to print, and of what. Apart from the layout, so that `--help` need not load it. */

import type { CoversAPage } from '../sheet/cover/shared-cover-page.js';
import type { Settings } from '../shot/settings.js';
import { UsageError } from './usage-error.js';

/** Parts of a cut, in the order in which they are printed. The cover only where it is asked for: it goes onto the envelope. */
export const PARTS = ['cover', 'sheet', 'charts', 'camera', 'table', 'strip', 'overlay'] as const;
export type PartName = (typeof PARTS)[number];

/** What is printed of a cut: what somebody works from, or everything. */
export const EXTENTS = ['needed', 'all'] as const;
export type Extent = (typeof EXTENTS)[number];

/** Covers that a page can have, as they are typed. */
export const COVERS_A_PAGE: readonly `${CoversAPage}`[] = ['2', '4', '8'];

/** `only`: one part, whole; `trueSize`: the true-size prints too; `parts`: undefined is what is needed. */
export interface PartSelection {
  readonly only?: PartName | undefined;
  readonly trueSize?: boolean | undefined;
  readonly parts?: Extent | undefined;
}

/** With what the pages are compared; those that are the same are not printed. */
export type Against =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'last build' }
  | { readonly kind: 'revision'; readonly rev: string };

export interface PrintPlan {
  /** A file, a folder, or `-` for standard output; undefined: beside each cut. */
  readonly output: string | undefined;
  /** Warnings count as errors. */
  readonly strict: boolean;
  /** They overrule those of every episode. */
  readonly settings: Partial<Settings>;
  readonly selection: PartSelection;
  readonly against: Against;
  /** Only the pages that differ, not their whole cuts. */
  readonly changedPagesOnly: boolean;
  /** Pages of each cut, counted from 1; `range` as it was typed. Null: all. */
  readonly pages: { readonly range: string; readonly includes: (page: number) => boolean } | null;
  /** All cuts in one PDF. */
  readonly oneFile: boolean;
  /** Covers of so many cuts on a page, in one PDF. Null: a page a cut. */
  readonly coversAPage: CoversAPage | null;
  /** A revision: what has changed since is marked on the sheets. */
  readonly markedAgainst: string | null;
  /** How many threads may work on it; null: as many as are worth it on this machine. */
  readonly threads: number | null;
}

/** Whether a page of a cut, counted from 1, is to be printed. */
export function wantedPage({ pages }: PrintPlan): (page: number) => boolean {
  return pages?.includes ?? (() => true);
}

/** `2`, `2-3`, `2-`, `1,4-6`: which pages, counted from 1. Throws UsageError. */
export function pageRange(text: string): (page: number) => boolean {
  const ranges = text.split(',').map((part) => {
    const match = /^(\d{1,5})(?:(-)(\d{1,5})?)?$/.exec(part.trim());
    const from = Number(match?.[1]);
    const to = match?.[3] !== undefined ? Number(match[3]) : match?.[2] ? Number.POSITIVE_INFINITY : from;
    if (!match || from < 1 || to < from) {
      throw new UsageError('option-value', text, { variant: 'page-range' });
    }
    return { from, to };
  });
  return (page) => ranges.some(({ from, to }) => page >= from && page <= to);
}
