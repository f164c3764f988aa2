/**
 * A hash of all texts that the print of a cut hangs on, found without parsing them: whoever has printed it knows by the hash that
 * nothing is to be done. It may take in more than matters, never less.
 */

import { createHash } from 'node:crypto';
import { dirname, join, resolve } from 'node:path';
import type { Host } from '../host/host.js';
import { artistsOf, cutKey, type Episode, type EpisodeCache } from './episode.js';
import type { Job } from './find-cuts.js';
import { readText } from './read-text.js';
import { type StoryCut, type StoryOrder, storyOf } from './story.js';
import { trackInReach } from './track-file.js';
import { isInReach, lendersIn, mentions, plainNumber, scan, usesIn } from './used-files.js';

export interface CutTexts {
  /** Equal where text, used files, settings, artists, and what other cuts have to do with it are equal; not of any path or time. */
  readonly hash: string;
  /** As it is written. */
  readonly number: string;
  /** The cut's own text and those of the files that it uses, by the names that messages call them. */
  readonly sources: ReadonlyMap<string, string>;
}

/** The files that a print hangs on: absolute paths, the cut first, then the manifest; those that are not there too. */
export function inputsOf(
  host: Host,
  job: Job & { readonly path: string },
  cache: EpisodeCache,
): readonly string[] {
  return episodeTexts(host, job.episode, cache).inputs(job.path);
}

/** What a cut uses. */
interface UsedTexts {
  /** By their ways from the folder of the cut, in the order of use; null: there is none to be had. */
  readonly texts: ReadonlyMap<string, string | null>;
  readonly hash: string;
  /** Numbers of the cuts that they may reuse levels of. */
  readonly lenders: readonly string[];
}

const NOTHING: UsedTexts = { texts: new Map(), hash: '', lenders: [] };

/** The texts of a cut; null where only compiling it tells, as for a cut whose number is written in an unusual way. Never throws. */
export function textsOf(host: Host, job: Job, cache: EpisodeCache): CutTexts | null {
  const { path, name, episode } = job;
  return path === null ? null : episodeTexts(host, episode, cache).of(path, name);
}

function episodeTexts(host: Host, episode: Episode, cache: EpisodeCache): EpisodeTexts {
  const known = cache.texts.get(episode) ?? new EpisodeTexts(host, episode, cache);
  cache.texts.set(episode, known);
  return known;
}

/** The texts of one episode, read once. */
export class EpisodeTexts {
  private readonly story: StoryOrder | null;
  private readonly settings: string;
  private readonly used = new Map<string, UsedTexts>();
  /** By cut number: all cuts that lend each other levels. */
  private groups: ReadonlyMap<string, Group> | null = null;

  constructor(
    private readonly host: Host,
    private readonly episode: Episode,
    cache: EpisodeCache,
  ) {
    this.story = storyOf(host, episode, cache);
    this.settings = JSON.stringify(episode.settings);
  }

  of(path: string, name: string): CutTexts | null {
    const { story, episode } = this;
    const cut = story?.of(path);
    if (story && !cut) return null;
    const text = cut ? cut.text : fileText(this.host, path, name);
    const number = text === null ? null : plainNumber(text);
    if (text === null || number === null) return null;
    const used = this.usedBy(path, cut?.uses ?? usesIn(text));
    const recording = this.recordingOf(path, text);
    if (recording === null) return null;
    const parts = [
      recording,
      this.settings,
      JSON.stringify(artistsOf(episode, number)),
      text,
      used.hash,
      ...(story ? [...beside(story, path, number, text), this.group(story, number)?.hash ?? ''] : []),
    ];
    const sources = new Map([[name, text]]);
    for (const [way, one] of used.texts) if (one !== null) sources.set(join(dirname(name), way), one);
    return { hash: hashOf(parts), number, sources };
  }

  /** A hash of what the recording of a cut holds; null where it is too long to be read for that. */
  private recordingOf(path: string, text: string): string | null {
    const target = this.recording(path, text);
    return target === null ? '' : fileHash(this.host, target);
  }

  /** Where the recording of a cut lies; null: it has none. */
  private recording(path: string, text: string): string | null {
    if (!mentions(text, 'track')) return null;
    const track = scan('', text).statements.find((one) => one.kind === 'track');
    return track?.kind === 'track'
      ? trackInReach(this.host, path, track.path.text, this.episode.folder)
      : null;
  }

  /** Of any cut, whatever is wrong with it. A cut beside the story, or with an unusual number, may hang on the whole story. */
  inputs(path: string): readonly string[] {
    const { story, episode, host } = this;
    const cut = story?.of(path) ?? null;
    const { text } = cut ?? { text: fileText(host, path, path) };
    const number = text === null ? null : plainNumber(text);
    const found = new Set([path]);
    const manifest = manifestOf(host, episode);
    if (manifest !== null) found.add(manifest);
    const take = (one: string, itsText: string | null): void => {
      found.add(one);
      if (itsText === null) return;
      for (const way of this.usedBy(one, usesIn(itsText)).texts.keys()) found.add(resolve(dirname(one), way));
    };
    take(path, text);
    const recording = text === null ? null : this.recording(path, text);
    if (recording !== null) found.add(recording);
    if (!story || text === null) return [...found];
    if (!cut || number === null) for (const one of story.cuts()) take(one.path, one.text);
    else {
      for (const one of dissolving(story, path, number, text)) if (one) found.add(one.path);
      for (const one of this.group(story, number)?.cuts ?? []) take(one.path, one.text);
    }
    return [...found];
  }

  private usedBy(path: string, uses: readonly string[]): UsedTexts {
    if (uses.length === 0) return NOTHING;
    const folder = dirname(path);
    const id = JSON.stringify([folder, uses]);
    const known = this.used.get(id) ?? this.follow(folder, uses);
    this.used.set(id, known);
    return known;
  }

  private follow(folder: string, uses: readonly string[]): UsedTexts {
    const texts = new Map<string, string | null>();
    const seen = new Set<string>();
    const follow = (at: string, way: string, statements: readonly string[]): void => {
      for (const typed of statements.flatMap(usedPath)) {
        const target = resolve(at, typed);
        if (seen.has(target)) continue;
        seen.add(target);
        const here = join(way, typed);
        const allowed = isInReach(this.host, typed, at, this.episode.folder);
        const text = allowed ? fileText(this.host, target, here) : null;
        texts.set(here, text);
        if (text !== null) follow(dirname(target), dirname(here), usesIn(text));
      }
    };
    follow(folder, '', uses);
    const all = [...texts.values()].map((text) => text ?? '\0');
    return { texts, hash: hashOf(all), lenders: all.flatMap(lendersIn) };
  }

  /** The cuts that a cut borrows levels from, lends levels to, and so on from cut to cut. */
  private group(story: StoryOrder, number: string): Group | undefined {
    this.groups ??= this.findGroups(story);
    return this.groups.get(cutKey(number));
  }

  private findGroups(story: StoryOrder): ReadonlyMap<string, Group> {
    const groups = new Groups();
    const members = story.cuts().map((cut) => ({ cut, key: cutKey(cut.number) || `\0${cut.path}` }));
    for (const { cut, key } of members) {
      const used = this.usedBy(cut.path, cut.uses);
      for (const lender of [...cut.lenders, ...used.lenders]) groups.join(key, cutKey(lender));
    }
    if (groups.empty) return new Map();
    const byRoot = new Map<string, StoryCut[]>(groups.keys().map((key) => [groups.rootOf(key), []]));
    for (const { cut, key } of members) if (groups.has(key)) byRoot.get(groups.rootOf(key))!.push(cut);
    const found = new Map<string, Group>();
    for (const [root, cuts] of byRoot) {
      const texts = cuts.flatMap(({ path, text, uses }) => [text ?? '\0', this.usedBy(path, uses).hash]);
      found.set(root, { cuts, hash: hashOf(texts) });
    }
    return new Map(groups.keys().map((key) => [key, found.get(groups.rootOf(key))!]));
  }
}

interface Group {
  /** In story order. */
  readonly cuts: readonly StoryCut[];
  readonly hash: string;
}

function manifestOf(host: Host, { file }: Episode): string | null {
  return file === null ? null : resolve(host.cwd, file);
}

/** The cut before and the cut after, where there may be a dissolve between them and the cut; undefined: there is nothing to be known. */
function dissolving(
  story: StoryOrder,
  path: string,
  number: string,
  own: string,
): (StoryCut | null | undefined)[] {
  const around = story.around(path, number);
  return [around?.before ?? null, around?.after ?? null].map((cut) =>
    mentions(own, 'overlap') || mentions(cut?.text ?? '', 'overlap') ? cut : undefined,
  );
}

/** Numbers of the neighbours, and the texts of those that may have something to say of a dissolve, where there may be one. */
function beside(story: StoryOrder, path: string, number: string, own: string): string[] {
  return dissolving(story, path, number, own).flatMap((cut) => {
    if (cut === undefined) return ['', ''];
    const text = cut?.text ?? '\0';
    return [cut?.number ?? '\0', mentions(text, 'overlap') ? text : ''];
  });
}

const PLAIN_USE = /^use[ \t]*"([ !#-[\]-~]+)"[ \t]*(?:#[^\n\r]*)?$/;

/** The path that a `use` names; none where it cannot be read. */
function usedPath(statement: string): string[] {
  const plain = PLAIN_USE.exec(statement);
  if (plain) return [plain[1]!];
  return scan('', statement).statements.flatMap((one) => (one.kind === 'use' ? one.path.text : []));
}

function fileText(host: Host, path: string, name: string): string | null {
  const { ok, text } = readText(host, path, name);
  return ok ? text : null;
}

/** Larger recordings are reels of many cuts. */
const LARGEST_HASHED = 64 * 1024 * 1024;
const PART_BYTES = 1 << 20;

/** '' where there is no file to be read; null where it is too large. */
function fileHash(host: Host, path: string): string | null {
  const hash = createHash('sha256');
  for (let at = 0; ; at += PART_BYTES) {
    const part = host.readPart(path, at, PART_BYTES);
    if (!part.ok) return '';
    const { bytes, size } = part.value;
    if (size > LARGEST_HASHED) return null;
    hash.update(bytes);
    if (bytes.length < PART_BYTES) return hash.digest('base64url').slice(0, 22);
  }
}

/** Line ends do not count: a checkout on another system has the same texts. */
function hashOf(parts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const part of parts) {
    const text = part.includes('\r') ? part.replace(/\r\n?/g, '\n') : part;
    hash.update(`${text.length}:`).update(text);
  }
  return hash.digest('base64url').slice(0, 22);
}

/** Keys that belong together, however long the way from one to the other. */
class Groups {
  private readonly parents = new Map<string, string>();

  get empty(): boolean {
    return this.parents.size === 0;
  }

  has(key: string): boolean {
    return this.parents.has(key);
  }

  keys(): string[] {
    return [...this.parents.keys()];
  }

  rootOf(key: string): string {
    let root = key;
    for (let up = this.parents.get(root); up !== undefined && up !== root; up = this.parents.get(root))
      root = up;
    this.parents.set(key, root);
    return root;
  }

  join(one: string, other: string): void {
    const [a, b] = [this.rootOf(one), this.rootOf(other)];
    this.parents.set(b, a);
    this.parents.set(a, a);
  }
}
