import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { type MemoryHost, memoryHost } from '../../src/host/memory-host.js';
import { fileNames, run } from '../command/run.js';
import { withWorkers } from '../episode/memory-workers.js';

const CUTS = 30;
const name = (number: number): string => `cuts/c${String(number).padStart(3, '0')}.cut`;

/** Cuts that dissolve into each other, reuse levels, hold a text in Japanese, have errors, warnings and hints. */
function text(number: number): string {
  const lines = [`cut ${number} "${number % 4 === 0 ? '波止場' : 'Quay'}"`, 'time 3+0'];
  if (number % 11 === 0) lines.push('A: 1:3');
  else lines.push(`A: 1--${(number % 5) + 2}..`);
  if (number % 6 === 1) lines.push('overlap out 12');
  if (number % 6 === 2) lines.push('overlap in 12');
  if (number % 8 === 3) lines.push(`B = ${number - 1}.A`);
  if (number % 9 === 0) lines.push('C: x..');
  lines.push('truck A@1+1 > B@2+0', 'field A 100%', 'field B 60%');
  return `${lines.join('\n')}\n`;
}

function episode(): MemoryHost {
  return memoryHost({
    'episode.yaml': 'title: Quay\nepisode: 2\nartists: { M. Arai: [1, 2, 3] }\n',
    ...Object.fromEntries(Array.from({ length: CUTS }, (_, i) => [name(i + 1), text(i + 1)])),
    'cuts/house.cut': 'phrase walk = 1-2\n',
  });
}

/** Of all files, by their names. */
const hashes = ({ files }: MemoryHost): unknown =>
  [...files].map(([name, bytes]) => [name, createHash('sha256').update(bytes).digest('hex')]).sort();

describe.each([
  { argv: ['check', '.'] },
  { argv: ['check', '.', '--format', 'json', '--strict'] },
  { argv: ['build', '.', '-o', 'out'] },
  { argv: ['build', '.', '-o', 'out', '--only', 'camera', '--pages', '1-'] },
  { argv: ['build', '.', '-o', 'out', '--parts', 'all', '--shard', '2/3', '--strict'] },
  { argv: ['build', '.', '-o', 'out', '--changed'] },
  { argv: ['build', '.', '-o', 'all.pdf', '--one-file'] },
  { argv: ['build', '.', '-o', 'all.pdf', '--one-file', '--true-size', '--labels', 'ja', '--pages', '1'] },
])('$argv', ({ argv }) => {
  test.each([2, 3])('with %i threads writes the same bytes and says the same', async (threads) => {
    const alone = episode();
    const expected = await run(alone, ...argv, '--jobs', '1');
    const host = episode();
    const workers = withWorkers(host);
    expect(await run(host, ...argv, '-j', `${threads}`)).toEqual(expected);
    expect(hashes(host)).toEqual(hashes(alone));
    expect(workers.answers).toHaveLength(threads - 1);
    expect(Math.min(...workers.answers)).toBeGreaterThan(0);
  });
});

test.each([
  ['--changed in one file', ['build', '.', '-o', 'all.pdf', '--changed', '--one-file']],
  ['covers', ['build', '.', '--only', 'cover', '--up', '4']],
  ['fixes', ['check', '.', '--diff']],
  ['one cut', ['check', name(1)]],
])('%s: no worker is asked', async (_, argv) => {
  const host = episode();
  const workers = withWorkers(host);
  await run(host, ...argv, '-j', '4');
  expect(workers.commands).toEqual([]);
});

test('with --changed the workers do the cuts that have changed, and nobody those that have not', async () => {
  const argv = ['build', '.', '-o', 'out', '--changed', '--jobs'];
  const changed = async (threads: string, host: MemoryHost): Promise<unknown> => {
    await run(host, ...argv, '1');
    for (const number of [3, 12, 14, 15, 16, 17, 18, 19, 25])
      host.files.set(`/work/${name(number)}`, Buffer.from(`${text(number)}note "again"\n`));
    return [await run(host, ...argv, threads), hashes(host)];
  };
  const alone = await changed('1', episode());
  const host = episode();
  const workers = withWorkers(host);
  expect(await changed('3', host)).toEqual(alone);
  expect(workers.answers).toHaveLength(2);
  const quiet = await run(host, ...argv, '3', '--pages', 'changed');
  expect(quiet.error).toContain('unchanged');
});

test('a disk that is full is told for the same cuts', async () => {
  const full = (): MemoryHost => {
    const host = episode();
    host.room = 200_000;
    return host;
  };
  const alone = full();
  const expected = await run(alone, 'build', '.', '-o', 'out', '-j', '1');
  expect(expected.error).toContain('the disk is full');
  const host = full();
  withWorkers(host);
  expect(await run(host, 'build', '.', '-o', 'out', '-j', '3')).toEqual(expected);
  expect(fileNames(host)).toEqual(fileNames(alone));
});

test('without --jobs a long run has as many as the machine has processors', async () => {
  const host = memoryHost(Object.fromEntries(Array.from({ length: 180 }, (_, i) => [name(i), text(i)])));
  const workers = withWorkers(host);
  host.processors = () => 2;
  await run(host, 'check', 'cuts');
  expect(workers.commands).toEqual(['check']);
  host.processors = () => 16;
  await run(host, 'check', 'cuts');
  expect(workers.commands).toEqual(['check', 'check', 'check']);
});

test.each(['0', '65', 'two', ''])('--jobs %j is refused', async (typed) => {
  const { status, error } = await run(episode(), 'check', '.', '--jobs', typed);
  expect([status, error]).toEqual([
    2,
    expect.stringContaining('`--jobs` takes a number of threads, from 1 to 64'),
  ]);
});
