/** What an episode comes to, added up from its exported tables alone; nothing here knows how the program counts. */

import { parse } from 'csv-parse/sync';
import type { MemoryHost } from '../../../src/host/memory-host.js';
import { run } from '../../command/run.js';
import type { GeneratedEpisode } from './generate.js';

export interface Sum {
  rows: number;
  levels: number;
  keys: number;
  breakdowns: number;
  inbetweens: number;
  drawings: number;
  reused: number;
  backgrounds: number;
}

const nothing = (): Sum => ({
  rows: 0,
  levels: 0,
  keys: 0,
  breakdowns: 0,
  inbetweens: 0,
  drawings: 0,
  reused: 0,
  backgrounds: 0,
});

/** The rows of an exported table, by the names of their columns. */
export async function table(host: MemoryHost, name: string, folder = 'e'): Promise<Record<string, string>[]> {
  const { status, out, error } = await run(host, 'export', folder, '--table', name);
  if (status !== 0) throw new Error(error);
  return parse(out, { columns: true, record_delimiter: '\r\n' });
}

/**
 * Sums of each cut by its number. Rows are the frames that the exposures name. A drawing is reused where the level takes its
 * drawings from a level that shows one of the same name, and counted by its kind everywhere else.
 */
export async function sumsOf(host: MemoryHost, { cuts }: GeneratedEpisode): Promise<Map<string, Sum>> {
  const sums = new Map(cuts.map(({ number }) => [number, nothing()]));
  const of = (cut: string) => sums.get(cut)!;
  const frames = new Map<string, Set<string>>();
  const levels = new Map<string, Set<string>>();
  const add = (map: Map<string, Set<string>>, key: string, value: string) =>
    map.set(key, (map.get(key) ?? new Set()).add(value));
  for (const { cut, level, frame, cel } of await table(host, 'exposures')) {
    add(frames, cut!, frame!);
    if (cel !== '') add(levels, cut!, level!);
  }
  for (const [cut, all] of frames) of(cut).rows = all.size;
  for (const [cut, all] of levels) of(cut).levels = all.size;

  const drawings = await table(host, 'drawings');
  const shown = new Set(drawings.map(({ cut, level, drawing }) => `${cut}/${level} ${drawing}`));
  const lenders = new Map(
    cuts.flatMap(({ number, reuses }) =>
      reuses.map(({ level, cut, from }) => [`${number}/${level}`, `${cut}/${from}`]),
    ),
  );
  const KINDS = { key: 'keys', breakdown: 'breakdowns', inbetween: 'inbetweens' } as const;
  for (const { cut, level, drawing, kind } of drawings) {
    const lender = lenders.get(`${cut}/${level}`);
    if (lender && shown.has(`${lender} ${drawing}`)) of(cut!).reused += 1;
    else {
      of(cut!)[KINDS[kind as keyof typeof KINDS]] += 1;
      of(cut!).drawings += 1;
    }
  }
  return sums;
}

export function total(sums: Iterable<Sum>): Sum {
  const all = nothing();
  for (const sum of sums) for (const key of Object.keys(all) as (keyof Sum)[]) all[key] += sum[key];
  return all;
}
