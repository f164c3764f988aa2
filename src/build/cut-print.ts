/** A cut as it is printed: a file of its own, or a part of one. Plain data, so that another thread can make it. */

import type { PageChanges } from '../language/catalogue/catalogue-entry.js';
import type { WrittenPage } from '../print/page-writer.js';
import { type CutPages, pageCount, selectPages, workTitle } from './cut-document.js';
import type { CutPrinter, LaidOutCut, PreparedCut } from './cut-printer.js';
import { compareWithEarlier, type EarlierLookup, pageChanges } from './earlier-print.js';
import { type PrintedCut, writeRecord } from './print-record.js';

export interface CutFile {
  /** Its number. */
  readonly cut: string;
  readonly pages: number;
  readonly bytes: Uint8Array;
}

/** A cut that was compared with an earlier print of it. `T`: a file of its own, or a part of one. */
export interface ComparedPrint<T> {
  /** Null where none is told. */
  readonly changes: PageChanges | null;
  /** What is to be written; `same`: nothing, as it is on paper; null: nothing, as there is no page. */
  readonly made: T | 'same' | null;
}

/** Makes of the pages of a cut that are kept what is written: `cutFile`, `cutInFile`. */
export type PrintForm<T> = (
  printer: CutPrinter,
  laidOut: LaidOutCut,
  keep: (page: number) => boolean,
  known: boolean,
) => Promise<T> | T;

export interface CutInFile {
  readonly cut: string;
  readonly artists: readonly string[];
  /** Of the print. */
  readonly language: string;
  readonly printed: CutPages<WrittenPage>;
  /** What the record of the file tells of it. */
  readonly record: PrintedCut;
}

/**
 * The pages of a cut that are kept; null: there is none. `known`: those that are left out were printed before as they are. Rejects with
 * MissingGlyph.
 */
export async function cutFile(
  printer: CutPrinter,
  laidOut: LaidOutCut,
  keep: (page: number) => boolean,
  known: boolean,
): Promise<CutFile | null> {
  const { job, solved } = laidOut.prepared.printable;
  const printed = selectPages(laidOut.printed, keep);
  const pages = pageCount(printed);
  if (pages === 0) return null;
  const cuts = [printer.record(laidOut, keep, known)];
  const record = writeRecord({ of: 'cut', work: workTitle(job.episode.settings), cuts });
  return { cut: solved.shot.cut, pages, bytes: await printer.cut(laidOut, printed, record) };
}

/** `unmarked`: see `compareWithEarlier`. Rejects with MissingGlyph. */
export async function comparedPrint<T>(
  form: PrintForm<T | null>,
  printer: CutPrinter,
  prepared: PreparedCut,
  earlier: EarlierLookup,
  changedPagesOnly: boolean,
  unmarked = prepared,
): Promise<ComparedPrint<T>> {
  const differing = compareWithEarlier(printer, prepared, earlier, changedPagesOnly, unmarked);
  if (!differing) return { changes: null, made: 'same' };
  const { laidOut, difference, first } = differing;
  if (laidOut.pages.length === 0) return { changes: null, made: null };
  const { cut } = prepared.printable.solved.shot;
  const changes = pageChanges(cut, laidOut.pages, difference, first);
  if (!changedPagesOnly) return { changes, made: await form(printer, laidOut, () => true, false) };
  if (difference.pages.length === 0) return { changes, made: 'same' };
  const differs = (page: number): boolean => difference.pages.includes(page - 1);
  return { changes, made: await form(printer, laidOut, differs, true) };
}

/** A file of a cut that is compared with nothing. */
export const wholeCutFile: PrintForm<ComparedPrint<CutFile>> = async (...given) => ({
  changes: null,
  made: await cutFile(...given),
});

/** The same as a part of a file. Throws MissingGlyph. */
export function cutInFile(
  printer: CutPrinter,
  laidOut: LaidOutCut,
  keep: (page: number) => boolean,
  known: boolean,
): CutInFile | null {
  const { printable, look } = laidOut.prepared;
  const { cut, artists } = printable.solved.shot;
  const printed = selectPages(laidOut.printed, keep);
  if (pageCount(printed) === 0) return null;
  return {
    ...{ cut, artists, language: look.settings.labels, printed: printer.write(printed) },
    record: printer.record(laidOut, keep, known),
  };
}
