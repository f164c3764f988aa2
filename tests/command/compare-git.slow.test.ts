/** `compare` as git's own diff, in a real repository. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { program } from '../bundle.js';

const cut = (number: number, line = 'A: 1--2..') => `cut ${number}\ntime 1+0\n${line}\n`;
const LONGER = 'A: 1:4--2..';
const NOTE = 'A: key 1 held 2 frames longer, 4 frames (was 2), from 0+1; what follows comes 2 frames later';

describe('the two lines that make it git’s diff', () => {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'compare-git-')));
  const git = (...args: string[]) =>
    execFileSync('git', ['-C', folder, '-c', 'user.name=t', '-c', 'user.email=t@example.invalid', ...args], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('show notes in `git diff`, and with --ext-diff in the log, and lines again without', () => {
    git('init', '--quiet');
    writeFileSync(join(folder, '.gitattributes'), '*.cut diff=cut\n');
    git('config', 'diff.cut.command', `"${process.execPath}" "${program}" compare --git`);
    for (const name of ['a.cut', 'b.cut']) writeFileSync(join(folder, name), cut(name === 'a.cut' ? 1 : 2));
    git('add', '.');
    git('commit', '--quiet', '-m', 'one');
    writeFileSync(join(folder, 'a.cut'), cut(1, 'A: 1'));
    writeFileSync(join(folder, 'b.cut'), cut(2, LONGER));
    // The first has an error, and does not keep git from the second.
    const notes = `a.cut: not compared, the new version has errors\nb.cut: cut 2\n  ${NOTE}\n`;
    expect(git('diff')).toBe(notes);
    expect(git('diff', '--no-ext-diff')).toContain(`+${LONGER}`);
    git('commit', '--quiet', '--all', '-m', 'two');
    expect(git('show', '--ext-diff', '--format=', 'HEAD')).toBe(notes);
  });
});
