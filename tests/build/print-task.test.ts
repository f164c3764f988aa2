import { describe, expect, test } from 'vitest';
import type { PrintPlan } from '../../src/build/print-plan.js';
import { checkWorkers, makeOfTask, printWorkers } from '../../src/build/print-task.js';
import { compile } from '../../src/episode/compile-cut.js';
import { newEpisodeCache, noEpisode } from '../../src/episode/episode.js';
import { memoryHost } from '../../src/host/memory-host.js';

const PLAN: PrintPlan = {
  output: 'out',
  strict: false,
  settings: {},
  selection: {},
  against: { kind: 'nothing' },
  changedPagesOnly: false,
  pages: null,
  oneFile: false,
  coversAPage: null,
  markedAgainst: null,
  threads: 3,
};
const TEXT = 'cut 1\ntime 1+0\nA: 1..\nB: x..\n';

async function made(plan: Partial<PrintPlan>, text = TEXT): Promise<unknown> {
  const host = memoryHost({ 'a.cut': text });
  const cache = newEpisodeCache();
  const job = { path: '/work/a.cut', name: 'a.cut', episode: noEpisode, named: true };
  const compiled = compile(host, job.path, noEpisode, { name: job.name, cache });
  const { task } = printWorkers(host, { ...PLAN, ...plan }, [job], () => '/work/a.pdf')!(9)!;
  const copy = structuredClone({ task: task as object, job });
  return makeOfTask(host, copy.task)(compiled, copy.job, cache);
}

describe('workers are asked', () => {
  const host = memoryHost();

  test('where every cut is printed as it is', () => {
    expect(printWorkers(host, PLAN, [])!(9)).toMatchObject({ threads: 3, command: 'build' });
    expect(printWorkers(host, { ...PLAN, threads: 2 }, [])!(9)).toMatchObject({ threads: 2 });
    expect(printWorkers(host, { ...PLAN, threads: 1 }, [])!(9)).toBeUndefined();
    const changed: PrintPlan = { ...PLAN, against: { kind: 'last build' } };
    expect(printWorkers(host, changed, [])!(9)).toMatchObject({ threads: 3 });
    expect(printWorkers(host, { ...changed, oneFile: true }, [])).toBeUndefined();
    expect(printWorkers(host, { ...PLAN, against: { kind: 'revision', rev: 'HEAD' } }, [])).toBeUndefined();
    expect(printWorkers(host, { ...PLAN, markedAgainst: 'HEAD' }, [])).toBeUndefined();
  });

  test('to check', async () => {
    expect(checkWorkers(host, 1)(9)).toBeUndefined();
    const { command, task } = checkWorkers(host, 2)(9)!;
    expect(command).toBe('check');
    const cache = newEpisodeCache();
    const job = { path: '/work/a.cut', name: 'a.cut', episode: noEpisode, named: true };
    expect(await makeOfTask(host, task)(compile(host, job.path, noEpisode), job, cache)).toBe(null);
  });
});

describe('a worker prints', () => {
  test('a file', async () => {
    const file = { cut: '1', pages: 1, bytes: expect.any(Uint8Array) };
    expect(await made({})).toEqual({ changes: null, made: file });
    expect(await made({ against: { kind: 'last build' } })).toEqual({
      changes: expect.objectContaining({ cut: '1', pages: 1, notCompared: { why: 'not-printed' } }),
      made: file,
    });
  });

  test('a part of a file', async () => {
    expect(await made({ oneFile: true })).toMatchObject({
      cut: '1',
      language: 'en',
      printed: { title: 'Cut 1', parts: [{ pages: [{ label: '1', part: 'sheet' }] }] },
      record: { cut: '1', pages: [{ label: '1', here: true }] },
    });
  });

  test('nothing where no page is chosen, or where the cut is not fit for it', async () => {
    expect(await made({ pages: { range: '2-', includes: () => true } })).toEqual({
      changes: null,
      made: null,
    });
    expect(await made({ strict: true })).toBe(null);
    expect(await made({}, 'cut 1\n')).toBe(null);
    expect(await made({}, 'phrase walk = 1-2\n')).toBe(null);
  });
});
