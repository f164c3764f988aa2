/** Keeps the PDFs of cuts up to date with their texts, for as long as it runs. */

import { dirname, relative, resolve } from 'node:path';
import { CutPrinter, type LaidOutCut, type PreparedCut } from '../build/cut-printer.js';
import type { PartSelection } from '../build/print-plan.js';
import type { Reporter } from '../build/reporter.js';
import { findAll, NO_SOURCES } from '../episode/batch.js';
import type { Compiled } from '../episode/compile-cut.js';
import { type Found, findCuts, type Job } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { diagnose, hasErrors } from '../language/diagnostic.js';
import type { Settings } from '../shot/settings.js';
import { FileStates, type PendingChange, PendingChanges } from './file-changes.js';
import { PdfUpdater } from './pdf-updater.js';
import { WatchedCuts } from './watched-cuts.js';

export interface WatchRequest {
  readonly files: readonly string[];
  readonly settings: Partial<Settings>;
  readonly output: string | undefined;
  readonly selection: PartSelection;
  readonly strict: boolean;
  /** A reporter for one round: what it has said it does not say again. */
  readonly newReporter: () => Reporter;
}

/** A cut that has been looked at. */
export interface CompiledCut {
  readonly job: Job;
  readonly compiled: Compiled;
  /** How it is printed; null where its text is broken. */
  readonly prepared: PreparedCut | null;
  /** Its pages, where they had to be made. */
  readonly laidOut: LaidOutCut | null;
}

/** Whoever shows the cuts: told of each when it has been looked at anew, and of all by their paths when others are watched. */
export interface Viewer {
  cut(seen: CompiledCut): void;
  cuts(paths: readonly string[]): void;
}

/** A cut that is to be looked at. */
interface Stale {
  /** When the save was heard of. */
  readonly since: number;
  /** Its own text was saved. */
  readonly own: boolean;
}

/** Time for all that one save does to a file, ms. */
const QUIET = 8;

export class CutWatcher {
  /** Whoever shows the cuts, from `begin` on. */
  viewer: Viewer | null = null;
  private readonly states: FileStates;
  private readonly world: Host;
  private readonly pending: PendingChanges;
  private readonly cuts: WatchedCuts;
  private printer: CutPrinter | null = null;
  private pdfs: PdfUpdater | null = null;
  private found: Found = { jobs: [], episodes: [], whole: [], diagnostics: [] };
  /** By path, the next one first. */
  private readonly stale = new Map<string, Stale>();
  /** Files of this round that are no cuts, by name: when they were saved, and after how many lines. */
  private readonly causes = new Map<string, { readonly since: number; readonly lines: number }>();
  /** Other cuts may have something else to do with the cuts than before. */
  private moved = false;
  private busy: Promise<void> | null = null;
  /** Of the round that is to come; null: none is. */
  private cancelTimer: (() => void) | null = null;
  private reporter: Reporter;
  private lines = 0;
  private closed = false;

  constructor(
    private readonly host: Host,
    private readonly request: WatchRequest,
  ) {
    this.states = new FileStates(host);
    this.world = this.states.host;
    this.pending = new PendingChanges(this.states, () => host.elapsedMs());
    this.cuts = new WatchedCuts(this.world, request.strict);
    this.reporter = this.request.newReporter();
  }

  /** Finds the cuts. An exit status where there are none to watch. */
  async find(): Promise<number | null> {
    this.found = await findAll(this.world, this.reporter, this.request.files, this.request.settings);
    if (this.found.jobs.length === 0) return this.reporter.finish() || 2;
    this.pdfs = new PdfUpdater(this.host, this.found, this.request.output);
    return null;
  }

  /** All that is watched. */
  get all(): Found {
    return this.found;
  }

  /** Folders that are written to. */
  outputs(): readonly string[] {
    return [...new Set(this.found.jobs.map((job) => this.host.real(dirname(this.pdfs!.path(job)))))];
  }

  /** Opened once for all that is printed. */
  readonly opened = (): CutPrinter => {
    this.printer ??= CutPrinter.open(this.host, this.request.selection);
    return this.printer;
  };

  /** Looks at all cuts for the first time, and says what that came to. */
  async begin(): Promise<void> {
    for (const folder of this.outputs()) this.host.removeStaleTemporaries(folder);
    for (const { path } of this.found.jobs)
      this.stale.set(path!, { since: this.host.elapsedMs(), own: false });
    this.viewer?.cuts(this.found.jobs.map(({ path }) => path!));
    await this.work();
    const cuts = this.cuts.all().filter(({ house }) => !house);
    const broken = cuts.filter(({ fit }) => !fit).length;
    this.say(this.reporter.words.watching(cuts.length, broken));
    this.lines = 0;
  }

  /** Something may have happened to a path (absolute). */
  notice(path: string): void {
    this.pending.add(path);
    this.wake();
  }

  /** A cut out of the texts that it was made of when it could be printed; null: it cannot be any more. */
  readonly printable = (job: Job, sources: ReadonlyMap<string, string>): PreparedCut | null => {
    const { compiled, cache } = this.cuts.compileAgain(job, sources);
    const { solved } = compiled;
    return solved && this.opened().prepare({ host: this.host, job, compiled, solved, cache });
  };

  /** Nothing is begun any more; resolves when the cut that is being printed is done. */
  async close(): Promise<void> {
    this.closed = true;
    this.cancelTimer?.();
    await this.busy;
  }

  private wake(): void {
    if (this.busy || this.cancelTimer || this.closed) return;
    this.cancelTimer = this.host.after(QUIET, () => {
      this.cancelTimer = null;
      void this.work();
    });
  }

  private work(): Promise<void> {
    this.busy ??= this.round().finally(() => {
      this.busy = null;
      if (this.pending.waiting) this.wake();
    });
    return this.busy;
  }

  /** Does all there is to do, the newest save first. */
  private async round(): Promise<void> {
    let worked = false;
    while (!this.closed) {
      const changes = this.pending.changes();
      if (changes.length > 0) await this.spread(changes);
      const [next] = this.stale;
      worked ||= changes.length > 0 || next !== undefined;
      if (next) {
        this.stale.delete(next[0]);
        await this.rebuild(...next);
        // Saves are heard between two cuts.
        await new Promise((done) => setImmediate(done));
      } else if (this.moved) this.checkSurroundings();
      else if (changes.length === 0) break;
    }
    if (!worked) return;
    const lineCount = this.lines;
    for (const [name, { since, lines }] of this.causes)
      if (lines === lineCount)
        this.say(`${this.reporter.words.nothingChanges(name)}${took(since, this.host.elapsedMs())}`);
    this.causes.clear();
    this.lines = 0;
    this.reporter.finish();
    this.reporter = this.request.newReporter();
  }

  /** Finds which cuts a change may matter to. */
  private async spread(changes: readonly PendingChange[]): Promise<void> {
    this.cuts.refresh();
    const before = new Map(this.found.jobs.map(({ path, episode }) => [path, episode.text]));
    const listed = changes.some(({ kind, real }) => kind !== 'text' || /\.ya?ml$/i.test(real));
    if (listed) await this.findAgain();
    const since = Math.min(...changes.map((one) => one.since));
    const fresh: [string, Stale][] = [];
    const owns = new Set<string>();
    for (const { path, episode } of this.found.jobs) {
      const real = this.world.real(path!);
      owns.add(real);
      const own = changes.find((one) => one.real === real);
      if (own) fresh.unshift([path!, { since: own.since, own: true }]);
      else if (before.get(path) !== episode.text || this.cuts.concerned(path!, changes))
        fresh.push([path!, { since, own: false }]);
    }
    this.noteCauses(changes, owns);
    // The newest save comes before what is still to be done of earlier ones.
    const rest = [...this.stale];
    this.stale.clear();
    for (const [path, one] of [...fresh, ...rest]) if (!this.stale.has(path)) this.stale.set(path, one);
    this.moved = true;
  }

  /** Remembers the files that are no cuts: where no cut comes out otherwise, they are named. `owns`: the cuts' own. */
  private noteCauses(changes: readonly PendingChange[], owns: ReadonlySet<string>): void {
    const manifests = this.found.episodes.map(({ file }) => this.states.real(resolve(this.host.cwd, file!)));
    for (const { real, path, kind, since } of changes) {
      if (kind === 'folder') continue;
      const house = this.cuts.of(path)?.house === true;
      const used = !owns.has(real) && (manifests.includes(real) || this.cuts.uses(real));
      if (house || used) this.causes.set(relative(this.host.cwd, path), { since, lines: this.lines });
    }
  }

  /** Finds the cuts anew: files have come or gone, or the manifest has changed. */
  private async findAgain(): Promise<void> {
    const { files, settings, output } = this.request;
    const found = await findCuts(this.world, files, settings);
    const unread = found.diagnostics.filter(({ code }) => code === 'file-unreadable');
    const faults = [...found.episodes.flatMap(({ diagnostics }) => diagnostics), ...unread];
    if (hasErrors(faults)) {
      this.reporter.report(faults, new Map(found.episodes.map(({ file, text }) => [file!, text])));
      const errors = faults.filter(({ severity }) => severity === 'error');
      this.say(this.reporter.words.stillHolds(errors[0]!.span.file, errors.length));
      return;
    }
    const paths = new Set(found.jobs.map(({ path }) => path));
    for (const job of this.found.jobs) if (!paths.has(job.path)) this.lose(job);
    this.found = found;
    this.pdfs = new PdfUpdater(this.host, found, output);
    this.viewer?.cuts(found.jobs.map(({ path }) => path!));
  }

  private lose(job: Job): void {
    const path = job.path!;
    const house = this.cuts.of(path)?.house === true;
    const line = this.reporter.words.lost(job.name, this.world.kind(path) === 'none');
    this.say(`${line}${house ? '' : this.pdfs!.left(job)}`);
    this.cuts.forget(path);
    this.stale.delete(path);
  }

  private checkSurroundings(): void {
    this.moved = false;
    const since = this.host.elapsedMs();
    for (const job of this.found.jobs)
      if (this.cuts.movedAround(job)) this.stale.set(job.path!, { since, own: false });
  }

  /** Compiles a cut, and prints it if its paper would come out otherwise. */
  private async rebuild(path: string, { since: saved, own }: Stale): Promise<void> {
    const job = this.found.jobs.find((one) => one.path === path);
    if (!job) return;
    const since = own ? saved : this.host.elapsedMs();
    try {
      const before = this.cuts.of(path)?.problemKeys;
      if (own) for (const real of this.cuts.of(path)?.asked.files ?? []) this.states.readAgain(real);
      const { compiled, cache, known } = this.cuts.compile(job);
      const news = own || before !== known.problemKeys;
      if (news) this.reporter.report(compiled.diagnostics, compiled.sources);
      const { solved } = compiled;
      const prepared =
        solved && known.fit && !known.house
          ? this.opened().prepare({ host: this.host, job, compiled, solved, cache })
          : null;
      let shown = false;
      const show = (laidOut: LaidOutCut | null): void => {
        shown = true;
        this.viewer?.cut({ job, compiled, prepared, laidOut });
      };
      if (prepared) await this.print(prepared, own, since, show);
      else if (!compiled.house && news) this.say(this.pdfs!.broken(job, compiled, this.request.strict));
      if (!shown) show(null);
    } catch (fault) {
      const words = fault instanceof Error ? fault.message : String(fault);
      const span = { file: job.name, start: 0, end: 0 };
      const failure = diagnose('internal-fault', span, { onCut: true, error: words });
      this.reporter.report([failure], NO_SOURCES);
    }
  }

  private async print(
    prepared: PreparedCut,
    own: boolean,
    since: number,
    show: (laidOut: LaidOutCut) => void,
  ): Promise<void> {
    const { line, news, fault } = await this.pdfs!.print(this.opened(), prepared, show);
    if (fault) this.reporter.report([fault], NO_SOURCES);
    if (news || own) this.say(fault ? line : `${line}${took(since, this.host.elapsedMs())}`);
  }

  private say(line: string): void {
    this.lines++;
    const time = this.host.now();
    const clock = [time.getHours(), time.getMinutes(), time.getSeconds()];
    this.reporter.say(`${clock.map((part) => String(part).padStart(2, '0')).join(':')} ${line}`);
  }
}

function took(since: number, nowMs: number): string {
  return `, ${Math.round(nowMs - since)} ms`;
}
