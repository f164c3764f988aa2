import { describe, expect, test } from 'vitest';
import { buildCuts } from '../../src/build/build-cuts.js';
import type { PrintPlan } from '../../src/build/print-plan.js';
import { UsageError } from '../../src/build/usage-error.js';
import { ConsoleReporter } from '../../src/command/console-reporter.js';
import { findCuts } from '../../src/episode/find-cuts.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { fileNames } from '../command/run.js';

const PLAN: PrintPlan = {
  output: 'out/',
  strict: false,
  settings: {},
  selection: { only: 'sheet' },
  against: { kind: 'nothing' },
  changedPagesOnly: false,
  pages: null,
  oneFile: false,
  coversAPage: null,
  markedAgainst: null,
  threads: null,
};
const cut = (number: number) => `cut ${number}\ntime 1+0\nA: 1--2..\n`;
const EPISODE = { 'episode.yaml': '', '1.cut': cut(1), '2.cut': cut(2) };

async function built(
  plan: Partial<PrintPlan>,
  files: readonly string[] = ['episode.yaml'],
  then: Readonly<Record<string, string>> = EPISODE,
  now: Readonly<Record<string, string>> = EPISODE,
) {
  const host = memoryHost(now);
  host.revisions.set('HEAD', memoryHost(then));
  const found = await findCuts(host, files);
  const steps: string[] = [];
  const progress = {
    start: (what: string, total: number) => void steps.push(`${what} ${total}`),
    step: () => void steps.push('step'),
    clear: () => void steps.push('clear'),
  };
  await buildCuts(
    host,
    new ConsoleReporter(host, 'human', false),
    found,
    files,
    { ...PLAN, ...plan },
    progress,
  );
  return { said: host.complaints(), steps, pdfs: fileNames(host).filter((name) => name.endsWith('.pdf')) };
}

test('a plan prints a file for each cut, or one for all', async () => {
  const apart = await built({});
  expect([apart.pdfs, apart.said]).toEqual([['out/1.pdf', 'out/2.pdf'], 'wrote 2 files, 2 pages, in out\n']);
  const joined = await built({ oneFile: true, output: 'all.pdf' });
  expect([joined.pdfs, joined.said]).toEqual([['all.pdf'], 'wrote all.pdf: 2 pages\n']);
});

test('progress hears of every cut, and of the end', async () => {
  expect((await built({})).steps).toEqual(['printing 2', 'step', 'step', 'clear']);
});

describe('a cut that was there at the revision and is no more', () => {
  const since = { against: { kind: 'revision', rev: 'HEAD' } } as const;
  const then = { ...EPISODE, '3.cut': cut(3) };

  test('is named where the whole episode is printed', async () => {
    expect((await built(since, ['episode.yaml'], then)).said).toBe(
      'cut 3: no cut of the episode any more\n2 cuts unchanged since HEAD\n',
    );
  });

  test('is nobody’s concern where cuts were named', async () => {
    expect((await built(since, ['1.cut'], then)).said).toBe('1 cut unchanged since HEAD\n');
  });
});

test.each([
  ['a revision that git does not know', { against: { kind: 'revision', rev: 'nope' } }],
  ['marks against one', { markedAgainst: 'nope' }],
  ['one file for two cuts', { output: 'x.pdf' }],
  ['a part that no cut has', { selection: { only: 'camera' } }],
] as const)('wrong use is thrown: %s', async (_, plan) => {
  await expect(built(plan)).rejects.toBeInstanceOf(UsageError);
});

test('nothing found is nothing done', async () => {
  expect(await built({}, [])).toEqual({ said: '', steps: [], pdfs: [] });
});

test('what cannot be read of the progress is said where it is printed, on covers', async () => {
  const now = { ...EPISODE, 'progress.csv': 'cut,stage,state,date,person,note\n1,layout,done,soon,,\n' };
  const said = async (only: 'cover' | 'sheet') =>
    (await built({ selection: { only } }, ['episode.yaml'], EPISODE, now)).said;
  expect(await said('cover')).toContain('progress.csv:2:15: progress-faulty\n');
  expect(await said('sheet')).toBe('wrote 2 files, 2 pages, in out\n');
  // Nothing needs to be known of it.
  expect((await built({ selection: { only: 'cover' } })).said).toBe('wrote 2 files, 2 pages, in out\n');
});
