/** The sheet as git shows it: the shipped program as the text conversion of a real repository. */

import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { program } from '../bundle.js';

let root: string;

const git = (...args: string[]): string =>
  execFileSync('git', ['-c', 'user.name=t', '-c', 'user.email=t@t', ...args], {
    cwd: root,
    encoding: 'utf8',
    stdio: 'pipe',
  });
const write = (name: string, text: string) => writeFileSync(join(root, name), text);
const cut = (items: string) => `use "../house.cut"\n\ncut 1\ntime 1+0\nA: ${items}\n`;

beforeAll(() => {
  root = mkdtempSync(join(tmpdir(), 'cutwright-'));
  git('init', '-q');
  git('config', 'diff.cut.textconv', `'${process.execPath}' '${program}' show --width 100 --home cuts`);
  mkdirSync(join(root, 'cuts'));
  write('.gitattributes', '*.cut diff=cut\n');
  write('episode.yaml', 'title: Samphire Ferry\n');
  write('house.cut', 'phrase walk = 1--2--\n');
  write('cuts/c001.cut', cut('walk:12 3:12'));
  git('add', '.');
  git('commit', '-q', '-m', 'one');
  write('cuts/c001.cut', cut('walk:8 3:16'));
  git('commit', '-q', '-a', '-m', 'two');
});

afterAll(() => rmSync(root, { recursive: true, force: true }));

test('the log shows the rows that a retime has changed', () => {
  const log = git('log', '-p', '-1');
  expect(log).toContain('-│ 0+13  13 │ (3)  7');
  expect(log).toContain('+│ 0+09   9 │ (3)  5');
  // Found by --home, though git gives a copy in another folder.
  expect(log).toContain(' Samphire Ferry');
  expect(log).not.toContain('! ');
});

test('a text with errors is shown as well: git goes on', () => {
  write('cuts/c001.cut', cut('walk:8 3:15'));
  const diff = git('diff');
  expect(diff).toMatch(/^\+! 5:11: Error: /m);
  write('cuts/c001.cut', 'no cut at all\n');
  expect(git('diff')).toMatch(/^\+no cut at all$/m);
  expect(git('log', '-p', '--stat')).toContain('+phrase walk = 1--2--');
});

test('a new cut and one that is gone are whole sheets', () => {
  write('cuts/c001.cut', cut('walk:8 3:16'));
  git('mv', 'cuts/c001.cut', 'cuts/c002.cut');
  write('cuts/c002.cut', 'cut 2\ntime 12\nA: 1..\n');
  git('add', '.');
  const diff = git('diff', '--cached', '--no-renames');
  expect(diff).toContain('+│ 0+12  12 │  │');
  expect(diff).toContain('-│ 0+09   9 │ (3)  5');
});
