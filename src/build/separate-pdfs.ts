/** `build` into a file for each cut. */

import { dirname, join, relative } from 'node:path';
import type { FindSettled } from '../episode/batch.js';
import type { CutOutcome } from '../episode/cut-outcome.js';
import { cutKey } from '../episode/episode.js';
import type { Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { Diagnostic } from '../language/diagnostic.js';
import type { BuildRun } from './build-run.js';
import { workTitle } from './cut-document.js';
import { type ComparedPrint, type CutFile, comparedPrint, cutFile, wholeCutFile } from './cut-print.js';
import type { CutPrinter, LaidOutCut } from './cut-printer.js';
import { lastPrint, readPrintRecord } from './earlier-print.js';
import { deliver, deliverLater, spanOf, type Target, Targets } from './output-targets.js';
import { wantedPage } from './print-plan.js';
import { type Print, printWhole, printWorkers } from './print-task.js';
import { settledNumber } from './settled-cuts.js';

export async function buildSeparatePdfs(run: BuildRun): Promise<void> {
  const { host, found, plan, summary, reporter } = run;
  const targets = new Targets(host, found, plan.output, '.pdf');
  for (const folder of targets.folders()) host.removeStaleTemporaries(folder);
  let printedTo: Map<string, string> | null = new Map();

  const unfit = ({ number }: CutOutcome, job: Job): void => {
    if (number === null) printedTo = null;
    else printedTo?.set(cutKey(number.text), targets.of(job).name);
  };
  const settled: FindSettled = (job, cache) => {
    const target = targets.of(job);
    const number = settledNumber(host, job, cache, plan, lastPrint(host, target.path));
    if (number === null || targets.rivalry(job)) return null;
    return { number, accept: () => void printedTo?.set(cutKey(number), target.name) };
  };
  await run.eachPrint<ComparedPrint<CutFile>>('printing', found, {
    unfit,
    print: printOf(run, targets),
    async take({ changes, made }, { cut, sources }, job) {
      const refusal = targets.refusal(job, sources.keys());
      if (refusal) return refusal;
      printedTo?.set(cutKey(cut!), targets.of(job).name);
      if (changes !== null) summary.addLine(reporter.words.pagesDiffer(changes));
      if (made === 'same') return summary.setResult(job, 'same');
      return write(run, targets, job, made);
    },
    settled: plan.against.kind === 'last build' ? settled : undefined,
    workers: printWorkers(host, plan, found.jobs, (job) => targets.of(job).path),
  });
  await run.written();
  if (found.whole.length > 0) reportOrphanedPdfs(run, targets, printedTo);
}

/** How the cuts are printed: whole, or what differs from what a revision or the last build says. */
function printOf(run: BuildRun, targets: Targets): Print<ComparedPrint<CutFile>> {
  const { host, plan, revision, marked } = run;
  if (plan.against.kind === 'nothing') return printWhole(wholeCutFile, wantedPage(plan), marked);
  return (printable, printer) => {
    const prepared = printer.prepare(printable, marked(printable));
    const earlier = revision?.of(printable, printer) ?? lastPrint(host, targets.of(printable.job).path);
    // The print of a revision has no marks, and a cut that was the same then is the same now.
    const unmarked = revision ? printer.unmarked(prepared) : prepared;
    return comparedPrint(cutFile, printer, prepared, earlier, plan.changedPagesOnly, unmarked);
  };
}

/** `made`: null where no page of the cut was chosen. */
async function write(run: BuildRun, targets: Targets, job: Job, made: CutFile | null): Promise<undefined> {
  const { host, summary } = run;
  if (made === null) return summary.setResult(job, 'empty');
  const target = targets.of(job);
  await run.later(job, deliverLater(host, target, made.bytes, spanOf(job)), () => {
    summary.setResult(job, 'printed');
    summary.addFile(target, made.pages);
  });
  return undefined;
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
  const made = await cutFile(printer, laidOut, keep, known);
  if (made === null) return 0;
  return deliver(host, target, made.bytes, spanOf(laidOut.prepared.printable.job)) ?? made.pages;
}

/**
 * Names them; they are left where they are. `printedTo`: the files of the cuts by their numbers, or null where the number of
 * some cut cannot be read, so that nobody knows.
 */
export function reportOrphanedPdfs(
  { host, found, summary, reporter }: BuildRun,
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
      const now = printedTo.get(cutKey(cut.cut)) ?? null;
      summary.addLine(reporter.words.orphanedFile(relative(host.cwd, path), cut.cut, now));
    }
  }
}
