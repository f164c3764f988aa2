/** Who speaks beside whom: lanes of the dialogue column, and the stretches of rows that words are spread over. */

import type { Shot, Spoken } from '../../shot/shot.js';

export interface PlacedSpoken {
  readonly spoken: Spoken;
  readonly lane: number;
}

export interface Speech {
  /** Lanes side by side, at least 1. */
  readonly lanes: number;
  readonly placed: readonly PlacedSpoken[];
  /** What found no lane: it is told in the memo. */
  readonly without: readonly Spoken[];
}

const MOST_LANES = 4;

/** Voices take the lanes first, then sounds, then music, so that a long music never pushes a voice aside. */
export function speechOf(shot: Shot): Speech {
  const order = { voice: 0, sound: 1, music: 2 };
  const lanes: Spoken[][] = [];
  const placed: PlacedSpoken[] = [];
  const without: Spoken[] = [];
  const sorted = [...shot.spoken].sort(
    (a, b) => order[a.kind] - order[b.kind] || a.frames.from - b.frames.from,
  );
  for (const spoken of sorted) {
    const free = (lane: readonly Spoken[]): boolean =>
      lane.every((other) => other.frames.to < spoken.frames.from || other.frames.from > spoken.frames.to);
    let lane = lanes.findIndex(free);
    if (lane < 0 && lanes.length < MOST_LANES) lane = lanes.push([]) - 1;
    if (lane < 0) {
      without.push(spoken);
      continue;
    }
    lanes[lane]!.push(spoken);
    placed.push({ spoken, lane });
  }
  return { lanes: Math.max(1, lanes.length), placed, without };
}

/** Words and the rows that they are spread over, both ends included. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Words tied to a row begin a stretch there; the others go on with the stretch before them. */
export function stretches({ frames, parts }: Spoken): Stretch[] {
  const begun: { from: number; text: string }[] = [];
  for (const part of parts) {
    const text = part.text.replace(/\s+/gu, ' ').trim();
    const last = begun.at(-1);
    if (part.frame !== null && part.frame !== last?.from) begun.push({ from: part.frame, text });
    else if (last) last.text = `${last.text} ${text}`.trim();
    else begun.push({ from: frames.from, text });
  }
  return begun
    .map(({ from, text }, i): Stretch => ({ from, to: (begun[i + 1]?.from ?? frames.to + 1) - 1, text }))
    .filter((stretch) => stretch.text !== '' && stretch.to >= stretch.from);
}

/** All the words of a line, for the memo. */
export const wholeText = (spoken: Spoken): string =>
  spoken.parts
    .map((part) => part.text.trim())
    .join(' ')
    .replace(/\s+/gu, ' ');
