/**
 * The cuts of an episode in story order, as the manifest has them. A file is read at the first question that needs it, and then
 * only as far as the other cuts have to do with it; so one cut among hundreds costs little.
 */

import { dirname, join } from 'node:path';
import type { Host } from '../host/host.js';
import { parse } from '../language/parse.js';
import type { StatementOf, Tree } from '../language/tree.js';
import type { LentLevel, Neighbours } from '../sheet/page-look.js';
import { bind } from '../shot/bind-cut.js';
import type { Shot } from '../shot/shot.js';
import { cutKey, cutNumberOf, type Episode, type EpisodeCache } from './episode.js';
import { filesOf, leadsOut } from './file-patterns.js';
import { lies } from './find-cuts.js';
import { readText } from './read-text.js';
import { findUses, lendersIn, mentions, plainNumber, scan, usesIn } from './used-files.js';

/** A level that takes its drawings from another cut. */
export interface Borrowed {
  /** The level here; the other cut's number as written, and its level. */
  readonly level: string;
  readonly cut: string;
  readonly from: string;
}

/** A level that another cut takes its drawings from. */
export interface Taken {
  readonly level: string;
  /** The other cut, and its level. */
  readonly by: StoryCut;
  readonly as: string;
}

/** One cut of the story. */
export interface StoryCut {
  /** Absolute path. */
  readonly path: string;
  /** What messages call it. */
  readonly name: string;
  /** The number as written; '' where it cannot be had. */
  readonly number: string;
  /** Null where the file cannot be read. */
  readonly text: string | null;
  /** The statements that concern other cuts; read when they are asked for, like all that follows. */
  readonly tree: Tree;
  /** Its own statements that may be a `use`, as they stand there. */
  readonly uses: readonly string[];
  /** Numbers of the cuts that its own text may reuse levels of. */
  readonly lenders: readonly string[];
}

/** A cut of the story, as its text has it. */
function storyCut(path: string, name: string, text: string | null, number?: string): StoryCut {
  let tree: Tree | null = null;
  let uses: readonly string[] | null = null;
  let lenders: readonly string[] | null = null;
  const read = (): Tree => {
    tree ??= scan(name, text ?? '');
    return tree;
  };
  return {
    path,
    name,
    number: number ?? cutNumberOf(read()) ?? '',
    text,
    get tree() {
      return read();
    },
    get uses() {
      uses ??= usesIn(text ?? '');
      return uses;
    },
    get lenders() {
      lenders ??= lendersIn(text ?? '');
      return lenders;
    },
  };
}

/** The story of an episode; the same one for all cuts of a run. Null for a cut that belongs to none. */
export function storyOf(host: Host, episode: Episode, cache: EpisodeCache): StoryOrder | null {
  const { folder } = episode;
  if (folder === null) return null;
  const known = cache.stories.get(folder);
  if (known) return known;
  const story = new StoryOrder(host, episode, folder, cache);
  cache.stories.set(folder, story);
  return story;
}

export class StoryOrder {
  private readonly files: readonly string[];
  private readonly looked = new Map<number, StoryCut | null>();
  private readonly places: ReadonlyMap<string, number>;
  private readonly reuses = new WeakMap<StoryCut, readonly Borrowed[]>();
  /** By a folder and the lines that say `use`: whether a level of a used file reuses another. */
  private readonly lending = new Map<string, boolean>();
  private taken: Map<string, Taken[]> | null = null;
  private readonly root: string;
  /** Places by the cuts' numbers, for the first `known` files. */
  private readonly byKey = new Map<string, number>();
  private known = 0;

  constructor(
    private readonly host: Host,
    private readonly episode: Episode,
    private readonly folder: string,
    private readonly cache: EpisodeCache,
  ) {
    this.root = host.real(folder);
    const patterns = episode.cuts?.map(({ text }) => text) ?? ['**/*.cut'];
    const files = patterns
      .filter((pattern) => !leadsOut(pattern))
      .flatMap((pattern) => filesOf(host, folder, pattern, true));
    this.files = [...new Set(files.map((file) => join(folder, file)))];
    this.places = new Map(this.files.map((path, place) => [path, place]));
  }

  /** All cuts in story order; reads every file. */
  cuts(): readonly StoryCut[] {
    return this.files.flatMap((_, place) => this.at(place) ?? []);
  }

  /** The cut whose file lies at a path (absolute); null: the story has none there. */
  of(path: string): StoryCut | null {
    const place = this.places.get(path);
    return place === undefined ? null : this.at(place);
  }

  /** The first cut of that number; reads no further than to it. */
  find(number: string): StoryCut | null {
    const place = this.placeOf(number);
    return place === null ? null : this.at(place);
  }

  /** Its place in the story, from 0. */
  placeOf(number: string): number | null {
    const key = cutKey(number);
    while (!this.byKey.has(key) && this.known < this.files.length) {
      const place = this.known++;
      const found = cutKey(this.at(place)?.number ?? '');
      if (found !== '' && !this.byKey.has(found)) this.byKey.set(found, place);
    }
    return this.byKey.get(key) ?? null;
  }

  /** How many places the story has. */
  get length(): number {
    return this.files.length;
  }

  /**
   * What stands before and after a cut; null at an end of the story. A cut that is no file of the story (another version of one,
   * standard input) has the place of its number; without a place the answer is null.
   */
  around(path: string | null, number: string): { before: StoryCut | null; after: StoryCut | null } | null {
    const own =
      (path === null ? undefined : this.places.get(path)) ?? this.places.get(this.find(number)?.path ?? '');
    if (own === undefined) return null;
    const next = (step: 1 | -1): StoryCut | null => {
      for (let place = own + step; place >= 0 && place < this.files.length; place += step) {
        const cut = this.at(place);
        // A copy whose number was not changed is no neighbour.
        if (cut && (cut.number === '' || cutKey(cut.number) !== cutKey(number))) return cut;
      }
      return null;
    };
    return { before: next(-1), after: next(1) };
  }

  /** The levels of a cut that take their drawings from other cuts, also where a used file says so. */
  borrowed(cut: StoryCut): readonly Borrowed[] {
    const known = this.reuses.get(cut) ?? this.findBorrowed(cut);
    this.reuses.set(cut, known);
    return known;
  }

  /** The levels of a cut that others take, in story order. Reads every file once. */
  takenFrom(number: string): readonly Taken[] {
    this.taken ??= this.findTaken();
    return this.taken.get(cutKey(number)) ?? [];
  }

  private findTaken(): Map<string, Taken[]> {
    const found = new Map<string, Taken[]>();
    for (const by of this.cuts()) {
      for (const { cut, from, level } of this.borrowed(by)) {
        const key = cutKey(cut);
        if (key === cutKey(by.number)) continue;
        const own = found.get(key);
        if (own) own.push({ level: from, by, as: level });
        else found.set(key, [{ level: from, by, as: level }]);
      }
    }
    return found;
  }

  /** The cut at a place; null for a file that holds none. */
  at(place: number): StoryCut | null {
    const known = this.looked.get(place);
    if (known !== undefined) return known;
    const cut = this.look(this.files[place]!);
    this.looked.set(place, cut);
    return cut;
  }

  /** Null for a file that holds no cut. */
  private look(path: string): StoryCut | null {
    const cut = this.read(path);
    if (cut) this.cache.cuts.set(path, cut);
    return cut;
  }

  private read(path: string): StoryCut | null {
    const { host, folder } = this;
    const name = join(dirname(this.episode.file!), path.slice(folder.length).replace(/^\//, ''));
    if (!lies(host.real(path), this.root)) return null;
    const { text, ok } = readText(host, path, name);
    if (!ok) return host.kind(path) === 'file' ? storyCut(path, name, null, '') : null;
    const earlier = this.cache.earlierCuts.get(path);
    if (earlier?.text === text && earlier.name === name) return earlier;
    const plain = plainNumber(text);
    if (plain !== null) return storyCut(path, name, text, plain);
    const cut = storyCut(path, name, text);
    const says = (word: string): boolean =>
      cut.tree.statements.some(({ kind }) => kind === word) ||
      cut.tree.broken.some((one) => one.word === word);
    return says('cut') || says('time') ? cut : null;
  }

  private findBorrowed(cut: StoryCut): readonly Borrowed[] {
    const { text, path, name } = cut;
    if (text === null) return [];
    if (!this.usesLending(cut)) {
      if (!mentions(text, 'reuse')) return [];
      return cut.tree.statements.flatMap((one) => (one.kind === 'level' ? reuseOf(one) : []));
    }
    // Whether the cut has such a level at all, and says otherwise itself, only the whole text tells.
    const whole = parse(name, text).tree;
    const used = findUses(this.host, path, whole, this.folder, this.cache).trees;
    const levels = bind(whole, used, this.episode.settings, { unread: true }).shot?.levels ?? [];
    return levels.flatMap(({ name: level, reuse }) =>
      reuse ? [{ level, cut: reuse.cut, from: reuse.level }] : [],
    );
  }

  /** Whether a file that the cut uses says that a level reuses another. Cuts of a folder that use the same are asked once. */
  private usesLending(cut: StoryCut): boolean {
    if (cut.uses.length === 0) return false;
    const id = JSON.stringify([dirname(cut.path), cut.uses]);
    const known =
      this.lending.get(id) ??
      findUses(this.host, cut.path, cut.tree, this.folder, this.cache).trees.some(({ statements }) =>
        statements.some((statement) => statement.kind === 'level' && statement.reuse !== null),
      );
    this.lending.set(id, known);
    return known;
  }
}

function reuseOf({ level, reuse }: StatementOf<'level'>): Borrowed[] {
  return reuse ? [{ level: level.text, cut: reuse.cut, from: reuse.level }] : [];
}

// ---- what other cuts of the episode add to the sheet of one cut

/** Plain data: equal for equal texts of the whole episode. */
export interface Surroundings {
  /** The cuts that it overlaps with. */
  readonly neighbours: Neighbours;
  /** Levels of this cut that others reuse, in story order. */
  readonly lent: readonly LentLevel[];
}

export const nothingAround: Surroundings = { neighbours: {}, lent: [] };

/**
 * Looks around a cut whose text lies at `path` (absolute), or nowhere. Reads every cut of the episode once a run, and no further
 * than its references. Never throws.
 */
export function surroundingsOf(
  host: Host,
  path: string | null,
  shot: Shot,
  episode: Episode,
  cache: EpisodeCache,
): Surroundings {
  const story = storyOf(host, episode, cache);
  if (!story || shot.cut === '') return nothingAround;
  return { neighbours: neighboursOf(path, shot, story), lent: lentOf(shot, story) };
}

function neighboursOf(path: string | null, { cut, camera }: Shot, story: StoryOrder): Neighbours {
  const ways = camera.light.flatMap((light) => (light.kind === 'overlap' ? [light.way] : []));
  const around = ways.length > 0 ? story.around(path, cut) : null;
  const before = ways.includes('in') ? around?.before?.number : '';
  const after = ways.includes('out') ? around?.after?.number : '';
  return { ...(before ? { before } : {}), ...(after ? { after } : {}) };
}

function lentOf({ cut, levels }: Shot, story: StoryOrder): LentLevel[] {
  const names = new Set(levels.map(({ name }) => name));
  return story
    .takenFrom(cut)
    .filter(({ level }) => names.has(level))
    .map(({ level, by, as }): LentLevel => ({ level, cut: by.number, as }));
}
