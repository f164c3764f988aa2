/**
 * A disk that is full and a folder that may not be written to, for real: a small file system in memory, and another user. Skipped
 * where the tests may not mount anything. Also commands that write the texts themselves.
 */

import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statfsSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { program } from '../../bundle.js';
import { generateEpisode } from './generate.js';
import { type Files, withCuts } from './world.js';

const TIMEOUT = 300_000;
const TEXTS = generateEpisode({ cuts: 5, seed: 21, meanFrames: 60 }).files;
const LATER = withCuts(TEXTS, (text) => text.replace(/^(cut \w+) "/m, '$1 "Again: '));
/** Blocks in which a file system in memory counts. */
const PAGE = 4096;
const FILLER = 'filler.bin';

const mount = (...argv: string[]): boolean => spawnSync('mount', argv).status === 0;
const mountable = (): boolean => {
  const probe = mkdtempSync(join(tmpdir(), 'cutwright-mount-'));
  const may = mount('-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', probe);
  if (may) spawnSync('umount', [probe]);
  rmSync(probe, { recursive: true });
  return may;
};

let disk: string;

beforeEach(() => {
  disk = mkdtempSync(join(tmpdir(), 'cutwright-disk-'));
  mount('-t', 'tmpfs', '-o', 'size=4m', 'tmpfs', disk);
});

afterEach(() => {
  spawnSync('umount', [disk]);
  rmSync(disk, { recursive: true, force: true });
});

function put(files: Files): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(disk, name)), { recursive: true });
    writeFileSync(join(disk, name), text);
  }
}

/** Leaves so many pages of the disk free. */
function fill(pages: number): void {
  const { bavail, bsize } = statfsSync(disk);
  writeFileSync(join(disk, FILLER), Buffer.alloc(bavail * bsize - pages * PAGE, 1));
}

/** All files below the disk's folder, but for the filler. */
function all(): Map<string, Buffer> {
  return new Map(
    readdirSync(disk, { recursive: true, encoding: 'utf8' })
      .filter((name) => name !== FILLER && statSync(join(disk, name)).isFile())
      .sort()
      .map((name) => [name, readFileSync(join(disk, name))]),
  );
}

function run(argv: readonly string[], user: readonly string[] = []) {
  const [command, ...rest] = [...user, process.execPath, program, ...argv];
  return spawnSync(command!, rest, { cwd: disk, encoding: 'utf8' });
}

/** `free`: pages; the second build has room for one or two of its files. */
const CASES: readonly { argv: string[]; before: Files; after: Files; free: number[] }[] = [
  { argv: ['build', '.', '--output', 'out/'], before: TEXTS, after: LATER, free: [0, 6] },
  { argv: ['build', '.', '--changed', '--output', 'out/'], before: TEXTS, after: LATER, free: [6] },
  {
    argv: ['build', '.', '--one-file', '--output', 'all.pdf'],
    before: TEXTS,
    after: LATER,
    free: [3],
  },
  {
    argv: ['format', '.'],
    before: {},
    after: withCuts(TEXTS, (text) => text.replaceAll(': ', ':   ')),
    free: [0],
  },
  { argv: ['number', '.'], before: {}, after: TEXTS, free: [0] },
  { argv: ['new', 'cut', '99'], before: {}, after: TEXTS, free: [0] },
];

describe.skipIf(!mountable())('a disk that is full', () => {
  test.each(CASES)(
    '$argv: every file is the old or the new one, and the next run does the rest',
    { timeout: TIMEOUT },
    ({ argv, before, after, free }) => {
      const start = (): void => {
        for (const name of readdirSync(disk)) rmSync(join(disk, name), { recursive: true });
        if (Object.keys(before).length > 0) {
          put(before);
          expect(run(argv).status).toBe(0);
        }
        put(after);
      };
      start();
      const old = all();
      expect(run(argv).status).toBe(0);
      const wanted = all();
      expect(wanted).not.toEqual(old);

      for (const pages of free) {
        start();
        fill(pages);
        const { status, stderr } = run(argv);
        expect([pages, status, stderr]).toEqual([pages, 2, expect.stringContaining('the disk is full')]);
        const now = all();
        for (const [name, bytes] of now)
          expect([old.get(name), wanted.get(name)], `${pages}: ${name}`).toContainEqual(bytes);
        for (const name of old.keys()) expect(now.has(name), `${pages}: ${name}`).toBe(true);
        expect(now, 'something is left to do').not.toEqual(wanted);
        rmSync(join(disk, FILLER));
        expect(run(argv).status).toBe(0);
        expect(all()).toEqual(wanted);
      }
    },
  );
});

/** Somebody who owns nothing here; the tests may run as a user to whom every folder is open. */
const NOBODY = ['setpriv', '--reuid=65534', '--regid=65534', '--clear-groups'];
const asNobody = (): boolean =>
  spawnSync(NOBODY[0]!, [...NOBODY.slice(1), process.execPath, program, '--version']).status === 0;

const WRITERS: readonly string[][] = [
  ['build', '.', '--output', 'out/'],
  ['build', '.', '--one-file', '--output', 'out/all.pdf'],
  ['format', '.'],
  ['number', '.'],
  ['new', 'cut', '99'],
];

describe.skipIf(!mountable() || !asNobody())('a folder of somebody else', () => {
  test.each(WRITERS)(
    '%s %s: says that it may not, and all stays as it was',
    { timeout: TIMEOUT },
    (...argv) => {
      put(withCuts(TEXTS, (text) => text.replaceAll(': ', ':   ')));
      put({ 'out/.keep': '' });
      chmodSync(disk, 0o755);
      const old = all();
      const { status, stderr } = run(argv, NOBODY);
      expect([status, stderr]).toEqual([2, expect.stringContaining('permission denied')]);
      expect(all()).toEqual(old);
    },
  );
});

describe.skipIf(!mountable())('a disk that is read-only', () => {
  test.each(WRITERS)('%s %s: says so, and all stays as it was', { timeout: TIMEOUT }, (...argv) => {
    put(withCuts(TEXTS, (text) => text.replaceAll(': ', ':   ')));
    put({ 'out/.keep': '' });
    const old = all();
    expect(mount('-o', 'remount,ro', disk)).toBe(true);
    const { status, stderr } = run(argv);
    expect([status, stderr]).toEqual([2, expect.stringContaining('the disk can only be read')]);
    expect(all()).toEqual(old);
  });
});
