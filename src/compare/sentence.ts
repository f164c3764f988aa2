/** A change as one sentence of a retake note, in a language of the labels. */

import { FRAMES_A_FOOT } from '../shot/settings.js';
import { feetAndFrames, rowName, secondsAndFrames } from '../shot/time-notation.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { SentenceFormat } from '../words/change-sentences.js';
import type { LabelLanguage } from '../words/labels.js';
import { type Words, wordsOf } from '../words/words.js';
import type { Change } from './change.js';
import { moveName, parameterText } from './move-change-wording.js';

export interface SentenceContext extends SentenceFormat {
  readonly language: LabelLanguage;
  /** Those of the form that the cut is printed on. */
  readonly words: Words;
}

/** Letters of a text that are quoted on paper; the text itself stands there too. */
export const ON_PAPER = 40;

/** As the sheet of `now` writes times, in a language; `most`: letters that are quoted of one text. */
export function telling({ shot }: SolvedShot, language: LabelLanguage, most = 200): SentenceContext {
  const feet = shot.settings.convention === 'west';
  const unit = feet ? FRAMES_A_FOOT : shot.fps;
  const length = (frames: number) => (feet ? feetAndFrames(frames) : secondsAndFrames(frames, shot.fps));
  const words = wordsOf({ labels: language, convention: shot.settings.convention });
  return {
    language,
    words,
    length,
    move: (seen) => moveName(seen, words.moves),
    parameter: (change, value) => parameterText(change, value, words.moves, length),
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

/** No full stop at its end; one line. */
export function sentence(change: Change, t: SentenceContext): string {
  const say = t.words.changes[change.kind] as (change: Change, t: SentenceFormat) => string;
  return say(change, t)
    .replace(/\s*\n\s*/g, ' ')
    .replace(/\p{Cc}/gu, '?');
}
