/** `build --one-file`: one PDF for the printer. */

import { dirname, resolve } from 'node:path';
import { NO_SOURCES } from '../episode/batch.js';
import { textsOf } from '../episode/cut-texts.js';
import { cutKey } from '../episode/episode.js';
import type { Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { NoEarlierPrint } from '../language/catalogue/catalogue-entry.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { PageWriter } from '../print/page-writer.js';
import type { Page } from '../sheet/display-list.js';
import type { BuildRun } from './build-run.js';
import { CombinedPdfWriter } from './combined-pdf-writer.js';
import { workTitle } from './cut-document.js';
import { type CutInFile, comparedPrint, cutInFile } from './cut-print.js';
import type { PrintableCut } from './cut-printer.js';
import {
  compareWithEarlier,
  type EarlierLookup,
  earlierPrintOf,
  pageChanges,
  readPrintRecord,
} from './earlier-print.js';
import { inputsOf, oneTarget, overwriting, type Target } from './output-targets.js';
import { wantedPage } from './print-plan.js';
import { type PrintedCut, type PrintRecord, writeRecord } from './print-record.js';
import { printWhole, printWorkers } from './print-task.js';
import { settledNumber } from './settled-cuts.js';
import { UsageError } from './usage-error.js';

export async function buildCombinedPdf(run: BuildRun): Promise<void> {
  const { host, found, plan, summary } = run;
  const file = new CombinedPdf(run, oneTarget(host, found, plan.output, run.revision ? '-changes' : ''));
  if (plan.against.kind === 'last build') {
    await changed(run, file);
  } else if (!run.revision) {
    await run.eachPrint<CutInFile | null>('printing', found, {
      print: printWhole(cutInFile, wantedPage(plan), run.marked),
      take: (made, { sources }, job) => file.add(job, sources.keys(), made),
      workers: printWorkers(host, plan, found.jobs),
    });
  } else {
    const { revision } = run;
    await run.each('printing', found, async (printable, printer) => {
      const { job, compiled } = printable;
      const prepared = printer.prepare(printable, run.marked(printable));
      const { changes, made } = await comparedPrint(
        cutInFile,
        printer,
        prepared,
        revision.of(printable, printer),
        plan.changedPagesOnly,
        printer.unmarked(prepared),
      );
      if (made === null) return summary.setResult(job, 'empty');
      if (changes !== null) summary.addLine(run.reporter.words.pagesDiffer(changes));
      if (made === 'same') return summary.setResult(job, 'same');
      return file.add(job, compiled.sources.keys(), made);
    });
  }
  await file.finish();
}

/** What the file tells of the last build. */
function lastPrint(host: Host, path: string): PrintRecord | { readonly none: NoEarlierPrint } {
  const record = readPrintRecord(host, path);
  return 'none' in record || record.of === 'cuts' ? record : { none: { why: 'one-cut' } };
}

/**
 * Compares every cut with what the file holds, then prints all of them if any differs, or the pages that differ. Nothing is
 * kept of a cut in between, so that it does not matter how many there are.
 */
async function changed(run: BuildRun, file: CombinedPdf): Promise<void> {
  const { host, found, plan, summary } = run;
  const { words } = run.reporter;
  const record = lastPrint(host, file.target.path!);
  const before = new CutsByNumber<PrintedCut>();
  if (!('none' in record)) for (const cut of record.cuts) before.next(cut.cut, cut);
  const none: NoEarlierPrint = 'none' in record ? record.none : { why: 'new' };
  const earlier = (key: string): EarlierLookup => {
    const cut = before.get(key);
    return cut ? earlierPrintOf(cut) : { none };
  };

  const differing = new Set<PrintableCut['job']>();
  const seen = new CutsByNumber<PrintedCut | null>();
  await run.each(
    'comparing',
    found,
    async (printable, printer) => {
      const { job, solved } = printable;
      const key = seen.next(solved.shot.cut, null);
      const other = compareWithEarlier(
        printer,
        printer.prepare(printable, run.marked(printable)),
        earlier(key),
        plan.changedPagesOnly,
      );
      const stays = () => {
        seen.set(key, before.get(key)!);
        return summary.setResult(job, 'same');
      };
      if (!other) return stays();
      const { laidOut, difference, first } = other;
      if (laidOut.pages.length === 0) return summary.setResult(job, 'empty');
      summary.addLine(words.pagesDiffer(pageChanges(solved.shot.cut, laidOut.pages, difference, first)));
      // Nothing is to be printed of a cut that has lost a page.
      if (plan.changedPagesOnly && difference.pages.length === 0) return stays();
      differing.add(job);
      return undefined;
    },
    {
      unfit({ number }) {
        // A cut with errors keeps what was printed of it, so that it is not new once it is mended.
        if (number === null) return;
        const key = seen.next(number.text, null);
        seen.set(key, before.get(key) ?? null);
      },
      settled(job, cache) {
        const texts = textsOf(host, job, cache);
        const key = cutKey(texts?.number ?? '');
        const number = settledNumber(host, job, cache, plan, earlier(key));
        if (number === null || seen.has(key)) return null;
        return { number, accept: () => seen.set(seen.next(number, null), before.get(key)!) };
      },
    },
  );
  const gone = before.keys().filter((key) => !seen.has(key));
  for (const key of gone) summary.addLine(words.cutGone(before.get(key)!.cut));
  const order = before.keys().filter((key) => seen.has(key));
  const moved =
    seen
      .keys()
      .filter((key) => before.has(key))
      .join() !== order.join();
  if (differing.size === 0 && (plan.changedPagesOnly || (gone.length === 0 && !moved))) return;
  if (moved) summary.addLine(words.cutsReordered);

  const again = new CutsByNumber<null>();
  const jobs = plan.changedPagesOnly ? found.jobs.filter((job) => differing.has(job)) : found.jobs;
  file.keeps(seen);
  await run.each('printing', { ...found, jobs, whole: [] }, async (printable, printer) => {
    const { job, compiled } = printable;
    const used = compiled.sources.keys();
    const prepared = printer.prepare(printable, run.marked(printable));
    if (!plan.changedPagesOnly)
      return file.add(
        job,
        used,
        cutInFile(printer, printer.layOut(prepared), () => true, false),
      );
    const key = again.next(printable.solved.shot.cut, null);
    const other = compareWithEarlier(printer, prepared, earlier(key), true);
    if (!other) return summary.setResult(job, 'same');
    const differs = (page: number): boolean => other.difference.pages.includes(page - 1);
    return file.add(job, used, cutInFile(printer, other.laidOut, differs, true));
  });
}

/** A cut that is on a page together with others. */
export interface SharingCut {
  readonly printable: PrintableCut;
  /** How the outline names it. */
  readonly title: string;
  /** Of its print. */
  readonly language: string;
}

/** The one file of a run, opened when there is a page for it. */
export class CombinedPdf {
  private writer: CombinedPdfWriter | undefined;
  private fault: Diagnostic | undefined;
  private readonly cuts = new CutsByNumber<PrintedCut>();
  private kept: CutsByNumber<PrintedCut | null> | undefined;
  private readonly inputs: ReadonlySet<string>;

  constructor(
    private readonly run: BuildRun,
    readonly target: Target,
  ) {
    const { host, found } = run;
    this.inputs = inputsOf(host, found);
    const refusal = target.path === null ? null : this.refusal([]);
    if (refusal) throw new UsageError(refusal.code, run.plan.output ?? null, refusal.parameters);
    if (target.path !== null) host.removeStaleTemporaries(dirname(host.real(target.path)));
  }

  /** Cuts that the record tells of although they are not in the file. */
  keeps(cuts: CutsByNumber<PrintedCut | null>): void {
    this.kept = cuts;
  }

  /** `used`: names of the texts that were read for the cut. `made`: null where none of its pages was chosen. */
  async add(job: Job, used: Iterable<string>, made: CutInFile | null): Promise<Diagnostic | undefined> {
    const { run } = this;
    if (made === null) return run.summary.setResult(job, 'empty');
    const { cut, artists, language, printed, record } = made;
    const fault = await this.opened(used, language);
    if (fault) return fault;
    const added = this.writer!.add(cut, printed, artists);
    if (!added.ok) return this.unwritable(added.reason);
    this.cuts.next(cut, record);
    return run.summary.setResult(job, 'printed');
  }

  /**
   * Adds a page that several cuts share, and says what came of each. The record tells of none of them: whether one of them has
   * changed, no hash of a page could tell.
   */
  async addShared(page: Page, cuts: readonly SharingCut[]): Promise<void> {
    const { run } = this;
    let fault: Diagnostic | undefined;
    for (const { printable, language } of cuts)
      fault ??= await this.opened(printable.compiled.sources.keys(), language);
    if (!fault) {
      const { fonts } = await run.printer();
      const added = this.writer!.addShared(
        PageWriter.of(fonts).write(page),
        cuts.map(({ title }) => title),
        cuts.flatMap(({ printable }) => printable.solved.shot.artists),
      );
      if (!added.ok) fault = this.unwritable(added.reason);
    }
    for (const { printable } of cuts) {
      if (fault) run.unwritten(printable.job, fault);
      else run.summary.setResult(printable.job, 'printed');
    }
  }

  async finish(): Promise<void> {
    const { writer, run, target } = this;
    if (!writer) return;
    if (this.fault) {
      writer.drop();
      return;
    }
    const { pages } = writer;
    const finished = await writer.finish(writeRecord({ of: 'cuts', work: this.work(), cuts: this.all() }));
    if (finished.ok) run.summary.addFile(target, pages);
    else run.reporter.report([this.unwritable(finished.reason)], NO_SOURCES);
  }

  /** What the record tells of, in the order of the cuts. */
  private all(): PrintedCut[] {
    const { cuts, kept } = this;
    const keys = kept ? kept.keys() : cuts.keys();
    return keys.flatMap((key) => {
      const before = kept?.get(key);
      const away = before && { ...before, pages: before.pages.map((page) => ({ ...page, here: false })) };
      return cuts.get(key) ?? away ?? [];
    });
  }

  /** What stands against writing a cut into the file. One fault of the file is every cut's; it is said once. */
  private async opened(used: Iterable<string>, language: string): Promise<Diagnostic | undefined> {
    const { run, target } = this;
    this.fault ??= this.refusal(used) ?? undefined;
    if (this.fault || this.writer) return this.fault;
    const { fonts } = await run.printer();
    const writer = await CombinedPdfWriter.open(run.host, target, fonts, { title: this.work(), language });
    if (!writer.ok) return this.unwritable(writer.reason);
    this.writer = writer.value;
    return undefined;
  }

  private work(): string {
    return workTitle(this.run.found.jobs[0]!.episode.settings);
  }

  private refusal(used: Iterable<string>): Diagnostic | null {
    const { host } = this.run;
    const read = new Set([...used].map((one) => host.real(resolve(host.cwd, one))));
    const { path, name } = this.target;
    if (path === null) return null;
    const span = { file: name, start: 0, end: 0 };
    return overwriting(host, path, name, span, (real) => this.inputs.has(real) || read.has(real));
  }

  private unwritable(reason: string): Diagnostic {
    const { name, path } = this.target;
    this.fault = diagnose(
      'output-unwritable',
      { file: name, start: 0, end: 0 },
      { output: path === null ? null : name, reason },
    );
    return this.fault;
  }
}

/** Cuts by their numbers, in order; a second cut of one number counts as another. */
export class CutsByNumber<T> {
  private readonly byKey = new Map<string, T>();

  /** Takes in the next cut of a number; its key. */
  next(cut: string, value: T): string {
    const base = cutKey(cut);
    let key = base;
    for (let i = 2; this.byKey.has(key); i++) key = `${base} ${i}`;
    this.byKey.set(key, value);
    return key;
  }

  set(key: string, value: T): void {
    this.byKey.set(key, value);
  }

  get(key: string): T | undefined {
    return this.byKey.get(key);
  }

  has(key: string): boolean {
    return this.byKey.has(key);
  }

  keys(): string[] {
    return [...this.byKey.keys()];
  }
}
