/** Builds that are killed on the way, as real processes on a real disk. */

import { spawn, spawnSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  watch,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { program } from '../../bundle.js';
import { faults } from '../../qpdf.js';
import { Dice } from './dice.js';
import { generateEpisode } from './generate.js';
import { type Files, withCuts } from './world.js';

const CUTS = 7;
/** Every so many kills the next build is left to itself. */
const TO_THE_END = 5;

let folder: string;
const out = () => join(folder, 'out');

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-killed-'));
});

afterAll(() => {
  if (folder) rmSync(folder, { recursive: true, force: true });
});

function put(files: Files): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
}

/** `into`: a file of the folder, or '': a file for each cut. */
function argvFor(more: readonly string[], to: string, into: string): string[] {
  return [program, 'build', folder, '--output', join(to, into), ...more];
}

/** A build that nobody disturbs; the bytes of all that lies in the folder then. */
function whole(more: readonly string[], to: string, into = ''): Map<string, Buffer> {
  const { status, stderr } = spawnSync(process.execPath, argvFor(more, to, into), { encoding: 'utf8' });
  if (status !== 0) throw new Error(`the build gave ${status}: ${stderr}`);
  return filesIn(to);
}

function filesIn(place: string): Map<string, Buffer> {
  return new Map(readdirSync(place).map((name) => [name, readFileSync(join(place, name))]));
}

/** Starts a build and kills it some milliseconds after so many events in the folder. Whether that came in time. */
async function kill(
  more: readonly string[],
  into: string,
  events: number,
  afterMs: number,
): Promise<boolean> {
  mkdirSync(out(), { recursive: true });
  const child = spawn(process.execPath, argvFor(more, out(), into), { stdio: 'ignore' });
  const ended = new Promise<NodeJS.Signals | null>((resolve) =>
    child.on('exit', (_, signal) => resolve(signal)),
  );
  let seen = 0;
  const reached = new Promise<void>((resolve) => {
    const watcher = watch(out(), () => {
      seen += 1;
      if (seen >= events) resolve();
    });
    ended.then(() => {
      watcher.close();
      resolve();
    });
  });
  if (events > 0) await reached;
  await wait(afterMs);
  child.kill('SIGKILL');
  return (await ended) === 'SIGKILL';
}

/** Fifty kills in all. A file that is written is some four events: made, filled, renamed away, renamed to. */
test.each([
  { kills: 20, more: [], into: '', events: 3 * CUTS },
  { kills: 20, more: ['--changed'], into: '', events: 3 * CUTS },
  { kills: 10, more: ['--one-file'], into: 'all.pdf', events: 3 },
])(
  '$kills times, build $more: no output is half a file, and the next build makes the episode whole',
  { timeout: 600_000 },
  async ({ kills, more, into, events }) => {
    rmSync(out(), { recursive: true, force: true });
    const dice = new Dice(50);
    const texts = generateEpisode({ cuts: CUTS, seed: 7, meanFrames: 40 }).files;
    const versions = [texts, withCuts(texts, (text) => text.replace(/^(cut \w+) "/m, '$1 "Again: '))];
    const wanted = versions.map((files, i) => {
      put(files);
      return whole(more, join(folder, `undisturbed${more}${i}`), into);
    });
    const names = [...wanted[0]!.keys()].sort();
    for (const [name, bytes] of wanted[0]!) {
      expect(bytes.equals(wanted[1]!.get(name)!)).toBe(false);
      expect(await faults(bytes)).toEqual([]);
    }

    let killed = 0;
    for (let round = 0; killed < kills; round++) {
      expect(round, 'builds, most of which ended before they could be killed').toBeLessThan(8 * kills);
      const version = round % 2;
      put(versions[version]!);
      if (!(await kill(more, into, dice.below(events), dice.below(9)))) continue;
      killed += 1;
      for (const [name, bytes] of filesIn(out())) {
        // The name of a file that was on its way.
        if (name.endsWith('.tmp')) continue;
        const one = wanted.findIndex((files) => files.get(name)?.equals(bytes));
        expect(one, `${name}, ${bytes.length} bytes`).toBeGreaterThanOrEqual(0);
      }
      if (killed % TO_THE_END !== 0) continue;
      const built = whole(more, out(), into);
      expect([...built.keys()].sort()).toEqual(names);
      for (const [name, bytes] of built) expect(bytes.equals(wanted[version]!.get(name)!), name).toBe(true);
    }
  },
);

test('nothing is touched on the disk where nothing has changed', () => {
  put(generateEpisode({ cuts: 4, seed: 4, meanFrames: 48 }).files);
  const to = join(folder, 'quiet');
  const state = () => readdirSync(to).map((name) => [name, statSync(join(to, name)).mtimeMs]);
  whole([], to);
  const before = [state(), statSync(to).mtimeMs];
  whole(['--changed'], to);
  expect([state(), statSync(to).mtimeMs]).toEqual(before);
});
