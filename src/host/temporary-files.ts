/** Files are written beside their final name and then renamed: whoever looks finds the old one or the new one, whole. */

import {
  accessSync,
  closeSync,
  constants,
  fchmodSync,
  fchownSync,
  fsync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeFileSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { dirname, join } from 'node:path';
import { type Reading, reasonOf, type TemporaryFile } from './host.js';

/** The machine, the process on it, and a number of that process. */
const TEMPORARY = /^\.cutwright-(.+)-([1-9]\d{0,9})-\d+\.tmp$/;

/**
 * Whether a process of another machine still runs cannot be seen from here. The longest build takes minutes, and the clocks of
 * machines that share a folder hardly differ by hours.
 */
const ABANDONED_MS = 24 * 60 * 60 * 1000;

let temporaries = 0;
/** Those that this process is at work on. */
const open = new Set<string>();
/** Folders in which it has looked for those that others have left. */
const swept = new Set<string>();

const DONE: Reading<null> = { ok: true, value: null };

/**
 * The machine as the names of its temporary files have it. Containers may bear the name of the machine they run on and still
 * see only their own processes: on Linux the process namespace is part of it.
 */
export function machineName(): string {
  machine ??= nameOfMachine();
  return machine;
}

let machine: string | null = null;

function nameOfMachine(): string {
  const name =
    hostname()
      .replace(/[^\w.-]/g, '_')
      .slice(0, 64) || 'unnamed';
  try {
    return `${name}-${readlinkSync('/proc/self/ns/pid').replace(/\D/g, '')}`;
  } catch {
    return name;
  }
}

export function write(path: string, bytes: Uint8Array, machine: string): Reading<null> {
  const opened = openTemporary(path, machine);
  if (!opened.ok) return opened;
  const draft = opened.value;
  const added = draft.add(bytes);
  if (added.ok) return draft.finish();
  draft.drop();
  return added;
}

/** Writes the bytes at once, and waits for the disk in the background. */
export async function writeLater(path: string, bytes: Uint8Array, machine: string): Promise<Reading<null>> {
  const opened = openTemporary(path, machine);
  if (!opened.ok) return opened;
  const draft = opened.value;
  const added = draft.add(bytes);
  if (added.ok) return draft.finishLater();
  draft.drop();
  return added;
}

interface DiskFile extends TemporaryFile {
  /** `finish` without waiting for the disk. Never rejects. */
  finishLater(): Promise<Reading<null>>;
}

/** Throws what the file system throws. A device or a pipe (`/dev/stdout`) is written to as it stands. */
export function openTemporary(path: string, machine: string): Reading<DiskFile> {
  const known = statsOf(path);
  if (known?.isDirectory()) return { ok: false, reason: 'is a folder' };
  if (known && !known.isFile()) return { ok: true, value: intoDevice(openSync(path, 'w')) };
  if (known) accessSync(path, constants.W_OK);
  const target = known ? realpathSync(path) : path;
  mkdirSync(dirname(target), { recursive: true });
  if (!swept.has(dirname(target))) removeStaleTemporaries(dirname(target), machine);
  const temporary = join(dirname(target), `.cutwright-${machine}-${process.pid}-${++temporaries}.tmp`);
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
  const draft: DiskFile = {
    path: temporary,
    add: (bytes) => attempt(() => writeFileSync(file, bytes), drop),
    finish: () =>
      attempt(() => {
        fsyncSync(file);
        closed = true;
        closeSync(file);
        renameSync(temporary, target);
        open.delete(temporary);
      }, drop),
    finishLater: () =>
      new Promise((done) => {
        fsync(file, (fault) => {
          const finish = (): void => {
            if (fault) throw fault;
            closed = true;
            closeSync(file);
            renameSync(temporary, target);
            open.delete(temporary);
          };
          done(attempt(finish, drop));
        });
      }),
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

/**
 * Removes the files of this machine whose process is gone, and those of other machines that nobody has written to for a day. A process
 * does so before it first writes into a folder; whoever may have nothing to write calls it. Never throws: what cannot be removed stays.
 */
export function removeStaleTemporaries(folder: string, machine: string): void {
  swept.add(folder);
  try {
    for (const name of readdirSync(folder)) {
      const [, of, process] = TEMPORARY.exec(name) ?? [];
      if (of === undefined) continue;
      const path = join(folder, name);
      if (of === machine ? isLeft(path, Number(process)) : isAbandoned(path)) rmSync(path, { force: true });
    }
  } catch {
    return;
  }
}

function isLeft(path: string, pid: number): boolean {
  return !open.has(path) && (pid === process.pid || !runs(pid));
}

/** By the clock of the system: `SOURCE_DATE_EPOCH` says nothing of files. */
function isAbandoned(path: string): boolean {
  const stats = statsOf(path);
  return stats !== undefined && Date.now() - stats.mtimeMs > ABANDONED_MS;
}

function runs(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== 'ESRCH';
  }
}

function intoDevice(file: number): DiskFile {
  return {
    path: null,
    add: (bytes) => attempt(() => writeFileSync(file, bytes)),
    finish: () => attempt(() => closeSync(file)),
    finishLater: async () => attempt(() => closeSync(file)),
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
