import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { main } from '../../src/command/main.js';
import { memoryHost } from '../../src/host/memory-host.js';
import { nodeHost } from '../../src/host/node-host.js';
import { run, runOn } from './run.js';

const cut = (number: string | number, line = 'A: 1--2..', time = '1+0') =>
  `cut ${number}\ntime ${time}\n${line}\n`;
const LONGER = 'A: 1:4--2..';
const NOTE = 'A: key 1 held 2 frames longer, 4 frames (was 2), from 0+1; what follows comes 2 frames later';

describe('two files', () => {
  const files = {
    'old.cut': cut(1),
    'now.cut': cut(1, LONGER),
    'same.cut': `# a remark\n${cut(1).replaceAll('\n', '\r\n')}`,
  };

  test('leave with 1 and the note where they differ, with 0 and nothing where they do not', async () => {
    expect(await runOn(files, 'compare', 'old.cut', 'now.cut')).toEqual({
      status: 1,
      out: `cut 1\n  ${NOTE}\n`,
      error: '',
    });
    expect(await runOn(files, 'compare', 'old.cut', 'same.cut')).toEqual({ status: 0, out: '', error: '' });
  });

  test('say the time in the heading, and nothing more where nothing more has changed', async () => {
    const { out } = await runOn(
      { ...files, 'time.cut': cut(1, undefined, '1+12') },
      'compare',
      'old.cut',
      'time.cut',
    );
    expect(out).toBe('cut 1  1+0 → 1+12\n');
  });

  test('are compared whatever their numbers', async () => {
    const { out } = await runOn({ ...files, 'two.cut': cut(2) }, 'compare', 'old.cut', 'two.cut');
    expect(out).toBe('cut 2\n  cut 2 (was 1)\n');
  });

  test('may come from standard input, one of them', async () => {
    const host = memoryHost(files);
    host.input = Buffer.from(files['now.cut']);
    expect((await run(host, 'compare', 'old.cut', '-')).out).toContain(NOTE);
    const both = await run(host, 'compare', '-', '-');
    expect(both.status).toBe(2);
    expect(both.error).toContain('Standard input can be only one of the two.');
  });

  test('with errors cannot be compared: 2, and the errors as usual', async () => {
    const host = memoryHost({ ...files, 'bad.cut': cut(1, 'A: 1') });
    for (const words of [
      ['bad.cut', 'now.cut'],
      ['old.cut', 'bad.cut'],
    ]) {
      const { status, out, error } = await run(host, 'compare', ...words);
      expect({ status, out }).toEqual({ status: 2, out: '' });
      expect(error).toContain('bad.cut:3:4: error[timeline-short]');
    }
  });

  test('that are not there, or are no cut, are wrong use', async () => {
    const host = memoryHost({ ...files, 'house.cut': 'phrase walk = 1--2--\n' });
    const missing = await run(host, 'compare', 'old.cut', 'nwo.cut');
    expect(missing.status).toBe(2);
    expect(missing.error).toContain('did you mean `now.cut`?');
    const house = await run(host, 'compare', 'house.cut', 'now.cut');
    expect(house.status).toBe(2);
    expect(house.error).toContain('only what cuts share');
    expect((await run(host, 'compare', 'old.cut')).status).toBe(2);
    expect((await run(host, 'compare', 'old.cut', 'now.cut', 'same.cut')).status).toBe(2);
  });

  test('warnings of either are not of the note', async () => {
    const warned = cut(1, 'A: 1--2 1-2..');
    const { error, status } = await runOn({ 'a.cut': warned, 'b.cut': warned }, 'compare', 'a.cut', 'b.cut');
    expect({ error, status }).toEqual({ error: '', status: 0 });
  });
});

test('the examples of its help are no wrong use', async () => {
  const files = {
    'c012.cut': cut(12),
    'cuts/c012.cut': cut(12),
    'take-1/c012.cut': cut(12, LONGER),
    'episode.yaml': 'cuts: ["cuts/*.cut"]\n',
  };
  const { out } = await runOn({}, 'compare', '--help');
  const lines = [...out.split('Examples:')[1]!.matchAll(/^ {2}cutwright (.*?) {3}/gm)].map(
    ([, line]) => line!,
  );
  expect(lines.length).toBe(5);
  for (const line of lines) {
    const host = memoryHost(files);
    for (const rev of ['HEAD', 'HEAD~1', 'v1'])
      host.revisions.set(rev, memoryHost({ 'cuts/c012.cut': cut(12) }));
    const { status, error } = await run(host, ...line.split(' '));
    expect({ line, error: error.match(/error/) }).toEqual({ line, error: null });
    expect(status).toBeLessThan(2);
  }
});

describe('folders and manifests', () => {
  const files = {
    'old/c1.cut': cut(1),
    'old/c2.cut': cut(2),
    'old/c3.cut': cut(3),
    'old/c9.cut': cut(9),
    'old/c10.cut': cut(10),
    'now/scene-2.cut': cut('02', LONGER),
    'now/scene-10.cut': cut(10, LONGER),
    'now/12a.cut': cut('12A'),
  };

  test('bring cuts together by their numbers, and list the others shortly', async () => {
    expect(await runOn(files, 'compare', 'old', 'now')).toEqual({
      status: 1,
      out: `cut 02\n  ${NOTE}\ncut 10\n  ${NOTE}\nonly in old: cuts 1, 3, 9\nonly in now: cut 12A\n`,
      error: '2 cuts compared: 2 differ\n',
    });
  });

  test('with two cuts of one number never pass for the same: 2, and which one is left out', async () => {
    const twice = { 'old/1.cut': cut(1), 'now/1.cut': cut(1), 'now/2.cut': cut(1, LONGER) };
    const { status, error } = await runOn(twice, 'compare', 'old', 'now');
    expect(status).toBe(2);
    expect(error).toContain(
      'now/2.cut:1:5: warning[cut-twice]: Cut 1 is already the number of `now/1.cut`; only that one is compared.',
    );
  });

  test('join numbers that follow each other', async () => {
    const many = Object.fromEntries([1, 2, 3, 4, 5, 6, 7, 9].map((n) => [`old/${n}.cut`, cut(n)]));
    const { out } = await runOn({ ...many, 'now/8.cut': cut(8) }, 'compare', 'old/', 'now/');
    expect(out).toBe('only in old/: cuts 1-7, 9\nonly in now/: cut 8\n');
  });

  test('against one file mean the cut of its number', async () => {
    const host = memoryHost(files);
    const { out, status } = await run(host, 'compare', 'old', 'now/scene-10.cut');
    expect({ out, status }).toEqual({ out: `cut 10\n  ${NOTE}\n`, status: 1 });
    const none = await run(host, 'compare', 'old/c3.cut', 'now');
    expect(none.status).toBe(2);
    expect(none.error).toContain('`now` holds no cut 3.');
  });

  test('one cut with errors costs its own comparison only', async () => {
    const { status, out, error } = await runOn(
      { ...files, 'now/bad.cut': cut(3, 'A: 1') },
      'compare',
      'old',
      'now',
    );
    expect(status).toBe(2);
    expect(out).toContain('cut 10\n');
    expect(out).toContain('only in old: cuts 1, 9\n');
    expect(error).toContain('error[timeline-short]');
  });

  test('stand in the order of the new manifest', async () => {
    const { out } = await runOn(
      { ...files, 'now/episode.yaml': 'cuts: [scene-10.cut, scene-2.cut]\n' },
      'compare',
      'old',
      'now/episode.yaml',
    );
    expect(out.match(/^cut \d+/gm)).toEqual(['cut 10', 'cut 02']);
  });
});

describe('revisions', () => {
  test('that stand without a path are no missing files: how to write them is said', async () => {
    const host = memoryHost({ 'c1.cut': cut(1) });
    host.revisions.set('v1', memoryHost({ 'c1.cut': cut(1) }));
    const { status, error } = await run(host, 'compare', 'v1', 'c1.cut');
    expect(status).toBe(2);
    expect(error).toContain('`v1` is a revision: write `v1:` for all that it holds');
    expect((await run(host, 'compare', 'v1:', 'c1.cut')).status).toBe(0);
    expect((await run(host, 'compare', 'v2', 'c1.cut')).error).toContain('v2: error[file-missing]');
  });

  const world = () => {
    const host = memoryHost({
      '.git/HEAD': 'ref: x\n',
      'cuts/c1.cut': cut(1, LONGER),
      'cuts/c3.cut': cut(3),
      'episode.yaml': '',
    });
    host.revisions.set(
      'HEAD~1',
      memoryHost({ 'cuts/c1.cut': cut(1), 'cuts/c2.cut': cut(2), 'episode.yaml': '' }),
    );
    return host;
  };

  test('are named as git names them', async () => {
    const { out, status } = await run(world(), 'compare', 'HEAD~1:cuts/c1.cut', 'cuts/c1.cut');
    expect({ out, status }).toEqual({ out: `cut 1\n  ${NOTE}\n`, status: 1 });
    const below = { ...world(), cwd: '/work/cuts' };
    expect((await run(below, 'compare', 'HEAD~1:cuts/c1.cut', 'c1.cut')).out).toContain(NOTE);
    expect((await run(below, 'compare', 'HEAD~1:./c1.cut', 'c1.cut')).out).toContain(NOTE);
    expect((await run(below, 'compare', 'HEAD~1:../cuts', '.')).out).toContain(
      'only in HEAD~1:../cuts: cut 2',
    );
  });

  test('that git does not know are wrong use', async () => {
    const { status, error } = await run(world(), 'compare', 'v9:cuts/c1.cut', 'cuts/c1.cut');
    expect(status).toBe(2);
    expect(error).toContain('git knows no revision `v9`');
    expect((await run(world(), 'compare', '--since', 'v9')).status).toBe(2);
  });

  test('`--since` is the whole episode then, or what is named', async () => {
    const below = { ...world(), cwd: '/work/cuts' };
    for (const host of [world(), below]) {
      expect(await run(host, 'compare', '--since', 'HEAD~1')).toEqual({
        status: 1,
        out: `cut 1\n  ${NOTE}\nonly in HEAD~1: cut 2\nonly now: cut 3\n`,
        error: '',
      });
    }
    expect((await run(world(), 'compare', '--since', 'HEAD~1', 'cuts/c1.cut')).out).toBe(
      `cut 1\n  ${NOTE}\n`,
    );
    expect((await run(world(), 'compare', '--since', 'HEAD~1', 'cuts/c2.cut')).out).toBe(
      'only in HEAD~1: cut 2\n',
    );
    const typo = await run(world(), 'compare', '--since', 'HEAD~1', 'cuts/c4.cut');
    expect(typo.status).toBe(2);
  });

  test('errors of the past name it', async () => {
    const host = world();
    host.revisions.set('HEAD~1', memoryHost({ 'cuts/c1.cut': cut(1, 'A: 1') }));
    const { error, status } = await run(host, 'compare', 'HEAD~1:cuts/c1.cut', 'cuts/c1.cut');
    expect(status).toBe(2);
    expect(error).toContain('HEAD~1:cuts/c1.cut:3:4: error[timeline-short]');
  });
});

test('--json tells everything in numbers, with the sentences of both languages', async () => {
  const files = { 'old.cut': cut(1), 'now.cut': cut(1, LONGER) };
  const { out, status } = await runOn(files, 'compare', 'old.cut', 'now.cut', '--json');
  expect(status).toBe(1);
  expect(JSON.parse(out)).toEqual({
    version: 1,
    old: 'old.cut',
    now: 'now.cut',
    cuts: [
      {
        cut: '1',
        title: '',
        fps: 24,
        time: { old: 24, now: 24 },
        changes: [
          {
            kind: 'exposure',
            level: 'A',
            first: { form: 'drawing', drawing: '1', kind: 'key', cel: 1, way: null },
            last: { form: 'drawing', drawing: '1', kind: 'key', cel: 1, way: null },
            count: 1,
            frames: { old: 2, now: 4 },
            from: { old: 1, now: 1 },
            inCycle: false,
            follows: { by: 2, last: null },
            place: { kind: 'level', level: 'A' },
            rows: { from: 1, to: 4 },
            en: NOTE,
            ja: 'A：原画1 を2コマ長く、4コマ（旧 2）、0+1から、以降2コマ後ろへ',
          },
        ],
      },
    ],
    onlyOld: [],
    onlyNow: [],
  });
  expect(JSON.parse((await runOn(files, 'compare', 'old.cut', 'old.cut', '--json')).out).cuts).toEqual([]);
});

describe('git', () => {
  let folder = '';
  const git = (...args: string[]) =>
    execFileSync('git', ['-C', folder, '-c', 'user.name=t', '-c', 'user.email=t@example.invalid', ...args], {
      encoding: 'utf8',
    });
  const write = (name: string, text: string) => {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  };
  /** What the program prints in the folder, in the real world. */
  async function real(cwd: string, ...argv: string[]) {
    const out: string[] = [];
    const error: string[] = [];
    const host = {
      ...nodeHost(),
      cwd,
      out: (text: string | Uint8Array) => void out.push(String(text)),
      error: (text: string) => void error.push(text),
    };
    return { status: await main(argv, host), out: out.join(''), error: error.join('') };
  }

  beforeAll(() => {
    folder = realpathSync(mkdtempSync(join(tmpdir(), 'compare-')));
    git('init', '--quiet');
    write('house.cut', 'phrase walk = 1--2--\n');
    write('episode.yaml', 'cuts: ["cuts/*.cut"]\n');
    write('cuts/c1.cut', `use "../house.cut"\n${cut(1, 'A: 1:4 walk*3 2..', '2+0')}`);
    write('cuts/c2.cut', cut(2));
    write('cuts/c3.cut', cut(3));
    write('cuts/c5.cut', 'cut 5\ntime 3+0\nmemo "A cut of which nothing else is like it."\n');
    git('add', '.');
    git('commit', '--quiet', '-m', 'one');
    write('cuts/c1.cut', `use "../house.cut"\n${cut(1, 'A: 1:6 walk*3 2..', '2+0')}`);
    write('cuts/c2.cut', `# only a remark\n${cut(2)}`);
    // Git takes this for a renamed file.
    rmSync(join(folder, 'cuts/c3.cut'));
    write('cuts/c4.cut', cut(4));
    rmSync(join(folder, 'cuts/c5.cut'));
    write('cuts/c6.cut', 'cut 6 "Bell"\ntime 9+0\nnote 12 "Nor is there a second one of these."\n');
    git('add', '--intent-to-add', 'cuts/c4.cut', 'cuts/c6.cut');
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const FIRST =
    'cut 1\n  A: key 1 held 2 frames longer, 6 frames (was 4), from 0+1; what follows comes 2 frames later\n';

  test('an episode is compared with what git has of it', async () => {
    const { status, out } = await real(folder, 'compare', '--since', 'HEAD');
    expect({ status, out }).toEqual({
      status: 1,
      out: `${FIRST}only in HEAD: cuts 3, 5\nonly now: cuts 4, 6\n`,
    });
    const below = await real(join(folder, 'cuts'), 'compare', 'HEAD:./c1.cut', 'c1.cut');
    expect(below.out).toBe(FIRST);
  });

  test('calls the command for each file that differs, and never stops at one', async () => {
    // The command line that git would call, seen by a program of its own that only writes down its words.
    const spy = join(folder, 'spy.sh');
    const keep = `case "$word" in /dev/null) ;; /*) n=$((n + 1)); cp "$word" "${folder}/kept-$$-$n"; word="${folder}/kept-$$-$n" ;; esac`;
    writeFileSync(spy, `n=0; for word in "$@"; do ${keep}; printf '%s\\037' "$word"; done; printf '\\036'\n`);
    write('.gitattributes', '*.cut diff=cut\n');
    git('config', 'diff.cut.command', `sh ${spy}`);
    const calls = git('diff', '--', 'cuts')
      .split('\x1e')
      .filter((call) => call !== '')
      .map((call) => call.split('\x1f').slice(0, -1));
    expect(calls.map((words) => words.length)).toEqual([7, 7, 9, 7, 7]);
    const said: string[] = [];
    for (const words of calls) {
      const { status, out, error } = await real(folder, 'compare', '--git', ...words);
      expect({ status, error }).toEqual({ status: 0, error: '' });
      said.push(out);
    }
    expect(said).toEqual([
      `cuts/c1.cut: ${FIRST}`,
      'cuts/c2.cut: nothing changes on the sheet\n',
      'cuts/c4.cut: cut 4\n  cut 4 (was 3)\n',
      'cuts/c5.cut: cut 5 is dropped\n',
      'cuts/c6.cut: cut 6 is new\n',
    ]);
  });
});

test('--git outside of git, and for what cannot be compared', async () => {
  const files = { 'c1.cut': cut(1), 'tmp/old': cut(1, 'A: 1'), 'tmp/now': cut(1) };
  const seven = ['c1.cut', 'tmp/old', 'abc', '100644', 'tmp/now', 'def', '100644'];
  const { status, out, error } = await runOn(files, 'compare', '--git', ...seven);
  expect({ status, out }).toEqual({ status: 0, out: 'c1.cut: not compared, the old version has errors\n' });
  expect(error).toContain('old:c1.cut:3:4: error[timeline-short]');
  expect((await runOn(files, 'compare', '--git', 'c1.cut')).out).toBe('c1.cut: the merge is not settled\n');
  expect((await runOn(files, 'compare', '--git', 'c1.cut', 'tmp/now')).status).toBe(2);
});
