/** What other cuts of the episode have to do with one cut: what of them stands on its sheet, and what its checks look at. */

import { createHash } from 'node:crypto';
import type { Host } from '../host/host.js';
import type { Lent, Neighbours } from '../sheet/look.js';
import { cutKey, type Episode } from './episode.js';
import { type End, storyEnd } from './overlaps.js';
import { readText } from './read.js';
import type { Shelf } from './shelf.js';
import { type Story, type StoryCut, storyCut, storyOf } from './story.js';

/** Plain data, the same for the same texts: its JSON changes when anything outside the cut's own text changes what is printed. */
export interface Surroundings {
  /** The cuts that it overlaps with, for its sheet. */
  readonly neighbours: Neighbours;
  /** Levels of this cut that others reuse, in story order. */
  readonly lent: readonly Lent[];
  /** Lengths that the neighbours give to their dissolves with this cut, in frames and frames a second; null: none, or none known. */
  readonly facing: { readonly before: Facing | null; readonly after: Facing | null };
  /** Hashes of the files that the cut uses and of the cuts whose levels it reuses, with all that those use and reuse. */
  readonly sources: readonly string[];
}

export type Facing = readonly [frames: number, fps: number];

/** What surrounds a cut that belongs to no episode. */
export const nothingAround: Surroundings = {
  neighbours: {},
  lent: [],
  facing: { before: null, after: null },
  sources: [],
};

/**
 * Looks around a cut. `path`: where its text lies (absolute), or null; `text`: the text, where it is not that of the file.
 * Reads every cut of the episode once a run, and no further than its references. Never throws.
 */
export function surroundingsOf(
  host: Host,
  path: string | null,
  episode: Episode,
  shelf: Shelf,
  text?: string,
): Surroundings {
  const story = storyOf(host, episode, shelf);
  if (!story) return nothingAround;
  const cut = ownCut(host, path, story, text);
  if (cut.number === '') return { ...nothingAround, sources: sourcesOf(cut, story) };
  const around = story.around(path, cut.number) ?? { before: null, after: null };
  const overlaps = (way: 'in' | 'out'): boolean =>
    cut.tree.statements.some((one) => one.kind === 'overlap' && one.way === way);
  const { before, after } = around;
  return {
    neighbours: {
      ...(overlaps('in') && before && before.number !== '' ? { before: before.number } : {}),
      ...(overlaps('out') && after && after.number !== '' ? { after: after.number } : {}),
    },
    lent: lentOf(cut.number, story),
    facing: {
      before: before && facing(storyEnd('out', before, episode.settings)),
      after: after && facing(storyEnd('in', after, episode.settings)),
    },
    sources: sourcesOf(cut, story),
  };
}

/** Levels of a cut that other cuts reuse. */
function lentOf(number: string, story: Story): Lent[] {
  const key = cutKey(number);
  return story.cuts().flatMap((other) =>
    cutKey(other.number) === key
      ? []
      : story
          .borrowed(other)
          .filter(({ cut }) => cutKey(cut) === key)
          .map(({ level, from }): Lent => ({ level: from, cut: other.number, as: level })),
  );
}

function facing(end: End): Facing | null {
  return end.kind === 'overlap' ? [end.frames, end.fps] : null;
}

function ownCut(host: Host, path: string | null, story: Story, text: string | undefined): StoryCut {
  const known = path === null || text !== undefined ? null : story.fileAt(path);
  if (known) return known;
  const name = path ?? '';
  return storyCut(name, name, text ?? (path === null ? '' : readText(host, path, name).text));
}

/** One hash for each text that a cut uses or takes drawings from, by whatever way. */
function sourcesOf(cut: StoryCut, story: Story): string[] {
  const found: string[] = [];
  const seen = new Set<string>([cutKey(cut.number)]);
  const add = (text: string) =>
    void found.push(createHash('sha256').update(text.replace(/\r\n?/g, '\n')).digest('hex').slice(0, 16));
  const follow = (one: StoryCut): void => {
    for (const text of story.usesOf(one)?.sources.values() ?? []) add(text);
    for (const { cut: number } of story.borrowed(one)) {
      if (seen.has(cutKey(number))) continue;
      seen.add(cutKey(number));
      const other = story.find(number);
      if (!other) continue;
      add(other.text ?? '');
      follow(other);
    }
  };
  follow(cut);
  return found;
}
