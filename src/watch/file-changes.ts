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

const TEXT = /\.(cut|ya?ml)$/i;
const GONE = 'gone';
const EMPTY = 'empty';

export class FileStates {
  private readonly seen = new Map<string, string>();
  /** Texts by their real paths: a save of one cut is no reason to read all others. */
  private readonly texts = new Map<string, ReturnType<Host['read']>>();
  private readonly reals = new Map<string, string>();
  /** The world; what is first read of a file through it is what is known of it, until `settle` or `readAgain`. */
  readonly host: Host;

  constructor(private readonly world: Host) {
    this.host = {
      ...world,
      read: (path) => {
        const real = this.knownReal(path);
        const known = this.texts.get(real);
        if (known) return known;
        const reading = world.read(path);
        if (!this.seen.has(real)) this.seen.set(real, stateOf(reading));
        if (reading.ok && TEXT.test(path)) this.texts.set(real, reading);
        return reading;
      },
      real: (path) => (TEXT.test(path) ? this.knownReal(path) : world.real(path)),
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
    const reading = kind === 'none' ? null : this.world.read(path);
    const now = reading === null ? GONE : stateOf(reading);
    if (now === before || (now === GONE && before === undefined)) return null;
    return {
      change: { path, real, kind: now === GONE ? 'gone' : (before ?? GONE) === GONE ? 'new' : 'text' },
      lost: (now === GONE || now === EMPTY) && before !== EMPTY,
      settle: () => {
        this.seen.set(real, now);
        this.readAgain(real);
        // Links may lead elsewhere now.
        if (now === GONE || (before ?? GONE) === GONE) this.reals.clear();
      },
    };
  }

  /** The next one who reads a file (canonical path) reads what lies on the disk. */
  readAgain(real: string): void {
    this.texts.delete(real);
  }

  private knownReal(path: string): string {
    const known = this.reals.get(path) ?? this.real(path);
    this.reals.set(path, known);
    return known;
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
