/** What came of a build, gathered cut by cut and said at the end. */

import { NO_SOURCES } from '../episode/batch.js';
import type { CutOutcome } from '../episode/cut-outcome.js';
import type { Found, Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { RunTexts } from '../language/catalogue/catalogue-entry.js';
import type { Messages } from '../language/catalogue/index.js';
import { diagnose, hasErrors } from '../language/diagnostic.js';
import { messageOf } from '../language/message.js';
import { userLanguage } from '../language/user-language.js';
import { sharedFolder, type Target } from './output-targets.js';
import type { PrintPlan } from './print-plan.js';
import type { Reporter } from './reporter.js';
import { UsageError } from './usage-error.js';

/** Cuts that are named one by one in a line. */
const MOST_NAMED = 12;

type CutResult =
  | { readonly kind: 'printed' | 'same' | 'empty' | 'shared' }
  | { readonly kind: 'failed'; readonly said: string };

export class BuildSummary {
  private readonly results = new Map<Job, CutResult>();
  private readonly written: Target[] = [];
  private readonly lines: string[] = [];
  private pages = 0;

  constructor(private readonly found: Found) {}

  /** What became of a cut. The last word counts; a cut of which nothing is said fell to a fault of the program. */
  setResult(job: Job, kind: 'printed' | 'same' | 'empty' | 'shared'): undefined {
    this.results.set(job, { kind });
    return undefined;
  }

  /** Whether a cut stands on paper as it is. */
  unchanged(job: Job): boolean {
    return this.results.get(job)?.kind === 'same';
  }

  /** `why` in short: `2 errors`. */
  setFailed(job: Job, cut: string, why: string): void {
    this.results.set(job, { kind: 'failed', said: `${cut} (${why})` });
  }

  addFile(target: Target, pages: number): void {
    this.written.push(target);
    this.pages += pages;
  }

  /** A line for the summary, such as which pages of a cut differ. */
  addLine(line: string): void {
    this.lines.push(line);
  }

  /** Says it all. Throws UsageError where the command line chose nothing. */
  report(reporter: Reporter, host: Host, plan: PrintPlan): void {
    const { written, found } = this;
    for (const line of this.lines) reporter.say(line);
    if (written.length > 0) reporter.say(this.writtenLine(host, reporter.words));
    const same = this.count('same');
    if (same > 0)
      reporter.say(
        reporter.words.unchanged(same, plan.against.kind === 'revision' ? plan.against.rev : null),
      );
    const failed = this.notPrinted(reporter.words);
    if (failed.length > 0)
      reporter.say(
        reporter.words.notPrinted(failed.slice(0, MOST_NAMED), Math.max(0, failed.length - MOST_NAMED)),
      );
    const empty = this.count('empty');
    if (empty > 0) {
      const pages = plan.pages?.range;
      const { only } = plan.selection;
      const none: Messages['option-value'] =
        pages === undefined
          ? { variant: 'part-empty', part: only ?? 'sheet', cuts: empty }
          : { variant: 'pages-empty', pages, cuts: empty };
      if (written.length === 0 && failed.length === 0 && same === 0) {
        throw new UsageError('option-value', pages ?? only ?? '', none);
      }
      reporter.say(messageOf({ code: 'option-value', parameters: none }, userLanguage(host)));
    }
    if (found.jobs.length > 0 && found.jobs.every((job) => this.results.get(job)?.kind === 'shared')) {
      const span = { file: found.jobs[0]!.name, start: 0, end: 0 };
      reporter.report([diagnose('no-cuts', span, { variant: 'shared', for: 'print' })], NO_SOURCES);
    }
  }

  private count(kind: CutResult['kind']): number {
    return [...this.results.values()].filter((result) => result.kind === kind).length;
  }

  private notPrinted(words: RunTexts): string[] {
    return this.found.jobs.flatMap((job) => {
      const result = this.results.get(job);
      if (result === undefined) return [`${job.name} (${words.faultOfProgram})`];
      return result.kind === 'failed' ? [result.said] : [];
    });
  }

  private writtenLine(host: Host, words: RunTexts): string {
    const { written, pages } = this;
    const [only] = written;
    if (only!.path === null) return words.wroteToStandardOutput(words.pages(pages));
    if (written.length === 1) return words.wrote(only!.name, words.pages(pages));
    const folder = sharedFolder(host, written);
    return words.wroteFiles(written.length, pages, folder || null);
  }
}

/** How a cut is called in the summary: by its number, or by its file where that cannot be read. */
export function cutName({ cut }: Pick<CutOutcome, 'cut'>, job: Job, words: RunTexts): string {
  return cut === null ? job.name : words.cut(cut);
}

/** `2 errors`: of the cut and what it uses; or where else they are. */
export function errorsOf(
  { diagnostics }: Pick<CutOutcome, 'diagnostics'>,
  { episode }: Job,
  strict: boolean,
  words: RunTexts,
): string {
  const own = diagnostics.filter(({ span }) => span.file !== episode.file);
  const errors = own.filter((one) => one.severity === 'error').length;
  if (errors > 0) return words.errors(errors);
  const warnings = own.filter((one) => one.severity === 'warning').length;
  if (strict && warnings > 0) return words.warnings(warnings);
  return hasErrors(diagnostics, strict) ? words.seeManifest(episode.file!) : words.nothingToPrint;
}
