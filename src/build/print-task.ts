/** What a worker is told of a run that prints, and what it makes of each cut then. */

import type { MakeOfCut } from '../episode/cut-outcome.js';
import type { Job } from '../episode/find-cuts.js';
import { threadsFor, type WorkerTask } from '../episode/worker-pool.js';
import type { Host } from '../host/host.js';
import { hasErrors } from '../language/diagnostic.js';
import type { PageLook } from '../sheet/page-look.js';
import { comparedPrint, cutFile, cutInFile, type PrintForm, wholeCutFile } from './cut-print.js';
import type { CutPrinter, PrintableCut } from './cut-printer.js';
import { lastPrint } from './earlier-print.js';
import { type PartSelection, type PrintPlan, pageRange } from './print-plan.js';

/** See `threadsFor`; measured on two processors. */
const CUTS_A_THREAD = { print: 20, check: 60 };

/** Plain data. */
interface PrintTask {
  readonly selection: PartSelection;
  readonly strict: boolean;
  /** As it was typed; null: all. */
  readonly pages: string | null;
  readonly oneFile: boolean;
  /** Where the last print of each cut lies that is compared with; null: each cut is printed as it is. */
  readonly lastPrints: ReadonlyMap<Job, string | null> | null;
  readonly changedPagesOnly: boolean;
}

/** Makes of a cut that is fit to print what is wanted of it. */
export type Print<T> = (printable: PrintableCut, printer: CutPrinter) => Promise<T> | T;

/**
 * Of a run that prints. `pathOf`: where a cut is printed to, and lies since the last build. Undefined where this thread does it alone, as where
 * cuts are compared with a revision, or with their places in one file.
 */
export function printWorkers(
  host: Host,
  plan: PrintPlan,
  jobs: readonly Job[],
  pathOf: (job: Job) => string | null = () => null,
): ((cuts: number) => WorkerTask | undefined) | undefined {
  const { selection, strict, pages, oneFile, against, changedPagesOnly, markedAgainst } = plan;
  const compares = against.kind === 'last build';
  if (against.kind === 'revision' || markedAgainst !== null || (compares && oneFile)) return undefined;
  return (cuts) => {
    const threads = threadsFor(host, cuts, plan.threads, CUTS_A_THREAD.print);
    if (threads < 2) return undefined;
    const lastPrints = compares ? new Map(jobs.map((job) => [job, pathOf(job)])) : null;
    const task: PrintTask = {
      ...{ selection, strict, oneFile, changedPagesOnly, lastPrints },
      pages: pages?.range ?? null,
    };
    return { threads, command: 'build', task };
  };
}

/** Of a run that only checks. */
export function checkWorkers(host: Host, asked: number | null): (cuts: number) => WorkerTask | undefined {
  return (cuts) => {
    const threads = threadsFor(host, cuts, asked, CUTS_A_THREAD.check);
    return threads < 2 ? undefined : { threads, command: 'check', task: null };
  };
}

/** What a worker makes of each cut; `task`: of one of these two. */
export function makeOfTask(host: Host, task: unknown): MakeOfCut<unknown> {
  if (task === null) return () => null;
  const { selection, strict, pages, oneFile, lastPrints, changedPagesOnly } = task as PrintTask;
  const keep = pages === null ? () => true : pageRange(pages);
  let opened: Promise<CutPrinter> | undefined;
  const printer = (): Promise<CutPrinter> => {
    opened ??= import('./cut-printer.js').then(({ CutPrinter }) => CutPrinter.open(host, selection));
    return opened;
  };
  const compared: Print<unknown> = (printable, cutPrinter) => {
    const earlier = lastPrint(host, lastPrints!.get(printable.job)!);
    return comparedPrint(cutFile, cutPrinter, cutPrinter.prepare(printable), earlier, changedPagesOnly);
  };
  const whole: Print<unknown> = oneFile ? printWhole(cutInFile, keep) : printWhole(wholeCutFile, keep);
  return makePrint(host, strict, printer, lastPrints ? compared : whole);
}

/** Prints all pages of a cut that `keep` chooses, as `form` has them. */
export function printWhole<T>(
  form: PrintForm<T>,
  keep: (page: number) => boolean,
  marked: (printable: PrintableCut) => PageLook['marked'] = () => undefined,
): Print<T> {
  return (printable, printer) =>
    form(printer, printer.layOut(printer.prepare(printable, marked(printable))), keep, false);
}

/** Null of a cut that is not fit to print. */
export function makePrint<T>(
  host: Host,
  strict: boolean,
  printer: () => Promise<CutPrinter>,
  print: Print<T>,
): MakeOfCut<T | null> {
  return async (compiled, job, cache) => {
    const { house, solved, diagnostics } = compiled;
    if (house || solved === null || hasErrors(diagnostics, strict)) return null;
    return print({ host, job, compiled, solved, cache }, await printer());
  };
}
