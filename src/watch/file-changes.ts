/** What is known of each file, so that whoever hears of one can see whether it has changed. */

import { createHash } from 'node:crypto';
import { basename, dirname, join } from 'node:path';
import type { Host } from '../host/host.js';

/** A file that is now otherwise than it was known to be. */
export interface Change {
  /** As it was heard of; absolute. */
  readonly path: string;
  /** With links resolved, as far as that can be had. */
  readonly real: string;
  readonly kind: 'text' | 'new' | 'gone' | 'folder';
}

const GONE = 'gone';
const EMPTY = 'empty';

export class FileStates {
  private readonly seen = new Map<string, string>();
  /** The world; what is first read of a file through it is what is known of it, until `settle`. */
  readonly host: Host;

  constructor(private readonly world: Host) {
    this.host = {
      ...world,
      read: (path) => {
        const reading = world.read(path);
        const real = this.real(path);
        if (!this.seen.has(real)) this.seen.set(real, stateOf(reading));
        return reading;
      },
    };
  }

  /**
   * What has become of a file; null: nothing. `lost`: it is gone, or empty, as it is for a moment while some editors save it.
   */
  look(
    path: string,
  ): { readonly change: Change; readonly lost: boolean; readonly settle: () => void } | null {
    const real = this.real(path);
    const before = this.seen.get(real);
    const kind = this.world.kind(path);
    if (kind === 'folder') return { change: { path, real, kind: 'folder' }, lost: false, settle: () => {} };
    const now = kind === 'none' ? GONE : stateOf(this.world.read(path));
    if (now === before || (now === GONE && before === undefined)) return null;
    return {
      change: { path, real, kind: now === GONE ? 'gone' : (before ?? GONE) === GONE ? 'new' : 'text' },
      lost: (now === GONE || now === EMPTY) && before !== EMPTY,
      settle: () => void this.seen.set(real, now),
    };
  }

  /** A file that is gone has the path that its folder has. */
  real(path: string): string {
    return this.world.kind(path) === 'none'
      ? join(this.world.real(dirname(path)), basename(path))
      : this.world.real(path);
  }
}

function stateOf(reading: ReturnType<Host['read']>): string {
  if (!reading.ok) return reading.reason === 'no such file' ? GONE : `not read: ${reading.reason}`;
  if (reading.value.length === 0) return EMPTY;
  return createHash('sha256').update(reading.value).digest('base64');
}

/** A file that is gone or empty for this long, ms, is meant to be: many editors save by making the file anew. */
const GRACE = 250;

/** A change, and when it was first heard of (`Host.elapsedMs`). */
export type PendingChange = Change & { readonly since: number };

export class PendingChanges {
  private heard = new Map<string, number>();

  constructor(
    private readonly states: FileStates,
    private readonly clock: () => number,
  ) {}

  add(path: string): void {
    if (!this.heard.has(path)) this.heard.set(path, this.clock());
  }

  get waiting(): boolean {
    return this.heard.size > 0;
  }

  /** What was heard and is true. A file that seems lost is kept for the next time. */
  changes(): PendingChange[] {
    const heard = this.heard;
    this.heard = new Map();
    const changes: PendingChange[] = [];
    for (const [path, since] of heard) {
      const looked = this.states.look(path);
      if (!looked) continue;
      if (looked.lost && this.clock() - since < GRACE) {
        this.heard.set(path, since);
        continue;
      }
      looked.settle();
      changes.push({ ...looked.change, since });
    }
    return changes;
  }
}
