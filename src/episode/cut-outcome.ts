/** What comes of one cut of a run: plain data, so that it may come from another thread. */

import type { Host } from '../host/host.js';
import { type Compiled, compile } from './compile-cut.js';
import { type Episode, type EpisodeCache, type Written, writtenNumber } from './episode.js';
import type { Job } from './find-cuts.js';
import { keepLent } from './reused-levels.js';
import { storyOf } from './story.js';

export interface CutOutcome extends Pick<Compiled, 'file' | 'sources' | 'diagnostics' | 'house'> {
  /** As its first statement has it; null where that cannot be read. */
  readonly number: Written | null;
  /** Its number as a summary has it, where there is one. */
  readonly cut: string | null;
  /** Whether there is something to print, whatever is wrong. */
  readonly solved: boolean;
}

/** A cut that was compiled, and what the run makes of it, when it is asked for or already. `made` throws what the program stumbles over. */
export interface CutResult<T> {
  readonly outcome: CutOutcome;
  readonly made: () => Promise<T> | T;
}

/** What a run makes of each cut, shared files too, wherever it is compiled. */
export type MakeOfCut<T> = (compiled: Compiled, job: Job, cache: EpisodeCache) => Promise<T> | T;

/** Compiles the cuts of a run, or some of them, and makes of each what is wanted. */
export class CutCompiler<T> {
  /** `whole`: episodes that are worked on as a whole. `cache`: of the run, in this thread. */
  constructor(
    private readonly host: Host,
    private readonly whole: readonly Episode[],
    private readonly make: MakeOfCut<T>,
    private readonly cache: EpisodeCache,
  ) {}

  /** Rejects where the program stumbles while it compiles. */
  async result(job: Job): Promise<CutResult<T>> {
    const { host, cache, make } = this;
    const { path, name, episode } = job;
    const bytes = path === null ? { bytes: await host.standardInput() } : {};
    const compiled = compile(host, path, episode, { name, cache, ...bytes });
    if (path !== null && this.whole.includes(episode))
      keepLent(compiled, path, storyOf(host, episode, cache)!, cache);
    const { file, sources, diagnostics, house, tree, shot, solved } = compiled;
    const number = writtenNumber(tree);
    const cut = shot?.cut || number?.text || null;
    const outcome = { file, sources, diagnostics, house, number, cut, solved: solved !== null };
    return { outcome, made: () => make(compiled, job, cache) };
  }
}

export const faultWords = (fault: unknown): string =>
  fault instanceof Error ? fault.message : String(fault);
