/**
 * How long a line wants to be, by what it is made of: morae in Japanese, syllables in English.
 *
 * Japanese: 320 to 360 morae a minute are felt as close to ideal in slow, clear speech (Prafiyanto, Nose, Chiba, Ito, Acoust. Sci. &
 * Tech. 39:92, 2018). English: people articulate about five syllables a second (Jacewicz, Fox, Wei, J. Acoust. Soc. Am. 128:839,
 * 2010). The limits, 9 morae and 7 syllables a second, lie well above both: common practice.
 */

import { type Dictionary, pronounce, USUAL_PAUSES } from '../sound/pronunciation.js';
import type { Spoken } from './shot.js';

export interface LineLength {
  /** Morae in a line with any Japanese in it, else syllables. */
  readonly unit: 'mora' | 'syllable';
  readonly count: number;
  /** What it wants at an ordinary pace, pauses at commas and full stops inside it included. */
  readonly wantedFrames: number;
  /** Below this nobody speaks it. */
  readonly leastFrames: number;
}

/** A second. */
const ORDINARY = { ja: 6, en: 5 } as const;
export const FASTEST = { mora: 9, syllable: 7 } as const;
/** Fewer morae or syllables are an interjection, of which nothing follows. */
const FEWEST = 3;
/** Song; a sound that a voice makes. */
const NOT_SPOKEN = /[♪♫♬♩]|\bSE\b|ＳＥ/u;

/**
 * Null for what has no length of its own: interjections, songs, sounds, and what nobody can read. Without a dictionary English is
 * counted by its spelling.
 */
export function lineLength(line: Spoken, fps: number, dictionary?: Dictionary): LineLength | null {
  const text = line.parts.map(({ reading }) => reading.trim()).join(' ');
  if (line.kind !== 'voice' || NOT_SPOKEN.test(text)) return null;
  const { beats, pauses, read } = beatsOf(text, dictionary);
  if (!read || beats.ja + beats.en < FEWEST) return null;
  const seconds = beats.ja / ORDINARY.ja + beats.en / ORDINARY.en + pauses;
  const least = beats.ja / FASTEST.mora + beats.en / FASTEST.syllable;
  const unit = beats.ja > 0 ? 'mora' : 'syllable';
  return {
    unit,
    count: Math.round(least * FASTEST[unit]),
    wantedFrames: Math.round(seconds * fps),
    leastFrames: Math.ceil(least * fps - 1e-9),
  };
}

interface Beats {
  readonly beats: { readonly ja: number; readonly en: number };
  /** Seconds. */
  readonly pauses: number;
  /** Whether all of it can be read. */
  readonly read: boolean;
}

/** Texts that were counted by their spelling: an editor asks for the same ones at every keystroke. */
const counted = new Map<string, Beats>();
const MOST_COUNTED = 4096;

function beatsOf(text: string, dictionary: Dictionary | undefined): Beats {
  const known = dictionary ? undefined : counted.get(text);
  if (known) return known;
  const { words, unread } = pronounce(text, dictionary);
  const beats = { ja: 0, en: 0 };
  let pauses = 0;
  for (const [i, { language, beats: count, pause }] of words.entries()) {
    beats[language] += count;
    if (i < words.length - 1) pauses += USUAL_PAUSES[pause];
  }
  const found = { beats, pauses, read: unread.length === 0 };
  if (!dictionary) {
    if (counted.size >= MOST_COUNTED) counted.clear();
    counted.set(text, found);
  }
  return found;
}
