import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { commitOf } from '../../src/host/git-repository.js';
import type { Host } from '../../src/host/host.js';
import { nodeHost } from '../../src/host/node-host.js';

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

describe('revision host', () => {
  let root: string;
  let past: Host;
  const host = nodeHost();
  const git = (...args: string[]) =>
    execFileSync('git', ['-C', root, '-c', 'user.name=t', '-c', 'user.email=t@t', ...args], {
      stdio: 'pipe',
    });

  beforeAll(() => {
    root = realpathSync(mkdtempSync(join(tmpdir(), 'cutwright-')));
    git('init', '-q');
    mkdirSync(join(root, 'cuts/old'), { recursive: true });
    writeFileSync(join(root, 'episode.yaml'), 'fps: 24\n');
    writeFileSync(join(root, 'cuts/c001.cut'), 'cut 1\ntime 12\n');
    writeFileSync(join(root, 'cuts/old/空.cut'), 'cut 2\n');
    writeFileSync(join(root, 'cuts/scan.png'), 'picture');
    git('add', '.');
    git('commit', '-q', '-m', 'one');
    writeFileSync(join(root, 'cuts/c001.cut'), 'cut 1\ntime 24\n');
    rmSync(join(root, 'cuts/old'), { recursive: true });
    const made = host.revision(join(root, 'cuts'), 'HEAD');
    if (!made.ok) throw new Error(made.reason);
    past = made.value;
  });
  afterAll(() => rmSync(root, { recursive: true }));

  const text = (one: Host, path: string) => {
    const read = one.read(join(root, path));
    return read.ok ? Buffer.from(read.value).toString() : read.reason;
  };

  describe('a work tree as it was', () => {
    test('texts are those of the revision, whatever the disk says now', () => {
      expect(text(past, 'cuts/c001.cut')).toBe('cut 1\ntime 12\n');
      expect(text(host, 'cuts/c001.cut')).toBe('cut 1\ntime 24\n');
      expect(text(past, 'cuts/old/空.cut')).toBe('cut 2\n');
    });
    test('folders and kinds are those of the revision', () => {
      expect(past.list(join(root, 'cuts'))).toEqual({ ok: true, value: ['c001.cut', 'old'] });
      expect(past.kind(join(root, 'cuts/old'))).toBe('folder');
      expect(past.kind(join(root, 'cuts/c009.cut'))).toBe('none');
      expect(past.list(root)).toEqual({ ok: true, value: ['cuts', 'episode.yaml'] });
      expect(text(past, 'cuts')).toBe('is a folder');
    });
    test('its commit is the one that the revision names; a bare tree has none', () => {
      const id = git('rev-parse', 'HEAD').toString();
      expect(past.commit(root)).toBe(id.slice(0, 7));
      const tree = host.revision(root, 'HEAD^{tree}');
      expect(tree.ok && [tree.value.kind(join(root, 'cuts')), tree.value.commit(root)]).toEqual([
        'folder',
        undefined,
      ]);
    });
    test('what is outside the work tree is not there', () => {
      expect(past.kind('/etc')).toBe('none');
      expect(past.read('/etc/passwd').ok).toBe(false);
    });
    test('a path through a link is the same path', () => {
      const link = `${root}-link`;
      symlinkSync(root, link);
      expect(past.kind(join(link, 'cuts/old/空.cut'))).toBe('file');
      rmSync(link);
    });
    test('nothing can be written', () => {
      expect(past.write(join(root, 'cuts/c001.cut'), new Uint8Array())).toMatchObject({ ok: false });
    });
    test('what cannot be had says why', () => {
      const reason = (place: string, rev: string) => {
        const made = host.revision(place, rev);
        return made.ok ? '' : made.reason;
      };
      expect(reason(root, 'nowhere')).toBe('git knows no revision `nowhere`');
      expect(reason(root, '--all')).toBe('git knows no revision `--all`');
      expect(reason(tmpdir(), 'HEAD')).toBe('the folder is in no git work tree');
      expect(host.revision(join(root, 'gone/away'), 'HEAD').ok).toBe(true);
    });
  });
});
