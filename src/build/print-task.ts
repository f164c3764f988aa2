/** What a worker is told of a run that prints, and what it makes of each cut then. */

import type { MakeOfCut } from '../episode/cut-outcome.js';
import { threadsFor, type WorkerTask } from '../episode/worker-pool.js';
import type { Host } from '../host/host.js';
import { hasErrors } from '../language/diagnostic.js';
import type { PageLook } from '../sheet/page-look.js';
import { cutFile, cutInFile } from './cut-print.js';
import type { CutPrinter, LaidOutCut, PrintableCut } from './cut-printer.js';
import { type PartSelection, type PrintPlan, pageRange } from './print-plan.js';

/** See `threadsFor`; measured on two processors. */
const CUTS_A_THREAD = { print: 40, check: 120 };

/** Plain data. */
interface PrintTask {
  readonly selection: PartSelection;
  readonly strict: boolean;
  /** As it was typed; null: all. */
  readonly pages: string | null;
  readonly oneFile: boolean;
}

/** Makes of a cut that is fit to print what is wanted of it. */
export type Print<T> = (printable: PrintableCut, printer: CutPrinter) => Promise<T> | T;

/** Of a run over so many cuts; undefined where this thread does it alone, as where it compares with what is on paper, or was at a revision. */
export function printWorkers(host: Host, cuts: number, plan: PrintPlan): WorkerTask | undefined {
  const { selection, strict, pages, oneFile, against, markedAgainst } = plan;
  const threads = threadsFor(host, cuts, plan.threads, CUTS_A_THREAD.print);
  if (threads < 2 || against.kind !== 'nothing' || markedAgainst !== null) return undefined;
  const task: PrintTask = { selection, strict, pages: pages?.range ?? null, oneFile };
  return { threads, command: 'build', task };
}

/** Of a run that only checks. */
export function checkWorkers(host: Host, cuts: number, asked: number | null): WorkerTask | undefined {
  const threads = threadsFor(host, cuts, asked, CUTS_A_THREAD.check);
  return threads < 2 ? undefined : { threads, command: 'check', task: null };
}

/** What a worker makes of each cut; `task`: of one of these two. */
export function makeOfTask(host: Host, task: unknown): MakeOfCut<unknown> {
  if (task === null) return () => null;
  const { selection, strict, pages, oneFile } = task as PrintTask;
  const keep = pages === null ? () => true : pageRange(pages);
  let opened: Promise<CutPrinter> | undefined;
  const printer = (): Promise<CutPrinter> => {
    opened ??= import('./cut-printer.js').then(({ CutPrinter }) => CutPrinter.open(host, selection));
    return opened;
  };
  const print: Print<unknown> = oneFile ? printWhole(cutInFile, keep) : printWhole(cutFile, keep);
  return makePrint(host, strict, printer, print);
}

/** Prints all pages of a cut that `keep` chooses, as `form` has them. */
export function printWhole<T>(
  form: (
    printer: CutPrinter,
    laidOut: LaidOutCut,
    keep: (page: number) => boolean,
    known: boolean,
  ) => Promise<T> | T,
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
