import { basename, dirname } from 'node:path';
import { type Host, LARGEST_FILE, type Reading, TOO_LARGE } from './host.js';

/** The same world with texts that an editor holds in place of what lies on the disk. `texts`: by canonical path. */
export function overlay(base: Host, texts: ReadonlyMap<string, string>): Host {
  const held = (path: string): string | undefined =>
    texts.size === 0 ? undefined : (texts.get(path) ?? texts.get(base.real(path)));
  return {
    ...base,
    read(path) {
      const text = held(path);
      if (text === undefined) return base.read(path);
      const bytes = Buffer.from(text, 'utf8');
      return bytes.length > LARGEST_FILE ? { ok: false, reason: TOO_LARGE } : { ok: true, value: bytes };
    },
    kind: (path) => (held(path) === undefined ? base.kind(path) : 'file'),
    list(folder) {
      const real = base.real(folder);
      const open = [...texts.keys()].filter((path) => dirname(path) === real).map((path) => basename(path));
      const found = base.list(folder);
      if (open.length === 0) return found;
      const names = new Set([...(found.ok ? found.value : []), ...open]);
      return { ok: true, value: [...names].sort((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b))) };
    },
  };
}

/** What somebody has asked the world for: canonical paths of files, and of folders that were listed. */
export interface Asked {
  readonly files: Set<string>;
  readonly folders: Set<string>;
}

/** The same world, which writes down what it is asked for. */
export function noting(base: Host, asked: Asked): Host {
  const note = (path: string): string => {
    asked.files.add(base.real(path));
    return path;
  };
  return {
    ...base,
    read: (path) => base.read(note(path)),
    readPart: (path, at, most) => base.readPart(note(path), at, most),
    kind: (path) => base.kind(note(path)),
    list(folder) {
      asked.folders.add(base.real(folder));
      return base.list(folder);
    },
  };
}

/** No run of a program that prints writes one. */
const TEXT = /\.(cut|ya?ml)$/i;

/**
 * The same world, each file of which is read once: a run that takes seconds prints one state of it, whatever is saved meanwhile. Not
 * for files that the run itself writes.
 */
export function snapshot(base: Host): Host {
  const readings = new Map<string, Reading<Uint8Array>>();
  const reals = new Map<string, string>();
  return {
    ...base,
    read(path) {
      const known = readings.get(path) ?? base.read(path);
      readings.set(path, known);
      return known;
    },
    real(path) {
      if (!TEXT.test(path)) return base.real(path);
      const known = reals.get(path) ?? base.real(path);
      reals.set(path, known);
      return known;
    },
  };
}
