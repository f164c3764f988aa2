/** The cuts of a run as they were at a revision. */

import { dirname } from 'node:path';
import type { Compiled } from '../episode/compile.js';
import { compile } from '../episode/compile.js';
import { cutKey } from '../episode/episode.js';
import { type Found, findCuts, type Job } from '../episode/find.js';
import { hasErrors } from '../episode/order.js';
import { newShelf } from '../episode/shelf.js';
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
  readonly jobs: ReadonlyMap<string, Job>;
  /** Cuts whose files are there no more, by number. */
  readonly moved: Map<string, Job>;
}

export class Past {
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
    const now = new Set(found.jobs.map(({ path }) => path));
    for (const job of found.jobs) {
      const place = placeOf(host, job);
      const asked = { now, files, settings, option };
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

  /** The cut as it was, for whoever asks first; null: it is new. */
  earlier(told: Told): Omit<Told, 'solved'> | null {
    const world = this.worlds.get(placeOf(told.host, told.job))!;
    const key = cutKey(told.solved.shot.cut);
    const job = world.jobs.get(told.job.path!) ?? world.moved.get(key);
    if (!job) return null;
    world.moved.delete(key);
    const { host, shelf } = world;
    return { host, shelf, job, compiled: compiledThen(world, job) };
  }

  /** Numbers of cuts that were there then and of which nobody asked; for whole episodes. */
  gone(): string[] {
    return [...this.worlds.values()].flatMap(({ moved }) => [...moved.keys()]);
  }
}

function placeOf(host: Host, { path, episode }: Job): string {
  return episode.folder ?? (path === null ? host.cwd : dirname(path));
}

interface Asked {
  readonly now: ReadonlySet<string | null>;
  readonly files: readonly string[];
  readonly settings: Partial<Settings>;
  readonly option: string;
}

async function worldAt(
  host: Host,
  place: string,
  rev: string,
  { now, files, settings, option }: Asked,
): Promise<World> {
  const past = host.revision(place, rev);
  if (!past.ok) throw new LineFault('option-value', rev, `\`${option} ${rev}\` does not do: ${past.reason}.`);
  const found = await findCuts(past.value, files, settings);
  const jobs = new Map(found.jobs.map((job) => [job.path!, job]));
  const world: World = { host: past.value, shelf: newShelf(), jobs, moved: new Map() };
  for (const job of found.jobs) {
    if (now.has(job.path)) continue;
    const number = numberIn(compiledThen(world, job).tree);
    if (number !== undefined) world.moved.set(cutKey(number), job);
  }
  return world;
}

function compiledThen({ host, shelf }: World, job: Job): Compiled {
  return compile(host, job.path, job.episode, { name: job.name, shelf });
}
