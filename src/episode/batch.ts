/** The cuts of a run, one after the other: what is wrong with one never stops the next. */

import { setFlagsFromString } from 'node:v8';
import type { Host } from '../host/host.js';
import { type Diagnostic, diagnose } from '../language/diagnostic.js';
import type { Settings } from '../shot/settings.js';
import type { Compiled } from './compile-cut.js';
import { CutCompiler, type CutOutcome, faultWords, type MakeOfCut } from './cut-outcome.js';
import { cutKey, type Episode, type EpisodeCache, newEpisodeCache } from './episode.js';
import { type Found, findCuts, type Job } from './find-cuts.js';
import { WorkerPool, type WorkerTask } from './worker-pool.js';

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
 * goes to `sink`. Returns the number of cuts.
 */
export function eachCut(
  host: Host,
  sink: DiagnosticSink,
  found: Found,
  work: (compiled: Compiled, job: Job, cache: EpisodeCache) => Promise<void> | void,
): Promise<number> {
  return eachOutcome<Compiled>(host, sink, found, {
    make: (compiled) => compiled,
    take: async (_, job, cache, made) => work(await made(), job, cache),
  });
}

/** What is done with each cut of a run. */
export interface CutWork<T> {
  /** Where the cut is compiled, in any order; without workers when `take` asks for it. */
  readonly make: MakeOfCut<T>;
  /**
   * With what came of it, in the order of the cuts; it may report more. What it throws is told at the cut. `made`: asks for what was made;
   * throws what the program stumbled over.
   */
  readonly take: (
    outcome: CutOutcome,
    job: Job,
    cache: EpisodeCache,
    made: () => Promise<T> | T,
  ) => Promise<void> | void;
  /** Says of which cuts all is known without compiling them, and that nothing is wrong with them. */
  readonly settled?: FindSettled | undefined;
  /**
   * Lets several threads do what `make` does with so many cuts; undefined: they are not worth it. Where this is given, `settled` is asked for
   * all cuts before the first one is taken.
   */
  readonly workers?: ((cuts: number) => WorkerTask | undefined) | undefined;
}

/** Compiles each cut. All that is wrong goes to `sink`, cut after cut in their order. Returns the number of cuts. */
export async function eachOutcome<T>(
  host: Host,
  sink: DiagnosticSink,
  found: Found,
  { make, take, settled = () => null, workers }: CutWork<T>,
): Promise<number> {
  const cache = newEpisodeCache();
  const numbers = new Numbers();
  const here = new CutCompiler(host, found.whole, make, cache);
  const answers = workers && found.jobs.map((job) => settled(job, cache));
  const unsettled = found.jobs.flatMap((_, place) => (answers?.[place] ? [] : [place]));
  const task = workers?.(unsettled.length);
  let pool: WorkerPool<T> | null = null;
  let cuts = 0;
  let compiling = false;
  try {
    for (const [place, job] of found.jobs.entries()) {
      try {
        const known = answers ? answers[place] : settled(job, cache);
        if (known && numbers.meetFirst(known.number, job)) {
          known.accept();
          cuts += 1;
          continue;
        }
        if (!compiling && task) pool = WorkerPool.start(host, found, unsettled, task, here);
        // V8 takes no code that was compiled ahead while its flags are others.
        if (!compiling && pool) pool.loaded.then(() => setFlags(found.jobs.length));
        else if (!compiling) setFlags(found.jobs.length);
        compiling = true;
        // A settled cut may have to be compiled all the same, because another one has its number.
        const { outcome, made } = await (pool && !known ? pool.result() : here.result(job));
        sink.report(outcome.diagnostics, outcome.sources);
        sink.report(numbers.meet(outcome, job.episode), outcome.sources);
        if (!outcome.house) cuts += 1;
        await take(outcome, job, cache, made);
      } catch (fault) {
        const span = { file: job.name, start: 0, end: 0 };
        const parameters = { onCut: true, error: faultWords(fault) } as const;
        sink.report([diagnose('internal-fault', span, parameters)], NO_SOURCES);
      }
    }
  } finally {
    pool?.stop();
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

  meet({ number, file, house }: CutOutcome, episode: Episode) {
    if (episode.file === null || house) return [];
    const known = this.byEpisode.get(episode.file) ?? new Map<string, string>();
    this.byEpisode.set(episode.file, known);
    if (number === null) {
      this.uncertain.add(episode.file);
      return [];
    }
    const { text, span } = number;
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

/** For a run over so many cuts; of all threads. */
function setFlags(cuts: number): void {
  if (cuts >= SEVERAL) optimizeLess();
  if (cuts >= MANY) keepHeapSmall();
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
