/** Builds that something else disturbs than a kill: a full disk, a second build, a reader that goes away, an editor that saves. */

import { spawn, spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { program } from '../../bundle.js';
import { generateEpisode } from './generate.js';
import { type Files, withCuts } from './world.js';

const TIMEOUT = 300_000;
const TEXTS = generateEpisode({ cuts: 8, seed: 12, meanFrames: 60 }).files;
const LATER = withCuts(TEXTS, (text) => text.replace(/^(cut \w+) "/m, '$1 "Again: '));

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-disturbed-'));
  put(TEXTS);
});

afterEach(() => {
  chmodSync(join(folder, 'out'), 0o755);
  rmSync(folder, { recursive: true, force: true });
});

function put(files: Files): void {
  for (const [name, text] of Object.entries({ ...files, 'out/.keep': '' })) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
}

const argv = (...more: string[]): string[] => [
  program,
  'build',
  folder,
  '--output',
  join(folder, 'out'),
  ...more,
];

function build(...more: string[]): void {
  const { status, stderr } = spawnSync(process.execPath, argv(...more), { encoding: 'utf8' });
  expect(status, stderr).toBe(0);
}

const shell = (line: string) =>
  spawnSync('bash', ['-c', line, 'bash', process.execPath, ...argv()], { encoding: 'utf8' });

function prints(): Map<string, Buffer> {
  const out = join(folder, 'out');
  return new Map(readdirSync(out).map((name) => [name, readFileSync(join(out, name))]));
}

/** What a build that nobody disturbs makes of these texts. */
function undisturbed(files: Files): Map<string, Buffer> {
  rmSync(join(folder, 'out'), { recursive: true });
  put(files);
  build();
  return prints();
}

test('a disk that takes no more: the last good files stay, and the next build makes the rest', {
  timeout: TIMEOUT,
}, () => {
  const [wanted, old] = [undisturbed(LATER), undisturbed(TEXTS)];
  put(LATER);
  const sizes = [...wanted.values()].map(({ length }) => length).sort((a, b) => a - b);
  // Blocks of 1,024 bytes; some files fit, and some do not.
  const { status, stderr } = shell(`trap '' XFSZ; ulimit -f ${Math.floor(sizes[4]! / 1024)}; exec "$@"`);
  expect(status).toBe(2);
  expect(stderr).toContain('cannot be written: too large for the disk');
  const now = prints();
  expect([...now.keys()]).toEqual([...wanted.keys()]);
  const states = [...now].map(([name, bytes]) =>
    bytes.equals(wanted.get(name)!) ? 'new' : bytes.equals(old.get(name)!) ? 'old' : 'half',
  );
  expect([...new Set(states)].sort()).toEqual(['new', 'old']);
  build('--changed');
  expect(prints()).toEqual(wanted);
});

test.skipIf(process.getuid?.() === 0)(
  'a folder that may not be written to: all stays as it was',
  { timeout: TIMEOUT },
  () => {
    const old = undisturbed(TEXTS);
    put(LATER);
    chmodSync(join(folder, 'out'), 0o555);
    const { status, stderr } = spawnSync(process.execPath, argv(), { encoding: 'utf8' });
    expect([status, stderr]).toEqual([2, expect.stringContaining('cannot be written: permission denied')]);
    expect(prints()).toEqual(old);
  },
);

test('two builds into one folder: both end well, and every file is whole', { timeout: TIMEOUT }, async () => {
  const wanted = undisturbed(TEXTS);
  rmSync(join(folder, 'out'), { recursive: true });
  put(TEXTS);
  const runs = [1, 2].map(
    () => new Promise((done) => spawn(process.execPath, argv(), { stdio: 'ignore' }).once('exit', done)),
  );
  expect(await Promise.all(runs)).toEqual([0, 0]);
  expect(prints()).toEqual(wanted);
});

test('whoever reads what is said goes away after one line: all is printed', { timeout: TIMEOUT }, () => {
  const wanted = undisturbed(TEXTS);
  rmSync(join(folder, 'out'), { recursive: true });
  put(TEXTS);
  const { stdout } = shell('"$@" 2>&1 | head -1');
  expect(stdout).toMatch(/^wrote 8 files/);
  expect(prints()).toEqual(wanted);
});

test('texts that are saved while they are read: the next build is as if nothing had been', {
  timeout: TIMEOUT,
}, async () => {
  const wanted = undisturbed(LATER);
  undisturbed(TEXTS);
  for (let round = 0; round < 4; round++) {
    const child = spawn(process.execPath, argv('--changed'), { stdio: 'ignore' });
    let running = true;
    const ended = new Promise<void>((done) => child.once('exit', () => done())).then(() => {
      running = false;
    });
    for (let save = 0; running; save++) {
      // In place, as some editors do: a reader may see the beginning of a text only.
      put(save % 2 === 0 ? LATER : TEXTS);
      await new Promise((done) => setTimeout(done, 7));
    }
    await ended;
  }
  put(LATER);
  build('--changed');
  expect(prints()).toEqual(wanted);
});
