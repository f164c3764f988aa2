/** `build --shard 2/8`: a part of the cuts, for one of several machines. */

import { createHash } from 'node:crypto';
import { basename, relative, sep } from 'node:path';
import type { Found, Job } from '../episode/find-cuts.js';

/** One part of so many; `index` from 1. */
export interface Shard {
  readonly index: number;
  readonly count: number;
}

/**
 * The cuts of a shard. Each cut belongs to one shard of a count, by its file's name in its episode: which other cuts there are does not
 * matter. What only all cuts together tell (artists without a cut, prints of cuts that are gone) is nobody's.
 */
export function shardOf(found: Found, shard: Shard): Found {
  return { ...found, jobs: found.jobs.filter((job) => isIn(job, shard)), whole: [] };
}

function isIn({ path, name, episode }: Job, { index, count }: Shard): boolean {
  const own =
    path === null ? name : episode.folder === null ? basename(path) : relative(episode.folder, path);
  const key = own.split(sep).join('/').normalize('NFC');
  return createHash('sha256').update(key).digest().readUInt32BE(0) % count === index - 1;
}
