import { mkdirSync, realpathSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type FileWatcher, open } from '../../src/watch/file-watcher.js';
import { freshFolder, until } from './watch.js';

let folder: string;
let watcher: FileWatcher;
let heard: string[];

const put = (name: string, text = 'x') => {
  mkdirSync(join(folder, name, '..'), { recursive: true });
  writeFileSync(join(folder, name), text);
};
const begin = async (deep: boolean) => {
  watcher = await open(
    [{ folder, deep }],
    (path) => heard.push(relative(folder, path)),
    (fault) => {
      throw fault;
    },
  );
};
const hears = (name: string) =>
  until(
    () => heard.includes(name),
    () => `${name}; heard of: ${heard.join(' ')}`,
  );

beforeEach(() => {
  folder = realpathSync(freshFolder());
  heard = [];
});
afterEach(async () => {
  await watcher.close();
  rmSync(folder, { recursive: true, force: true });
});

test('a text that is saved, made, renamed or deleted is heard of', async () => {
  put('a.cut');
  put('b.cut');
  await begin(false);
  put('a.cut', 'y');
  await hears('a.cut');
  put('episode.yaml');
  await hears('episode.yaml');
  renameSync(join(folder, 'b.cut'), join(folder, 'c.cut'));
  await hears('c.cut');
  heard = [];
  rmSync(join(folder, 'c.cut'));
  await hears('c.cut');
});

test('what is there at the beginning is no news', async () => {
  put('a.cut');
  put('more/b.cut');
  await begin(true);
  put('z.cut');
  await hears('z.cut');
  expect(heard).not.toContain('a.cut');
  expect(heard).not.toContain('more/b.cut');
});

test('what editors put beside a text, and other files, are not heard of', async () => {
  await begin(true);
  for (const name of [
    '.a.cut.swp',
    '4913',
    'a.cut~',
    '#a.cut#',
    '.a.cut',
    'a.pdf',
    'node_modules/x/b.cut',
    '.git/c.cut',
  ])
    put(name);
  put('z.cut');
  await hears('z.cut');
  expect(heard.filter((name) => name !== 'z.cut' && name !== '')).toEqual([]);
});

test('folders below are looked at where they are asked for, also those that are made later', async () => {
  put('day/a.cut');
  await begin(true);
  put('day/a.cut', 'y');
  await hears('day/a.cut');
  put('night/deep/b.cut');
  await hears('night/deep/b.cut');
});

test('folders below are left alone where they are not asked for', async () => {
  put('day/a.cut');
  await begin(false);
  put('day/a.cut', 'y');
  put('z.cut');
  await hears('z.cut');
  expect(heard.filter((name) => name.startsWith('day'))).toEqual([]);
});
