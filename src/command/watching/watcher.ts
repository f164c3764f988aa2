/** Keeps the paper of cuts up to date with their texts, for as long as it runs. */

import { dirname, relative, resolve } from 'node:path';
import type { Compiled } from '../../episode/compile.js';
import { type Found, findCuts, type Job } from '../../episode/find.js';
import { hasErrors } from '../../episode/order.js';
import type { Host } from '../../host/host.js';
import { diagnose } from '../../language/diagnostic.js';
import type { Settings } from '../../shot/settings.js';
import { findAll } from '../batch.js';
import { Desk, type Format, NO_SOURCES, plural } from '../desk.js';
import type { Choice } from '../document.js';
import { type Copy, Press } from '../press.js';
import { Cuts } from './cuts.js';
import { type Heard, Hearsay } from './heard.js';
import { Paper } from './paper.js';
import { Texts } from './texts.js';

export interface Wanted {
  readonly files: readonly string[];
  readonly settings: Partial<Settings>;
  readonly output: string | undefined;
  readonly choice: Choice;
  readonly strict: boolean;
  readonly format: Format;
}

/** A cut that has been looked at. */
export interface Seen {
  readonly job: Job;
  readonly compiled: Compiled;
  /** How it is printed; null where its text is broken. */
  readonly copy: Copy | null;
}

/** Whoever shows the cuts: told of each when it has been looked at anew, and of all by their paths when others are watched. */
export interface Viewer {
  cut(seen: Seen): void;
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

export class Watcher {
  /** Whoever shows the cuts, from `begin` on. */
  viewer: Viewer | null = null;
  private readonly texts: Texts;
  private readonly world: Host;
  private readonly hearsay: Hearsay;
  private readonly cuts: Cuts;
  private press: Press | null = null;
  private paper: Paper | null = null;
  private found: Found = { jobs: [], episodes: [], whole: [], diagnostics: [] };
  /** By path, the next one first. */
  private readonly stale = new Map<string, Stale>();
  /** Files of this round that are no cuts, by name: when they were saved, and after how many lines. */
  private readonly causes = new Map<string, { readonly since: number; readonly lines: number }>();
  /** Other cuts may have something else to do with the cuts than before. */
  private moved = false;
  private busy: Promise<void> | null = null;
  private timer: NodeJS.Timeout | null = null;
  private desk: Desk;
  private lines = 0;
  private closed = false;

  constructor(
    private readonly host: Host,
    private readonly wanted: Wanted,
  ) {
    this.texts = new Texts(host);
    this.world = this.texts.host;
    this.hearsay = new Hearsay(this.texts, () => performance.now());
    this.cuts = new Cuts(this.world);
    this.desk = this.newDesk();
  }

  /** Finds the cuts. An exit status where there are none to watch. */
  async find(): Promise<number | null> {
    this.found = await findAll(this.world, this.desk, this.wanted.files, this.wanted.settings);
    if (this.found.jobs.length === 0) return this.desk.finish() || 2;
    this.paper = new Paper(this.host, this.found, this.wanted.output);
    return null;
  }

  /** All that is watched. */
  get all(): Found {
    return this.found;
  }

  /** Folders that are written to. */
  outputs(): readonly string[] {
    return [...new Set(this.found.jobs.map((job) => this.host.real(dirname(this.paper!.path(job)))))];
  }

  /** Opened once for all that is printed. */
  readonly opened = (): Press => {
    this.press ??= Press.open(this.host, this.wanted.choice);
    return this.press;
  };

  /** Looks at all cuts for the first time, and says what that came to. */
  async begin(): Promise<void> {
    for (const folder of this.outputs()) this.host.sweep(folder);
    for (const { path } of this.found.jobs) this.stale.set(path!, { since: performance.now(), own: false });
    this.viewer?.cuts(this.found.jobs.map(({ path }) => path!));
    await this.work();
    const cuts = this.cuts.all().filter(({ compiled }) => !compiled.house);
    const broken = cuts.filter(({ compiled }) => !this.fit(compiled)).length;
    this.say(
      `watching ${plural(cuts.length, 'cut')}${broken > 0 ? `, ${broken} with errors` : ''}; Ctrl-C ends it`,
    );
    this.lines = 0;
  }

  /** Something may have happened to a path (absolute). */
  hear(path: string): void {
    this.hearsay.add(path);
    this.wake();
  }

  /** Nothing is begun any more; resolves when the cut that is being printed is done. */
  async close(): Promise<void> {
    this.closed = true;
    if (this.timer) clearTimeout(this.timer);
    await this.busy;
  }

  private wake(): void {
    if (this.busy || this.timer || this.closed) return;
    this.timer = setTimeout(() => {
      this.timer = null;
      void this.work();
    }, QUIET);
  }

  private work(): Promise<void> {
    this.busy ??= this.round().finally(() => {
      this.busy = null;
      if (this.hearsay.waiting) this.wake();
    });
    return this.busy;
  }

  /** Does all there is to do, the newest save first. */
  private async round(): Promise<void> {
    let worked = false;
    while (!this.closed) {
      const changes = this.hearsay.changes();
      if (changes.length > 0) await this.spread(changes);
      const [next] = this.stale;
      worked ||= changes.length > 0 || next !== undefined;
      if (next) {
        this.stale.delete(next[0]);
        await this.rebuild(...next);
        // Saves are heard between two cuts.
        await new Promise((done) => setImmediate(done));
      } else if (this.moved) this.lookAround();
      else if (changes.length === 0) break;
    }
    if (!worked) return;
    const said = this.lines;
    for (const [name, { since, lines }] of this.causes)
      if (lines === said) this.say(`${name}: nothing changes on paper${took(since)}`);
    this.causes.clear();
    this.lines = 0;
    this.desk.finish();
    this.desk = this.newDesk();
  }

  /** Finds which cuts a change may matter to. */
  private async spread(changes: readonly Heard[]): Promise<void> {
    this.cuts.refresh();
    const before = new Map(this.found.jobs.map(({ path, episode }) => [path, episode.text]));
    const listed = changes.some(({ kind, real }) => kind !== 'text' || /\.ya?ml$/i.test(real));
    if (listed) await this.findAgain();
    const since = Math.min(...changes.map((one) => one.since));
    const fresh: [string, Stale][] = [];
    const owns = new Set<string>();
    for (const { path, episode } of this.found.jobs) {
      const real = this.texts.real(path!);
      owns.add(real);
      const own = changes.find((one) => one.real === real);
      if (own) fresh.unshift([path!, { since: own.since, own: true }]);
      else if (before.get(path) !== episode.text || this.cuts.concerned(path!, changes))
        fresh.push([path!, { since, own: false }]);
    }
    this.blame(changes, owns);
    // The newest save comes before what is still to be done of earlier ones.
    const rest = [...this.stale];
    this.stale.clear();
    for (const [path, one] of [...fresh, ...rest]) if (!this.stale.has(path)) this.stale.set(path, one);
    this.moved = true;
  }

  /** Remembers the files that are no cuts: where no cut comes out otherwise, they are said. `owns`: the cuts' own. */
  private blame(changes: readonly Heard[], owns: ReadonlySet<string>): void {
    const manifests = this.found.episodes.map(({ file }) => this.texts.real(resolve(this.host.cwd, file!)));
    for (const { real, path, kind, since } of changes) {
      if (kind === 'folder') continue;
      const house = this.cuts.of(path)?.compiled.house === true;
      const used = !owns.has(real) && (manifests.includes(real) || this.cuts.uses(real));
      if (house || used) this.causes.set(relative(this.host.cwd, path), { since, lines: this.lines });
    }
  }

  /** Finds the cuts anew: files have come or gone, or the manifest has changed. */
  private async findAgain(): Promise<void> {
    const { files, settings, output } = this.wanted;
    const found = await findCuts(this.world, files, settings);
    const unread = found.diagnostics.filter(({ code }) => code === 'file-unreadable');
    const faults = [...found.episodes.flatMap(({ diagnostics }) => diagnostics), ...unread];
    if (hasErrors(faults)) {
      this.desk.report(faults, new Map(found.episodes.map(({ file, text }) => [file!, text])));
      const errors = faults.filter(({ severity }) => severity === 'error');
      this.say(`${errors[0]!.span.file}: ${plural(errors.length, 'error')}; what it said before still holds`);
      return;
    }
    const paths = new Set(found.jobs.map(({ path }) => path));
    for (const job of this.found.jobs) if (!paths.has(job.path)) this.lose(job);
    this.found = found;
    this.paper = new Paper(this.host, found, output);
    this.viewer?.cuts(found.jobs.map(({ path }) => path!));
  }

  private lose(job: Job): void {
    const path = job.path!;
    const house = this.cuts.of(path)?.compiled.house === true;
    const how = this.world.kind(path) === 'none' ? 'is gone' : 'is watched no more';
    this.say(`${job.name} ${how}${house ? '' : this.paper!.left(job)}`);
    this.cuts.forget(path);
    this.stale.delete(path);
  }

  private lookAround(): void {
    this.moved = false;
    const since = performance.now();
    for (const job of this.found.jobs)
      if (this.cuts.movedAround(job)) this.stale.set(job.path!, { since, own: false });
  }

  /** Compiles a cut, and prints it if its paper would come out otherwise. */
  private async rebuild(path: string, { since: saved, own }: Stale): Promise<void> {
    const job = this.found.jobs.find((one) => one.path === path);
    if (!job) return;
    const since = own ? saved : performance.now();
    try {
      const before = this.cuts.of(path)?.said;
      const { compiled, shelf, said } = this.cuts.compile(job);
      const news = own || before !== said;
      if (news) this.desk.report(compiled.diagnostics, compiled.sources);
      const { solved } = compiled;
      const copy =
        solved && this.fit(compiled)
          ? this.opened().copy({ host: this.host, job, compiled, solved, shelf })
          : null;
      if (copy) await this.print(copy, own, since);
      else if (!compiled.house && news) this.say(this.paper!.broken(job, compiled, this.wanted.strict));
      this.viewer?.cut({ job, compiled, copy });
    } catch (fault) {
      const words = fault instanceof Error ? fault.message : String(fault);
      const span = { file: job.name, start: 0, end: 0 };
      const told = diagnose('internal-fault', span, `The program failed on this cut: ${words}.`);
      this.desk.report([told], NO_SOURCES);
    }
  }

  private async print(copy: Copy, own: boolean, since: number): Promise<void> {
    const { line, news, fault } = await this.paper!.print(this.opened(), copy);
    if (fault) this.desk.report([fault], NO_SOURCES);
    if (news || own) this.say(fault ? line : `${line}${took(since)}`);
  }

  private fit({ solved, diagnostics, house }: Compiled): boolean {
    return house || (solved !== null && !hasErrors(diagnostics, this.wanted.strict));
  }

  private newDesk(): Desk {
    return new Desk(this.host, this.wanted.format, this.wanted.strict);
  }

  private say(line: string): void {
    this.lines++;
    const time = this.host.now();
    const clock = [time.getHours(), time.getMinutes(), time.getSeconds()];
    this.desk.say(`${clock.map((part) => String(part).padStart(2, '0')).join(':')} ${line}`);
  }
}

function took(since: number): string {
  return `, ${Math.round(performance.now() - since)} ms`;
}
