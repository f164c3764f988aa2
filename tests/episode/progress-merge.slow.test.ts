/** Rows that two people add on two branches, joined by git as the reference says. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { appendProgress } from '../../src/episode/append-progress.js';
import { openEpisode } from '../../src/episode/manifest.js';
import { readProgress } from '../../src/episode/progress-csv.js';
import { nodeHost } from '../../src/host/node-host.js';

const folder = mkdtempSync(join(tmpdir(), 'cutwright-merge-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const git = (...args: readonly string[]): string =>
  execFileSync('git', ['-c', 'user.name=t', '-c', 'user.email=t@example.org', ...args], {
    cwd: folder,
    encoding: 'utf8',
    stdio: 'pipe',
  });

test('both have their rows, and no conflict', () => {
  const host = nodeHost();
  const episode = () => openEpisode(host, join(folder, 'episode.yaml'), 'episode.yaml');
  const add = (cut: string) => {
    const row = { cut, stage: 'layout', state: 'done', date: '2027-03-19', person: '', note: '' } as const;
    expect(appendProgress(host, episode(), [row]).written).toBe(true);
  };
  const rule = /^ {4}(progress\.csv .*)$/m.exec(readFileSync('grammar/progress.md', 'utf8'))![1]!;
  writeFileSync(join(folder, 'episode.yaml'), '');
  writeFileSync(join(folder, '.gitattributes'), `${rule}\n`);
  git('init', '--quiet', '--initial-branch', 'main');
  add('1');
  git('add', '.');
  git('commit', '--quiet', '-m', 'begin');
  git('checkout', '--quiet', '-b', 'other');
  add('2');
  git('commit', '--quiet', '-am', 'two');
  git('checkout', '--quiet', 'main');
  add('3');
  git('commit', '--quiet', '-am', 'three');
  git('merge', '--quiet', '-m', 'join', 'other');
  const { rows, diagnostics } = readProgress(host, episode())!;
  expect(diagnostics).toEqual([]);
  expect(rows.map(({ cut }) => cut).sort()).toEqual(['1', '2', '3']);
});
