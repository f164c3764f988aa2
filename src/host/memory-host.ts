import { posix } from 'node:path';
import { canvasPackage } from './canvas-package.js';
import { type Host, LARGEST_FILE, type Reading, type TemporaryFile, TOO_LARGE } from './host.js';
import type { RunningProgram } from './running-program.js';
import { shippedEnglishWords, shippedFont, shippedPage } from './shipped-files.js';

let words: Reading<string> | undefined;
/** Read once for all hosts of a process: a quarter of a second, where the sources run unbundled. */
const readWords = (): Reading<string> => {
  words ??= shippedEnglishWords();
  return words;
};

/** What a test sets before, and looks at after. Paths are absolute, with `/`. */
export interface MemoryHost extends Host {
  readonly files: Map<string, Uint8Array>;
  /** Links by their path; a link may lead to a file or a folder. */
  readonly links: Map<string, string>;
  /** Files and folders that may be neither read nor written. */
  readonly locked: Set<string>;
  readonly variables: Map<string, string>;
  readonly commits: Map<string, string>;
  /** Worlds of the past, by the revision's name. */
  readonly revisions: Map<string, Host>;
  /** Folders that were swept. */
  readonly swept: string[];
  /** Folders that are locked; those that a test puts here belong to process 1. */
  readonly lockedFolders: Set<string>;
  /** Other programs, by their names. */
  readonly programs: Map<string, (args: readonly string[]) => RunningProgram>;
  /** As if the package that paints were not installed. */
  withoutCanvas: boolean;
  clock: Date;
  /** What `elapsedMs` gives: it stands still until a test moves it. */
  stopwatchMs: number;
  /** Moves that clock on, and calls the timers that are due by then, in order. */
  readonly passMs: (ms: number) => void;
  /** Bytes that still fit on the disk. */
  room: number;
  input: Uint8Array;
  readonly printed: () => string;
  readonly printedBytes: () => Uint8Array;
  readonly complaints: () => string;
}

const writings = new WeakMap<Uint8Array, number>();
let lastWriting = 0;

/** A number of its own for what was written at one time. */
function writingOf(bytes: Uint8Array): number {
  const known = writings.get(bytes) ?? ++lastWriting;
  writings.set(bytes, known);
  return known;
}

/** A world in memory: `files` by path (relative ones below `/work`, the current folder). */
export function memoryHost(files: Readonly<Record<string, string | Uint8Array>> = {}): MemoryHost {
  const out: Uint8Array[] = [];
  const errors: string[] = [];
  const timers = new Set<{ readonly atMs: number; readonly act: () => void }>();
  const absolute = (path: string): string => posix.resolve('/work', path);

  /** With every link on the way followed. */
  const real = (path: string): string => {
    let walked = '';
    for (const part of absolute(path).split('/').filter(Boolean)) {
      walked = `${walked}/${part}`;
      for (let hops = 0; host.links.has(walked) && hops < 20; hops++) {
        walked = posix.resolve(posix.dirname(walked), host.links.get(walked)!);
      }
    }
    return walked || '/';
  };
  const inside = (folder: string): string => (folder === '/' ? '/' : `${folder}/`);
  const kind = (path: string): 'file' | 'folder' | 'none' => {
    const at = real(path);
    if (host.files.has(at)) return 'file';
    return [...host.files.keys()].some((one) => one.startsWith(inside(at))) ? 'folder' : 'none';
  };
  const locked = (path: string): boolean => {
    const at = real(path);
    return [...host.locked].some((one) => at === one || at.startsWith(inside(one)));
  };
  const refuse = (reason: string): Reading<never> => ({ ok: false, reason });

  const host: MemoryHost = {
    files: new Map(),
    links: new Map(),
    locked: new Set(),
    variables: new Map(),
    commits: new Map(),
    revisions: new Map(),
    swept: [],
    lockedFolders: new Set(),
    programs: new Map(),
    withoutCanvas: false,
    clock: new Date(Date.UTC(2001, 0, 1)),
    stopwatchMs: 0,
    passMs(ms) {
      const end = host.stopwatchMs + ms;
      for (;;) {
        const [next] = [...timers].filter(({ atMs }) => atMs <= end).sort((a, b) => a.atMs - b.atMs);
        if (!next) break;
        timers.delete(next);
        host.stopwatchMs = Math.max(host.stopwatchMs, next.atMs);
        next.act();
      }
      host.stopwatchMs = end;
    },
    room: Number.POSITIVE_INFINITY,
    input: new Uint8Array(),
    printed: () => Buffer.concat(out).toString('utf8'),
    printedBytes: () => Buffer.concat(out),
    complaints: () => errors.join(''),

    read(path) {
      if (locked(path)) return refuse('permission denied');
      const bytes = host.files.get(real(path));
      if (!bytes) return refuse(kind(path) === 'folder' ? 'is a folder' : 'no such file');
      return bytes.length > LARGEST_FILE ? refuse(TOO_LARGE) : { ok: true, value: bytes };
    },
    readEnd(path, most) {
      if (locked(path)) return refuse('permission denied');
      const bytes = host.files.get(real(path));
      if (!bytes) return refuse(kind(path) === 'folder' ? 'is a folder' : 'no such file');
      return {
        ok: true,
        value: { bytes: bytes.subarray(Math.max(0, bytes.length - most)), size: bytes.length },
      };
    },
    readPart(path, at, most) {
      if (locked(path)) return refuse('permission denied');
      const bytes = host.files.get(real(path));
      if (!bytes) return refuse(kind(path) === 'folder' ? 'is a folder' : 'no such file');
      const part = bytes.subarray(at, Math.min(bytes.length, at + most));
      return { ok: true, value: { bytes: part, size: bytes.length, modified: writingOf(bytes) } };
    },
    list(folder) {
      if (locked(folder)) return refuse('permission denied');
      if (kind(folder) !== 'folder') {
        return refuse(kind(folder) === 'file' ? 'a part of the path is not a folder' : 'no such file');
      }
      const start = inside(real(folder));
      const names = new Set<string>();
      for (const path of [...host.files.keys(), ...host.links.keys()]) {
        if (path.startsWith(start)) names.add(path.slice(start.length).split('/')[0]!);
      }
      return { ok: true, value: [...names].sort((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b))) };
    },
    kind,
    real,
    write(path, bytes) {
      if (kind(path) === 'folder') return refuse('is a folder');
      if (locked(path)) return refuse('permission denied');
      if (bytes.length > host.room) return refuse('the disk is full');
      host.room -= bytes.length;
      host.files.set(real(path), bytes);
      return { ok: true, value: null };
    },
    writeLater: async (path, bytes) => host.write(path, bytes),
    openTemporary(path) {
      if (kind(path) === 'folder') return refuse('is a folder');
      if (locked(path)) return refuse('permission denied');
      const pieces: Uint8Array[] = [];
      const draft: TemporaryFile = {
        path: `${real(path)}.tmp`,
        add(bytes) {
          if (bytes.length > host.room) return refuse('the disk is full');
          host.room -= bytes.length;
          pieces.push(bytes);
          host.files.set(draft.path!, Buffer.concat(pieces));
          return { ok: true, value: null };
        },
        finish() {
          // Another program may have written there.
          const other = host.files.get(draft.path!);
          host.files.delete(draft.path!);
          host.files.set(real(path), other ?? Buffer.concat(pieces));
          return { ok: true, value: null };
        },
        drop() {
          host.files.delete(draft.path!);
          host.room += pieces.reduce((sum, { length }) => sum + length, 0);
        },
      };
      return { ok: true, value: draft };
    },
    removeStaleTemporaries: (folder) => void host.swept.push(absolute(folder)),
    lockFolder(folder) {
      const at = real(folder);
      if (host.lockedFolders.has(at)) return { ok: false, by: 1, reason: '' };
      host.lockedFolders.add(at);
      return { ok: true, release: () => void host.lockedFolders.delete(at) };
    },
    standardInput: async () => host.input,
    out: (text) => void out.push(typeof text === 'string' ? Buffer.from(text) : text),
    error: (text) => void errors.push(text),
    now: () => host.clock,
    elapsedMs: () => host.stopwatchMs,
    after(ms, act) {
      const timer = { atMs: host.stopwatchMs + ms, act };
      timers.add(timer);
      return () => void timers.delete(timer);
    },
    env: (name) => host.variables.get(name),
    font: shippedFont,
    englishWords: readWords,
    livePage: shippedPage,
    colour: false,
    cwd: '/work',
    commit: (folder) => host.commits.get(absolute(folder)),
    revision(_place, rev) {
      const past = host.revisions.get(rev);
      return past ? { ok: true, value: past } : refuse(`git knows no revision \`${rev}\``);
    },
    startProgram: async (name, args) => host.programs.get(name)?.(args) ?? null,
    processors: () => 1,
    startWorker: () => null,
    canvas: () => (host.withoutCanvas ? null : canvasPackage()),
    columns: null,
    outputIsTerminal: false,
  };
  for (const [path, content] of Object.entries(files)) {
    host.files.set(absolute(path), typeof content === 'string' ? Buffer.from(content) : content);
  }
  return host;
}
