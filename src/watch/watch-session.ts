/** A watch from its beginning to its end. */

import { dirname, relative } from 'node:path';
import type { Found } from '../episode/find-cuts.js';
import { type Host, type Reading, reasonOf } from '../host/host.js';
import type { Messages } from '../language/catalogue/index.js';
import { runTexts } from '../language/message.js';
import { userLanguage } from '../language/user-language.js';
import type { Preview, ShippedFiles } from '../preview/preview-server.js';
import type { Settings } from '../shot/settings.js';
import { CutWatcher, type WatchRequest } from './cut-watcher.js';
import { type FileWatcher, open, type Place } from './file-watcher.js';

export interface SessionOptions {
  /** Of the live view; null: none. */
  readonly port: number | null;
  /** Says why there is no watch; the exit status. */
  readonly refuse: (why: Messages['watch-impossible']) => number;
  /** Throws where the options do not suit an episode. */
  readonly check: (settings: Settings) => void;
  /** Ends the watch; otherwise Ctrl-C does. */
  readonly ended?: AbortSignal;
  /** Hears when all cuts have been looked at for the first time. */
  readonly begun?: (watcher: CutWatcher) => void;
}

/** Watches until it is told to end; the exit status. */
export async function watchCuts(host: Host, request: WatchRequest, more: SessionOptions): Promise<number> {
  const watcher = new CutWatcher(host, request);
  const none = await watcher.find();
  if (none !== null) return none;
  for (const { episode } of watcher.all.jobs) more.check(episode.settings);
  const locks: (() => void)[] = [];
  let fileWatcher: FileWatcher | null = null;
  let preview: Preview | null = null;
  let end: (status: number) => void = () => {};
  const ending = new Promise<number>((resolve) => {
    end = resolve;
  });
  const forget = onEnd(more.ended, () => end(0));
  try {
    for (const folder of watcher.outputs()) {
      const claim = host.lockFolder(folder);
      if (claim.ok) locks.push(claim.release);
      else if (claim.by !== null) {
        const by = claim.by === process.pid ? null : claim.by;
        return more.refuse({ variant: 'second-watch', folder: nameOf(host, folder), by });
      }
    }
    const places = placesOf(host, watcher.all);
    const gone = () => places.find(({ folder }) => host.kind(folder) !== 'folder');
    const lost = (): boolean => {
      const one = gone();
      if (one) end(more.refuse({ variant: 'folder-gone', folder: nameOf(host, one.folder) }));
      return one !== undefined;
    };
    fileWatcher = await open(
      places,
      (path) => void (lost() || watcher.notice(path)),
      (fault) => end(more.refuse({ variant: 'system', reason: reasonOf(fault) })),
    );
    if (more.port !== null) preview = await view(host, watcher, request, more.port);
    await watcher.begin();
    if (preview) host.error(`${runTexts(userLanguage(host)).shownAt(preview.url)}\n`);
    more.begun?.(watcher);
    return await ending;
  } catch (fault) {
    if (!(fault instanceof PortTaken)) throw fault;
    return more.refuse({ variant: 'port', port: fault.port, kept: fault.kept });
  } finally {
    forget();
    await preview?.close();
    await fileWatcher?.close();
    await watcher.close();
    for (const release of locks) release();
  }
}

class PortTaken extends Error {
  constructor(
    readonly port: number,
    readonly kept: boolean,
  ) {
    super(`port ${port} is taken`);
  }
}

async function view(
  host: Host,
  watcher: CutWatcher,
  { strict }: WatchRequest,
  port: number,
): Promise<Preview> {
  const [{ openPreview }, { pageInLanguage }, { LiveViewFeed }] = await Promise.all([
    import('../preview/preview-server.js'),
    import('../preview/page-language.js'),
    import('./live-view-feed.js'),
  ]);
  const whole = (bytes: Reading<Uint8Array>): Uint8Array => {
    if (!bytes.ok) throw new Error(`a file of the installation cannot be read: ${bytes.reason}`);
    return bytes.value;
  };
  const shipped: ShippedFiles = {
    font: (weight) => whole(host.font(weight)),
    page: (name) => {
      const bytes = whole(host.livePage(name));
      if (name !== 'live.html') return bytes;
      return Buffer.from(pageInLanguage(Buffer.from(bytes).toString('utf8'), userLanguage(host)), 'utf8');
    },
  };
  try {
    const preview = await openPreview(port, shipped);
    watcher.viewer = new LiveViewFeed(host, preview, watcher.opened, strict, watcher.printable);
    return preview;
  } catch (fault) {
    const { code } = fault as NodeJS.ErrnoException;
    if (code !== 'EADDRINUSE' && code !== 'EACCES') throw fault;
    throw new PortTaken(port, code === 'EACCES');
  }
}

/** Episodes with all that lies in them; of other cuts only their folder, since they may use nothing else. */
function placesOf(host: Host, { jobs, episodes }: Found): readonly Place[] {
  const deep = new Set(episodes.flatMap(({ folder }) => folder ?? []));
  for (const { path, named, episode } of jobs) {
    if (episode.folder === null && !named && path !== null) deep.add(dirname(path));
  }
  const flat = new Set(
    jobs.flatMap(({ path, named, episode }) =>
      episode.folder === null && named && path !== null ? [dirname(path)] : [],
    ),
  );
  const places = [...deep].map((folder) => ({ folder, deep: true }));
  for (const folder of flat) if (!deep.has(folder)) places.push({ folder, deep: false });
  return places.filter(({ folder }) => host.kind(folder) === 'folder');
}

function nameOf(host: Host, folder: string): string {
  return relative(host.cwd, folder) || '.';
}

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Calls `end` when the watch is to end; gives what takes that back. */
function onEnd(ended: AbortSignal | undefined, end: () => void): () => void {
  if (ended) {
    ended.addEventListener('abort', end, { once: true });
    return () => ended.removeEventListener('abort', end);
  }
  for (const signal of SIGNALS) process.once(signal, end);
  return () => {
    for (const signal of SIGNALS) process.removeListener(signal, end);
  };
}
