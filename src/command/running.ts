/** A build on its way: what all ways of writing need. */

import type { Compiled } from '../episode/compile.js';
import type { Found, Job } from '../episode/find.js';
import { hasErrors } from '../episode/order.js';
import type { Shelf } from '../episode/shelf.js';
import type { Host } from '../host/host.js';
import type { Diagnostic } from '../language/diagnostic.js';
import { eachCut, type Reporter } from './batch.js';
import { type Desk, NO_SOURCES } from './desk.js';
import { cutName, errorsOf, type Outcome } from './outcome.js';
import type { Plan } from './plan.js';
import type { Press, Told } from './press.js';
import type { Progress } from './progress.js';
import type { Past } from './since.js';

/** Prints a cut, or finds that there is no need; what stands against it. */
export type Work = (told: Told, press: Press) => Promise<Diagnostic | undefined>;

/** What one call of a reporter is given. */
type Report = Parameters<Reporter['report']>;

export class Running {
  /** Cuts that stand on paper as they are: hints on them were for the run that printed them. */
  private readonly settled = new Set<Job>();
  private opened: Promise<Press> | undefined;
  /** The episode at the revision that is compared with. */
  past: Past | undefined;

  constructor(
    readonly host: Host,
    readonly desk: Desk,
    readonly found: Found,
    readonly plan: Plan,
    readonly outcome: Outcome,
    private readonly progress: Progress,
  ) {}

  /** Loaded and opened when the first cut is fit to print. */
  readonly press = (): Promise<Press> => {
    this.opened ??= import('./press.js').then(({ Press }) => Press.open(this.host, this.plan.choice));
    return this.opened;
  };

  /** Hands each cut that is fit to print to `work`; `unfit` hears of the others. `what` is being done: `printing`. */
  async each(
    what: string,
    found: Found,
    work: Work,
    unfit: (compiled: Compiled, job: Job) => void = () => {},
  ): Promise<void> {
    const { host, desk, plan, outcome, progress } = this;
    progress.start(what, found.jobs.length);
    const hints: Report[] = [];
    const comparing: Reporter = {
      report(all, sources) {
        const isHint = ({ severity }: Diagnostic) => severity === 'hint';
        desk.report(
          all.filter((one) => !isHint(one)),
          sources,
        );
        hints.push([all.filter(isHint), sources]);
      },
    };
    const reporter = plan.against.kind === 'nothing' ? desk : comparing;
    await eachCut(host, reporter, found, async (compiled, job, shelf) => {
      progress.step();
      const held = hints.splice(0);
      try {
        await this.one(compiled, job, shelf, work, unfit);
      } finally {
        if (outcome.unchanged(job)) this.settled.add(job);
        if (!this.settled.has(job)) for (const each of held) desk.report(...each);
      }
    });
    for (const each of hints) desk.report(...each);
    progress.clear();
  }

  private async one(
    compiled: Compiled,
    job: Job,
    shelf: Shelf,
    work: Work,
    unfit: (compiled: Compiled, job: Job) => void,
  ): Promise<void> {
    const { host, desk, plan, outcome } = this;
    const { solved, diagnostics, house } = compiled;
    if (house) {
      outcome.is(job, 'shared');
      return;
    }
    this.past?.saw(compiled);
    const name = cutName(compiled, job);
    if (solved === null || hasErrors(diagnostics, plan.strict)) {
      outcome.failed(job, name, errorsOf(compiled, job, plan.strict));
      unfit(compiled, job);
      return;
    }
    outcome.failed(job, name, 'fault of the program');
    const fault = await work({ host, job, compiled, solved, shelf }, await this.press());
    if (!fault) return;
    desk.report([fault], NO_SOURCES);
    outcome.failed(job, name, 'not written');
  }
}
