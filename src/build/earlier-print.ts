/** What a cut was printed as before: at the last build, or at a revision. */

import type { Host } from '../host/host.js';
import type { NoEarlierPrint, PageChanges } from '../language/catalogue/catalogue-entry.js';
import { privateWords } from '../print/info-dictionary.js';
import type { CutPrinter, LaidOutCut, PreparedCut } from './cut-printer.js';
import { type PrintedPage, type PrintRecord, readRecord } from './print-record.js';

/** An earlier print of a cut. */
export interface EarlierPrint {
  readonly input: string;
  /** Of the cut with nothing marked as changed. */
  readonly unmarkedInput: string;
  /** Of the texts, as `PrintedCut` has it. */
  readonly texts: string | null;
  /** Whether it lacks no page. `changedPagesOnly`: pages that an earlier print of changed pages holds count. */
  whole(changedPagesOnly: boolean): boolean;
  pages(): readonly PrintedPage[];
}

/** Or why there is none to compare with. */
export type EarlierLookup = EarlierPrint | { readonly none: NoEarlierPrint };

/** A cut that is to be printed, because it differs. `first`: why there was nothing to compare with. */
export interface ChangedCut {
  readonly laidOut: LaidOutCut;
  readonly difference: PageDifferences;
  readonly first: NoEarlierPrint | null;
}

/**
 * Null: the cut prints what it did before. Lays nothing out where it is made of the same. `unmarked`: without what is marked as
 * changed, where that is not to count as a difference. It never does in a cut on which nothing is marked because it is what it
 * was: paper of it that bears no word of the revision, or marks of an earlier one, is still right.
 */
export function compareWithEarlier(
  printer: CutPrinter,
  prepared: PreparedCut,
  earlier: EarlierLookup,
  changedPagesOnly: boolean,
  unmarked = prepared,
): ChangedCut | null {
  if ('none' in earlier) {
    const laidOut = printer.layOut(prepared);
    return { laidOut, difference: pageDifferences([], laidOut.pages), first: earlier.none };
  }
  const whole = earlier.whole(changedPagesOnly);
  const unchanged = isUnchanged(prepared);
  if (whole && earlier.input === unmarked.input) return null;
  if (whole && unchanged && earlier.unmarkedInput === prepared.unmarkedInput) return null;
  const compared = [unmarked, ...(unchanged ? [printer.unmarked(prepared)] : [])].map((one) => {
    const laidOut = printer.layOut(one);
    const difference = pageDifferences(earlier.pages(), laidOut.pages);
    return { laidOut, difference, count: difference.pages.length + difference.gone.length };
  });
  const { laidOut, difference, count } = compared.reduce((least, one) =>
    one.count < least.count ? one : least,
  );
  if (whole && count === 0) return null;
  return {
    laidOut: unmarked === prepared ? laidOut : printer.layOut(prepared),
    difference,
    first: count === 0 ? { why: 'pages-missing' } : null,
  };
}

/** Whether a cut was compared with a revision, and nothing was found to be marked. */
function isUnchanged({ look: { marked } }: PreparedCut): boolean {
  return marked != null && [marked.rows, marked.ladders, marked.lines].every((list) => list.length === 0);
}

/** The print of a cut that a record tells of. */
export function earlierPrintOf({
  input,
  unmarkedInput,
  texts,
  pages,
}: PrintRecord['cuts'][number]): EarlierPrint {
  return {
    input,
    unmarkedInput,
    texts,
    whole: (changedPagesOnly) => pages.every(({ hash, here }) => hash !== null && (changedPagesOnly || here)),
    pages: () => pages,
  };
}

/** What the file at a path tells of itself; or `none`. */
export function readPrintRecord(host: Host, path: string): PrintRecord | { readonly none: NoEarlierPrint } {
  const words = privateWords((most) => {
    const end = host.readEnd(path, most);
    return end.ok ? end.value : null;
  });
  const record = words === null ? null : readRecord(words);
  if (record) return record;
  return { none: { why: host.kind(path) === 'none' ? 'not-printed' : 'no-print' } };
}

/** What the file of a cut tells of the last build. */
export function lastPrint(host: Host, path: string | null): EarlierLookup {
  if (path === null) return { none: { why: 'not-printed' } };
  const record = readPrintRecord(host, path);
  if ('none' in record) return record;
  const [cut] = record.cuts;
  return cut && record.of === 'cut' ? earlierPrintOf(cut) : { none: { why: 'several-cuts' } };
}

export interface PageDifferences {
  /** Places of the pages that differ or are new, from 0. */
  readonly pages: readonly number[];
  /** Those of them that were not there before. */
  readonly fresh: ReadonlySet<number>;
  /** Labels of pages that are no more. */
  readonly gone: readonly string[];
}

/** Pages are the same where label and hash are. */
export function pageDifferences(
  before: readonly PrintedPage[],
  now: readonly PrintedPage[],
): PageDifferences {
  const known = new Map(before.map(({ label, hash }) => [label, hash]));
  const labels = new Set(now.map(({ label }) => label));
  const pages: number[] = [];
  const fresh = new Set<number>();
  for (const [i, { label, hash }] of now.entries()) {
    if (known.get(label) === hash) continue;
    pages.push(i);
    if (!known.has(label)) fresh.add(i);
  }
  return { pages, fresh, gone: before.map(({ label }) => label).filter((label) => !labels.has(label)) };
}

/** What is said of a cut that differs. */
export function pageChanges(
  cut: string,
  now: readonly PrintedPage[],
  { pages, fresh, gone }: PageDifferences,
  notCompared: NoEarlierPrint | null,
): PageChanges {
  const called = pages.map((i) => ({ label: now[i]!.label, fresh: fresh.has(i) }));
  const numbers = called.every(({ label, fresh: isNew }, at) => label === `${pages[at]! + 1}` && !isNew);
  return {
    ...{ cut, pages: now.length, gone, notCompared },
    differing: pages.map((i) => i + 1),
    labels: numbers ? null : called,
  };
}
