/**
 * The world outside: files, clock, environment, version control. Everything that is not a pure function of the text
 * comes through this one interface, so that tests can move the clock or fill the disk.
 */

import type { CanvasPackage } from './canvas-package.js';
import type { RunningProgram } from './running-program.js';

/** What reading a path gave; `reason` is a short phrase for a message ("no such file", "is a folder", …). */
export type Reading<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly reason: string };

/** The largest file that is read, in bytes: a cut is some hundred lines. */
export const LARGEST_FILE = 8 * 1024 * 1024;

export interface FilePart {
  readonly bytes: Uint8Array;
  /** Of the whole file. */
  readonly size: number;
  /** Another number once the file was written again. */
  readonly modified: number;
}

/** A file that is being written piece by piece, beside its final name: nothing is to be seen of it before it is finished. */
export interface TemporaryFile {
  /** Where it lies, for another program to write to; null for a device, which has no name of its own. */
  readonly path: string | null;
  /** Never throws. After a refusal only `drop` makes sense. */
  add(bytes: Uint8Array): Reading<null>;
  /** Gives the file its name, in place of one that had it. Never throws. */
  finish(): Reading<null>;
  /** Leaves everything as it was before. */
  drop(): void;
}

/** Whether a folder is this process's to work on; or which process it belongs to, where one does. */
export type FolderLock =
  | { readonly ok: true; readonly release: () => void }
  | { readonly ok: false; readonly by: number | null; readonly reason: string };

/** What a thread speaks to another one with. Messages are plain data, and are copied. */
export interface MessagePort {
  post(message: unknown): void;
  listen(onMessage: (message: unknown) => void): void;
}

/** Another thread of this program. */
export interface WorkerThread {
  post(message: unknown): void;
  /** `onEnd`: it has ended, by a fault or because it was stopped; no message comes any more. */
  listen(onMessage: (message: unknown) => void, onEnd: () => void): void;
  /** Ends it at once, whatever it does. */
  stop(): void;
}

export const LIVE_PAGE_FILES = ['live.html', 'live.css', 'live.js', 'page-modules.js'] as const;
export type LivePageFile = (typeof LIVE_PAGE_FILES)[number];

/** The two weights as TrueType files; a part of both, ready for printing (`src/print/latin-font.ts`). */
export type FontFile = 'regular' | 'bold' | 'latin';

export interface Host {
  /** The bytes of a file, of LARGEST_FILE at most. Never throws. */
  read(path: string): Reading<Uint8Array>;
  /** The last bytes of a file of any size, `most` at most, and its size. Never throws. */
  readEnd(path: string, most: number): Reading<{ readonly bytes: Uint8Array; readonly size: number }>;
  /** `most` bytes of a file of any size from `at` on, fewer at its end, with what tells whether it has changed. Never throws. */
  readPart(path: string, at: number, most: number): Reading<FilePart>;
  /** Names in a folder, sorted by code point. Never throws. */
  list(folder: string): Reading<string[]>;
  kind(path: string): 'file' | 'folder' | 'none';
  /** The canonical path with links resolved, or the path itself where there is none. */
  real(path: string): string;
  /**
   * Writes beside the final name and renames: the file is whole or as it was before. Makes the folders that are missing.
   * Never throws.
   */
  write(path: string, bytes: Uint8Array): Reading<null>;
  /**
   * The same, while the caller goes on: files that are on their way at the same time reach the disk together. Never rejects. Who
   * waits for none of them ends up with files that have no name yet.
   */
  writeLater(path: string, bytes: Uint8Array): Promise<Reading<null>>;
  /** The same for what is too large to be held at once. */
  openTemporary(path: string): Reading<TemporaryFile>;
  /**
   * Removes from a folder the unfinished files of runs that were killed. Those of other machines count as such when they are a
   * day old. Never throws.
   */
  removeStaleTemporaries(folder: string): void;
  /** Claims a folder for as long as this process runs, or until it is released. Never throws. */
  lockFolder(folder: string): FolderLock;
  /** All of standard input; reading stops soon after LARGEST_FILE. */
  standardInput(): Promise<Uint8Array>;
  out(text: string | Uint8Array): void;
  error(text: string): void;
  /** Now, or `SOURCE_DATE_EPOCH`; only for what is allowed to differ between runs. */
  now(): Date;
  /** Milliseconds of a clock that only goes forward, from any beginning: how long something takes. */
  elapsedMs(): number;
  /** Calls `act` once, so many milliseconds later; what it returns cancels that. A timer keeps no process alive. */
  after(ms: number, act: () => void): () => void;
  env(name: string): string | undefined;
  /** A file of the shipped font. Never throws. */
  font(name: FontFile): Reading<Uint8Array>;
  /** How English words are pronounced: `\n`, then `word SOUNDS\n` for each (CMU Pronouncing Dictionary). Never throws. */
  englishWords(): Reading<string>;
  /** A file of the live view's page. Never throws. */
  livePage(name: LivePageFile): Reading<Uint8Array>;
  /** Whether standard error is a terminal that shows colour. */
  readonly colour: boolean;
  readonly cwd: string;
  /** The short id of the commit that a folder's work tree stands on, if any. */
  commit(folder: string): string | undefined;
  /**
   * The world as it was at a revision of the work tree that `place` (absolute) lies in: its texts of cuts and manifests, at
   * their paths. `rev` as git takes it. Never throws.
   */
  revision(place: string, rev: string): Reading<Host>;
  /** Starts another program by its name. Null where there is none. Never rejects. */
  startProgram(name: string, args: readonly string[]): Promise<RunningProgram | null>;
  /** How many threads the machine runs at the same time. */
  processors(): number;
  /**
   * Starts a thread that compiles cuts (`src/episode/cut-worker.ts`) in the world as it lies on the disk; `command`: whose code it loads. Null
   * where there are no threads.
   */
  startWorker(command: string): WorkerThread | null;
  /** The package that paints, or null where it is not installed. Never throws. */
  canvas(): CanvasPackage | null;
  /** Columns of the terminal that standard error is, or null: it is none. */
  readonly columns: number | null;
  /** Whether standard output is a terminal: what is written there is for eyes, and goes into no file. */
  readonly outputIsTerminal: boolean;
}

/** Why the system refused, as a short phrase that ends a message: "c012.cut: no such file". */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'no such file',
  EISDIR: 'is a folder',
  EEXIST: 'a part of the path is not a folder',
  ENOTDIR: 'a part of the path is not a folder',
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'the share of the disk is used up',
  EFBIG: 'too large for the disk',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links lead round in a circle',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  EBUSY: 'in use by another program',
  ETXTBSY: 'in use by another program',
  EIO: 'the disk does not answer',
  ERR_INVALID_ARG_VALUE: 'the name holds a character that no file name may hold',
};

export const TOO_LARGE = 'is larger than 8 MB';

/** The phrase for an error that a call of the file system threw. */
export function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException | null)?.code;
  return (code !== undefined && REASONS[code]) || `the system refuses (${code ?? String(error)})`;
}
