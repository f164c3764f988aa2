/** Files are written beside their final name and then renamed: whoever looks finds the old one or the new one, whole. */

import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { reasonOf } from './error-reasons.js';
import type { Reading, TemporaryFile } from './host.js';

const TEMPORARY = /^\.cutwright-([1-9]\d{0,9})-\d+\.tmp$/;

let temporaries = 0;
/** Those that this process is at work on. */
const open = new Set<string>();

const DONE: Reading<null> = { ok: true, value: null };

export function write(path: string, bytes: Uint8Array): Reading<null> {
  const opened = openTemporary(path);
  if (!opened.ok) return opened;
  const draft = opened.value;
  const added = draft.add(bytes);
  if (added.ok) return draft.finish();
  draft.drop();
  return added;
}

/** Throws what the file system throws. A device or a pipe (`/dev/stdout`) is written to as it stands. */
export function openTemporary(path: string): Reading<TemporaryFile> {
  const known = statsOf(path);
  if (known?.isDirectory()) return { ok: false, reason: 'is a folder' };
  if (known && !known.isFile()) return { ok: true, value: intoDevice(openSync(path, 'w')) };
  if (known) accessSync(path, constants.W_OK);
  const target = known ? realpathSync(path) : path;
  mkdirSync(dirname(target), { recursive: true });
  const temporary = join(dirname(target), `.cutwright-${process.pid}-${++temporaries}.tmp`);
  const file = openSync(temporary, 'wx', known ? known.mode & 0o777 : 0o666);
  open.add(temporary);
  if (known) takeAfter(file, known);
  let closed = false;
  const drop = () => {
    if (!closed) closeSync(file);
    closed = true;
    rmSync(temporary, { force: true });
    open.delete(temporary);
  };
  const draft: TemporaryFile = {
    add: (bytes) => attempt(() => writeFileSync(file, bytes), drop),
    finish: () =>
      attempt(() => {
        fsyncSync(file);
        closed = true;
        closeSync(file);
        renameSync(temporary, target);
        open.delete(temporary);
      }, drop),
    drop,
  };
  return { ok: true, value: draft };
}

/**
 * Owner, group and mode of the file that is replaced: the mode that a file is opened with loses what the mask of the process
 * takes away. Another's file cannot be given back to its owner by everybody; its mode still can be kept.
 */
function takeAfter(file: number, { uid, gid, mode }: Stats): void {
  for (const step of [
    () => fchownSync(file, uid, gid),
    () => fchownSync(file, -1, gid),
    () => fchmodSync(file, mode & 0o777),
  ]) {
    try {
      step();
    } catch {
      // As far as it goes.
    }
  }
}

/** Never throws: what cannot be removed stays. */
export function removeStaleTemporaries(folder: string): void {
  try {
    for (const name of readdirSync(folder)) {
      const pid = Number(TEMPORARY.exec(name)?.[1]);
      const path = join(folder, name);
      if (pid && !open.has(path) && (pid === process.pid || !runs(pid))) rmSync(path, { force: true });
    }
  } catch {
    return;
  }
}

function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== 'ESRCH';
  }
}

function intoDevice(file: number): TemporaryFile {
  return {
    add: (bytes) => attempt(() => writeFileSync(file, bytes)),
    finish: () => attempt(() => closeSync(file)),
    drop: () => closeSync(file),
  };
}

function attempt(action: () => void, otherwise = () => {}): Reading<null> {
  try {
    action();
    return DONE;
  } catch (error) {
    otherwise();
    return { ok: false, reason: reasonOf(error) };
  }
}

function statsOf(path: string): Stats | undefined {
  try {
    return statSync(path);
  } catch {
    return undefined;
  }
}
