/**
 * The work tree of a folder as it stood at a revision. git itself is asked: which tree of which commit, which files, and
 * what stands in those that a run may read.
 */

import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname, isAbsolute, join, posix, relative, resolve, sep } from 'node:path';
import { type Host, LARGEST_FILE, type Reading, TOO_LARGE } from './host.js';

/** Files of a tree that are read: texts of cuts and manifests. */
const TEXTS = /\.(cut|ya?ml)$/i;
/** More text than any episode has; a tree beyond is not read. */
const MOST_BYTES = 512 * 1024 * 1024;

/** The texts of a work tree at a revision. */
interface Snapshot {
  /** Absolute, links resolved. */
  readonly root: string;
  /** Bytes by path from the root, with `/`. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** Short id; undefined where the revision is a tree of no commit. */
  readonly commit: string | undefined;
}

/** `rev` as git takes it (`HEAD~1`, a branch, a tag, an id). `reason` is a short phrase: "there is no revision …". */
function snapshotOf(folder: string, rev: string): Reading<Snapshot> {
  const root = git(folder, ['rev-parse', '--show-toplevel']);
  if (!root.ok) return root;
  const top = root.value.toString('utf8').replace(/\n$/, '');
  // A word that begins with a dash would be taken for an option.
  const named = (kind: string) =>
    git(top, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${rev}^{${kind}}`]);
  const found = named('tree');
  if (!found.ok) return refuse(`git knows no revision \`${rev}\``);
  const tree = found.value.toString('utf8').trim();
  const commit = named('commit');
  const listed = git(top, ['ls-tree', '-r', '-z', '--full-tree', tree]);
  if (!listed.ok) return listed;
  const blobs = listed.value
    .toString('utf8')
    .split('\0')
    .flatMap((line) => {
      const [, id, path] = /^100\d{3} blob ([0-9a-f]+)\t(.+)$/s.exec(line) ?? [];
      return id && path && TEXTS.test(path) ? [{ id, path }] : [];
    });
  const read = git(top, ['cat-file', '--batch'], blobs.map(({ id }) => `${id}\n`).join(''));
  if (!read.ok) return read;
  const files = new Map<string, Uint8Array>();
  let at = 0;
  for (const { path } of blobs) {
    const end = read.value.indexOf(10, at);
    const size = Number(/ blob (\d+)$/.exec(read.value.toString('latin1', at, end))?.[1]);
    if (end < 0 || !Number.isInteger(size)) return refuse('git gave an answer that cannot be read');
    files.set(path, read.value.subarray(end + 1, end + 1 + size));
    at = end + 1 + size + 1;
  }
  const id = commit.ok ? commit.value.toString('utf8').slice(0, SHORT) : undefined;
  return { ok: true, value: { root: top, files, commit: id } };
}

/** What a path is in a snapshot; its bytes where it is a file. Paths outside the tree are `none`. */
function inSnapshot({ root, files }: Snapshot, path: string) {
  const inner = relative(root, path);
  if (inner.startsWith('..') || isAbsolute(inner)) return { kind: 'none' as const };
  const name = inner.split(sep).join(posix.sep);
  const bytes = files.get(name);
  if (bytes) return { kind: 'file' as const, bytes };
  const start = name === '' ? '' : `${name}/`;
  const names = new Set<string>();
  for (const one of files.keys())
    if (one.startsWith(start)) names.add(one.slice(start.length).split('/')[0]!);
  return names.size > 0 ? { kind: 'folder' as const, names: [...names] } : { kind: 'none' as const };
}

/** The nearest folder on the way up from a path that is there, for git to stand in. */
function standing(path: string, isFolder: (path: string) => boolean): string {
  for (let at = path; ; at = dirname(at)) if (isFolder(at) || at === dirname(at)) return at;
}

function git(folder: string, args: readonly string[], input?: string): Reading<Buffer> {
  const done = spawnSync('git', ['-C', folder, ...args], {
    input,
    maxBuffer: MOST_BYTES,
    env: { ...process.env, LC_ALL: 'C', GIT_OPTIONAL_LOCKS: '0' },
  });
  const { code } = (done.error ?? {}) as NodeJS.ErrnoException;
  if (code === 'ENOENT') return refuse('git is not installed');
  if (done.error) return refuse(`git failed: ${done.error.message}`);
  if (done.status === 0) return { ok: true, value: done.stdout };
  const words = done.stderr
    .toString('utf8')
    .split('\n')[0]!
    .replace(/^(fatal|error): /, '');
  return refuse(
    /not a git repository/.test(words) ? 'the folder is in no git work tree' : `git says: ${words}`,
  );
}

const refuse = (reason: string): Reading<never> => ({ ok: false, reason });

/** Digits of a commit's id that are printed. */
export const SHORT = 7;

/**
 * The short id of the commit that a folder's work tree stands on, read from git's own files (gitrepository-layout), so
 * that no program needs to be started for it. Undefined outside a work tree, or before its first commit.
 */
export function commitOf(folder: string): string | undefined {
  for (let at = resolve(folder); ; at = dirname(at)) {
    const git = gitFolder(at);
    if (git) return head(git)?.slice(0, SHORT);
    if (dirname(at) === at) return undefined;
  }
}

/** The `.git` of a work tree: a folder, or a file that names one. */
function gitFolder(tree: string): string | undefined {
  const dotGit = join(tree, '.git');
  if (text(join(dotGit, 'HEAD')) !== undefined) return dotGit;
  const named = text(dotGit)?.match(/^gitdir: (.+)$/m)?.[1];
  return named && resolve(tree, named);
}

function head(git: string): string | undefined {
  const shared = text(join(git, 'commondir'));
  const common = shared ? resolve(git, shared) : git;
  let value = text(join(git, 'HEAD'));
  for (let hops = 0; value?.startsWith('ref: ') && hops < 5; hops++) {
    const name = value.slice('ref: '.length);
    value = text(join(git, name)) ?? text(join(common, name)) ?? packed(common, name);
  }
  return value?.match(/^[0-9a-f]{40,64}$/)?.[0];
}

function packed(common: string, name: string): string | undefined {
  const line = text(join(common, 'packed-refs'))
    ?.split('\n')
    .find((one) => one.endsWith(` ${name}`));
  return line?.split(' ')[0];
}

function text(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8').trim();
  } catch {
    return undefined;
  }
}

/**
 * The world as it was at a revision: texts of cuts and manifests in the work tree that `place` lies in. All else about it
 * (fonts, clock, where messages go) is as it is now; nothing can be written.
 */
export function atRevision(host: Host, place: string, rev: string): Reading<Host> {
  const snapshot = snapshotOf(
    standing(place, (path) => host.kind(path) === 'folder'),
    rev,
  );
  return snapshot.ok ? { ok: true, value: of(host, snapshot.value) } : snapshot;
}

function of(host: Host, snapshot: Snapshot): Host {
  // What is gone from the disk has no real path of its own, its folder may have.
  const real = (path: string): string => {
    const up = dirname(path);
    if (host.kind(path) !== 'none' || up === path) return host.real(path);
    const rest = path.slice(up.length);
    return `${real(up).replace(/[/\\]$/, '')}${up.endsWith('/') ? `/${rest}` : rest}`;
  };
  const look = (path: string) => inSnapshot(snapshot, real(path));
  return {
    ...host,
    read(path) {
      const found = look(path);
      if (found.kind === 'none') return { ok: false, reason: 'no such file' };
      if (found.kind === 'folder') return { ok: false, reason: 'is a folder' };
      return found.bytes.length > LARGEST_FILE
        ? { ok: false, reason: TOO_LARGE }
        : { ok: true, value: found.bytes };
    },
    list(folder) {
      const found = look(folder);
      if (found.kind === 'file') return { ok: false, reason: 'a part of the path is not a folder' };
      if (found.kind === 'none') return { ok: false, reason: 'no such file' };
      const names = found.names.sort((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b)));
      return { ok: true, value: names };
    },
    kind: (path) => look(path).kind,
    real,
    readEnd(path, most) {
      const found = look(path);
      if (found.kind !== 'file')
        return { ok: false, reason: found.kind === 'none' ? 'no such file' : 'is a folder' };
      const { bytes } = found;
      return {
        ok: true,
        value: { bytes: bytes.subarray(Math.max(0, bytes.length - most)), size: bytes.length },
      };
    },
    write: () => ({ ok: false, reason: 'a revision cannot be changed' }),
    writeLater: async () => ({ ok: false, reason: 'a revision cannot be changed' }),
    openTemporary: () => ({ ok: false, reason: 'a revision cannot be changed' }),
    removeStaleTemporaries: () => {},
    commit: () => snapshot.commit,
  };
}
