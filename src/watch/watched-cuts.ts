/** The cuts that are watched, as they were last looked at, and to whom a change matters. */

import { createHash } from 'node:crypto';
import { dirname, resolve } from 'node:path';
import { type Compiled, compile } from '../episode/compile-cut.js';
import { textsOf } from '../episode/cut-texts.js';
import { type EpisodeCache, newEpisodeCache } from '../episode/episode.js';
import type { Job } from '../episode/find-cuts.js';
import { storyOf } from '../episode/story.js';
import type { Host } from '../host/host.js';
import { type Asked, noting, overlay } from '../host/overlay-host.js';
import { diagnosticKey, hasErrors } from '../language/diagnostic.js';
import type { Change } from './file-changes.js';

/** What is kept of a cut that was looked at: not what was made of it, which would be megabytes for a whole episode. */
export interface WatchedCut {
  /** Holds nothing but what other cuts use. */
  readonly house: boolean;
  /** Whether its text can be printed. */
  readonly fit: boolean;
  /** Equal where the same is wrong with it. */
  readonly problemKeys: string;
  readonly asked: Asked;
  /** Equal as long as other cuts have the same to do with it. */
  readonly around: string;
}

/** A cut as the program has just compiled it. */
export interface FreshCut {
  readonly compiled: Compiled;
  /** Of the run that compiled it. */
  readonly cache: EpisodeCache;
  readonly known: WatchedCut;
}

export class WatchedCuts {
  private readonly known = new Map<string, WatchedCut>();
  /** What the cuts of an episode share; as old as the last change. */
  private cache: EpisodeCache = newEpisodeCache();
  /** A hash of all texts of the story, once somebody has asked. */
  private whole: string | null = null;

  /** `strict`: a cut with warnings is not fit. */
  constructor(
    private readonly host: Host,
    private readonly strict: boolean,
  ) {}

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
    this.cache = newEpisodeCache(this.cache);
    this.whole = null;
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
    return known !== undefined && !known.house && known.around !== this.around(job);
  }

  compile(job: Job): FreshCut {
    const path = job.path!;
    const asked: Asked = { files: new Set(), folders: new Set() };
    // Read beforehand, so that this cut is not taken for one that asked for all the others.
    storyOf(this.host, job.episode, this.cache);
    // What a cut uses is read for each, so that it is known who uses what.
    const cache: EpisodeCache = { ...this.cache, files: new Map(), reach: new Map() };
    const compiled = compile(noting(this.host, asked), path, job.episode, { name: job.name, cache });
    const problemKeys = JSON.stringify(compiled.diagnostics.map(diagnosticKey));
    const { solved, diagnostics, house } = compiled;
    const fit = house || (solved !== null && !hasErrors(diagnostics, this.strict));
    const known = { house, fit, problemKeys, asked, around: this.around(job) };
    this.known.set(path, known);
    return { compiled, cache, known };
  }

  /** Compiles a cut out of texts that it was made of before. `sources`: by the names that messages call them. */
  compileAgain(job: Job, sources: ReadonlyMap<string, string>): { compiled: Compiled; cache: EpisodeCache } {
    const { host } = this;
    const texts = new Map(
      [...sources].map(([name, text]) => [host.real(resolve(host.cwd, name)), text] as const),
    );
    const cache: EpisodeCache = { ...this.cache, files: new Map(), reach: new Map() };
    storyOf(host, job.episode, this.cache);
    const compiled = compile(overlay(host, texts), job.path, job.episode, { name: job.name, cache });
    return { compiled, cache };
  }

  /** All texts that its print hangs on, as far as they can be told without compiling it; else all of the story. */
  private around(job: Job): string {
    if (job.episode.folder === null) return '';
    const texts = textsOf(this.host, job, this.cache);
    if (texts !== null) return texts.hash;
    const story = storyOf(this.host, job.episode, this.cache);
    this.whole ??= createHash('sha256')
      .update(JSON.stringify(story?.cuts().map(({ name, text }) => [name, text]) ?? []))
      .digest('base64');
    return this.whole;
  }
}
