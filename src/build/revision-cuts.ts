/** The cuts of a run as they were at a revision. */

import { dirname } from 'node:path';
import { type Compiled, compile } from '../episode/compile-cut.js';
import { cutKey, cutNumberOf, newEpisodeCache } from '../episode/episode.js';
import { episodeOf, type Found, findCuts, type Job } from '../episode/find-cuts.js';
import { readText } from '../episode/read-text.js';
import { storyOf } from '../episode/story.js';
import { scan } from '../episode/used-files.js';
import type { Host } from '../host/host.js';
import { hasErrors } from '../language/diagnostic.js';
import type { Settings } from '../shot/settings.js';
import type { CutPrinter, LaidOutCut, PrintableCut } from './cut-printer.js';
import type { EarlierLookup } from './earlier-print.js';
import { UsageError } from './usage-error.js';

/** One work tree at the revision, with the cuts that the command line means there. */
interface RevisionTree {
  readonly host: Host;
  readonly cache: ReturnType<typeof newEpisodeCache>;
  /** By absolute path. */
  readonly jobs: ReadonlyMap<string, Job>;
  /** By number, once somebody has asked. */
  numbers: ReadonlyMap<string, Job> | null;
}

export class RevisionCuts {
  /** Numbers of the cuts that are there now; null where one cannot be read. */
  private now: Set<string> | null = new Set();

  private constructor(
    private readonly rev: string,
    private readonly worlds: ReadonlyMap<string, RevisionTree>,
  ) {}

  /** Throws UsageError where git cannot give the revision. `files` as they stand on the command line; `option` asks for it. */
  static async open(
    host: Host,
    rev: string,
    found: Found,
    files: readonly string[],
    settings: Partial<Settings>,
    option = '--since',
  ): Promise<RevisionCuts> {
    const worlds = new Map<string, RevisionTree>();
    const paths = found.jobs.flatMap(({ path }) => path ?? []);
    for (const job of found.jobs) {
      const place = placeOf(host, job);
      const asked = { paths, files, settings, option };
      if (!worlds.has(place)) worlds.set(place, await worldAt(host, place, rev, asked));
    }
    return new RevisionCuts(rev, worlds);
  }

  /** The cut as it would have been printed then. */
  of(printable: PrintableCut, printer: CutPrinter): EarlierLookup {
    const then = this.earlier(printable);
    if (!then) return { none: { why: 'new-since', revision: this.rev } };
    const { host, cache, job, compiled } = then;
    const { solved, diagnostics } = compiled;
    if (solved === null || hasErrors(diagnostics)) return { none: { why: 'errors-at', revision: this.rev } };
    const prepared = printer.prepare({ host, job, compiled, solved, cache });
    let laidOut: LaidOutCut | undefined;
    return {
      input: prepared.input,
      unmarkedInput: prepared.unmarkedInput,
      texts: null,
      whole: () => true,
      pages() {
        laidOut ??= printer.layOut(prepared);
        return laidOut.pages;
      },
    };
  }

  /**
   * The cut as it was: the one of its number, wherever its file lay; or its file under a number that no cut has any more.
   * Null: it is new.
   */
  earlier(printable: PrintableCut): Omit<PrintableCut, 'solved'> | null {
    const world = this.worlds.get(placeOf(printable.host, printable.job))!;
    const { host, cache } = world;
    const key = cutKey(printable.solved.shot.cut);
    const here = world.jobs.get(printable.job.path!);
    const compiled = here && compiledThen(world, here);
    if (here && compiled && keyOf(compiled) === key) return { host, cache, job: here, compiled };
    const elsewhere = numbersOf(world).get(key);
    if (elsewhere) return { host, cache, job: elsewhere, compiled: compiledThen(world, elsewhere) };
    if (!here || !compiled) return null;
    const old = keyOf(compiled);
    const story = storyOf(printable.host, printable.job.episode, printable.cache);
    return old !== undefined && story?.find(old) ? null : { host, cache, job: here, compiled };
  }

  /** The commit that the revision is, for the work tree of a cut. */
  commit({ host, job }: PrintableCut): string | undefined {
    const place = placeOf(host, job);
    return this.worlds.get(place)!.host.commit(place);
  }

  /** Hears of every cut that is there now, printable or not, by its number; undefined: that cannot be read. */
  noteSeen(number: string | undefined): void {
    if (number === undefined) this.now = null;
    else this.now?.add(cutKey(number));
  }

  /** Numbers of cuts that were there then and are no more, once all that are there have been seen; for whole episodes. */
  removed(): string[] {
    const { now } = this;
    if (now === null) return [];
    return [...this.worlds.values()].flatMap((world) =>
      [...numbersOf(world).keys()].filter((key) => !now.has(key)),
    );
  }
}

function keyOf({ tree }: Compiled): string | undefined {
  const number = cutNumberOf(tree);
  return number === undefined ? undefined : cutKey(number);
}

function numbersOf(world: RevisionTree): ReadonlyMap<string, Job> {
  if (world.numbers === null) {
    const numbers = new Map<string, Job>();
    for (const job of world.jobs.values()) {
      const { text } = readText(world.host, job.path!, job.name);
      const number = cutNumberOf(scan(job.name, text));
      const key = number === undefined ? '' : cutKey(number);
      if (key !== '' && !numbers.has(key)) numbers.set(key, job);
    }
    world.numbers = numbers;
  }
  return world.numbers;
}

function placeOf(host: Host, { path, episode }: Job): string {
  return episode.folder ?? (path === null ? host.cwd : dirname(path));
}

interface Asked {
  /** Of the cuts that are there now. */
  readonly paths: readonly string[];
  readonly files: readonly string[];
  readonly settings: Partial<Settings>;
  readonly option: string;
}

async function worldAt(
  host: Host,
  place: string,
  rev: string,
  { paths, files, settings, option }: Asked,
): Promise<RevisionTree> {
  const past = host.revision(place, rev);
  if (!past.ok)
    throw new UsageError('option-value', rev, {
      variant: 'revision',
      option,
      revision: rev,
      reason: past.reason,
    });
  const { value } = past;
  const found = [...(await findCuts(value, files, settings)).jobs];
  // Before there was a manifest, the cuts were what lay there.
  if ((await episodeOf(value, place, settings)).file === null) {
    const there = paths.filter((path) => value.kind(path) === 'file');
    found.push(...(await findCuts(value, there, settings)).jobs);
  }
  return {
    host: value,
    cache: newEpisodeCache(),
    jobs: new Map(found.map((job) => [job.path!, job])),
    numbers: null,
  };
}

function compiledThen({ host, cache }: RevisionTree, job: Job): Compiled {
  return compile(host, job.path, job.episode, { name: job.name, cache });
}
