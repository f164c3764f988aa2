import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { main } from '../../src/command/main.js';
import { nodeHost } from '../../src/host/node-host.js';
import { runOn } from './run.js';

const cut = (number: string | number, line = 'A: 1--2..', time = '1+0') =>
  `cut ${number}\ntime ${time}\n${line}\n`;

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
  expect(error).toContain('old:c1.cut:3:4: timeline-short');
  expect((await runOn(files, 'compare', '--git', 'c1.cut')).out).toBe('c1.cut: the merge is not settled\n');
  expect((await runOn(files, 'compare', '--git', 'c1.cut', 'tmp/now')).status).toBe(2);
});
