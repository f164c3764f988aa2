/** What must not show on paper: clocks, line ends, the order of a folder, where the episode lies. */

import { beforeAll, expect, test } from 'vitest';
import type { MemoryHost } from '../../../src/host/memory-host.js';
import { run } from '../../command/run.js';
import { generateEpisode } from './generate.js';
import { type Files, hashes, shuffle, withCuts, worldOf, writesOf } from './world.js';

const crlf = (text: string) => text.replaceAll('\n', '\r\n');

/** Prints an episode into /work/out; hashes of what is there then. */
async function printed(host: MemoryHost, folder = 'e', ...more: string[]): Promise<Record<string, string>> {
  const { status, error } = await run(host, 'build', folder, '-o', 'out', ...more);
  expect(error).toMatch(/^(printing: .*\n)*wrote \d+ files, \d+ pages, in out\n$/);
  expect(status).toBe(0);
  return hashes(host, 'out');
}

const small = generateEpisode({ cuts: 14, seed: 12 }).files;
let usual: Record<string, string>;

beforeAll(async () => {
  usual = await printed(worldOf(small));
  expect(Object.keys(usual).join()).toMatch(/c\d+A.pdf/);
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

test('300 cuts: nothing to print while nothing changes, and the same bytes though all of it is otherwise', {
  timeout: 600_000,
}, async () => {
  const { files } = generateEpisode();
  const usually = worldOf(files);
  const once = await printed(usually, 'e', '--only', 'sheet');
  expect(Object.keys(once).filter((name) => name.endsWith('.pdf'))).toHaveLength(300);

  const writes = writesOf(usually);
  const { error } = await run(usually, 'build', 'e', '-o', 'out', '--only', 'sheet', '--changed');
  expect(error).toMatch(/^(printing: .*\n)*300 cuts unchanged\n$/);
  expect(writes).toEqual([]);

  const moved = shuffle(worldOf(withCuts(files, crlf), '/another/disk'), 7);
  moved.clock = new Date('2031-07-09');
  expect(await printed(moved, '/another/disk', '--only', 'sheet')).toEqual(once);
});
