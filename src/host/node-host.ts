import {
  closeSync,
  fstatSync,
  openSync,
  readdirSync,
  readSync,
  realpathSync,
  type Stats,
  statSync,
  writeSync,
} from 'node:fs';
import { canvasPackage } from './canvas-package.js';
import { lockFolder } from './folder-lock.js';
import { atRevision, commitOf } from './git-repository.js';
import { type FilePart, type Host, LARGEST_FILE, type Reading, reasonOf, TOO_LARGE } from './host.js';
import { startProgram } from './running-program.js';
import { shippedEnglishWords, shippedFont, shippedPage } from './shipped-files.js';
import { machineName, openTemporary, removeStaleTemporaries, write, writeLater } from './temporary-files.js';
import { processors, startWorker } from './worker-threads.js';

/** The real world. `machine`: what tells the temporary files of this machine from those of others that share a folder. */
export function nodeHost(machine?: string): Host {
  const own = (): string => machine ?? machineName();
  const terminal = isTerminal(2);
  const host: Host = {
    read: (path) => attempt(() => read(path)),
    list: (folder) => attempt(() => done(readdirSync(folder).sort(byCodePoint))),
    kind: kindOf,
    real(path) {
      try {
        return realpathSync.native(path);
      } catch {
        return path;
      }
    },
    readEnd: (path, most) => attempt(() => readEnd(path, most)),
    readPart: (path, at, most) => attempt(() => readPart(path, at, most)),
    write: (path, bytes) => attempt(() => write(path, bytes, own())),
    writeLater: (path, bytes) => writeLater(path, bytes, own()).catch((error) => refuse(reasonOf(error))),
    openTemporary: (path) => attempt(() => openTemporary(path, own())),
    removeStaleTemporaries: (folder) => removeStaleTemporaries(folder, own()),
    lockFolder,
    standardInput,
    out: (text) => say(1, text),
    error: (text) => say(2, text),
    now() {
      const epoch = process.env.SOURCE_DATE_EPOCH;
      return epoch !== undefined && /^\d{1,12}$/.test(epoch) ? new Date(Number(epoch) * 1000) : new Date();
    },
    elapsedMs: () => performance.now(),
    after(ms, act) {
      const timer = setTimeout(act, ms).unref();
      return () => clearTimeout(timer);
    },
    env: (name) => process.env[name],
    font: shippedFont,
    englishWords: shippedEnglishWords,
    livePage: shippedPage,
    colour: terminal && !process.env.NO_COLOR && process.env.TERM !== 'dumb',
    cwd: currentFolder(),
    commit: commitOf,
    revision: (place, rev) => atRevision(host, place, rev),
    startProgram,
    processors,
    startWorker: (command) => startWorker(command),
    canvas: canvasPackage,
    columns: terminal ? (process.stderr.columns ?? 80) : null,
    outputIsTerminal: isTerminal(1),
  };
  return host;
}

/** A shell may stand in a folder that somebody has removed: then what it was called, where nothing is found any more. */
function currentFolder(): string {
  try {
    return process.cwd();
  } catch {
    return process.env.PWD ?? '/';
  }
}

const done = <T>(value: T): Reading<T> => ({ ok: true, value });
const refuse = (reason: string): Reading<never> => ({ ok: false, reason });

function attempt<T>(action: () => Reading<T>): Reading<T> {
  try {
    return action();
  } catch (error) {
    return refuse(reasonOf(error));
  }
}

/**
 * Writes all of it to standard output or standard error before it returns (Node's own streams take a tenth of the time
 * of a `check` to load). What goes to a closed pipe (`cutwright … | head`) is dropped without a word.
 */
function say(to: 1 | 2, text: string | Uint8Array): void {
  const bytes = typeof text === 'string' ? Buffer.from(text) : text;
  for (let sent = 0; sent < bytes.length; ) {
    try {
      sent += writeSync(to, bytes, sent);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      if (code === 'EPIPE') return;
      if (code !== 'EAGAIN') throw error;
      // The reader has set the pipe to say so when it is full.
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 2);
    }
  }
}

/** Whether standard output or standard error is one; asks Node, for the same reason, only where it is a device at all. */
function isTerminal(descriptor: 1 | 2): boolean {
  try {
    const device = fstatSync(descriptor).isCharacterDevice();
    return device && (descriptor === 1 ? process.stdout : process.stderr).isTTY === true;
  } catch {
    return false;
  }
}

function byCodePoint(a: string, b: string): number {
  return Buffer.compare(Buffer.from(a), Buffer.from(b));
}

function kindOf(path: string): 'file' | 'folder' | 'none' {
  const stats = statsOf(path);
  return stats === undefined ? 'none' : stats.isDirectory() ? 'folder' : 'file';
}

function statsOf(path: string): Stats | undefined {
  try {
    return statSync(path);
  } catch {
    return undefined;
  }
}

/** Nearly every cut is smaller: it is read into one buffer that serves for all of them, without asking for its size before. */
const HEAD_BYTES = 32 * 1024;
let head: Buffer | null = null;

/** Pipes and devices (`<(…)`, `/dev/stdin`) say no size before they are read. */
function read(path: string): Reading<Uint8Array> {
  const file = openSync(path, 'r');
  try {
    head ??= Buffer.allocUnsafeSlow(HEAD_BYTES);
    let length = 0;
    for (let got = -1; got !== 0 && length < HEAD_BYTES; length += got)
      got = readSync(file, head, length, HEAD_BYTES - length, null);
    const begun = Buffer.from(head.subarray(0, length));
    if (length < HEAD_BYTES) return done(begun);
    const stats = fstatSync(file);
    if (stats.size > LARGEST_FILE) return refuse(TOO_LARGE);
    const chunks: Uint8Array[] = [begun];
    for (;;) {
      const chunk = Buffer.allocUnsafe(Math.max(stats.size - length, 0) + 4096);
      const got = readSync(file, chunk);
      if (got === 0) break;
      chunks.push(chunk.subarray(0, got));
      length += got;
      if (length > LARGEST_FILE) return refuse(TOO_LARGE);
    }
    return done(Buffer.concat(chunks));
  } finally {
    closeSync(file);
  }
}

function readEnd(path: string, most: number): Reading<{ bytes: Uint8Array; size: number }> {
  const file = openSync(path, 'r');
  try {
    const stats = fstatSync(file);
    if (stats.isDirectory()) return refuse('is a folder');
    const bytes = Buffer.alloc(Math.min(most, stats.size));
    const got = readSync(file, bytes, 0, bytes.length, stats.size - bytes.length);
    return done({ bytes: bytes.subarray(0, got), size: stats.size });
  } finally {
    closeSync(file);
  }
}

function readPart(path: string, at: number, most: number): Reading<FilePart> {
  const file = openSync(path, 'r');
  try {
    const stats = fstatSync(file);
    if (stats.isDirectory()) return refuse('is a folder');
    const bytes = Buffer.allocUnsafeSlow(Math.max(0, Math.min(most, stats.size - at)));
    let got = 0;
    while (got < bytes.length) {
      const more = readSync(file, bytes, got, bytes.length - got, at + got);
      if (more === 0) break;
      got += more;
    }
    return done({ bytes: bytes.subarray(0, got), size: stats.size, modified: stats.mtimeMs });
  } finally {
    closeSync(file);
  }
}

async function standardInput(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  for await (const chunk of process.stdin) {
    chunks.push(chunk);
    length += chunk.length;
    if (length > LARGEST_FILE) break;
  }
  return Buffer.concat(chunks);
}
