/** The cuts that are watched, as they were last looked at, and to whom a change matters. */

import { createHash } from 'node:crypto';
import { dirname } from 'node:path';
import { type Compiled, compile } from '../episode/compile-cut.js';
import { type EpisodeCache, newEpisodeCache } from '../episode/episode-cache.js';
import type { Job } from '../episode/find-cuts.js';
import { storyOf } from '../episode/story.js';
import { surroundingsOf } from '../episode/surroundings.js';
import type { Host } from '../host/host.js';
import { type Asked, noting } from '../host/overlay-host.js';
import { diagnosticKey } from '../language/diagnostic.js';
import type { Change } from './file-changes.js';

/** What the program made of a cut, and of what. */
export interface WatchedCut {
  readonly compiled: Compiled;
  /** Of the run that compiled it. */
  readonly cache: EpisodeCache;
  /** Equal where the same is wrong with it. */
  readonly problemKeys: string;
  readonly asked: Asked;
  /** Equal as long as other cuts have the same to do with it. */
  readonly around: string;
}

export class WatchedCuts {
  private readonly known = new Map<string, WatchedCut>();
  /** What the cuts of an episode share; as old as the last change. */
  private cache: EpisodeCache = newEpisodeCache();

  constructor(private readonly host: Host) {}

  of(path: string): WatchedCut | undefined {
    return this.known.get(path);
  }

  all(): readonly WatchedCut[] {
    return [...this.known.values()];
  }

  forget(path: string): void {
    this.known.delete(path);
  }

  /** Something has changed: what was read before counts no more. */
  refresh(): void {
    this.cache = newEpisodeCache();
  }

  /** Whether a cut has to be compiled again because of these changes. Other cuts are not considered: see `around`. */
  concerned(path: string, changes: readonly Change[]): boolean {
    const known = this.known.get(path);
    if (!known) return true;
    const { files, folders } = known.asked;
    return changes.some(
      ({ real, kind }) => files.has(real) || (kind !== 'text' && folders.has(dirname(real))),
    );
  }

  /** Whether any cut was made with that file. */
  uses(real: string): boolean {
    return this.all().some(({ asked }) => asked.files.has(real));
  }

  /** Whether other cuts have something else to do with it than when it was compiled. */
  movedAround(job: Job): boolean {
    const known = this.known.get(job.path!);
    return known !== undefined && !known.compiled.house && known.around !== this.around(job, known.compiled);
  }

  compile(job: Job): WatchedCut {
    const path = job.path!;
    const asked: Asked = { files: new Set(), folders: new Set() };
    // Read beforehand, so that this cut is not taken for one that asked for all the others.
    storyOf(this.host, job.episode, this.cache);
    // What a cut uses is read for each, so that it is known who uses what.
    const cache: EpisodeCache = { ...this.cache, files: new Map() };
    const compiled = compile(noting(this.host, asked), path, job.episode, { name: job.name, cache });
    const problemKeys = JSON.stringify(compiled.diagnostics.map(diagnosticKey));
    const known = { compiled, cache, problemKeys, asked, around: this.around(job, compiled) };
    this.known.set(path, known);
    return known;
  }

  private around(job: Job, { shot }: Compiled): string {
    const story = shot && storyOf(this.host, job.episode, this.cache);
    if (!story) return '';
    const beside = story.around(job.path, shot.cut);
    const states = [beside?.before, beside?.after].map((one) => one && [one.name, one.text]);
    // Levels may come through any number of cuts.
    const others = shot.levels.some(({ reuse }) => reuse) ? story.cuts().map(({ text }) => text) : [];
    const all = [surroundingsOf(this.host, job.path, shot, job.episode, this.cache), states, others];
    return createHash('sha256').update(JSON.stringify(all)).digest('base64');
  }
}
