/** Words → what a mouth shows of their sounds, and for how long at an ordinary pace. */

import {
  type Dictionary,
  type ExpectedSound,
  pronounce,
  type SpokenWord,
  USUAL_PAUSES,
} from '../../sound/pronunciation.js';
import type { Vowel } from '../shot.js';
import type { MouthSound, Pronounce } from './line-sounds.js';

/** English vowels by the Japanese one whose mouth is most like theirs; diphthongs by two. Common practice. */
const ENGLISH: Readonly<Record<string, readonly Vowel[]>> = {
  AA: ['a'],
  AE: ['a'],
  AH: ['a'],
  AO: ['o'],
  AW: ['a', 'u'],
  AY: ['a', 'i'],
  EH: ['e'],
  ER: ['e'],
  EY: ['e', 'i'],
  IH: ['i'],
  IY: ['i'],
  OW: ['o'],
  OY: ['o', 'i'],
  UH: ['u'],
  UW: ['u'],
};

/** The share of a diphthong that its second vowel takes: a speaker who draws it out draws out the first. Common practice. */
const GLIDE = 1 / 3;

const LIPS = /^[mbp]$/i;

/** `dictionary`: English words that it has not are read by their spelling. */
export function mouthSounds(dictionary?: Dictionary): Pronounce {
  return (text) => {
    const { words, unread } = pronounce(text, dictionary);
    if (unread.length > 0) return null;
    return words.flatMap((word, i) =>
      ofWord(i === words.length - 1 ? { ...word, pause: pauseAtEnd(text) } : word),
    );
  };
}

/** A part of a line ends where the next word is tied, which need not be the end of a sentence. */
function pauseAtEnd(text: string): SpokenWord['pause'] {
  if (/[.!?…。．！？][\p{Pe}\p{Pf}"']*\s*$/u.test(text)) return 'long';
  return /\p{P}\s*$/u.test(text) ? 'short' : 'none';
}

function ofWord({ sounds, beatStarts, pause }: SpokenWord): MouthSound[] {
  const shown = sounds.flatMap((sound, i) => {
    const [first, ...more] = ofSound(sound, sounds[i + 1]);
    const at = sound.beat === sounds[i - 1]?.beat ? undefined : beatStarts[sound.beat];
    return [at === undefined ? first : { ...first, at }, ...more];
  });
  const seconds = USUAL_PAUSES[pause];
  return seconds > 0 ? [...shown, { shown: 'pause', seconds }] : shown;
}

function ofSound(
  { sound, kind, seconds, stressed }: ExpectedSound,
  next: ExpectedSound | undefined,
): [MouthSound, ...MouthSound[]] {
  if (kind === 'vowel') {
    // An unstressed vowel in the middle of the mouth.
    const vowels: readonly Vowel[] =
      sound === 'AH' && !stressed ? ['e'] : (ENGLISH[sound] ?? [sound as Vowel]);
    const [first, glide] = vowels;
    if (glide === undefined) return [{ shown: first!, seconds }];
    return [
      { shown: first!, seconds: seconds * (1 - GLIDE) },
      { shown: glide, seconds: seconds * GLIDE },
    ];
  }
  // Lips that are rounded for w are as good as those of u.
  if (sound === 'W' || sound === 'w') return [{ shown: 'u', seconds }];
  // っ is the closure of what follows.
  const lips = LIPS.test(sound) || (sound === 'q' && next !== undefined && LIPS.test(next.sound));
  // ん, and an n that no vowel follows.
  const nasal = sound === 'N' && next?.kind !== 'vowel';
  return [{ shown: lips || nasal ? 'closure' : 'consonant', seconds }];
}
