import { dirname } from 'node:path';
import { TOO_LARGE } from './error-reasons.js';
import { inSnapshot, type Snapshot, snapshotOf, standing } from './git-repository.js';
import { type Host, LARGEST_FILE, type Reading } from './host.js';

/**
 * The world as it was at a revision: texts of cuts and manifests in the work tree that `place` lies in. All else about it
 * (fonts, clock, where messages go) is as it is now; nothing can be written.
 */
export function atRevision(host: Host, place: string, rev: string): Reading<Host> {
  const snapshot = snapshotOf(
    standing(place, (path) => host.kind(path) === 'folder'),
    rev,
  );
  return snapshot.ok ? { ok: true, value: of(host, snapshot.value) } : snapshot;
}

function of(host: Host, snapshot: Snapshot): Host {
  // What is gone from the disk has no real path of its own, its folder may have.
  const real = (path: string): string => {
    const up = dirname(path);
    if (host.kind(path) !== 'none' || up === path) return host.real(path);
    const rest = path.slice(up.length);
    return `${real(up).replace(/[/\\]$/, '')}${up.endsWith('/') ? `/${rest}` : rest}`;
  };
  const look = (path: string) => inSnapshot(snapshot, real(path));
  return {
    ...host,
    read(path) {
      const found = look(path);
      if (found.kind === 'none') return { ok: false, reason: 'no such file' };
      if (found.kind === 'folder') return { ok: false, reason: 'is a folder' };
      return found.bytes.length > LARGEST_FILE
        ? { ok: false, reason: TOO_LARGE }
        : { ok: true, value: found.bytes };
    },
    list(folder) {
      const found = look(folder);
      if (found.kind === 'file') return { ok: false, reason: 'a part of the path is not a folder' };
      if (found.kind === 'none') return { ok: false, reason: 'no such file' };
      const names = found.names.sort((a, b) => Buffer.compare(Buffer.from(a), Buffer.from(b)));
      return { ok: true, value: names };
    },
    kind: (path) => look(path).kind,
    real,
    readEnd(path, most) {
      const found = look(path);
      if (found.kind !== 'file')
        return { ok: false, reason: found.kind === 'none' ? 'no such file' : 'is a folder' };
      const { bytes } = found;
      return {
        ok: true,
        value: { bytes: bytes.subarray(Math.max(0, bytes.length - most)), size: bytes.length },
      };
    },
    write: () => ({ ok: false, reason: 'a revision cannot be changed' }),
    openTemporary: () => ({ ok: false, reason: 'a revision cannot be changed' }),
    removeStaleTemporaries: () => {},
    commit: () => snapshot.commit,
  };
}
