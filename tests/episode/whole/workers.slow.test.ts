/** The shipped program with several threads, as real processes on a real disk. */

import { spawn, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { bundle, program } from '../../bundle.js';
import { generateEpisode } from './generate.js';

const TIMEOUT = 180_000;
let folder: string;

/** Two cuts are broken, two have the same number, one in three has a field that has to be enlarged. */
function texts(): Record<string, string> {
  const { files } = generateEpisode({ cuts: 33, seed: 21, meanFrames: 40 });
  const names = Object.keys(files).filter((name) => name.startsWith('cuts/'));
  const broken = { [names[4]!]: 'cut 5\ntime 1+0\nA: 1:3\n', [names[29]!]: 'cat 30\n' };
  const twice = { 'cuts/c9999.cut': 'cut 1\ntime 1+0\nA: 1..\nfield B 60%\nfix B\n' };
  return { ...files, ...broken, ...twice };
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-workers-'));
  for (const [name, text] of Object.entries(texts())) {
    mkdirSync(dirname(join(folder, 'e', name)), { recursive: true });
    writeFileSync(join(folder, 'e', name), text);
  }
});

afterAll(() => {
  if (folder) rmSync(folder, { recursive: true, force: true });
});

/** What a run leaves with and says, and hashes of what it has written to `out`. */
function ran(argv: readonly string[], threads: number, entry = program): unknown {
  const out = join(folder, 'out');
  rmSync(out, { recursive: true, force: true });
  const { status, stdout, stderr } = spawnSync(process.execPath, [entry, ...argv, '--jobs', `${threads}`], {
    cwd: folder,
    maxBuffer: 2 ** 26,
  });
  const hash = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');
  const names = statSync(out, { throwIfNoEntry: false }) ? readdirSync(out).sort() : [];
  return {
    status,
    said: stderr.toString(),
    printed: hash(stdout),
    files: names.map((name) => [name, hash(readFileSync(join(out, name)))]),
  };
}

const CALLS = [
  ['check', 'e'],
  ['check', 'e', '--format', 'json'],
  ['build', 'e', '-o', 'out'],
  ['build', 'e', '-o', 'out', '--changed'],
  ['build', 'e', '--one-file', '-o', 'out/all.pdf', '--labels', 'ja'],
  ['build', 'e', '--one-file', '-o', '-'],
] as const;

describe.each(CALLS.map((argv) => ({ argv })))('$argv', ({ argv }) => {
  test('leaves the same with two and with three threads as with one', { timeout: TIMEOUT }, () => {
    const alone = ran(argv, 1);
    expect(alone).toMatchObject({ status: 1, said: expect.stringContaining('cut-twice') });
    expect(ran(argv, 2)).toEqual(alone);
    expect(ran(argv, 3)).toEqual(alone);
  });
});

/** A copy of the program whose workers do `act` beside their work; each leaves a file `worker-N` in `e`'s folder when it begins. */
function programWith(name: string, act: string): string {
  const home = join(folder, name);
  cpSync(join(bundle, 'bin'), join(home, 'bin'), { recursive: true });
  symlinkSync(join(bundle, 'dist'), join(home, 'dist'));
  const worker = join(home, 'bin/worker.js');
  const note = `require('node:fs').writeFileSync(require('node:path').join(__dirname, '../worker-' + require('node:worker_threads').threadId), '');`;
  writeFileSync(worker, `${readFileSync(worker, 'utf8')}\n${note}\n${act}\n`);
  return join(home, 'bin/cutwright.js');
}

const workersOf = (entry: string): number =>
  readdirSync(join(dirname(entry), '..')).filter((name) => name.startsWith('worker-')).length;

test.each([
  ['at once', "throw new Error('a fault that was made');"],
  [
    'at its ninth cut',
    'let n = 0; const { postMessage } = parentPort; parentPort.postMessage = (one) => { if (++n > 8) process.exit(1); postMessage.call(parentPort, one); };',
  ],
  [
    'with no memory left',
    "parentPort.once('message', () => { const all = []; for (;;) all.push(new Array(100).fill(all.length)); });",
  ],
])('a worker that ends %s is made up for', { timeout: TIMEOUT }, (name, act) => {
  const entry = programWith(name, act);
  const argv = ['build', 'e', '-o', 'out'];
  const alone = ran(argv, 1);
  expect(ran(argv, 3, entry)).toEqual(alone);
  expect(workersOf(entry)).toBe(2);
});

test('workers run the code that was compiled ahead', { timeout: TIMEOUT }, () => {
  const entry = programWith('ahead', '');
  const home = join(dirname(entry), '..');
  const worker = join(home, 'bin/worker.js');
  const text = readFileSync(worker, 'utf8');
  const noting = text.replace(
    /const \{ serveCuts, nodeHost \} = (load\(.*\))\.program;/,
    "const loaded = $1;\nrequire('node:fs').writeFileSync(join(__dirname, '../refused-' + loaded.script.cachedDataRejected), '');\nconst { serveCuts, nodeHost } = loaded.program;",
  );
  expect(noting).not.toBe(text);
  writeFileSync(worker, noting);
  ran(['build', 'e', '-o', 'out'], 3, entry);
  expect(readdirSync(home).filter((name) => name.startsWith('refused-'))).toEqual(['refused-false']);
});

test('an interrupt ends all threads', { timeout: TIMEOUT }, async () => {
  const entry = programWith('endless', "parentPort.on('message', () => { for (;;); });");
  const child = spawn(process.execPath, [entry, 'check', 'e', '--jobs', '3'], {
    cwd: folder,
    stdio: 'ignore',
  });
  const ended = new Promise<NodeJS.Signals | null>((resolve) =>
    child.on('exit', (_, signal) => resolve(signal)),
  );
  while (workersOf(entry) < 2) await new Promise((resolve) => setTimeout(resolve, 20));
  child.kill('SIGINT');
  expect(await ended).toBe('SIGINT');
});

test('who reads only the beginning of standard output harms nobody', { timeout: TIMEOUT }, () => {
  const line = `"${process.execPath}" "${program}" build e --one-file -o - --jobs 3 2>said.txt | head -c 9; cat said.txt`;
  const { stdout } = spawnSync('sh', ['-c', line], { cwd: folder });
  expect(stdout.toString('latin1')).toMatch(/^%PDF-1\.7\n[\s\S]*wrote \d+ pages to standard output\n/);
});
