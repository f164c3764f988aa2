/** The cuts of a run, compiled one after the other: what is wrong with one never stops the next. */

import { setFlagsFromString } from 'node:v8';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import type { Settings } from '../shot/settings.js';
import { type Compiled, compile } from './compile-cut.js';
import { cutKey, type Episode, type EpisodeCache, newEpisodeCache } from './episode.js';
import { type Found, findCuts, type Job } from './find-cuts.js';
import { keepLent } from './reused-levels.js';
import { storyOf } from './story.js';

/** From here on a run takes long enough for its memory to matter. */
const MANY = 100;
/** From here on a run takes long enough for V8 to optimize much of the program. */
const SEVERAL = 10;

/** Takes what is wrong: to show it, or only to count it. */
export interface DiagnosticSink {
  /** `sources`: the texts by the names that spans give. */
  report(diagnostics: readonly Diagnostic[], sources: ReadonlyMap<string, string>): void;
}

/** Finds a cut that need not be compiled; null: it has to be. `accept` is called where it is left out. */
export type FindSettled = (
  job: Job,
  cache: EpisodeCache,
) => { readonly number: string; readonly accept: () => void } | null;

/** For what is said of a file as a whole: no line of it is shown. */
export const NO_SOURCES: ReadonlyMap<string, string> = new Map();

/** Finds the cuts that a command line means, and reports what is wrong with finding them. */
export async function findAll(
  host: Host,
  sink: DiagnosticSink,
  files: readonly string[],
  settings: Partial<Settings> = {},
): Promise<Found> {
  const found = await findCuts(host, files, settings);
  const sources = manifests(found);
  for (const episode of found.episodes) sink.report(episode.diagnostics, sources);
  sink.report(found.diagnostics, sources);
  return found;
}

/**
 * Compiles each cut and hands it to `work` (house files too: `compiled.house`), which may report more. All that is wrong
 * goes to `sink`. Returns the number of cuts. `settled` says of which cuts
 * all is known without compiling them, and that nothing is wrong with them.
 */
export async function eachCut(
  host: Host,
  sink: DiagnosticSink,
  found: Found,
  work: (compiled: Compiled, job: Job, cache: EpisodeCache) => Promise<void> | void,
  settled: FindSettled = () => null,
): Promise<number> {
  const cache = newEpisodeCache();
  const numbers = new Numbers();
  let cuts = 0;
  let compiling = false;
  for (const job of found.jobs) {
    try {
      const known = settled(job, cache);
      if (known && numbers.meetFirst(known.number, job)) {
        known.accept();
        cuts += 1;
        continue;
      }
      if (!compiling && found.jobs.length >= SEVERAL) optimizeLess();
      if (!compiling && found.jobs.length >= MANY) keepHeapSmall();
      compiling = true;
      const bytes = job.path === null ? { bytes: await host.standardInput() } : {};
      const compiled = compile(host, job.path, job.episode, { name: job.name, cache, ...bytes });
      const { sources } = compiled;
      if (job.path !== null && found.whole.includes(job.episode))
        keepLent(compiled, job.path, storyOf(host, job.episode, cache)!, cache);
      sink.report(compiled.diagnostics, sources);
      sink.report(numbers.meet(compiled, job.episode), sources);
      if (!compiled.house) cuts += 1;
      await work(compiled, job, cache);
    } catch (fault) {
      const words = fault instanceof Error ? fault.message : String(fault);
      const span = { file: job.name, start: 0, end: 0 };
      sink.report([diagnose('internal-fault', span, { onCut: true, error: words })], NO_SOURCES);
    }
  }
  sink.report(numbers.idleArtists(found.whole), manifests(found));
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
      : [diagnose('cut-twice', span, { cut: text, file: before, compared: false })];
  }

  /** The same of a cut that is not compiled; false where another one has its number, so that it must be. */
  meetFirst(number: string, { name, episode: { file } }: Job): boolean {
    if (file === null) return true;
    const known = this.byEpisode.get(file) ?? new Map<string, string>();
    this.byEpisode.set(file, known);
    const key = cutKey(number);
    if (known.has(key)) return false;
    known.set(key, name);
    return true;
  }

  /** Artists of whole episodes whose cuts are nowhere. */
  idleArtists(episodes: readonly Episode[]) {
    return episodes.flatMap(({ file, artists }) => {
      if (this.uncertain.has(file!)) return [];
      const known = this.byEpisode.get(file!) ?? new Map<string, string>();
      return artists.flatMap(({ cuts }) =>
        cuts
          .filter((cut) => known.size > 0 && !known.has(cutKey(cut.text)))
          .map((cut) => diagnose('artist-without-cut', cut.span, { cut: cut.text })),
      );
    });
  }
}

/**
 * Lets V8 collect garbage when the heap is half again as large as what is in use. By itself it waits until it is four times as
 * large, so a run over thousands of cuts, of which each is done with at once, would take as much memory as they leave behind.
 */
function keepHeapSmall(): void {
  // The bundle loads what Node brings at its first call, and knows no `import()` of it.
  setFlagsFromString('--heap-growing-percent=50');
}

/**
 * Ten times the usual budget before V8 optimizes a function. Most of a run is many functions that each run a little: optimizing
 * them took 39 % of the processor time of 300 cuts, more than all of our code.
 */
function optimizeLess(): void {
  setFlagsFromString('--interrupt-budget=700000');
}
