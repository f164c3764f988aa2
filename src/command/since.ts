/** The cuts of a run as they were at a revision. */

import { dirname } from 'node:path';
import type { Compiled } from '../episode/compile.js';
import { compile } from '../episode/compile.js';
import { cutKey } from '../episode/episode.js';
import { episodeOf, type Found, findCuts, type Job } from '../episode/find.js';
import { hasErrors } from '../episode/order.js';
import { readText } from '../episode/read.js';
import { scan } from '../episode/scan.js';
import { newShelf } from '../episode/shelf.js';
import { storyOf } from '../episode/story.js';
import type { Host } from '../host/host.js';
import type { Settings } from '../shot/settings.js';
import type { Earlier } from './before.js';
import { LineFault } from './line.js';
import { numberIn } from './outcome.js';
import type { Laid, Press, Told } from './press.js';

/** One work tree at the revision, with the cuts that the command line means there. */
interface World {
  readonly host: Host;
  readonly shelf: ReturnType<typeof newShelf>;
  /** By absolute path. */
  readonly jobs: ReadonlyMap<string, Job>;
  /** By number, once somebody has asked. */
  numbers: ReadonlyMap<string, Job> | null;
}

export class Past {
  /** Numbers of the cuts that are there now; null where one cannot be read. */
  private now: Set<string> | null = new Set();

  private constructor(
    private readonly rev: string,
    private readonly worlds: ReadonlyMap<string, World>,
  ) {}

  /** Throws LineFault where git cannot give the revision. `files` as they stand on the command line; `option` asks for it. */
  static async open(
    host: Host,
    rev: string,
    found: Found,
    files: readonly string[],
    settings: Partial<Settings>,
    option = '--since',
  ): Promise<Past> {
    const worlds = new Map<string, World>();
    const paths = found.jobs.flatMap(({ path }) => path ?? []);
    for (const job of found.jobs) {
      const place = placeOf(host, job);
      const asked = { paths, files, settings, option };
      if (!worlds.has(place)) worlds.set(place, await worldAt(host, place, rev, asked));
    }
    return new Past(rev, worlds);
  }

  /** The cut as it would have been printed then. */
  of(told: Told, press: Press): Earlier {
    const then = this.earlier(told);
    if (!then) return { none: `new since ${this.rev}` };
    const { host, shelf, job, compiled } = then;
    const { solved, diagnostics } = compiled;
    if (solved === null || hasErrors(diagnostics)) return { none: `as it had errors at ${this.rev}` };
    const copy = press.copy({ host, job, compiled, solved, shelf });
    let laid: Laid | undefined;
    return {
      input: copy.input,
      whole: () => true,
      pages() {
        laid ??= press.lay(copy);
        return laid.pages;
      },
    };
  }

  /**
   * The cut as it was: the one of its number, wherever its file lay; or its file under a number that no cut has any more.
   * Null: it is new.
   */
  earlier(told: Told): Omit<Told, 'solved'> | null {
    const world = this.worlds.get(placeOf(told.host, told.job))!;
    const { host, shelf } = world;
    const key = cutKey(told.solved.shot.cut);
    const here = world.jobs.get(told.job.path!);
    const compiled = here && compiledThen(world, here);
    if (here && compiled && keyOf(compiled) === key) return { host, shelf, job: here, compiled };
    const elsewhere = numbersOf(world).get(key);
    if (elsewhere) return { host, shelf, job: elsewhere, compiled: compiledThen(world, elsewhere) };
    if (!here || !compiled) return null;
    const old = keyOf(compiled);
    const story = storyOf(told.host, told.job.episode, told.shelf);
    return old !== undefined && story?.find(old) ? null : { host, shelf, job: here, compiled };
  }

  /** The commit that the revision is, for the work tree of a cut. */
  commit({ host, job }: Told): string | undefined {
    const place = placeOf(host, job);
    return this.worlds.get(place)!.host.commit(place);
  }

  /** Hears of every cut that is there now, printable or not. */
  saw(compiled: Compiled): void {
    const key = keyOf(compiled);
    if (key === undefined) this.now = null;
    else this.now?.add(key);
  }

  /** Numbers of cuts that were there then and are no more, once all that are there have been seen; for whole episodes. */
  gone(): string[] {
    const { now } = this;
    if (now === null) return [];
    return [...this.worlds.values()].flatMap((world) =>
      [...numbersOf(world).keys()].filter((key) => !now.has(key)),
    );
  }
}

function keyOf({ tree }: Compiled): string | undefined {
  const number = numberIn(tree);
  return number === undefined ? undefined : cutKey(number);
}

function numbersOf(world: World): ReadonlyMap<string, Job> {
  if (world.numbers === null) {
    const numbers = new Map<string, Job>();
    for (const job of world.jobs.values()) {
      const { text } = readText(world.host, job.path!, job.name);
      const number = numberIn(scan(job.name, text));
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
): Promise<World> {
  const past = host.revision(place, rev);
  if (!past.ok) throw new LineFault('option-value', rev, `\`${option} ${rev}\` does not do: ${past.reason}.`);
  const { value } = past;
  const found = [...(await findCuts(value, files, settings)).jobs];
  // Before there was a manifest, the cuts were what lay there.
  if ((await episodeOf(value, place, settings)).file === null) {
    const there = paths.filter((path) => value.kind(path) === 'file');
    found.push(...(await findCuts(value, there, settings)).jobs);
  }
  return {
    host: value,
    shelf: newShelf(),
    jobs: new Map(found.map((job) => [job.path!, job])),
    numbers: null,
  };
}

function compiledThen({ host, shelf }: World, job: Job): Compiled {
  return compile(host, job.path, job.episode, { name: job.name, shelf });
}
