/** `build --marked-against`: what has changed in each cut since a revision, for change bars and memo. */

import { markedLadders, markedLines } from '../compare/change-wording.js';
import { changedRows } from '../compare/changed-rows.js';
import { compare } from '../compare/compare-cuts.js';
import { NO_SOURCES } from '../episode/batch.js';
import type { Found, Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { diagnose, hasErrors } from '../language/diagnostic.js';
import type { MarkedChanges } from '../sheet/page-look.js';
import type { Settings } from '../shot/settings.js';
import { wordsOf } from '../words/words.js';
import type { PrintableCut } from './cut-printer.js';
import type { Reporter } from './reporter.js';
import { RevisionCuts } from './revision-cuts.js';

export class ChangeMarks {
  private readonly known = new Map<Job, MarkedChanges | undefined>();

  private constructor(
    private readonly rev: string,
    private readonly cuts: RevisionCuts,
    private readonly reporter: Reporter,
  ) {}

  /** Throws UsageError where git cannot give the revision. `files` as they stand on the command line. */
  static async open(
    host: Host,
    rev: string,
    found: Found,
    files: readonly string[],
    settings: Partial<Settings>,
    reporter: Reporter,
  ): Promise<ChangeMarks> {
    return new ChangeMarks(
      rev,
      await RevisionCuts.open(host, rev, found, files, settings, '--marked-against'),
      reporter,
    );
  }

  /** Undefined where the cut had errors then, which is reported. */
  readonly of = (printable: PrintableCut): MarkedChanges | undefined => {
    const { job } = printable;
    if (!this.known.has(job)) this.known.set(job, this.marked(printable));
    return this.known.get(job);
  };

  private marked(printable: PrintableCut): MarkedChanges | undefined {
    const { job, compiled, solved } = printable;
    const { rev: against } = this;
    const { labels } = job.episode.settings;
    const then = this.cuts.earlier(printable);
    if (then === null)
      return {
        against: this.named(printable),
        rows: [],
        ladders: [],
        lines: [wordsOf(job.episode.settings).documents.newCut],
      };
    const { solved: old, diagnostics } = then.compiled;
    if (old === null || hasErrors(diagnostics)) {
      this.reporter.report(
        [
          diagnose(
            'not-marked',
            { file: compiled.file, start: 0, end: 0 },
            { cut: solved.shot.cut, against },
          ),
        ],
        NO_SOURCES,
      );
      return undefined;
    }
    const changes = compare(old, solved);
    const rows = changedRows(old, solved, changes);
    const lines = markedLines(changes, solved, labels);
    const ladders = markedLadders(changes, solved);
    return { against: lines.length > 0 ? this.named(printable) : against, rows, ladders, lines };
  }

  /**
   * The revision as paper must say it: `HEAD~1` is another one tomorrow. Sheets with nothing to tell go without the commit, so that
   * they need no new print for it.
   */
  private named(printable: PrintableCut): string {
    const commit = this.cuts.commit(printable);
    return commit === undefined || this.rev.startsWith(commit) ? this.rev : `${this.rev} (${commit})`;
  }
}
