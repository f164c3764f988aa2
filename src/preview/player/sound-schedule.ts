/** When which part of a film is heard, by the readings of the clock that the frames follow. Pure. */

import type { FilmPart } from '../../picture/film-order.js';
import type { Playing } from './play-clock.js';

export interface HeardPiece {
  /** Another one for each pass and part. */
  readonly key: string;
  /** The place of its cut in the film. */
  readonly part: number;
  /** Readings of the clock, seconds. */
  readonly from: number;
  readonly to: number;
  /** The second of the sheet that is heard at `from`: row 1 begins at 0. */
  readonly offset: number;
}

/** The pieces that are heard between two readings, each as a whole. */
export function heardBetween(
  playing: Playing,
  parts: readonly FilmPart[],
  begin: number,
  end: number,
): HeardPiece[] {
  const { start, from, fps, speed, range, loop } = playing;
  const rate = fps * speed;
  const first = range.first - 1;
  const length = range.last - first;
  const pieces: HeardPiece[] = [];
  for (let pass = 0; ; pass++) {
    // The first pass begins where it was told to, every other one at the beginning of the range.
    const passFrom = pass === 0 ? from : first;
    const passStart = pass === 0 ? start : start + (range.last - from + (pass - 1) * length) / rate;
    if (passStart >= end || (pass > 0 && !loop)) return pieces;
    const passEnd = passStart + (range.last - passFrom) / rate;
    if (passEnd <= begin) continue;
    parts.forEach(({ before, frames, rowsBefore }, part) => {
      const partFrom = Math.max(passFrom, before);
      const partTo = Math.min(range.last, before + frames);
      const heardFrom = passStart + (partFrom - passFrom) / rate;
      const heardTo = passStart + (partTo - passFrom) / rate;
      if (partTo <= partFrom || heardTo <= begin || heardFrom >= end) return;
      const offset = (partFrom - before + rowsBefore) / fps;
      pieces.push({ key: `${pass}/${part}`, part, from: heardFrom, to: heardTo, offset });
    });
  }
}
