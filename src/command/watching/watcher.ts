/** Keeps the paper of cuts up to date with their texts, for as long as it runs. */

import { createHash } from 'node:crypto';
import { dirname, relative, resolve } from 'node:path';
import { type Compiled, compile } from '../../episode/compile.js';
import { type Found, findCuts, type Job } from '../../episode/find.js';
import { hasErrors, identity } from '../../episode/order.js';
import { newShelf, type Shelf } from '../../episode/shelf.js';
import { storyOf } from '../../episode/story.js';
import { surroundingsOf } from '../../episode/surroundings.js';
import type { Host } from '../../host/host.js';
import { type Asked, noting } from '../../host/overlay.js';
import { type Diagnostic, diagnose } from '../../language/diagnostic.js';
import type { Settings } from '../../shot/settings.js';
import { findAll } from '../batch.js';
import { weigh } from '../before.js';
import { Desk, type Format, NO_SOURCES, plural } from '../desk.js';
import type { Choice } from '../document.js';
import { lastPrint, printCut } from '../file-of-cut.js';
import { errorsOf } from '../outcome.js';
import { Targets } from '../output.js';
import { type Copy, Press } from '../press.js';
import { type Change, Texts } from './texts.js';

export interface Wanted {
  readonly files: readonly string[];
  readonly settings: Partial<Settings>;
  readonly output: string | undefined;
  readonly choice: Choice;
  readonly strict: boolean;
  readonly format: Format;
}

/** A cut as it was last looked at. */
export interface Seen {
  readonly job: Job;
  readonly compiled: Compiled;
  /** How it is printed; null where its text is broken. */
  readonly copy: Copy | null;
}

/** Whoever shows the cuts: told of each when it has been looked at anew, and of the whole when it is another. */
export interface Viewer {
  cut(seen: Seen): void;
  cuts(paths: readonly string[]): void;
}

/** What the program made of a cut, and of what. */
interface Kept {
  readonly seen: Seen;
  readonly asked: Asked;
  /** What other cuts have to do with it. */
  readonly around: string;
  readonly said: string;
}

interface Stale {
  /** When the save was heard of, or the work began. */
  readonly since: number;
  /** Its own text was saved. */
  readonly own: boolean;
}

type Heard = Change & { readonly since: number };

/** A file that is gone or empty for this long, ms, is meant to be. */
const GRACE = 250;
/** Time for all that one save does to a file, ms. */
const QUIET = 8;

export class Watcher {
  private readonly texts: Texts;
  private readonly world: Host;
  private press: Press | null = null;
  private found: Found = { jobs: [], episodes: [], whole: [], diagnostics: [] };
  private targets: Targets | null = null;
  private readonly kept = new Map<string, Kept>();
  /** Paths of which something was heard, and when. */
  private heard = new Map<string, number>();
  /** Cuts to be looked at, by path. */
  private readonly stale = new Map<string, Stale>();
  /** Files of this round that are no cuts, by the name that messages give them, and when they were saved. */
  private readonly causes = new Map<string, number>();
  private shelf: Shelf = newShelf();
  private around = false;
  private busy: Promise<void> | null = null;
  private timer: NodeJS.Timeout | null = null;
  private desk: Desk;
  private lines = 0;
  private closed = false;

  /** Whoever shows the cuts, from `begin` on. */
  viewer: Viewer | null = null;

  constructor(
    private readonly host: Host,
    private readonly wanted: Wanted,
  ) {
    this.texts = new Texts(host);
    this.world = this.texts.host;
    this.desk = this.newDesk();
  }

  /** Finds the cuts. An exit status where there are none to watch. */
  async find(): Promise<number | null> {
    this.found = await findAll(this.world, this.desk, this.wanted.files, this.wanted.settings);
    if (this.jobs().length === 0) return this.desk.finish() || 2;
    this.targets = this.targetsOf(this.found);
    return null;
  }

  get cuts(): Found {
    return this.found;
  }

  /** Folders that are written to. */
  outputs(): readonly string[] {
    const paths = this.jobs().flatMap((job) => this.targets!.of(job).path ?? []);
    return [...new Set(paths.map((path) => this.host.real(dirname(path))))];
  }

  /** Looks at all cuts for the first time, and says what that came to. */
  async begin(): Promise<void> {
    for (const folder of this.outputs()) this.host.sweep(folder);
    const start = performance.now();
    const jobs = this.jobs();
    for (const { path } of jobs) this.stale.set(path!, { since: start, own: false });
    this.viewer?.cuts(jobs.map(({ path }) => path!));
    await this.work(true);
    const cuts = [...this.kept.values()].filter(({ seen }) => !seen.compiled.house);
    const broken = cuts.filter(({ seen }) => seen.copy === null).length;
    const also = broken > 0 ? `, ${broken} with errors` : '';
    this.say(`watching ${plural(cuts.length, 'cut')}${also}; Ctrl-C ends it`);
    this.desk = this.newDesk();
  }

  /** Something may have happened to a path (absolute). */
  hear(path: string): void {
    if (this.closed) return;
    if (!this.heard.has(path)) this.heard.set(path, performance.now());
    this.wake(QUIET);
  }

  /** Resolves when nothing is left to do. */
  async idle(): Promise<void> {
    while (this.busy || this.timer) {
      await this.busy;
      if (this.timer) await new Promise((done) => setTimeout(done, QUIET));
    }
  }

  async close(): Promise<void> {
    this.closed = true;
    if (this.timer) clearTimeout(this.timer);
    this.timer = null;
    await this.busy;
  }

  private wake(after: number): void {
    if (this.busy || this.timer || this.closed) return;
    this.timer = setTimeout(() => {
      this.timer = null;
      void this.work(false);
    }, after);
  }

  private work(first: boolean): Promise<void> {
    this.busy ??= this.round(first).finally(() => {
      this.busy = null;
      if (this.heard.size > 0) this.wake(QUIET * 2);
    });
    return this.busy;
  }

  /** Does what there is to do, the newest save first. */
  private async round(first: boolean): Promise<void> {
    let worked = false;
    while (!this.closed) {
      const changes = this.changes();
      if (changes.length > 0) await this.spread(changes);
      worked ||= changes.length > 0;
      const [next] = this.stale;
      if (next) {
        this.stale.delete(next[0]);
        await this.rebuild(...next);
        // Saves are heard between two cuts.
        await new Promise((done) => setImmediate(done));
      } else if (this.around) this.lookAround();
      else if (changes.length === 0) break;
    }
    if (first) this.desk.finish();
    if (!worked || first) return;
    if (this.lines === 0) {
      for (const [name, since] of this.causes) this.say(`${name}: nothing changes on paper, ${took(since)}`);
    }
    this.causes.clear();
    this.lines = 0;
    this.desk.finish();
    this.desk = this.newDesk();
  }

  /** What was heard and is true. A file that seems lost is waited for. */
  private changes(): Heard[] {
    const heard = this.heard;
    this.heard = new Map();
    const changes: Heard[] = [];
    for (const [path, since] of heard) {
      const looked = this.texts.look(path);
      if (!looked) continue;
      if (looked.lost && performance.now() - since < GRACE) {
        this.heard.set(path, since);
        continue;
      }
      looked.settle();
      changes.push({ ...looked.change, since });
    }
    return changes;
  }

  /** Finds which cuts a change may matter to. */
  private async spread(changes: readonly Heard[]): Promise<void> {
    this.shelf = newShelf();
    const before = new Map(this.jobs().map((job) => [job.path!, job]));
    const listed = changes.some(({ kind }) => kind !== 'text');
    if (listed || changes.some(({ real }) => /\.ya?ml$/i.test(real))) await this.findAgain();
    const since = Math.min(...changes.map((one) => one.since));
    const fresh: [string, Stale][] = [];
    const owns = new Set<string>();
    for (const job of this.jobs()) {
      const path = job.path!;
      const real = this.texts.real(path);
      const kept = this.kept.get(path);
      owns.add(real);
      const own = changes.find((one) => one.real === real);
      if (own) fresh.unshift([path, { since: own.since, own: true }]);
      else if (!kept || before.get(path)?.episode.text !== job.episode.text || touches(kept, changes))
        fresh.push([path, { since, own: false }]);
    }
    const manifests = new Set(
      this.found.episodes.map(({ file }) => this.texts.real(resolve(this.host.cwd, file!))),
    );
    for (const { real, path, kind, since } of changes) {
      const house = this.kept.get(path)?.seen.compiled.house === true;
      const used = manifests.has(real) || [...this.kept.values()].some(({ asked }) => asked.files.has(real));
      if (kind !== 'folder' && (house || (used && !owns.has(real))))
        this.causes.set(relative(this.host.cwd, path), since);
    }
    // The newest save comes before what is still to be done of earlier ones.
    const rest = [...this.stale];
    this.stale.clear();
    for (const [path, one] of [...fresh, ...rest]) if (!this.stale.has(path)) this.stale.set(path, one);
    this.around = true;
  }

  /** Finds the cuts anew: files have come or gone, or the manifest has changed. */
  private async findAgain(): Promise<void> {
    const found = await findCuts(this.world, this.wanted.files, this.wanted.settings);
    const faults = found.episodes.flatMap(({ diagnostics }) => diagnostics);
    if (hasErrors(faults) && found.episodes.length > 0) {
      const sources = new Map(found.episodes.map(({ file, text }) => [file!, text]));
      this.desk.report(faults, sources);
      const [name] = faults.map(({ span }) => span.file);
      this.say(`${name}: ${errors(faults)}; what it said before still holds`);
      return;
    }
    const paths = new Set(found.jobs.map(({ path }) => path));
    for (const job of this.jobs()) {
      const path = job.path!;
      if (paths.has(path)) continue;
      const house = this.kept.get(path)?.seen.compiled.house === true;
      const gone = this.world.kind(path) === 'none';
      const { path: printed, name } = this.targets!.of(job);
      const left = printed !== null && this.host.kind(printed) === 'file' ? `; ${name} is left as it is` : '';
      this.say(
        house ? `${job.name} is gone` : `${job.name} ${gone ? 'is gone' : 'is watched no more'}${left}`,
      );
      this.kept.delete(path);
      this.stale.delete(path);
    }
    this.found = found;
    this.targets = this.targetsOf(found);
    this.viewer?.cuts(this.jobs().map(({ path }) => path!));
  }

  /** Finds the cuts that are told of otherwise by others. */
  private lookAround(): void {
    this.around = false;
    const now = performance.now();
    for (const job of this.jobs()) {
      const kept = this.kept.get(job.path!);
      if (!kept || kept.seen.compiled.house) continue;
      if (kept.around !== this.aroundOf(job, kept.seen.compiled))
        this.stale.set(job.path!, { since: now, own: false });
    }
  }

  /** Compiles a cut and prints it if its paper would come out otherwise. */
  private async rebuild(path: string, { since: heard, own }: Stale): Promise<void> {
    const since = own ? heard : performance.now();
    const job = this.jobs().find((one) => one.path === path);
    if (!job) return;
    const asked: Asked = { files: new Set(), folders: new Set() };
    try {
      if (job.episode.folder !== null) storyOf(this.world, job.episode, this.shelf);
      // What a cut uses is read for each, so that it is known who uses what.
      const shelf: Shelf = { ...this.shelf, files: new Map() };
      const compiled = compile(noting(this.world, asked), path, job.episode, { name: job.name, shelf });
      const { diagnostics, sources, solved, house } = compiled;
      const before = this.kept.get(path);
      const said = JSON.stringify(diagnostics.map(identity));
      const fit = solved !== null && !hasErrors(diagnostics, this.wanted.strict);
      const press = fit ? this.opened() : null;
      const copy = press?.copy({ host: this.host, job, compiled, solved: solved!, shelf }) ?? null;
      const seen: Seen = { job, compiled, copy };
      if (own || before?.said !== said) this.desk.report(diagnostics, sources);
      this.kept.set(path, { seen, asked, said, around: this.aroundOf(job, compiled) });
      if (!house) await this.print(seen, { own, since, news: before?.said !== said });
      this.viewer?.cut(seen);
    } catch (fault) {
      const words = fault instanceof Error ? fault.message : String(fault);
      const span = { file: job.name, start: 0, end: 0 };
      this.desk.report(
        [diagnose('internal-fault', span, `The program failed on this cut: ${words}.`)],
        NO_SOURCES,
      );
    }
  }

  private async print(
    { job, compiled, copy }: Seen,
    { own, since, news }: { own: boolean; since: number; news: boolean },
  ): Promise<void> {
    const target = this.targets!.of(job);
    const there = target.path !== null && this.host.kind(target.path) === 'file';
    const kept = there ? `${target.name} is kept as it was` : 'nothing is printed';
    if (!copy) {
      if (own || news) this.say(`${job.name}: ${errorsOf(compiled, job, this.wanted.strict)}; ${kept}`);
      return;
    }
    const refusal = this.targets!.refusal(job, compiled.sources.keys());
    const differing = refusal ? null : weigh(this.press!, copy, lastPrint(this.host, target.path), false);
    if (!refusal && !differing) {
      if (own) this.say(`${job.name}: nothing changes on paper, ${took(since)}`);
      return;
    }
    const done = refusal ?? (await printCut(this.host, this.press!, target, differing!.laid));
    if (typeof done !== 'number') {
      this.desk.report([done], NO_SOURCES);
      this.say(`${job.name}: not written; ${kept}`);
    } else if (done === 0) {
      if (own) this.say(`${job.name}: no page to print`);
    } else this.say(`${job.name} → ${target.name}, ${plural(done, 'page')}, ${took(since)}`);
  }

  /** Equal as long as other cuts have the same to do with it. */
  private aroundOf(job: Job, { shot }: Compiled): string {
    const story = shot && storyOf(this.world, job.episode, this.shelf);
    if (!story) return '';
    const around = story.around(job.path, shot.cut);
    const beside = [around?.before, around?.after].map((one) => one && [one.name, one.text]);
    // Levels may come through any number of cuts.
    const others = shot.levels.some(({ reuse }) => reuse) ? story.cuts().map(({ text }) => text) : [];
    const all = [surroundingsOf(this.world, job.path, shot, job.episode, this.shelf), beside, others];
    return createHash('sha256').update(JSON.stringify(all)).digest('base64');
  }

  private jobs(): readonly Job[] {
    return this.found.jobs.filter(({ path }) => path !== null);
  }

  private targetsOf(found: Found): Targets {
    return new Targets(this.host, found, this.wanted.output, '.pdf');
  }

  /** Opened once for all that is printed. */
  readonly opened = (): Press => {
    this.press ??= Press.open(this.host, this.wanted.choice);
    return this.press;
  };

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

function touches({ asked }: Kept, changes: readonly Change[]): boolean {
  return changes.some(
    ({ real, kind }) => asked.files.has(real) || (kind !== 'text' && asked.folders.has(dirname(real))),
  );
}

function took(since: number): string {
  return `${Math.round(performance.now() - since)} ms`;
}

function errors(diagnostics: readonly Diagnostic[]): string {
  return plural(diagnostics.filter(({ severity }) => severity === 'error').length, 'error');
}
