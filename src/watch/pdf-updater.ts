/** The PDF of one cut: written where it would come out otherwise, and a line on what was done. */

import { errorsOf } from '../build/build-summary.js';
import type { CutPrinter, LaidOutCut, PreparedCut } from '../build/cut-printer.js';
import { compareWithEarlier, lastPrint } from '../build/earlier-print.js';
import { Targets } from '../build/output-targets.js';
import { writeCutPdf } from '../build/separate-pdfs.js';
import type { Compiled } from '../episode/compile-cut.js';
import type { Found, Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import type { RunTexts } from '../language/catalogue/catalogue-entry.js';
import type { Diagnostic } from '../language/diagnostic.js';
import { runTexts } from '../language/message.js';
import { userLanguage } from '../language/user-language.js';

/** What came of a cut. `line`: as it is said, without the time that it took. */
export interface Done {
  readonly line: string;
  /** Whether its paper is new. Otherwise only whoever has just saved the cut wants to hear of it. */
  readonly news: boolean;
  readonly fault: Diagnostic | null;
}

export class PdfUpdater {
  private readonly targets: Targets;

  constructor(
    private readonly host: Host,
    found: Found,
    output: string | undefined,
  ) {
    this.targets = new Targets(host, found, output, '.pdf');
  }

  private get words(): RunTexts {
    return runTexts(userLanguage(this.host));
  }

  /** Where the PDF of a cut goes; absolute. */
  path(job: Job): string {
    return this.targets.of(job).path!;
  }

  /** `; c012.pdf is left as it is`, for a cut that is gone. */
  left(job: Job): string {
    return this.there(job) ? this.words.leftAsItIs(this.targets.of(job).name) : '';
  }

  broken(job: Job, compiled: Compiled, strict: boolean): string {
    return this.words.kept(job.name, errorsOf(compiled, job, strict, this.words), this.kept(job));
  }

  /** `show` is given the pages before they are written, where they had to be made. */
  async print(
    printer: CutPrinter,
    prepared: PreparedCut,
    show: (laidOut: LaidOutCut) => void = () => {},
  ): Promise<Done> {
    const { job, compiled } = prepared.printable;
    const target = this.targets.of(job);
    const unwritten = (fault: Diagnostic): Done => ({
      line: this.words.kept(job.name, this.words.notWritten, this.kept(job)),
      news: true,
      fault,
    });
    const refusal = this.targets.refusal(job, compiled.sources.keys());
    if (refusal) return unwritten(refusal);
    const differing = compareWithEarlier(printer, prepared, lastPrint(this.host, target.path), false);
    if (!differing) return { line: this.words.nothingChanges(job.name), news: false, fault: null };
    show(differing.laidOut);
    // What is sent to browsers leaves before this process is busy with the file.
    await new Promise((sent) => setImmediate(sent));
    const pages = await writeCutPdf(this.host, printer, target, differing.laidOut);
    if (typeof pages !== 'number') return unwritten(pages);
    if (pages === 0) return { line: this.words.noPage(job.name), news: false, fault: null };
    return { line: this.words.printed(job.name, target.name, pages), news: true, fault: null };
  }

  /** The PDF that stays as it was. */
  private kept(job: Job): string | null {
    return this.there(job) ? this.targets.of(job).name : null;
  }

  private there(job: Job): boolean {
    return this.host.kind(this.path(job)) === 'file';
  }
}
