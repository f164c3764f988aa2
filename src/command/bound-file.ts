import { dirname, resolve } from 'node:path';
import { type PrintedCut, writeRecord } from '../episode/record.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import { ByNumber } from './by-number.js';
import { NO_SOURCES } from './desk.js';
import { pageCount, somePages, workTitle } from './document.js';
import { LineFault } from './line.js';
import { inputsOf, overwriting, type Target } from './output.js';
import type { Laid } from './press.js';
import type { Running } from './running.js';
import { Sheaf } from './sheaf.js';

/** The one file of a run, opened when there is a page for it. */
export class OneFile {
  private sheaf: Sheaf | undefined;
  private fault: Diagnostic | undefined;
  private readonly cuts = new ByNumber<PrintedCut>();
  private kept: ByNumber<PrintedCut | null> | undefined;
  private readonly inputs: ReadonlySet<string>;

  constructor(
    private readonly run: Running,
    readonly target: Target,
  ) {
    const { host, found } = run;
    this.inputs = inputsOf(host, found);
    const refusal = target.path === null ? null : this.refusal([]);
    if (refusal) throw new LineFault(refusal.code, run.plan.options.output ?? null, refusal.parameters);
    if (target.path !== null) host.sweep(dirname(host.real(target.path)));
  }

  /** Cuts that the record tells of although they are not in the file. */
  keeps(cuts: ByNumber<PrintedCut | null>): void {
    this.kept = cuts;
  }

  /** `known`: the pages that are left out were printed before as they are. */
  async add(laid: Laid, keep: (page: number) => boolean, known = false): Promise<Diagnostic | undefined> {
    const { run } = this;
    const { told, input, look } = laid.copy;
    const { cut, artists } = told.solved.shot;
    // One fault of the file is every cut's; it is said once.
    if (this.fault) return this.fault;
    const printed = somePages(laid.printed, keep);
    if (pageCount(printed) === 0) {
      run.outcome.is(told.job, 'empty');
      return undefined;
    }
    this.fault = this.refusal(told.compiled.sources.keys()) ?? (await this.opened(look.settings.labels));
    if (this.fault) return this.fault;
    const added = this.sheaf!.add(cut, printed, artists);
    if (!added.ok) return this.unwritable(added.reason);
    const pages = laid.pages.map((page, i) =>
      keep(i + 1) ? page : { label: page.label, hash: known ? page.hash : null, here: false },
    );
    this.cuts.next(cut, { cut, input, pages });
    run.outcome.is(told.job, 'printed');
    return undefined;
  }

  async finish(): Promise<void> {
    const { sheaf, run, target } = this;
    if (!sheaf) return;
    if (this.fault) {
      sheaf.drop();
      return;
    }
    const { pages } = sheaf;
    const finished = await sheaf.finish(writeRecord({ of: 'cuts', work: this.work(), cuts: this.all() }));
    if (finished.ok) run.outcome.wrote(target, pages);
    else run.desk.report([this.unwritable(finished.reason)], NO_SOURCES);
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

  private async opened(language: string): Promise<Diagnostic | undefined> {
    const { run, target } = this;
    if (this.sheaf) return undefined;
    const { fonts } = await run.press();
    const sheaf = await Sheaf.open(run.host, target, fonts, { title: this.work(), language });
    if (!sheaf.ok) return this.unwritable(sheaf.reason);
    this.sheaf = sheaf.value;
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
    const what = path === null ? 'Standard output' : `\`${name}\``;
    this.fault = diagnose(
      'output-unwritable',
      { file: name, start: 0, end: 0 },
      `${what} cannot be written: ${reason}.`,
    );
    return this.fault;
  }
}
