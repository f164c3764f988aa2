/** The paper of one cut: written where it would come out otherwise, and a line on what was done. */

import type { Compiled } from '../../episode/compile.js';
import type { Found, Job } from '../../episode/find.js';
import type { Host } from '../../host/host.js';
import type { Diagnostic } from '../../language/diagnostic.js';
import { weigh } from '../before.js';
import { plural } from '../desk.js';
import { lastPrint, printCut } from '../file-of-cut.js';
import { errorsOf } from '../outcome.js';
import { Targets } from '../output.js';
import type { Copy, Press } from '../press.js';

/** What came of a cut. `line`: as it is said, without the time that it took. */
export interface Done {
  readonly line: string;
  /** Whether its paper is new. Otherwise only whoever has just saved the cut wants to hear of it. */
  readonly news: boolean;
  readonly fault: Diagnostic | null;
}

export class Paper {
  private readonly targets: Targets;

  constructor(
    private readonly host: Host,
    found: Found,
    output: string | undefined,
  ) {
    this.targets = new Targets(host, found, output, '.pdf');
  }

  /** Where the paper of a cut goes; absolute. */
  path(job: Job): string {
    return this.targets.of(job).path!;
  }

  /** `; c012.pdf is left as it is`, for a cut that is gone. */
  left(job: Job): string {
    return this.there(job) ? `; ${this.targets.of(job).name} is left as it is` : '';
  }

  broken(job: Job, compiled: Compiled, strict: boolean): string {
    return `${job.name}: ${errorsOf(compiled, job, strict)}; ${this.kept(job)}`;
  }

  async print(press: Press, copy: Copy): Promise<Done> {
    const { job, compiled } = copy.told;
    const target = this.targets.of(job);
    const unwritten = (fault: Diagnostic): Done => ({
      line: `${job.name}: not written; ${this.kept(job)}`,
      news: true,
      fault,
    });
    const refusal = this.targets.refusal(job, compiled.sources.keys());
    if (refusal) return unwritten(refusal);
    const differing = weigh(press, copy, lastPrint(this.host, target.path), false);
    if (!differing) return { line: `${job.name}: nothing changes on paper`, news: false, fault: null };
    const pages = await printCut(this.host, press, target, differing.laid);
    if (typeof pages !== 'number') return unwritten(pages);
    if (pages === 0) return { line: `${job.name}: no page to print`, news: false, fault: null };
    return { line: `${job.name} → ${target.name}, ${plural(pages, 'page')}`, news: true, fault: null };
  }

  private kept(job: Job): string {
    return this.there(job) ? `${this.targets.of(job).name} is kept as it was` : 'nothing is printed';
  }

  private there(job: Job): boolean {
    return this.host.kind(this.path(job)) === 'file';
  }
}
