/** Generated episodes in memory, and what was written there. */

import { createHash } from 'node:crypto';
import { posix } from 'node:path';
import { type MemoryHost, memoryHost } from '../../../src/host/memory-host.js';
import { Dice } from './dice.js';

export type Files = Readonly<Record<string, string>>;

/** A world whose one episode lies in `folder`. */
export function worldOf(files: Files, folder = 'e'): MemoryHost {
  return memoryHost(
    Object.fromEntries(Object.entries(files).map(([name, text]) => [posix.join(folder, name), text])),
  );
}

/** The texts of all cuts changed, the manifest and the house file as they were. */
export function withCuts(files: Files, change: (text: string) => string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(files).map(([name, text]) => [name, name.startsWith('cuts/') ? change(text) : text]),
  );
}

/** A host whose folders list their names in another order each time. */
export function shuffle(host: MemoryHost, seed = 1): MemoryHost {
  const dice = new Dice(seed);
  const { list } = host;
  host.list = (folder) => {
    const names = list(folder);
    return names.ok ? { ok: true, value: dice.shuffled(names.value) } : names;
  };
  return host;
}

/** Names of the files that are written from now on, whole or piece by piece. */
export function writesOf(host: MemoryHost): string[] {
  const names: string[] = [];
  const { write, openTemporary } = host;
  host.write = (path, bytes) => {
    names.push(posix.relative(host.cwd, path));
    return write(path, bytes);
  };
  host.openTemporary = (path) => {
    names.push(posix.relative(host.cwd, path));
    return openTemporary(path);
  };
  return names;
}

/** Changes a text of a world; the change must be one. */
export function edit(host: MemoryHost, name: string, change: (text: string) => string): void {
  const path = posix.resolve(host.cwd, name);
  const text = Buffer.from(host.files.get(path)!).toString();
  const changed = change(text);
  if (changed === text) throw new Error(`nothing is changed in ${name}:\n${text}`);
  host.files.set(path, Buffer.from(changed));
}

/** Hashes of all files of a folder, by their names in it. */
export function hashes(host: MemoryHost, folder: string): Record<string, string> {
  const start = `${posix.resolve('/work', folder)}/`;
  const found = [...host.files].filter(([path]) => path.startsWith(start));
  return Object.fromEntries(
    found
      .map(([path, bytes]): [string, string] => [
        path.slice(start.length),
        createHash('sha256').update(bytes).digest('hex'),
      ])
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}
