/** One run of printing: what all ways of writing need. */

import {
  type CutWork,
  type DiagnosticSink,
  eachOutcome,
  type FindSettled,
  NO_SOURCES,
} from '../episode/batch.js';
import type { CutOutcome } from '../episode/cut-outcome.js';
import type { EpisodeCache } from '../episode/episode.js';
import type { Found, Job } from '../episode/find-cuts.js';
import type { WorkerTask } from '../episode/worker-pool.js';
import type { Host } from '../host/host.js';
import type { Activity } from '../language/catalogue/catalogue-entry.js';
import { type Diagnostic, hasErrors } from '../language/diagnostic.js';
import type { PageLook } from '../sheet/page-look.js';
import { type BuildSummary, cutName, errorsOf } from './build-summary.js';
import type { CutPrinter, PrintableCut } from './cut-printer.js';
import type { PrintPlan } from './print-plan.js';
import { makePrint, type Print } from './print-task.js';
import type { Reporter } from './reporter.js';
import type { RevisionCuts } from './revision-cuts.js';

/** Hears how far a run is. */
export interface Progress {
  /** Of `total` cuts or frames. */
  start(activity: Activity, total: number): void;
  /** One more is begun. */
  step(): void;
  /** It is done. */
  clear(): void;
}

/** Prints a cut, or finds that there is no need; what stands against it. */
export type Work = (printable: PrintableCut, printer: CutPrinter) => Promise<Diagnostic | undefined>;

/** What is made of a cut that is fit to print, maybe by another thread, and what is then done with it here. */
export interface PrintWork<T> {
  readonly print: Print<T>;
  /** What stands against it. */
  readonly take: (printed: T, outcome: CutOutcome, job: Job) => Promise<Diagnostic | undefined>;
  /** Hears of cuts with errors. */
  readonly unfit?: ((outcome: CutOutcome, job: Job) => void) | undefined;
  readonly settled?: FindSettled | undefined;
  /** Where other threads may do the same as `print`. */
  readonly workers?: ((cuts: number) => WorkerTask | undefined) | undefined;
}

/** A file that is being written. */
interface OnTheWay {
  readonly job: Job;
  readonly written: Promise<Diagnostic | null>;
  readonly done: () => void;
}

/** Files that are written at the same time. Their bytes are on the disk; only the descriptors are open. */
const MOST_ON_THE_WAY = 16;

/** What one call of a sink is given. */
type Report = Parameters<DiagnosticSink['report']>;

export class BuildRun {
  /** Cuts that stand on paper as they are: hints on them were for the run that printed them. */
  private readonly settled = new Set<Job>();
  private opened: Promise<CutPrinter> | undefined;
  private readonly names = new Map<Job, string>();
  private readonly onTheWay: OnTheWay[] = [];
  /** The episode at the revision that is compared with. */
  revision: RevisionCuts | undefined;
  /** What is to be marked as changed on the sheets of a cut. */
  marked: (printable: PrintableCut) => PageLook['marked'] = () => undefined;

  constructor(
    readonly host: Host,
    readonly reporter: Reporter,
    readonly found: Found,
    readonly plan: PrintPlan,
    readonly summary: BuildSummary,
    private readonly progress: Progress,
  ) {}

  /** Loaded and opened when the first cut is fit to print. */
  readonly printer = (): Promise<CutPrinter> => {
    this.opened ??= import('./cut-printer.js').then(({ CutPrinter }) =>
      CutPrinter.open(this.host, this.plan.selection),
    );
    return this.opened;
  };

  /** Hands each cut that is fit to print to `work`. */
  each(
    activity: Activity,
    found: Found,
    work: Work,
    more: Pick<PrintWork<PrintableCut>, 'unfit' | 'settled'> = {},
  ) {
    return this.eachPrint<PrintableCut>(activity, found, {
      ...more,
      print: (printable) => printable,
      take: async (printable) => work(printable, await this.printer()),
    });
  }

  /** Prints each cut that is fit for it, but for those that are settled, and takes what came of it in the order of the cuts. */
  async eachPrint<T>(activity: Activity, found: Found, work: PrintWork<T>): Promise<void> {
    const { host, reporter, plan, summary, progress } = this;
    const { settled = () => null, workers } = work;
    progress.start(activity, found.jobs.length);
    const hints: Report[] = [];
    const comparing: DiagnosticSink = {
      report(all, sources) {
        const isHint = ({ severity }: Diagnostic) => severity === 'hint';
        reporter.report(
          all.filter((one) => !isHint(one)),
          sources,
        );
        hints.push([all.filter(isHint), sources]);
      },
    };
    const sink = plan.against.kind === 'nothing' ? reporter : comparing;
    const make = makePrint(host, plan.strict, this.printer, work.print);
    const take: CutWork<T | null>['take'] = async (outcome, job, _, made) => {
      progress.step();
      const held = hints.splice(0);
      try {
        await this.one(outcome, job, made, work);
      } finally {
        if (summary.unchanged(job)) this.settled.add(job);
        if (!this.settled.has(job)) for (const each of held) reporter.report(...each);
      }
    };
    const accepted = (job: Job, cache: EpisodeCache): ReturnType<FindSettled> => {
      const known = settled(job, cache);
      if (known === null) return null;
      const accept = () => {
        progress.step();
        this.settled.add(job);
        summary.setResult(job, 'same');
        known.accept();
      };
      return { number: known.number, accept };
    };
    await eachOutcome(host, sink, found, { make, take, settled: accepted, workers });
    for (const each of hints) reporter.report(...each);
    progress.clear();
  }

  /** Waits for a file in the background, if not too many are on their way. `done`: it is written; else what stands against it is said. */
  async later(job: Job, written: Promise<Diagnostic | null>, done: () => void): Promise<void> {
    this.onTheWay.push({ job, written, done });
    if (this.onTheWay.length >= MOST_ON_THE_WAY) await this.written(1);
  }

  /** Waits for the first of the files that are on their way, in their order; by itself for all. */
  async written(count = this.onTheWay.length): Promise<void> {
    for (const { job, written, done } of this.onTheWay.splice(0, count)) {
      const fault = await written;
      if (fault === null) done();
      else this.unwritten(job, fault);
    }
  }

  /** Says what stands against writing a cut. */
  unwritten(job: Job, fault: Diagnostic): void {
    this.reporter.report([fault], NO_SOURCES);
    this.summary.setFailed(job, this.names.get(job) ?? job.name, this.reporter.words.notWritten);
  }

  private async one<T>(
    outcome: CutOutcome,
    job: Job,
    made: () => Promise<T | null> | T | null,
    work: PrintWork<T>,
  ): Promise<void> {
    const { plan, summary } = this;
    const { words } = this.reporter;
    if (outcome.house) {
      summary.setResult(job, 'shared');
      return;
    }
    this.revision?.noteSeen(outcome.number?.text);
    const name = cutName(outcome, job, words);
    if (!outcome.solved || hasErrors(outcome.diagnostics, plan.strict)) {
      summary.setFailed(job, name, errorsOf(outcome, job, plan.strict, words));
      work.unfit?.(outcome, job);
      return;
    }
    this.names.set(job, name);
    summary.setFailed(job, name, words.faultOfProgram);
    const fault = await work.take((await made()) as T, outcome, job);
    if (fault) this.unwritten(job, fault);
  }
}
