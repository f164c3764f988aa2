import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { commitOf } from '../../src/host/git-repository.js';

let folder: string;

/** git itself says what its files must be read as. */
function git(...args: string[]): string {
  const identity = [
    '-c',
    'user.name=Nao',
    '-c',
    'user.email=nao@example.org',
    '-c',
    'init.defaultBranch=main',
  ];
  return execFileSync('git', [...identity, ...args], { cwd: folder, encoding: 'utf8' }).trim();
}

const head = () => git('rev-parse', 'HEAD').slice(0, 7);

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'cutwright-'));
  mkdirSync(join(folder, 'cuts'));
  git('init', '--quiet');
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('the commit that a folder stands on', () => {
  test('none before the first', () => {
    expect(commitOf(folder)).toBeUndefined();
  });

  test('on a branch, from a folder below', () => {
    git('commit', '--quiet', '--allow-empty', '-m', 'one');
    expect(commitOf(join(folder, 'cuts'))).toBe(head());
    git('commit', '--quiet', '--allow-empty', '-m', 'two');
    expect(commitOf(folder)).toBe(head());
  });

  test('with packed references, and on no branch', () => {
    git('commit', '--quiet', '--allow-empty', '-m', 'one');
    git('pack-refs', '--all');
    expect(commitOf(folder)).toBe(head());
    git('checkout', '--quiet', '--detach');
    expect(commitOf(folder)).toBe(head());
  });

  test('in a second work tree', () => {
    git('commit', '--quiet', '--allow-empty', '-m', 'one');
    git('worktree', 'add', '--quiet', '-b', 'retakes', 'second');
    expect(commitOf(join(folder, 'second'))).toBe(head());
  });
});
