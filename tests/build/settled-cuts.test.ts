/** Cuts that `build --changed` leaves alone without compiling them. */

import { beforeEach, describe, expect, test } from 'vitest';
import { earlierPrintOf, readPrintRecord } from '../../src/build/earlier-print.js';
import type { PrintPlan } from '../../src/build/print-plan.js';
import { settledNumber, textsOfPrint } from '../../src/build/settled-cuts.js';
import { compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache } from '../../src/episode/episode.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { CUT, run } from '../command/run.js';
import { longCut, type PrintedEpisode, printedEpisode } from './printed-episode.js';

const PLAN: PrintPlan = {
  output: undefined,
  strict: false,
  settings: {},
  selection: {},
  against: { kind: 'last build' },
  changedPagesOnly: false,
  pages: null,
  oneFile: false,
  coversAPage: null,
  markedAgainst: null,
  threads: null,
};

let episode: PrintedEpisode;
const set = (name: string, text: string) => episode.set(name, text);

beforeEach(async () => {
  episode = await printedEpisode();
});

/** Numbers of the cuts that need not be compiled. */
async function settled(plan: Partial<PrintPlan> = {}): Promise<string[]> {
  const { host } = episode;
  const { jobs } = await findCuts(host, ['e'], plan.settings);
  const cache = newEpisodeCache();
  return jobs.flatMap((job) => {
    const record = readPrintRecord(host, `/work/out/${job.name.slice(2, -4)}.pdf`);
    const earlier = 'none' in record ? record : earlierPrintOf(record.cuts[0]!);
    return settledNumber(host, job, cache, { ...PLAN, ...plan }, earlier) ?? [];
  });
}

test('all of them, where nothing has changed', async () => {
  expect(await settled()).toEqual(['2', '10', '11']);
});

test('all but the one whose text has changed, if only by a comment', async () => {
  set('e/2.cut', `${longCut(2)}# retimed\n`);
  expect(await settled()).toEqual(['10', '11']);
});

describe('none', () => {
  test.each<[string, Partial<PrintPlan>]>([
    ['on other paper', { settings: { paper: 'A3' } }],
    ['of which other parts are wanted', { selection: { only: 'charts' } }],
    ['of which more is wanted', { selection: { trueSize: true } }],
    ['that is to be marked', { markedAgainst: 'HEAD' }],
  ])('%s', async (_, plan) => {
    expect(await settled(plan)).toEqual([]);
  });

  test('whose manifest has a warning now', async () => {
    set(
      'e/episode.yaml',
      `title: Ferry\nepisode: 3\nartists: {Z. Moor: [2]}\ncuts: ["*.cut", "x*.cut"]\nrows: 7\n`,
    );
    const { jobs } = await findCuts(episode.host, ['e']);
    expect(jobs[0]!.episode.diagnostics.map(({ severity }) => severity)).toContain('error');
    expect(await settled()).toEqual([]);
  });
});

test('no print of which a page is missing, and none that is damaged or of another program', async () => {
  await run(episode.host, 'build', 'e/2.cut', '-o', 'out', '--pages', '1');
  const damaged = episode.bytes('out/10.pdf')!;
  episode.host.files.set('/work/out/10.pdf', damaged.subarray(0, damaged.length - 9));
  const foreign = Buffer.from(episode.bytes('out/11.pdf')!)
    .toString('latin1')
    .replace(/\+[\w-]{16} /, `+${'0'.repeat(16)} `);
  episode.host.files.set('/work/out/11.pdf', Buffer.from(foreign, 'latin1'));
  expect(await settled()).toEqual([]);
  const { error } = await episode.build('--changed');
  expect(error).toMatch(/^cut 2: .*\ncut 10: .*\nwrote 2 files, \d+ pages, in out\n1 cut unchanged\n$/);
});

test('a cut with a warning is compiled each time, so that the warning is said each time', async () => {
  set('e/10.cut', `${CUT.replace('cut 1', 'cut 10')}follow A left 9999mm/f 1..4\n`);
  const first = await episode.build('--changed');
  expect(first.error).toMatch(/^Warning: /m);
  const second = await episode.build('--changed');
  expect(second.error).toMatch(/^Warning: /m);
  expect(await settled()).toEqual(['2', '11']);
});

test('two cuts of one number are both said to be so, each time', async () => {
  set('e/12.cut', longCut(2));
  await episode.build('--changed');
  const { error } = await episode.build('--changed');
  expect(error).toContain(': cut-twice\n');
  expect(error).toContain('4 cuts unchanged');
});

test('into one file: the same, cut by cut', async () => {
  await episode.build('--one-file');
  const done = await episode.written(async () => {
    expect((await episode.build('--one-file', '--changed')).error).toBe('3 cuts unchanged\n');
    episode.delete('e/10.cut');
    set('e/2.cut', `${longCut(2)}# retimed\n`);
    expect((await episode.build('--one-file', '--changed')).error).toContain(
      'cut 10: no cut of the episode any more\n',
    );
  });
  expect(done).toEqual(['e/2.cut', 'out/e.pdf']);
});

test('a cut that is saved while it is being printed has no hash of texts, so that the next run compiles it', async () => {
  const { host } = episode;
  const { jobs } = await findCuts(host, ['e']);
  const [job] = jobs;
  const compiled = compile(host, job!.path, job!.episode, { name: job!.name, cache: newEpisodeCache() });
  const texts = () =>
    textsOfPrint({ host, job: job!, compiled, solved: compiled.solved!, cache: newEpisodeCache() }, {});
  expect(texts()).toMatch(/^[\w-]{16}$/);
  set('e/2.cut', `${longCut(2)}# saved\n`);
  expect(texts()).toBeNull();
});
