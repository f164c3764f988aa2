/** The cut list against sums that are made from the exported tables and from the times that the texts say. */

import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, test } from 'vitest';
import type { ExportedList } from '../../../src/export/cut-list-export.js';
import type { MemoryHost } from '../../../src/host/memory-host.js';
import { lookInto } from '../../command/pdf.js';
import { run } from '../../command/run.js';
import { ARTISTS, generateEpisode } from './generate.js';
import { type Sum, sumsOf, total } from './sums.js';
import { edit, worldOf } from './world.js';

const sum = <T>(of: readonly T[], value: (one: T) => number) => of.reduce((all, one) => all + value(one), 0);

async function listed(host: MemoryHost): Promise<ExportedList> {
  const { status, out, error } = await run(host, 'list', 'e', '--json');
  expect({ status, error }).toEqual({ status: 0, error: '' });
  return JSON.parse(out) as ExportedList;
}

describe('an episode of 300 cuts', () => {
  const episode = generateEpisode();
  const { cuts } = episode;
  const dissolved = sum(cuts, ({ overlapOut }) => overlapOut);
  let host: MemoryHost;
  let sums: ReadonlyMap<string, Sum>;
  let list: ExportedList;

  beforeAll(async () => {
    host = worldOf(episode.files);
    sums = await sumsOf(host, episode);
    list = await listed(host);
  }, 600_000);

  test('has the rows that its times and handles come to', () => {
    expect(cuts.map(({ number }) => sums.get(number)!.rows)).toEqual(cuts.map(({ rows }) => rows));
    // Under `overlap: half` the handles of a dissolve come to its length, and times run on end.
    expect(total(sums.values()).rows - dissolved).toBe(22 * 60 * 24);
  });

  test('is listed with the sums of the tables, cut by cut', () => {
    expect(list.cuts.map(({ cut }) => cut)).toEqual(cuts.map(({ number }) => number));
    const counted = list.cuts.map(({ counted }) => {
      const { rows, levels, counts } = counted!;
      return { rows, levels, ...counts };
    });
    expect(counted).toEqual(cuts.map(({ number }) => sums.get(number)));
  });

  test('and in all', () => {
    const { rows: _, levels: __, ...counts } = total(sums.values());
    expect(list.totals.counts).toEqual(counts);
    expect(list.totals).toMatchObject({ cuts: 300, errors: 0, warnings: 0, unsound: 0, withoutArtist: 0 });
    expect(counts.reused).toBeGreaterThan(50);
  });

  test('runs for as long as its rows without the handles, and exactly to its budget', () => {
    const running = total(sums.values()).rows - dissolved;
    expect(list.totals).toMatchObject({ running, time: running, over: 0 });
    expect(list.budget).toBe(running);
    let start = 0;
    for (const [i, { timeFrames }] of cuts.entries()) {
      expect(list.cuts[i]!.counted).toMatchObject({ time: timeFrames, start, running: timeFrames });
      start += timeFrames;
    }
  });

  test('comes to the same by artist', () => {
    const wanted = ARTISTS.map((name) => {
      const own = cuts.filter(({ artist }) => artist === name);
      return {
        name,
        cuts: own.length,
        shared: 0,
        running: sum(own, ({ timeFrames }) => timeFrames),
        drawings: sum(own, ({ number }) => sums.get(number)!.drawings),
      };
    });
    expect([...list.artists].sort((a, b) => (a.name < b.name ? -1 : 1))).toEqual(wanted);
  });

  test('is over its budget with one frame more', async () => {
    const longer = worldOf(episode.files);
    edit(longer, `e/${cuts[0]!.file}`, (text) =>
      text.replace(/^time .*/m, `time ${cuts[0]!.timeFrames + 1}`),
    );
    const { status, error } = await run(longer, 'list', 'e', '--check');
    expect({ status, error }).toEqual({
      status: 1,
      error: expect.stringMatching(/^Error: .*\(1 frame\).*\ne\/episode.yaml:\d+:\d+: list-over-budget$/m),
    });
  });
});

describe('with times that hold the whole dissolve', () => {
  const episode = generateEpisode({ cuts: 80, seed: 8, overlap: 'full' });

  test('each dissolve runs once', async () => {
    const host = worldOf(episode.files);
    const { cuts, runningFrames } = episode;
    const dissolved = sum(cuts, ({ overlapOut }) => overlapOut);
    expect(dissolved).toBeGreaterThan(0);
    const rows = total((await sumsOf(host, episode)).values()).rows;
    expect(rows - dissolved).toBe(runningFrames);
    const { totals, cuts: listedCuts, artists } = await listed(host);
    expect(totals).toMatchObject({ time: rows, running: runningFrames });
    expect(sum(listedCuts, ({ counted }) => counted!.running)).toBe(runningFrames);
    expect(sum(artists, ({ running }) => running)).toBe(runningFrames);
  });

  test('has the same figures as CSV', async () => {
    const { cuts } = episode;
    const host = worldOf(episode.files);
    const sums = await sumsOf(host, episode);
    const { out } = await run(host, 'list', 'e', '--csv');
    const rows: Record<string, string>[] = parse(out, { columns: true, record_delimiter: '\r\n' });
    const keys = ['rows', 'levels', 'keys', 'breakdowns', 'inbetweens', 'drawings', 'reused'] as const;
    const read = rows.map((row) => Object.fromEntries(keys.map((key) => [key, Number(row[key])])));
    const wanted = cuts.map(({ number }) => sums.get(number)!);
    expect(read).toEqual(wanted.map((sum) => Object.fromEntries(keys.map((key) => [key, sum[key]]))));
    expect(rows.map(({ frames }) => Number(frames))).toEqual(cuts.map(({ timeFrames }) => timeFrames));
    expect(rows.map(({ artists }) => artists)).toEqual(cuts.map(({ artist }) => artist));
  });
});

test('the pages that the list names are those that are printed', async () => {
  const episode = generateEpisode({ cuts: 12, seed: 5 });
  const host = worldOf(episode.files);
  const { cuts } = await listed(host);
  await run(host, 'build', 'e', '-o', 'out');
  for (const [i, { pages }] of cuts.entries()) {
    const name = episode.cuts[i]!.file.replace(/^cuts\/(.*)\.cut$/, '/work/out/$1.pdf');
    const { labels } = await lookInto(host.files.get(name)!);
    expect({ name, all: pages!.all }).toEqual({ name, all: labels.length });
    expect(pages!.sheet).toBe(labels.filter((label) => /^\d/.test(label)).length);
  }
});
