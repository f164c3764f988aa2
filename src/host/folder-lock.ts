/** Folders that one process at a time works on for as long as it runs. */

import { createHash } from 'node:crypto';
import { linkSync, readFileSync, realpathSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type FolderLock, reasonOf } from './host.js';
import { machineName } from './temporary-files.js';

let tries = 0;

/**
 * A lock in the system's folder for temporary files, named for the folder's real path: who may not write into the folder may
 * still read it. It holds the process and when that began, since numbers of processes come round again. A lock whose process
 * is gone is taken over. Containers that share that folder do not see each other's processes: each has locks of its own.
 */
export function lockFolder(folder: string): FolderLock {
  const lock = lockOf(folder);
  const own = identity(process.pid);
  const draft = `${lock}.${process.pid}.${++tries}`;
  try {
    writeFileSync(draft, own, { mode: 0o600, flag: 'wx' });
    for (let attempts = 0; attempts < 5; attempts++) {
      try {
        linkSync(draft, lock);
        return { ok: true, release: () => release(lock, own) };
      } catch (error) {
        if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
      }
      const holder = read(lock);
      const pid = Number(holder?.split(' ')[0]);
      if (holder !== null && pid > 0 && identity(pid) === holder) return { ok: false, by: pid, reason: '' };
      if (holder !== null) discard(lock, holder);
    }
    return { ok: false, by: null, reason: 'others claim it at the same time' };
  } catch (error) {
    return { ok: false, by: null, reason: reasonOf(error) };
  } finally {
    rmSync(draft, { force: true });
  }
}

/** Where the lock of a folder lies. */
export function lockOf(folder: string): string {
  const user = process.getuid?.() ?? 'user';
  const name = createHash('sha256')
    .update(`${machineName()}\0${real(folder)}`)
    .digest('base64url')
    .slice(0, 20);
  return join(tmpdir(), `cutwright-${user}-${name}.lock`);
}

function real(folder: string): string {
  try {
    return realpathSync(folder);
  } catch {
    return folder;
  }
}

/** `1234 98765`: a process and, where the system tells, when it began; '' for one that does not run. */
function identity(pid: number): string {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ESRCH') return '';
  }
  // proc(5): the name in brackets may hold blanks; the start is the 20th word behind it.
  const stat = read(`/proc/${pid}/stat`);
  const start = stat?.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
  return start ? `${pid} ${start}` : `${pid}`;
}

/** Takes a dead lock away, unless another process has just put its own in its place. */
function discard(lock: string, holder: string): void {
  const aside = `${lock}.${process.pid}.${++tries}`;
  try {
    renameSync(lock, aside);
    if (read(aside) !== holder) linkSync(aside, lock);
  } catch {
    // Another process was quicker.
  }
  rmSync(aside, { force: true });
}

function release(lock: string, own: string): void {
  if (read(lock) === own) rmSync(lock, { force: true });
}

function read(path: string): string | null {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return null;
  }
}
