/** The cuts of a run, compiled one after the other: what is wrong with one never stops the next. */

import type { Compiled } from '../episode/compile.js';
import { compile } from '../episode/compile.js';
import { cutKey, type Episode } from '../episode/episode.js';
import { episodeOf, type Found, findCuts, type Job } from '../episode/find.js';
import { newShelf, type Shelf } from '../episode/shelf.js';
import type { Host } from '../host/host.js';
import { diagnose } from '../language/diagnostic.js';
import type { Settings } from '../shot/settings.js';
import { type Desk, NO_SOURCES } from './desk.js';
import { LineFault } from './line.js';

/** From here on a run takes long enough for its memory to matter. */
const MANY = 100;

/** Takes what is wrong: the desk, or somebody who only counts. */
export type Reporter = Pick<Desk, 'report'>;

/** Finds the cuts that a command line means, and reports what is wrong with finding them. */
export async function findAll(
  host: Host,
  desk: Desk,
  files: readonly string[],
  settings: Partial<Settings> = {},
): Promise<Found> {
  const found = await findCuts(host, files, settings);
  const sources = manifests(found);
  for (const episode of found.episodes) desk.report(episode.diagnostics, sources);
  desk.report(found.diagnostics, sources);
  return found;
}

/**
 * The files that a command line names; without any, the episode that the current folder lies in. Throws LineFault where there
 * is none.
 */
export async function filesOr(
  host: Host,
  files: readonly string[],
  command: string,
): Promise<readonly string[]> {
  if (files.length > 0) return files;
  const { file } = await episodeOf(host, host.cwd);
  if (file !== null) return [file];
  throw new LineFault(
    'wrong-arguments',
    null,
    `\`cutwright ${command}\` needs files: this folder lies in no episode (there is no episode.yaml here or above); see \`cutwright ${command} --help\`.`,
  );
}

/**
 * Compiles each cut and hands it to `work` (house files too: `compiled.house`), which may report more. All that is wrong
 * goes to `desk`. Returns the number of cuts.
 */
export async function eachCut(
  host: Host,
  desk: Reporter,
  found: Found,
  work: (compiled: Compiled, job: Job, shelf: Shelf) => Promise<void> | void,
): Promise<number> {
  const shelf = newShelf();
  const numbers = new Numbers();
  // Loading it takes longer than a few cuts are worth.
  if (found.jobs.length >= MANY) (await import('../host/heap.js')).keepHeapSmall();
  let cuts = 0;
  for (const job of found.jobs) {
    try {
      const bytes = job.path === null ? { bytes: await host.standardInput() } : {};
      const compiled = compile(host, job.path, job.episode, { name: job.name, shelf, ...bytes });
      const { sources } = compiled;
      desk.report(compiled.diagnostics, sources);
      desk.report(numbers.meet(compiled, job.episode), sources);
      if (!compiled.house) cuts += 1;
      await work(compiled, job, shelf);
    } catch (fault) {
      const words = fault instanceof Error ? fault.message : String(fault);
      const span = { file: job.name, start: 0, end: 0 };
      desk.report(
        [diagnose('internal-fault', span, `The program failed on this cut: ${words}.`)],
        NO_SOURCES,
      );
    }
  }
  desk.report(numbers.idleArtists(found.whole), manifests(found));
  return cuts;
}

function manifests(found: Found): Map<string, string> {
  return new Map(found.episodes.map(({ file, text }) => [file!, text]));
}

/** The cut numbers of a run, episode by episode. */
class Numbers {
  private readonly byEpisode = new Map<string, Map<string, string>>();
  /** Episodes with a cut whose number could not be read. */
  private readonly uncertain = new Set<string>();

  meet({ tree, file, house }: Compiled, episode: Episode) {
    if (episode.file === null || house) return [];
    const known = this.byEpisode.get(episode.file) ?? new Map<string, string>();
    this.byEpisode.set(episode.file, known);
    const statement = tree?.statements.find((one) => one.kind === 'cut');
    if (statement?.kind !== 'cut') {
      this.uncertain.add(episode.file);
      return [];
    }
    const { text, span } = statement.number;
    const before = known.get(cutKey(text));
    known.set(cutKey(text), before ?? file);
    return before === undefined
      ? []
      : [diagnose('cut-twice', span, `Cut ${text} is already the number of \`${before}\`.`)];
  }

  /** Artists of whole episodes whose cuts are nowhere. */
  idleArtists(episodes: readonly Episode[]) {
    return episodes.flatMap(({ file, artists }) => {
      if (this.uncertain.has(file!)) return [];
      const known = this.byEpisode.get(file!) ?? new Map<string, string>();
      return artists.flatMap(({ cuts }) =>
        cuts
          .filter((cut) => known.size > 0 && !known.has(cutKey(cut.text)))
          .map((cut) => diagnose('artist-without-cut', cut.span, `The episode has no cut ${cut.text}.`)),
      );
    });
  }
}
