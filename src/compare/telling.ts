/** How times, places and measures stand in a sentence. */

import { FRAMES_A_FOOT } from '../shot/settings.js';
import type { Frames } from '../shot/shot.js';
import { feetAndFrames, rowName, secondsAndFrames } from '../shot/time.js';
import type { SolvedShot } from '../solve/solved.js';
import type { LabelLanguage } from '../words/labels.js';
import type { Seen } from './change.js';

export interface Telling {
  readonly language: LabelLanguage;
  /** `5+12`, in the west `8'04`. */
  length(frames: number): string;
  /** Whether so many frames are told as `1+12`, not by their number. */
  long(frames: number): boolean;
  /** A row as the sheet and the text name it: `2+13`. */
  row(frame: number): string;
  /** Words that are quoted, cut where there are too many of them. */
  brief(text: string): string;
}

/** Letters of a text that are quoted on paper; the text itself stands there too. */
export const ON_PAPER = 40;

/** As the sheet of `now` writes times, in a language; `most`: letters that are quoted of one text. */
export function telling({ shot }: SolvedShot, language: LabelLanguage, most = 200): Telling {
  const feet = shot.settings.convention === 'west';
  const unit = feet ? FRAMES_A_FOOT : shot.fps;
  return {
    language,
    length: (frames) => (feet ? feetAndFrames(frames) : secondsAndFrames(frames, shot.fps)),
    long: (frames) => Math.abs(frames) >= shot.fps,
    row: (frame) => rowName(frame, unit, feet),
    brief(text) {
      const letters = [...text.replace(/\s+/g, ' ')];
      return letters.length > most
        ? `${letters
            .slice(0, most - 2)
            .join('')
            .trimEnd()} …`
        : letters.join('');
    },
  };
}

/** Millimetres and degrees as a ruler shows them: two decimals at most. */
export function figure(value: number): string {
  const text = value.toFixed(2).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

export const isLater = (frames: { old: Frames; now: Frames }): number | null => {
  const by = frames.now.from - frames.old.from;
  return frames.now.to - frames.old.to === by ? by : null;
};

export const lasts = ({ from, to }: Frames): number => to - from + 1;

/** Runs of numbers that all move by the same: `4 to 12 → 5 to 13`. */
export function numberRuns(
  numbers: readonly { old: number; now: number }[],
): { old: readonly [number, number]; now: readonly [number, number] }[] {
  const runs: { old: [number, number]; now: [number, number] }[] = [];
  for (const { old, now } of numbers) {
    const last = runs.at(-1);
    if (last && old === last.old[1] + 1 && now === last.now[1] + 1) {
      last.old[1] = old;
      last.now[1] = now;
    } else runs.push({ old: [old, old], now: [now, now] });
  }
  return runs;
}

/** Whether two ends name a stretch of drawings that a reader finds in this order: one thing, or two rising numbers. */
export function rises(first: Seen, last: Seen): boolean {
  if (first.form !== 'drawing' || last.form !== 'drawing') return first === last || first.form === last.form;
  return first.cel <= last.cel;
}
