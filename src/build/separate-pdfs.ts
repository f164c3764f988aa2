/** `build` into a file for each cut. */

import { dirname, join, relative } from 'node:path';
import type { FindSettled } from '../episode/batch.js';
import type { Compiled } from '../episode/compile-cut.js';
import { cutKey, cutNumberOf } from '../episode/episode.js';
import type { Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { Diagnostic } from '../language/diagnostic.js';
import type { BuildRun, Work } from './build-run.js';
import { pageCount, selectPages, workTitle } from './cut-document.js';
import type { CutPrinter, LaidOutCut } from './cut-printer.js';
import {
  compareWithEarlier,
  describeDifferences,
  type EarlierLookup,
  earlierPrintOf,
  readPrintRecord,
} from './earlier-print.js';
import { deliver, deliverLater, spanOf, type Target, Targets } from './output-targets.js';
import { wantedPage } from './print-plan.js';
import { writeRecord } from './print-record.js';
import { settledNumber } from './settled-cuts.js';

export async function buildSeparatePdfs(run: BuildRun): Promise<void> {
  const { host, found, plan, summary } = run;
  const targets = new Targets(host, found, plan.output, '.pdf');
  for (const folder of targets.folders()) host.removeStaleTemporaries(folder);
  let printedTo: Map<string, string> | null = new Map();

  const print: Work = async (printable, printer) => {
    const { job } = printable;
    const refusal = targets.refusal(job, printable.compiled.sources.keys());
    if (refusal) return refusal;
    const target = targets.of(job);
    printedTo?.set(cutKey(printable.solved.shot.cut), target.name);
    const prepared = printer.prepare(printable, run.marked(printable));
    if (plan.against.kind === 'nothing')
      return write(run, targets, printer.layOut(prepared), wantedPage(plan));
    const earlier = run.revision ? run.revision.of(printable, printer) : lastPrint(host, target.path);
    // The print of a revision has no marks, and a cut that was the same then is the same now.
    const differing = compareWithEarlier(
      printer,
      prepared,
      earlier,
      plan.changedPagesOnly,
      run.revision ? printer.unmarked(prepared) : prepared,
    );
    if (!differing) return summary.setResult(job, 'same');
    const { laidOut, difference, first } = differing;
    if (laidOut.pages.length === 0) return summary.setResult(job, 'empty');
    summary.addLine(describeDifferences(printable.solved.shot.cut, laidOut.pages, difference, first));
    if (!plan.changedPagesOnly) return write(run, targets, laidOut, () => true);
    if (difference.pages.length === 0) return summary.setResult(job, 'same');
    return write(run, targets, laidOut, (page) => difference.pages.includes(page - 1), true);
  };
  const unfit = ({ tree }: Compiled, job: Job): void => {
    const number = cutNumberOf(tree);
    if (number === undefined) printedTo = null;
    else printedTo?.set(cutKey(number), targets.of(job).name);
  };
  const settled: FindSettled = (job, cache) => {
    const target = targets.of(job);
    const number = settledNumber(host, job, cache, plan, lastPrint(host, target.path));
    if (number === null || targets.rivalry(job)) return null;
    return { number, accept: () => void printedTo?.set(cutKey(number), target.name) };
  };
  const comparesTexts = plan.against.kind === 'last build';
  await run.each('printing', found, print, unfit, comparesTexts ? settled : undefined);
  await run.written();
  if (found.whole.length > 0) reportOrphanedPdfs(run, targets, printedTo);
}

/** Writes pages of a cut. `known`: those that are left out were printed before as they are. */
async function write(
  run: BuildRun,
  targets: Targets,
  laidOut: LaidOutCut,
  keep: (page: number) => boolean,
  known = false,
): Promise<Diagnostic | undefined> {
  const { host, summary, printer } = run;
  const { job } = laidOut.prepared.printable;
  const target = targets.of(job);
  const made = await cutPdf(await printer(), laidOut, keep, known);
  if (made === null) return summary.setResult(job, 'empty');
  await run.later(job, deliverLater(host, target, made.bytes, spanOf(job)), () => {
    summary.setResult(job, 'printed');
    summary.addFile(target, made.pages);
  });
  return undefined;
}

/** What the file of a cut tells of the last build. */
export function lastPrint(host: Host, path: string | null): EarlierLookup {
  if (path === null) return { none: '' };
  const record = readPrintRecord(host, path);
  if ('none' in record) return record;
  const [cut] = record.cuts;
  return cut && record.of === 'cut' ? earlierPrintOf(cut) : { none: 'as the file there is of several cuts' };
}

/**
 * Writes the pages of a cut that are kept; how many, or what stands against it. `known`: those that are left out were printed
 * before as they are. Where no page is kept nothing is written.
 */
export async function writeCutPdf(
  host: Host,
  printer: CutPrinter,
  target: Target,
  laidOut: LaidOutCut,
  keep: (page: number) => boolean = () => true,
  known = false,
): Promise<number | Diagnostic> {
  const made = await cutPdf(printer, laidOut, keep, known);
  if (made === null) return 0;
  return deliver(host, target, made.bytes, spanOf(laidOut.prepared.printable.job)) ?? made.pages;
}

/** The PDF of the pages of a cut that are kept; null: there is none. */
async function cutPdf(
  printer: CutPrinter,
  laidOut: LaidOutCut,
  keep: (page: number) => boolean,
  known: boolean,
): Promise<{ readonly bytes: Uint8Array; readonly pages: number } | null> {
  const { settings } = laidOut.prepared.printable.job.episode;
  const printed = selectPages(laidOut.printed, keep);
  const pages = pageCount(printed);
  if (pages === 0) return null;
  const cuts = [printer.record(laidOut, keep, known)];
  const record = writeRecord({ of: 'cut', work: workTitle(settings), cuts });
  return { bytes: await printer.cut(laidOut, printed, record), pages };
}

/**
 * Names them; they are left where they are. `printedTo`: the files of the cuts by their numbers, or null where the number of
 * some cut cannot be read, so that nobody knows.
 */
export function reportOrphanedPdfs(
  { host, found, summary }: BuildRun,
  targets: Targets,
  printedTo: ReadonlyMap<string, string> | null,
): void {
  if (printedTo === null) return;
  const works = new Set(found.whole.map(({ settings }) => workTitle(settings)));
  const paths = found.jobs.flatMap((job) => targets.of(job).path ?? []);
  const own = new Set(paths.map((path) => host.real(path)));
  for (const folder of new Set(paths.map((path) => dirname(path)))) {
    const names = host.list(folder);
    for (const name of names.ok ? names.value : []) {
      const path = join(folder, name);
      if (!name.endsWith('.pdf') || own.has(host.real(path))) continue;
      const record = readPrintRecord(host, path);
      const [cut] = 'none' in record || record.of !== 'cut' || !works.has(record.work) ? [] : record.cuts;
      if (!cut) continue;
      const now = printedTo.get(cutKey(cut.cut));
      const said = now === undefined ? 'no cut of the episode any more' : `cut ${cut.cut} goes to ${now} now`;
      summary.addLine(`${relative(host.cwd, path)}: ${said}`);
    }
  }
}
