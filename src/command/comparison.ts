/** Two sides of a comparison → which of their cuts differ, and which have no other half. */

import { basename, dirname, isAbsolute, join, relative, resolve } from 'node:path';
import type { Reporter } from '../build/reporter.js';
import { UsageError } from '../build/usage-error.js';
import { type Change, compare } from '../compare/compare-cuts.js';
import { type Compiled, compile } from '../episode/compile-cut.js';
import { cutKey, newEpisodeCache } from '../episode/episode.js';
import { type Found, findCuts, type Job, MANIFEST } from '../episode/find-cuts.js';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose, hasErrors } from '../language/diagnostic.js';
import type { SolvedShot } from '../solve/solved-shot.js';

/** Says of two versions of a cut what the run will print; the versions themselves are not kept. */
export type Tell<T> = (was: SolvedShot, is: SolvedShot, changes: readonly Change[]) => T;

export interface Comparison<T> {
  /** In the order of the new side. */
  readonly differing: readonly T[];
  readonly onlyOld: readonly string[];
  readonly onlyNow: readonly string[];
  readonly compared: number;
  /** One file was named, and the many of the other side have no cut of its number. */
  readonly restricted: { readonly label: string; readonly key: string } | null;
}

export function compareSides<T>(
  old: ComparisonSide,
  now: ComparisonSide,
  reporter: Reporter,
  tell: Tell<T>,
): Promise<Comparison<T>> {
  return new Pairing(old, now, reporter, tell).all();
}

/** Brings the cuts of both sides together by their numbers, holding no more of them than wait for their other half. */
class Pairing<T> {
  private readonly waiting = { old: new Map<string, Version>(), now: new Map<string, Version>() };
  private readonly order = new Map<string, number>();
  private readonly differing: { readonly key: string; readonly told: T }[] = [];
  /** Files whose number nobody knows. */
  private readonly unknown = new Set<string>();
  private compared = 0;

  constructor(
    private readonly old: ComparisonSide,
    private readonly now: ComparisonSide,
    private readonly reporter: Reporter,
    private readonly tell: Tell<T>,
  ) {}

  async all(): Promise<Comparison<T>> {
    const sources = { old: versionsOf(this.old, this.reporter), now: versionsOf(this.now, this.reporter) };
    const both = this.old.single && this.now.single;
    for (let running = true; running; ) {
      running = false;
      const taken: Partial<Record<'old' | 'now', Version>> = {};
      for (const name of ['old', 'now'] as const) {
        const next = await sources[name].next();
        if (next.done) continue;
        running = true;
        if (both) taken[name] = next.value;
        else this.meet(name, next.value);
      }
      if (taken.old && taken.now) this.pair(taken.old, taken.now);
      // There then and gone now, or the other way round.
      else for (const name of ['old', 'now'] as const) if (taken[name]) this.meet(name, taken[name]);
    }
    return this.result();
  }

  private meet(name: 'old' | 'now', version: Version): void {
    const { key, file } = version;
    if (key === null) {
      this.unknown.add(file);
      return;
    }
    if (name === 'now') this.order.set(key, this.order.size);
    const others = this.waiting[name === 'old' ? 'now' : 'old'];
    const other = others.get(key);
    if (!other) {
      this.waiting[name].set(key, version);
      return;
    }
    others.delete(key);
    if (name === 'old') this.pair(version, other);
    else this.pair(other, version);
  }

  private pair({ solved: old }: Version, { solved: now, key }: Version): void {
    if (!old || !now) return;
    this.compared += 1;
    const changes = compare(old, now);
    if (changes.length > 0) this.differing.push({ key: key ?? '', told: this.tell(old, now, changes) });
  }

  private result(): Comparison<T> {
    const { old, now, waiting, compared } = this;
    const only = (name: 'old' | 'now') =>
      [...waiting[name]].filter(([, { file }]) => !this.unknown.has(file)).map(([key]) => key);
    const place = (key: string) => this.order.get(key) ?? 0;
    const differing = [...this.differing].sort((a, b) => place(a.key) - place(b.key)).map(({ told }) => told);
    // Of many against one only the one of its number is meant.
    const alone = old.single !== now.single;
    const single = old.single ? 'old' : 'now';
    const [key] = alone ? only(single) : [];
    const restricted = key === undefined ? null : { label: (old.single ? now : old).label, key };
    return {
      differing,
      onlyOld: alone ? [] : only('old'),
      onlyNow: alone ? [] : only('now'),
      compared,
      restricted,
    };
  }
}

// ----
// The two sides of a comparison: files, folders, manifests or revisions, and the cuts of each, one after the other.

export interface ComparisonSide {
  /** What it is called: the word of the command line, or the revision. */
  readonly label: string;
  /** What is there now, where the other side is the same of long ago. */
  readonly present: boolean;
  readonly host: Host;
  readonly found: Found;
  /** Before the names of its files in messages: `HEAD~1:`, or ''. */
  readonly prefix: string;
  /** One file was named: it is compared whatever its number. */
  readonly single: boolean;
}

/** One cut of a side. */
interface Version {
  readonly file: string;
  /** Null where its number could not be read. */
  readonly key: string | null;
  /** Null where it has errors, which have been reported. */
  readonly solved: SolvedShot | null;
}

/** A word of the command line: what is there under that name, `-`, or `REVISION:PATH`. */
export async function sideOf(host: Host, word: string): Promise<ComparisonSide> {
  const [, rev, inner] = /^([^:]+):(.*)$/s.exec(word) ?? [];
  if (rev === undefined || host.kind(resolve(host.cwd, word)) !== 'none') {
    if (isRevision(host, word))
      throw new UsageError('wrong-arguments', word, { variant: 'bare-revision', revision: word });
    return side(host, await findCuts(host, [word]), word, '');
  }
  const past = host.revision(host.cwd, rev);
  if (!past.ok)
    throw new UsageError('wrong-arguments', word, {
      variant: 'version-unreadable',
      version: word,
      reason: past.reason,
    });
  // As git has it: from the top of the work tree, but `./` and `../` from here.
  const from = /^\.\.?(\/|$)/.test(inner!) ? host.cwd : topOf(host);
  const path = resolve(from, inner!);
  return side(past.value, await findCuts(past.value, [shortest(past.value, path)]), word, `${rev}:`);
}

/** Whether a word that names no file names a revision. */
function isRevision(host: Host, word: string): boolean {
  return word !== '-' && host.kind(resolve(host.cwd, word)) === 'none' && host.revision(host.cwd, word).ok;
}

/** What is named, or the episode that the current folder belongs to, in the work tree's past. */
interface Named {
  readonly then: Host;
  readonly before: readonly string[];
  /** Of the names those that are there now, and those that never were. */
  readonly after: readonly string[];
  readonly single: boolean;
}

function namedSince(host: Host, rev: string, words: readonly string[]): Named {
  const past = host.revision(resolve(host.cwd, words[0] ?? '.'), rev);
  if (!past.ok)
    throw new UsageError('option-value', rev, {
      variant: 'compared-revision',
      revision: rev,
      reason: past.reason,
    });
  const then = past.value;
  const named = words.length > 0 ? words : [wholeEpisode(host, then)];
  if (named.includes('-')) {
    throw new UsageError('wrong-arguments', '-', { variant: 'input-past' });
  }
  const there = (world: Host) => named.filter((word) => world.kind(resolve(host.cwd, word)) !== 'none');
  const [before, present] = [there(then), there(host)];
  const nowhere = named.filter((word) => !before.includes(word) && !present.includes(word));
  const single =
    named.length === 1 &&
    [host, then].every((world) => world.kind(resolve(host.cwd, named[0]!)) !== 'folder') &&
    !/\.ya?ml$/.test(named[0]!);
  return { then, before, after: [...present, ...nowhere], single };
}

async function thenOf(host: Host, rev: string, { then, before, single }: Named): Promise<ComparisonSide> {
  const names = before.map((word) => shortest(then, resolve(host.cwd, word)));
  return { ...side(then, await findCuts(then, names), rev, `${rev}:`), single };
}

/** The side of then alone. */
export const pastOf = (host: Host, rev: string, words: readonly string[]): Promise<ComparisonSide> =>
  thenOf(host, rev, namedSince(host, rev, words));

/** Then and now of what is named, or of the episode that the current folder belongs to. */
export async function sinceOf(
  host: Host,
  rev: string,
  words: readonly string[],
): Promise<{ old: ComparisonSide; now: ComparisonSide }> {
  const named = namedSince(host, rev, words);
  const { after, single } = named;
  return {
    old: await thenOf(host, rev, named),
    now: { ...side(host, await findCuts(host, after), 'now', ''), single, present: true },
  };
}

function side(host: Host, found: Found, label: string, prefix: string): ComparisonSide {
  const single = found.jobs.length === 1 && found.jobs[0]!.named;
  return { label, present: false, host, found, prefix, single };
}

/** The manifest on the way up, then or now; without one the folder. */
function wholeEpisode(host: Host, then: Host): string {
  for (let at = host.cwd; ; at = dirname(at)) {
    const path = join(at, MANIFEST);
    if (host.kind(path) === 'file' || then.kind(path) === 'file') return shortest(host, path);
    if (at === dirname(at)) return '.';
  }
}

/** The work tree's top: the nearest folder with a `.git`. */
function topOf(host: Host): string {
  for (let at = host.cwd; ; at = dirname(at)) {
    if (host.kind(join(at, '.git')) !== 'none') return at;
    if (at === dirname(at)) return host.cwd;
  }
}

function shortest(host: Host, path: string): string {
  const inner = relative(host.cwd, path);
  return isAbsolute(inner) ? path : inner || '.';
}

/** Reports what is wrong with finding a side's cuts. */
export function reportFinding({ found, prefix }: ComparisonSide, reporter: Reporter): void {
  const all = [...found.episodes.flatMap(({ diagnostics }) => diagnostics), ...found.diagnostics];
  const sources = new Map(found.episodes.map(({ file, text }) => [file!, text]));
  reportErrors(reporter, all, sources, prefix);
}

/** A retake note tells what differs; remarks on either version are for `check`, but for one on a cut that is left out. */
function reportErrors(
  reporter: Reporter,
  diagnostics: readonly Diagnostic[],
  sources: ReadonlyMap<string, string>,
  prefix: string,
): void {
  const named = (span: Diagnostic['span']) => ({ ...span, file: `${prefix}${span.file}` });
  const errors = diagnostics
    .filter(({ severity, code }) => severity === 'error' || code === 'cut-twice')
    .map(({ fix: _, ...one }) => ({
      ...one,
      span: named(one.span),
      notes: one.notes.map((note) => (note.span ? { ...note, span: named(note.span) } : note)),
    }));
  reporter.report(errors, new Map([...sources].map(([file, text]) => [`${prefix}${file}`, text])));
}

/** Compiles the cuts of a side, one when it is asked for. House files are left out. */
async function* versionsOf(side: ComparisonSide, reporter: Reporter): AsyncGenerator<Version> {
  const { host, found, prefix } = side;
  const cache = newEpisodeCache();
  const met = new Map<string, string>();
  for (const job of found.jobs) {
    const bytes = job.path === null ? { bytes: await host.standardInput() } : {};
    const compiled = compile(host, job.path, job.episode, { name: job.name, cache, ...bytes });
    if (compiled.house && !job.named) continue;
    yield version(compiled, job, met, (all, sources) => reportErrors(reporter, all, sources, prefix));
  }
}

/** `met`: files by the numbers of their cuts so far. */
function version(
  compiled: Compiled,
  { name }: Job,
  met: Map<string, string>,
  report: (diagnostics: readonly Diagnostic[], sources: ReadonlyMap<string, string>) => void,
): Version {
  const { tree, diagnostics, sources, house } = compiled;
  report(diagnostics, sources);
  const statement = tree?.statements.find((one) => one.kind === 'cut');
  const number = statement?.kind === 'cut' ? statement.number : null;
  const key = number && cutKey(number.text);
  const before = key === null ? undefined : met.get(key);
  if (before !== undefined) {
    report(
      [diagnose('cut-twice', number!.span, { cut: number!.text, file: before, compared: true })],
      sources,
    );
    return { file: basename(name), key: null, solved: null };
  }
  if (key !== null) met.set(key, name);
  if (house) {
    throw new UsageError('wrong-arguments', name, { variant: 'version-shared' });
  }
  const solved = hasErrors(diagnostics) ? null : compiled.solved;
  return { file: basename(name), key, solved };
}
