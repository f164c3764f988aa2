/** What other cuts of the episode add to the sheet of one cut. */

import type { Host } from '../host/host.js';
import type { LentLevel, Neighbours } from '../sheet/page-look.js';
import type { Shot } from '../shot/shot.js';
import type { Episode } from './episode.js';
import type { EpisodeCache } from './episode-cache.js';
import { type StoryOrder, storyOf } from './story.js';

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
