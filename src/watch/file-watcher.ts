/** Looks at folders, and tells of every path in them with which something may have happened. */

import type { Stats } from 'node:fs';
import { basename, relative, resolve, sep } from 'node:path';
import { type FSWatcher, watch } from 'chokidar';

/** Where texts may lie. */
export interface Place {
  /** Absolute. */
  readonly folder: string;
  /** With all folders below it. */
  readonly deep: boolean;
}

export interface FileWatcher {
  /** Ends the watching. */
  close(): Promise<void>;
}

/** Files that the program reads; what editors put beside them (`.c012.cut.swp`, `c012.cut~`, `4913`) has other names. */
const TEXTS = /^[^.].*\.(cut|ya?ml)$/i;
/** Folders that hold no texts, and may be huge. */
const SKIPPED = /^(\..+|node_modules)$/;

/**
 * Resolves when everything is being looked at. `heard` may be told of a path more often than it changes: whoever hears has to
 * look. `failed`: the system watches no more.
 */
export function open(
  places: readonly Place[],
  heard: (path: string) => void,
  failed: (fault: unknown) => void,
): Promise<FileWatcher> {
  const watcher: FSWatcher = watch(
    places.map(({ folder }) => folder),
    {
      ignored: (path, stats) => !isWatched(places, resolve(path), stats),
      ignoreInitial: true,
      usePolling: false,
      ignorePermissionErrors: true,
      // Would wait a tenth of a second for a file that was renamed away to come back; whoever hears does that better.
      atomic: false,
    },
  );
  watcher.on('all', (_, path) => heard(resolve(path)));
  // A file that is renamed over another one is not always told as a change.
  watcher.on('raw', (_, path, details) => {
    const { watchedPath } = details as { readonly watchedPath?: string };
    if (typeof path !== 'string' || watchedPath === undefined) return;
    for (const one of [resolve(watchedPath), resolve(watchedPath, path)])
      if (TEXTS.test(basename(one))) heard(one);
  });
  watcher.on('error', failed);
  return new Promise((done) => watcher.once('ready', () => done({ close: () => watcher.close() })));
}

function isWatched(places: readonly Place[], path: string, stats: Stats | undefined): boolean {
  const inside = places.some(({ folder, deep }) => {
    const way = relative(folder, path);
    if (way === '') return true;
    const parts = way.split(sep);
    if (parts[0] === '..' || (!deep && parts.length > 1)) return false;
    if (stats?.isDirectory() && !deep) return false;
    const folders = stats?.isFile() ? parts.slice(0, -1) : parts;
    return !folders.some((part) => SKIPPED.test(part));
  });
  return inside && (!stats?.isFile() || TEXTS.test(basename(path)));
}
