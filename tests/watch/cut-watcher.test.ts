/** Watching real files: what is printed when they are saved in the ways that editors save. */

import {
  appendFileSync,
  chmodSync,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { ConsoleReporter } from '../../src/command/console-reporter.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { CutWatcher } from '../../src/watch/cut-watcher.js';
import { isPdf } from '../command/run.js';
import { freshFolder, until, Watch } from './watch.js';

const cut = (number: number, lines = 'A: 1--2..') => `cut ${number}\ntime 1+0\n${lines}\n`;

let folder: string;
let watch: Watch | null = null;

beforeEach(() => {
  folder = freshFolder();
});
afterEach(async () => {
  await watch?.end();
  watch = null;
  rmSync(folder, { recursive: true, force: true });
});

const at = (name: string) => join(folder, name);
function put(files: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(at(name), '..'), { recursive: true });
    writeFileSync(at(name), text);
  }
}
async function begin(
  ...args: ConstructorParameters<typeof Watch> extends [string, ...infer Rest] ? Rest : never
) {
  watch = new Watch(folder, ...args);
  return watch.ready();
}
const pdf = (name: string) => readFileSync(at(name));
const DONE = '12:03:07 a.cut → a.pdf, 1 page, … ms';

describe('one cut', () => {
  test('is printed at once, and again when it is saved', async () => {
    put({ 'a.cut': cut(1) });
    const told = await begin(['a.cut']);
    await told.hears(DONE);
    await told.hears('12:03:07 watching 1 cut; Ctrl-C ends it');
    const before = pdf('a.pdf');
    expect(isPdf(before)).toBe(true);
    writeFileSync(at('a.cut'), cut(1, 'A: 1---2..'));
    await told.hears(DONE, 2);
    expect(pdf('a.pdf').equals(before)).toBe(false);
    expect(await told.end()).toBe(0);
  });

  test('is seen each time when it is saved by renaming another file over it', async () => {
    put({ 'a.cut': cut(1) });
    const told = await begin(['a.cut']);
    for (let time = 1; time <= 4; time++) {
      writeFileSync(at('a.cut~'), cut(1, `A: 1${'-'.repeat(time + 2)}2..`));
      renameSync(at('a.cut~'), at('a.cut'));
      await told.hears(DONE, time + 1);
    }
  });

  test('is not called broken or gone while an editor makes it anew', async () => {
    put({ 'a.cut': cut(1) });
    const told = await begin(['a.cut']);
    truncateSync(at('a.cut'));
    writeFileSync(at('a.cut'), cut(1, 'A: 1---2..'));
    await told.hears(DONE, 2);
    renameSync(at('a.cut'), at('a.cut~'));
    writeFileSync(at('a.cut'), cut(1, 'A: 1----2..'));
    await told.hears(DONE, 3);
    expect(told.said).not.toMatch(/error|gone/);
  });

  test('keeps its PDF while the text is broken, and shows what is wrong as check does', async () => {
    put({ 'a.cut': cut(1) });
    const told = await begin(['a.cut']);
    const before = pdf('a.pdf');
    writeFileSync(at('a.cut'), cut(1, 'A: 1--2'));
    await told.hears('12:03:07 a.cut: 1 error; a.pdf is kept as it was');
    expect(told.said).toContain('a.cut:3:7: timeline-short');
    expect(pdf('a.pdf').equals(before)).toBe(true);
    writeFileSync(at('a.cut'), cut(1, 'A: 1---2..'));
    await told.hears(DONE, 2);
  });

  test('says that there is nothing to print where it is broken from the beginning', async () => {
    put({ 'a.cut': cut(1, 'A: 1--2') });
    const told = await begin(['a.cut']);
    await told.hears('12:03:07 a.cut: 1 error; nothing is printed');
    await told.hears('12:03:07 watching 1 cut, 1 with errors; Ctrl-C ends it');
    expect(existsSync(at('a.pdf'))).toBe(false);
  });

  test('is not written again where only a comment is new', async () => {
    put({ 'a.cut': cut(1) });
    const told = await begin(['a.cut']);
    const { ino } = statSync(at('a.pdf'));
    appendFileSync(at('a.cut'), '# not on paper\n');
    await told.hears('12:03:07 a.cut: nothing changes on paper, … ms');
    expect(statSync(at('a.pdf')).ino).toBe(ino);
  });

  test('is told when it is deleted, with its PDF left, and taken in again when it comes back', async () => {
    put({ 'a.cut': cut(1), 'b.cut': cut(2) });
    const told = await begin(['.']);
    rmSync(at('a.cut'));
    await told.hears('12:03:07 a.cut is gone; a.pdf is left as it is');
    expect(existsSync(at('a.pdf'))).toBe(true);
    put({ 'a.cut': cut(1, 'A: 1-----2..') });
    await told.hears(DONE, 2);
  });

  test('does not heed what editors put beside it', async () => {
    put({ 'a.cut': cut(1) });
    const told = await begin(['a.cut']);
    const before = told.said;
    put({ '.a.cut.swp': 'x', '4913': '', 'a.cut~': cut(1), '#a.cut#': cut(1), '.#a.cut': 'x' });
    writeFileSync(at('a.cut'), cut(1, 'A: 1---2..'));
    await told.hears(DONE, 2);
    expect(told.said.slice(before.length).trim().split('\n')).toHaveLength(1);
  });

  test.skipIf(process.getuid?.() === 0)('that cannot be read any more keeps its PDF', async () => {
    put({ 'a.cut': cut(1) });
    const told = await begin(['a.cut']);
    chmodSync(at('a.cut'), 0);
    await told.hears('12:03:07 a.cut: 1 error; a.pdf is kept as it was');
  });

  test('that the world refuses to read keeps its PDF', async () => {
    put({ 'a.cut': cut(1) });
    let refused = false;
    const told = await begin(
      ['a.cut'],
      {},
      {
        world: (host) => ({
          ...host,
          read: (path) =>
            refused && path.endsWith('a.cut') ? { ok: false, reason: 'permission denied' } : host.read(path),
        }),
      },
    );
    refused = true;
    appendFileSync(at('a.cut'), '\n');
    await told.hears('12:03:07 a.cut: 1 error; a.pdf is kept as it was');
    expect(told.said).toContain(': file-unreadable\n');
  });

  test('whose PDF cannot be written is told, and the watch goes on', async () => {
    put({ 'a.cut': cut(1), 'b.cut': cut(2) });
    mkdirSync(at('a.pdf'));
    const told = await begin(['.']);
    await told.hears('12:03:07 a.cut: not written; nothing is printed');
    await told.hears('12:03:07 b.cut → b.pdf, 1 page, … ms');
    expect(told.said).toContain(': output-unwritable\n');
  });
});

describe('an episode', () => {
  const episode = {
    'episode.yaml': 'title: Samphire Ferry\ncuts: ["cuts/*.cut"]\n',
    'house.cut': 'phrase walk = 1--2--\n',
    'cuts/1.cut': cut(1, 'use "../house.cut"\nA: (walk)..'),
    'cuts/2.cut': cut(2),
    'cuts/3.cut': cut(3, 'use "../house.cut"\nA: (walk)*1 3..'),
    'cuts/8.cut': cut(8, 'C: 1--2..'),
    'cuts/9.cut': cut(9, 'level C reuse 8/C\nC: 1--2 3..'),
  };
  const printed = (told: Watch, from: number) =>
    [...new Set(told.said.slice(from).match(/\d\.cut → /g) ?? [])].map((one) => one[0]).sort();

  test('prints the cuts that use a file which is saved, and no others', async () => {
    put(episode);
    const told = await begin(['episode.yaml']);
    const from = told.said.length;
    put({ 'house.cut': 'phrase walk = 1---2---\n' });
    await told.hears(/cuts\/1\.cut → /, 2);
    await told.hears(/cuts\/3\.cut → /, 2);
    put({ 'house.cut': 'phrase walk = 1---2--- # longer\n' });
    await told.hears('12:03:07 house.cut: nothing changes on paper, … ms');
    expect(printed(told, from)).toEqual(['1', '3']);
  });

  test('prints all when the manifest says something else for all, and none when it does not', async () => {
    put(episode);
    const told = await begin(['episode.yaml']);
    let from = told.said.length;
    put({ 'episode.yaml': `# a remark\n${episode['episode.yaml']}` });
    await told.hears('12:03:07 episode.yaml: nothing changes on paper, … ms');
    expect(printed(told, from)).toEqual([]);
    from = told.said.length;
    put({ 'episode.yaml': episode['episode.yaml'].replace('Ferry', 'Ferries') });
    await until(
      () => printed(told, from).length === 5,
      () => told.said,
    );
  });

  test('goes on with what the manifest said before while that is broken', async () => {
    put(episode);
    const told = await begin(['episode.yaml']);
    put({ 'episode.yaml': 'title: a: b\n' });
    await told.hears('12:03:07 episode.yaml: 1 error; what it said before still holds');
    put({ 'cuts/2.cut': cut(2, 'A: 1---2..') });
    await told.hears('12:03:07 cuts/2.cut → cuts/2.pdf, 1 page, … ms', 2);
  });

  test('prints the borrower of a level when the lender is saved', async () => {
    put(episode);
    const told = await begin(['episode.yaml']);
    const from = told.said.length;
    put({ 'cuts/8.cut': cut(8, 'C: 4--1--2..') });
    await told.hears('12:03:07 cuts/9.cut → cuts/9.pdf, 1 page, … ms', 2);
    expect(printed(told, from)).toEqual(['8', '9']);
  });

  test('prints the lender when another cut begins to borrow from it', async () => {
    put({ ...episode, 'cuts/9.cut': cut(9, 'C: 1--2 3..') });
    const told = await begin(['episode.yaml']);
    const from = told.said.length;
    put({ 'cuts/9.cut': episode['cuts/9.cut'] });
    await told.hears('12:03:07 cuts/8.cut → cuts/8.pdf, 1 page, … ms', 2);
    expect(printed(told, from)).toEqual(['8', '9']);
  });

  test('prints a cut anew when the cut that it overlaps into gets another number', async () => {
    put({
      ...episode,
      'cuts/1.cut': cut(1, 'overlap out 12\nA: 1..'),
      'cuts/2.cut': cut(2, 'overlap in 12\nA: 1..'),
    });
    const told = await begin(['episode.yaml']);
    put({ 'cuts/2.cut': cut(4, 'overlap in 12\nA: 1..') });
    await told.hears(/^12:03:07 cuts\/1\.cut → /, 2);
  });

  test('takes in a cut that is new, and a file that a cut has missed', async () => {
    put({ ...episode, 'cuts/2.cut': cut(2, 'use "late.cut"\nA: (run)..') });
    const told = await begin(['episode.yaml']);
    await told.hears(/^12:03:07 cuts\/2\.cut: \d errors?; nothing is printed$/);
    put({ 'cuts/late.cut': 'phrase run = 1--2--\n' });
    await told.hears('12:03:07 cuts/2.cut → cuts/2.pdf, 1 page, … ms');
    put({ 'cuts/10.cut': cut(10) });
    await told.hears('12:03:07 cuts/10.cut → cuts/10.pdf, 1 page, … ms');
  });

  test('writes where it is told to, and what is printed there already is not written again', async () => {
    put(episode);
    await (await begin(['episode.yaml'], { output: 'out/' })).end();
    const { ino } = statSync(at('out/2.pdf'));
    const told = await begin(['episode.yaml'], { output: 'out/' });
    expect(told.said).toBe('12:03:07 watching 5 cuts; Ctrl-C ends it\n');
    expect(statSync(at('out/2.pdf')).ino).toBe(ino);
  });
});

describe('the time after a save', () => {
  async function watching() {
    const host = memoryHost({ 'a.cut': cut(1), 'b.cut': cut(2) });
    const watcher = new CutWatcher(host, {
      files: ['.'],
      settings: {},
      output: undefined,
      selection: {},
      strict: false,
      newReporter: () => new ConsoleReporter(host, 'human', false),
    });
    expect(await watcher.find()).toBeNull();
    await watcher.begin();
    const before = host.complaints().length;
    const save = (name: string, text: string) => {
      host.files.set(`/work/${name}`, Buffer.from(text));
      watcher.notice(`/work/${name}`);
    };
    return { host, watcher, save, lines: () => host.complaints().slice(before).split('\n').filter(Boolean) };
  }

  test('is waited for 8 ms, so that all that a save does is one change', async () => {
    const { host, watcher, save, lines } = await watching();
    save('a.cut', '');
    host.passMs(7);
    save('a.cut', cut(1, 'A: 1---2..'));
    expect(lines()).toEqual([]);
    host.passMs(1);
    await until(() => lines().length > 0, 'the print');
    expect(lines()).toEqual([expect.stringMatching(/ a\.cut → a\.pdf, 1 page, 8 ms$/)]);
    await watcher.close();
  });

  test('ends with the watch: the round that was to come is not begun', async () => {
    const { host, watcher, save, lines } = await watching();
    save('a.cut', cut(1, 'A: 1---2..'));
    await watcher.close();
    host.passMs(1000);
    await new Promise((done) => setImmediate(done));
    expect(lines()).toEqual([]);
  });
});
