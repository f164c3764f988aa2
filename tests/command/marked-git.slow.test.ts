/** `build --changed --marked-against HEAD` in a real repository: a retake prints the cut that was retaken, and no other. */

import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { program } from '../bundle.js';

const cut = (number: number, line: string) => `cut ${number}\ntime 1+0\n${line}\n`;

describe.each([[[]], [['--one-file', '--output', 'all.pdf']]])('with %j', (more) => {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'marked-git-')));
  const git = (...args: string[]) =>
    execFileSync('git', ['-C', folder, '-c', 'user.name=t', '-c', 'user.email=t@example.invalid', ...args]);
  const build = (...args: string[]) => {
    const run = spawnSync(process.execPath, [program, 'build', '.', ...more, ...args], {
      cwd: folder,
      encoding: 'utf8',
    });
    return { status: run.status, error: run.stderr };
  };
  const retake = (number: number, line: string) =>
    writeFileSync(join(folder, `c${number}.cut`), cut(number, line));

  beforeAll(() => {
    git('init', '--quiet');
    writeFileSync(join(folder, 'episode.yaml'), 'title: Ferry\n');
    writeFileSync(join(folder, '.gitignore'), '*.pdf\n');
    for (const number of [1, 2, 3]) retake(number, 'A: 1--2..');
    git('add', '.');
    git('commit', '--quiet', '-m', 'takes');
    expect(build().status).toBe(0);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test('nothing is printed where nothing was retaken', () => {
    expect(build('--changed', '--marked-against', 'HEAD')).toEqual({
      status: 0,
      error: '3 cuts unchanged\n',
    });
    expect(build('--changed', '--pages', 'changed', '--marked-against', 'HEAD').error).toContain(
      'whole cuts',
    );
  });

  test('only the cut that was retaken is printed, once', () => {
    retake(2, 'A: 1:4--2..');
    const { error } = build('--changed', '--marked-against', 'HEAD');
    expect(error).toContain('cut 2: ');
    expect(error).not.toMatch(/cut [13]: /);
    expect(build('--changed', '--marked-against', 'HEAD').error).toBe('3 cuts unchanged\n');
  });

  test('the marks of one retake are no reason to print at the next', () => {
    git('commit', '--quiet', '--all', '-m', 'retake of cut 2');
    retake(3, 'A: 1:6--2..');
    const { error } = build('--changed', '--marked-against', 'HEAD');
    expect(error).toContain('cut 3: ');
    expect(error).not.toMatch(/cut [12]: /);
    expect(readdirSync(folder).filter((name) => name.endsWith('.pdf'))).toHaveLength(more.length ? 1 : 3);
  });
});
