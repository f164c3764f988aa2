/**
 * Text → the sounds that are expected of it, word by word. Pure; knows nothing of recordings, rows or frames.
 *
 * English: the CMU Pronouncing Dictionary where it is given, else spelling rules. Japanese: kana → morae; kanji by their ruby,
 * `行《い》く`; what has none is named in `unread`.
 */

import { englishWords } from './english-pronunciation.js';
import { syllableStarts } from './english-syllables.js';
import { isJapanese, japanesePhrases } from './japanese-pronunciation.js';
import type { SoundClass } from './speech-sounds.js';

export interface ExpectedSound {
  /** Of ARPAbet without stress in English; of `JAPANESE_SOUNDS` in Japanese. */
  readonly sound: string;
  readonly kind: SoundClass;
  /** Usual length in running speech at an ordinary rate. */
  readonly seconds: number;
  /** The syllable (Japanese: mora) of its word, from 0. */
  readonly beat: number;
  /** A stressed vowel; never in Japanese. */
  readonly stressed: boolean;
}

/** A word of English, or a phrase of Japanese: what stands between blanks and punctuation. */
export interface SpokenWord {
  readonly language: 'en' | 'ja';
  /** Its place in the text, UTF-16 offsets, the second excluded. */
  readonly start: number;
  readonly end: number;
  readonly sounds: readonly ExpectedSound[];
  /** Syllables, or morae. */
  readonly beats: number;
  /** Where each beat begins in the text; of an English word that cannot be cut only its first. */
  readonly beatStarts: readonly number[];
  /** How long a pause behind it is usual: none, at a comma, at the end of a sentence. */
  readonly pause: 'none' | 'short' | 'long';
}

/** How long pauses last at an ordinary pace, inside a line, seconds; common practice. */
export const USUAL_PAUSES: Readonly<Record<SpokenWord['pause'], number>> = {
  none: 0,
  short: 0.15,
  long: 0.35,
};

export interface Pronounced {
  readonly words: readonly SpokenWord[];
  /** Places of what cannot be read: kanji without ruby, and digits in Japanese. */
  readonly unread: readonly { readonly start: number; readonly end: number; readonly text: string }[];
}

/** Looks a word up, in small letters: its sounds as the dictionary writes them (`HH AH0 L OW1`), or null. */
export type Dictionary = (word: string) => string | null;

const SHORT = /[,;:\u3001\uff0c\uff1b\uff1a\u2026\u2015\u2014\u2013]/u;
const LONG = /[.!?\u3002\uff0e\uff01\uff1f]/u;

export function pronounce(text: string, dictionary: Dictionary = () => null): Pronounced {
  const words: SpokenWord[] = [];
  const unread: { start: number; end: number; text: string }[] = [];
  for (const piece of pieces(text)) {
    const pause = pauseBehind(text, piece.end);
    if (isJapanese(piece.text)) {
      const read = japanesePhrases(piece.text, piece.start);
      for (const word of read.words) words.push({ ...word, language: 'ja', pause });
      unread.push(...read.unread);
    } else {
      const read = englishWords(piece.text, dictionary);
      if (read.sounds.length > 0)
        words.push({
          ...read,
          language: 'en',
          start: piece.start,
          end: piece.end,
          pause,
          beatStarts: syllableStarts(piece.text, read.beats).map((start) => piece.start + start),
        });
    }
  }
  return { words, unread };
}

/** Runs without blanks and punctuation; apostrophes, hyphens and full stops inside a word are the word's. */
function pieces(text: string): { start: number; end: number; text: string }[] {
  const found: { start: number; end: number; text: string }[] = [];
  for (const match of text.matchAll(
    /(?:[\p{L}\p{M}\p{N}\u30fc\u3005\u3006\u300a\u300b\uff5c|]|[\u2019'.,](?=[\p{L}\p{N}])(?<=[\p{L}\p{N}][\u2019'.,])|&|%)+(?:(?<=\b(?:Mr|Mrs|Ms|Dr|St|vs|etc))\.)?/gu,
  ))
    found.push({ start: match.index, end: match.index + match[0].length, text: match[0] });
  return found;
}

function pauseBehind(text: string, end: number): SpokenWord['pause'] {
  const between = /^[^\p{L}\p{N}]*/u.exec(text.slice(end))![0];
  if (end + between.length >= text.length) return 'long';
  if (LONG.test(between)) return 'long';
  return SHORT.test(between) ? 'short' : 'none';
}
