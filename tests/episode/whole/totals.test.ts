import { beforeAll, describe, expect, test } from 'vitest';
import { generateEpisode } from './generate.js';
import { type Sum, sumsOf, total } from './sums.js';
import { worldOf } from './world.js';

const dissolved = (cuts: readonly { readonly overlapOut: number }[]) =>
  cuts.reduce((sum, { overlapOut }) => sum + overlapOut, 0);

describe('an episode of 300 cuts', () => {
  const episode = generateEpisode();
  let sums: ReadonlyMap<string, Sum>;

  beforeAll(async () => {
    sums = await sumsOf(worldOf(episode.files), episode);
  });

  test('has the rows that its times and handles come to', () => {
    expect(episode.cuts.map(({ number }) => sums.get(number)!.rows)).toEqual(
      episode.cuts.map(({ rows }) => rows),
    );
    // Under `overlap: half` the handles of a dissolve come to its length, and times run on end.
    expect(total(sums.values()).rows - dissolved(episode.cuts)).toBe(22 * 60 * 24);
  });
});
