import { expect, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { fileNames, run } from '../command/run.js';

const cut = (number: number): string => `cut ${number}\ntime 1+0\nA: 1..\n`;
const texts = (count: number): Record<string, string> =>
  Object.fromEntries(Array.from({ length: count }, (_, i) => [`e/cuts/c${i + 1}.cut`, cut(i + 1)]));
const EPISODE = 'artists: {Z. Moor: [3]}\ncuts: ["cuts/*.cut"]\n';

async function shards(count: number, cuts: number): Promise<string[][]> {
  const parts = [];
  for (let index = 1; index <= count; index++) {
    const host = memoryHost({ 'e/episode.yaml': EPISODE, ...texts(cuts) });
    const { status, error } = await run(host, 'build', 'e', '-o', 'out', '--shard', `${index}/${count}`);
    expect([status, error]).toEqual([
      0,
      expect.stringMatching(new RegExp(`^shard ${index}/${count}: \\d+ of ${cuts} cuts\n`)),
    ]);
    parts.push(fileNames(host).filter((name) => name.endsWith('.pdf')));
  }
  return parts;
}

test('all shards together are the episode, each cut once', async () => {
  const parts = await shards(4, 24);
  const all = parts.flat().map((name) => name.replace(/\D/g, ''));
  expect(all.sort((a, b) => Number(a) - Number(b))).toEqual(Array.from({ length: 24 }, (_, i) => `${i + 1}`));
  expect(parts.map(({ length }) => length)).not.toContain(24);
});

test('a cut stays in its shard, whichever other cuts there are, and wherever the episode lies', async () => {
  const many = await shards(3, 20);
  const few = await shards(3, 12);
  expect(few.map((part, i) => part.every((name) => many[i]!.includes(name)))).toEqual([true, true, true]);
  const host = memoryHost({ 'other/place/episode.yaml': EPISODE });
  for (const [name, text] of Object.entries(texts(12)))
    host.files.set(`/work/other/place/${name.slice(2)}`, Buffer.from(text));
  await run(host, 'build', 'other/place', '-o', 'out', '--shard', '1/3');
  expect(fileNames(host).filter((name) => name.endsWith('.pdf'))).toEqual(few[0]);
});

test('a shard without a cut is no error', async () => {
  const host = memoryHost({ 'e/episode.yaml': 'cuts: ["cuts/*.cut"]\n', ...texts(1) });
  const ran = [];
  for (const part of ['1/2', '2/2']) ran.push(await run(host, 'build', 'e', '-o', 'out', '--shard', part));
  expect(ran.map(({ status }) => status)).toEqual([0, 0]);
  expect(ran.map(({ error }) => error)).toContainEqual(expect.stringMatching(/^shard \d\/2: 0 of 1 cut\n$/));
});

test.each(['0/8', '9/8', '8', '1/0', '-1/8', 'a/b', '1/8/2'])('%s is no shard', async (part) => {
  const host = memoryHost({ 'e/episode.yaml': EPISODE, ...texts(2) });
  const { status, error } = await run(host, 'build', 'e', `--shard=${part}`);
  expect([status, error]).toEqual([
    2,
    expect.stringContaining('`--shard` takes a part of a number of parts'),
  ]);
});

test('and none is for one file', async () => {
  const host = memoryHost({ 'e/episode.yaml': EPISODE, ...texts(2) });
  const { status, error } = await run(host, 'build', 'e', '--one-file', '--shard', '1/2');
  expect([status, error]).toEqual([
    2,
    expect.stringContaining('`--shard` and `--one-file` do not go together'),
  ]);
});

test('a cut of no episode goes by the name of its file, wherever it lies', async () => {
  const shardOf = async (name: string) => {
    const host = memoryHost({ [name]: cut(1) });
    const { error } = await run(host, 'build', name, '-o', 'out', '--shard', '1/2');
    return /: (\d) of 1 cut/.exec(error)![1];
  };
  for (const name of ['c1.cut', 'c2.cut', 'c3.cut', 'c4.cut'])
    expect(await shardOf(`some/where/${name}`)).toBe(await shardOf(`else/${name}`));
});
