/** Paths that something was heard of, until it is known what. */

import type { Change, Texts } from './texts.js';

/** A file that is gone or empty for this long, ms, is meant to be: many editors save by making the file anew. */
const GRACE = 250;

/** A change, and when it was first heard of (`performance.now`). */
export type Heard = Change & { readonly since: number };

export class Hearsay {
  private heard = new Map<string, number>();

  constructor(
    private readonly texts: Texts,
    private readonly clock: () => number,
  ) {}

  add(path: string): void {
    if (!this.heard.has(path)) this.heard.set(path, this.clock());
  }

  get waiting(): boolean {
    return this.heard.size > 0;
  }

  /** What was heard and is true. A file that seems lost is kept for the next time. */
  changes(): Heard[] {
    const heard = this.heard;
    this.heard = new Map();
    const changes: Heard[] = [];
    for (const [path, since] of heard) {
      const looked = this.texts.look(path);
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
