/** Who speaks beside whom: lanes of the dialogue column. */

import type { Shot, Spoken } from '../../shot/shot.js';
import type { SheetWords } from '../../words/sheet-words.js';
import type { Mark } from '../display-list.js';
import { polygon } from '../mark-builders.js';
import type { SheetGeometry } from '../sheet-geometry.js';

export interface PlacedSpoken {
  readonly spoken: Spoken;
  readonly lane: number;
}

export interface SpeechLanes {
  /** Lanes for voices, at the left, at least 1. */
  readonly voices: number;
  /** Narrower lanes for sounds and music, at least 1; numbered on from the voices. */
  readonly sounds: number;
  readonly placed: readonly PlacedSpoken[];
  /** What found no lane: it is told in the memo. */
  readonly without: readonly Spoken[];
}

/** More at the same time than this are told in the memo. */
const MOST_LANES = { voices: 3, sounds: 4 };

export function speechOf(shot: Shot): SpeechLanes {
  const voices = intoLanes(
    shot.spoken.filter(({ kind }) => kind === 'voice'),
    MOST_LANES.voices,
  );
  const sounds = intoLanes(
    // Sounds first, so that a music under the whole cut stands outside of them.
    [
      ...shot.spoken.filter(({ kind }) => kind === 'sound'),
      ...shot.spoken.filter(({ kind }) => kind === 'music'),
    ],
    MOST_LANES.sounds,
  );
  return {
    voices: voices.lanes,
    sounds: sounds.lanes,
    placed: [
      ...voices.placed,
      ...sounds.placed.map(({ spoken, lane }) => ({ spoken, lane: voices.lanes + lane })),
    ],
    without: [...voices.without, ...sounds.without],
  };
}

function intoLanes(
  all: readonly Spoken[],
  most: number,
): { lanes: number; placed: PlacedSpoken[]; without: Spoken[] } {
  const lanes: Spoken[][] = [[]];
  const placed: PlacedSpoken[] = [];
  const without: Spoken[] = [];
  for (const spoken of all) {
    const free = (lane: readonly Spoken[]): boolean =>
      lane.every((other) => other.frames.to < spoken.frames.from || other.frames.from > spoken.frames.to);
    let lane = lanes.findIndex(free);
    if (lane < 0 && lanes.length < most) lane = lanes.push([]) - 1;
    if (lane < 0) without.push(spoken);
    else {
      lanes[lane]!.push(spoken);
      placed.push({ spoken, lane });
    }
  }
  return { lanes: lanes.length, placed, without };
}

/** Who speaks, and how; '' for sound and music. */
export function speakerOf({ speaker, manner }: Spoken, { off, mono }: SheetWords): string {
  const how = { on: '', off: ` ${off}`, mono: ` ${mono}` }[manner];
  return speaker + how === '' ? '' : `${speaker}${how}:`;
}

/** All the words of a line, for the memo. */
export const wholeText = (spoken: Spoken): string =>
  spoken.parts
    .map((part) => part.text.trim())
    .join(' ')
    .replace(/\s+/gu, ' ');

/** Where a line of dialogue stands in its column. */
export interface SpeechLane {
  readonly x: number;
  readonly width: number;
  /** Left part, for who speaks. */
  readonly stripX: number;
  readonly stripWidth: number;
  /** Right part, for the words. */
  readonly wordsX: number;
  readonly wordsWidth: number;
}

/** Bars stand off their row's edge, so that one line's end and the next one's start are two bars. */
export const barGap = ({ rowMm }: SheetGeometry): number => Math.min(0.18, rowMm * 0.07);

/** Width that the tick of a tied word takes at the left of the words, mm. */
export const TICK_MM = 1.3;

/**
 * A pointer at the row on which the text says that a word begins, its tip at `tipX`: nothing that is only spread
 * has one.
 */
export function tick(tipX: number, middleMm: number, { rowMm }: SheetGeometry): Mark {
  const half = Math.min(0.6, rowMm * 0.25);
  const points = [
    [tipX - 1, middleMm - half],
    [tipX, middleMm],
    [tipX - 1, middleMm + half],
  ] as const;
  return polygon(points, 'black');
}
