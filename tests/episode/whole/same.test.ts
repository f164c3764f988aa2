/** What must not show on paper: clocks, line ends, the order of a folder, where the episode lies. */

import { beforeAll, expect, test } from 'vitest';
import type { MemoryHost } from '../../../src/host/memory.js';
import { run } from '../../command/run.js';
import { generateEpisode } from './generate.js';
import { type Files, hashes, shuffle, withCuts, worldOf } from './world.js';

const crlf = (text: string) => text.replaceAll('\n', '\r\n');

/** Prints an episode into /work/out; hashes of what is there then. */
async function printed(host: MemoryHost, folder = 'e'): Promise<Record<string, string>> {
  const { status, error } = await run(host, 'build', folder, '-o', 'out');
  expect(error).toMatch(/^wrote \d+ files, \d+ pages, in out\n$/);
  expect(status).toBe(0);
  return hashes(host, 'out');
}

const small = generateEpisode({ cuts: 14, seed: 12 }).files;
let usual: Record<string, string>;

beforeAll(async () => {
  usual = await printed(worldOf(small));
  expect(Object.keys(usual)).toContain('c012A.pdf');
});

const worlds: [string, (files: Files) => MemoryHost, folder?: string][] = [
  ['the clock stands elsewhere', (files) => Object.assign(worldOf(files), { clock: new Date('2031-07-09') })],
  [
    'lines end in CR LF',
    (files) => worldOf({ ...withCuts(files, crlf), 'house.cut': crlf(files['house.cut']!) }),
  ],
  ['the manifest too', (files) => worldOf({ ...files, 'episode.yaml': crlf(files['episode.yaml']!) })],
  ['the folder lists its files in any order', (files) => shuffle(worldOf(files))],
  ['the episode lies elsewhere', (files) => worldOf(files, '/another/disk'), '/another/disk'],
];

test.each(worlds)('the same bytes though %s', async (_, world, folder) => {
  expect(await printed(world(small), folder)).toEqual(usual);
});

test('the same bytes for 300 cuts though all of it is otherwise', async () => {
  const { files } = generateEpisode();
  const once = await printed(worldOf(files));
  expect(Object.keys(once).filter((name) => name.endsWith('.pdf'))).toHaveLength(300);
  const moved = shuffle(worldOf(withCuts(files, crlf), '/another/disk'), 7);
  moved.clock = new Date('2031-07-09');
  expect(await printed(moved, '/another/disk')).toEqual(once);
});
