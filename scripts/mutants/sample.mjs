/** Which mutants a sample tries: in each file as large a part of them as in the whole, and the same ones each time. */

import { createHash } from 'node:crypto';

/** Ids of the chosen; another seed chooses others. `files` has an array `[path, ids]` for each file, the ids in their order in the file. */
export function sampleOf(files, count, seed) {
  const rank = (text) => createHash('sha256').update(`${seed} ${text}`).digest('hex');
  const all = files.reduce((sum, [, ids]) => sum + ids.length, 0);
  return new Set(
    files.flatMap(([file, ids]) =>
      ids
        .map((id, index) => ({ id, rank: rank(`${file} ${index}`) }))
        .sort((a, b) => (a.rank < b.rank ? -1 : 1))
        .slice(0, Math.round((count * ids.length) / all))
        .map(({ id }) => id),
    ),
  );
}
