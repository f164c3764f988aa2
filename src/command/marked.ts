/** `build --marked-against`: what has changed in each cut since a revision, for change bars and memo. */

import { compare } from '../compare/compare.js';
import { markedLadders, markedLines, markedRows } from '../compare/marks.js';
import type { Found, Job } from '../episode/find.js';
import { hasErrors } from '../episode/order.js';
import type { Host } from '../host/host.js';
import { diagnose } from '../language/diagnostic.js';
import type { Marked } from '../sheet/look.js';
import type { Settings } from '../shot/settings.js';
import { WORDS } from '../words/words.js';
import { type Desk, NO_SOURCES } from './desk.js';
import type { Told } from './press.js';
import { Past } from './since.js';

export class Marks {
  private readonly known = new Map<Job, Marked | undefined>();

  private constructor(
    private readonly rev: string,
    private readonly past: Past,
    private readonly desk: Desk,
  ) {}

  /** Throws LineFault where git cannot give the revision. `files` as they stand on the command line. */
  static async open(
    host: Host,
    rev: string,
    found: Found,
    files: readonly string[],
    settings: Partial<Settings>,
    desk: Desk,
  ): Promise<Marks> {
    return new Marks(rev, await Past.open(host, rev, found, files, settings, '--marked-against'), desk);
  }

  /** Undefined where the cut had errors then, which is reported. */
  readonly of = (told: Told): Marked | undefined => {
    const { job } = told;
    if (!this.known.has(job)) this.known.set(job, this.marked(told));
    return this.known.get(job);
  };

  private marked(told: Told): Marked | undefined {
    const { job, compiled, solved } = told;
    const { rev: against } = this;
    const { labels } = job.episode.settings;
    const then = this.past.earlier(told);
    if (then === null)
      return { against: this.named(told), rows: [], ladders: [], lines: [WORDS[labels].documents.newCut] };
    const { solved: old, diagnostics } = then.compiled;
    if (old === null || hasErrors(diagnostics)) {
      const words = `Cut ${solved.shot.cut} had errors at ${against}: nothing is marked on its sheets.`;
      this.desk.report(
        [diagnose('not-marked', { file: compiled.file, start: 0, end: 0 }, words)],
        NO_SOURCES,
      );
      return undefined;
    }
    const changes = compare(old, solved);
    const rows = markedRows(changes, solved);
    const lines = markedLines(changes, solved, labels);
    const ladders = markedLadders(changes, solved);
    return { against: lines.length > 0 ? this.named(told) : against, rows, ladders, lines };
  }

  /**
   * The revision as paper must say it: `HEAD~1` is another one tomorrow. Sheets with nothing to tell go without the commit, so that
   * they need no new print for it.
   */
  private named(told: Told): string {
    const commit = this.past.commit(told);
    return commit === undefined || this.rev.startsWith(commit) ? this.rev : `${this.rev} (${commit})`;
  }
}
