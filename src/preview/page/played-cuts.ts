/** What the page knows of the cuts that it plays: fetched when it is wanted, and again when it has changed. */

import { type UnpackedPicture, unpackPicture } from '../../picture/frame-runs.js';
import type { CutPlayAnswer } from '../play-data.js';

export interface LoadedCut extends UnpackedPicture {
  readonly play: CutPlayAnswer;
}

/** Cuts that are kept. An episode is played with two at a time and the one that follows. */
const MOST_KEPT = 8;

export class PlayedCuts {
  /** The one that was used last stands last. */
  private readonly known = new Map<string, LoadedCut>();
  private readonly wanted = new Map<string, Promise<LoadedCut | null>>();

  /** What is at hand, whatever its version. */
  at(id: string): LoadedCut | null {
    return this.known.get(id) ?? null;
  }

  forget(id: string): void {
    this.known.delete(id);
    this.wanted.delete(id);
  }

  /** Null: there is nothing to be shown of it. */
  load(id: string): Promise<LoadedCut | null> {
    const loaded = this.known.get(id);
    if (loaded) {
      this.known.delete(id);
      this.known.set(id, loaded);
      return Promise.resolve(loaded);
    }
    return this.wanted.get(id) ?? this.renew(id);
  }

  /** Asks again, and keeps what is at hand until the answer is there. */
  renew(id: string): Promise<LoadedCut | null> {
    const answer = this.fetch(id).then((loaded) => {
      // An answer to an earlier question comes too late.
      if (this.wanted.get(id) !== answer) return this.known.get(id) ?? loaded;
      this.wanted.delete(id);
      this.known.delete(id);
      if (loaded) this.known.set(id, loaded);
      const [oldest] = this.known.keys();
      if (this.known.size > MOST_KEPT) this.known.delete(oldest!);
      return loaded;
    });
    this.wanted.set(id, answer);
    return answer;
  }

  private async fetch(id: string): Promise<LoadedCut | null> {
    const answer = await fetch(`play/${id}`).catch(() => null);
    if (!answer?.ok) return null;
    const play = (await answer.json()) as CutPlayAnswer;
    return { play, ...unpackPicture(play.picture) };
  }
}
