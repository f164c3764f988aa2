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
import { shippedEnglishWords } from '../../../src/host/shipped-files.js';
import { englishDictionary } from '../../../src/sound/english-dictionary.js';
import { program } from '../../bundle.js';
import { faults } from '../../qpdf.js';
import { synthesise } from '../../sound/speech-synthesis.js';
import { wave } from '../../sound/wave-writer.js';
import { Dice } from './dice.js';
import { generateEpisode } from './generate.js';
import { type Files, withCuts } from './world.js';

const CUTS = 7;
/** Every so many kills the next run is left to itself. */
const TO_THE_END = 5;
/** How many there are for each fifty of the tests: `KILLS=20` is a thousand of them, by hand. */
const TIMES = Number(process.env.KILLS ?? 1);
const TIMEOUT = 600_000 * TIMES;

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

/** A file that is written is some four events: made, filled, renamed away, renamed to. */
test.each([
  { kills: 8, more: [], into: '', events: 3 * CUTS },
  { kills: 8, more: ['--jobs', '3'], into: '', events: 3 * CUTS },
  { kills: 15, more: ['--changed'], into: '', events: 3 * CUTS },
  { kills: 4, more: ['--one-file'], into: 'all.pdf', events: 3 },
  { kills: 4, more: ['--one-file', '--jobs', '2'], into: 'all.pdf', events: 3 },
])(
  '$kills times, build $more: no output is half a file, and the next build makes the episode whole',
  { timeout: TIMEOUT },
  async ({ kills: few, more, into, events }) => {
    const kills = few * TIMES;
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

const PROGRESS = ['progress', '3', 'key', '--by', 'N. Ferrow', '--date', '2026-03-09', '--note', 'lamp lit'];

/** Commands that write the texts themselves: each of them is as it was or as it is to be, and never lost. */
test.each([
  { kills: 5, argv: ['format', '.'], world: untidyTexts },
  { kills: 5, argv: ['number', '.'], world: untidyTexts },
  { kills: 3, argv: ['listen', '.', '--write'], world: spokenTexts },
  { kills: 3, argv: ['check', '.', '--fix'], world: spacedTexts },
  { kills: 2, argv: ['new', 'cut', '99'], world: untidyTexts, once: true },
  { kills: 2, argv: [...PROGRESS, 'done'], world: producedTexts, once: true },
])(
  '$kills times, $argv: no text is lost, and the next run does the rest',
  { timeout: TIMEOUT },
  async ({ kills, argv, world, once }) => {
    const home = join(folder, `texts ${argv[0]}`);
    const dice = new Dice(51);
    const texts = world();
    const restore = (): void => {
      rmSync(home, { recursive: true, force: true });
      for (const [name, text] of Object.entries(texts)) {
        mkdirSync(dirname(join(home, name)), { recursive: true });
        writeFileSync(join(home, name), text);
      }
    };
    const run = () => spawnSync(process.execPath, [program, ...argv], { cwd: home, encoding: 'utf8' });
    restore();
    const before = allIn(home);
    const start = performance.now();
    const { status, stderr } = run();
    expect(status, stderr).toBe(0);
    const took = performance.now() - start;
    const wanted = allIn(home);
    expect(wanted).not.toEqual(before);

    let killed = 0;
    restore();
    for (let round = 0; killed < kills * TIMES; round++) {
      expect(round, 'runs, most of which ended before they could be killed').toBeLessThan(20 * kills * TIMES);
      const child = spawn(process.execPath, [program, ...argv], { cwd: home, stdio: 'ignore' });
      const ended = new Promise<NodeJS.Signals | null>((done) =>
        child.on('exit', (_, signal) => done(signal)),
      );
      await wait(took * (0.4 + dice.below(600) / 1000));
      child.kill('SIGKILL');
      const inTime = (await ended) === 'SIGKILL';
      const now = allIn(home);
      for (const name of new Set([...before.keys(), ...now.keys()])) {
        if (name.endsWith('.tmp')) continue;
        const whole = [before.get(name), wanted.get(name)];
        expect(whole, name).toContain(now.get(name));
      }
      if (!inTime) {
        restore();
        continue;
      }
      killed += 1;
      if (killed % TO_THE_END !== 0 && killed < kills * TIMES) continue;
      // A new cut, a new row may be there already; whoever was killed and asks again wants no second one.
      const there = once && [...wanted].every(([name, text]) => now.get(name) === text);
      if (!there) expect(run().status).toBe(0);
      expect(allIn(home)).toEqual(wanted);
      restore();
    }
  },
);

function untidyTexts(): Record<string, string | Buffer> {
  return withCuts(generateEpisode({ cuts: 12, seed: 9, meanFrames: 40 }).files, (text) =>
    text.replaceAll(': ', ':   '),
  );
}

/** Cuts with blanks in their times, which `--fix` takes out. */
function spacedTexts(): Record<string, string | Buffer> {
  return withCuts(generateEpisode({ cuts: 12, seed: 12, meanFrames: 40 }).files, (text) =>
    text.replace(/^(time \d+)\+/m, '$1 + '),
  );
}

/** An episode whose progress is written down. */
function producedTexts(): Record<string, string | Buffer> {
  const texts = generateEpisode({ cuts: 12, seed: 13, meanFrames: 40 }).files;
  const rows = Array.from(
    { length: 400 },
    (_, i) => `${1 + (i % 12)},layout,started,2026-02-0${1 + (i % 9)},,`,
  );
  return {
    ...texts,
    'episode.yaml': `${texts['episode.yaml']}\nstages: [layout, key]\n`,
    'progress.csv': `cut,stage,state,date,person,note\n${rows.join('\n')}\n`,
  };
}

/** Cuts with a recording in which somebody says what they have. */
function spokenTexts(): Record<string, string | Buffer> {
  const words = shippedEnglishWords();
  if (!words.ok) throw new Error(words.reason);
  const spoken = [{ at: 0.5, text: 'Wait for me!' }];
  const { samples, rate } = synthesise(3, spoken, englishDictionary(words.value));
  const text = (number: number): string =>
    `cut ${number}\ntime 3+0\nA: 1..\ntrack "a.wav"\nvoice "Nao" 1+1..2+0 "Wait for me!"\n`;
  return {
    'a.wav': wave(samples, { rate }),
    ...Object.fromEntries([1, 2, 3, 4, 5, 6].map((number) => [`c${number}.cut`, text(number)])),
  };
}

/** Files of a folder and those below it, by their names there, a character a byte. */
function allIn(home: string): Map<string, string> {
  const names = readdirSync(home, { recursive: true, encoding: 'utf8' });
  return new Map(
    names
      .filter((name) => statSync(join(home, name)).isFile())
      .map((name) => [name, readFileSync(join(home, name), 'latin1')]),
  );
}

test('nothing is touched on the disk where nothing has changed', () => {
  put(generateEpisode({ cuts: 4, seed: 4, meanFrames: 48 }).files);
  const to = join(folder, 'quiet');
  const state = () => readdirSync(to).map((name) => [name, statSync(join(to, name)).mtimeMs]);
  whole([], to);
  const before = [state(), statSync(to).mtimeMs];
  whole(['--changed'], to);
  expect([state(), statSync(to).mtimeMs]).toEqual(before);
});
