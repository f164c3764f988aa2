/** A line's words → its sounds on the rows that it takes: from tie to tie, spread by how long each sound is expected to last. */

import type { Spoken, SpokenPart, Vowel } from '../shot.js';

/** A sound as far as a mouth shows it. */
export interface MouthSound {
  readonly shown: SeenSound;
  /** How long it lasts at an ordinary pace. */
  readonly seconds: number;
  /** The offset in the text at which its syllable or mora begins; only of the first sound of one, where it is known. */
  readonly at?: number;
}

/** A vowel; lips that are closed; any other consonant; nothing said. */
export type SeenSound = Vowel | 'closure' | 'consonant' | 'pause';

/** A sound in frames: row r of the sheet lasts from r to r + 1. */
export interface PlacedSound {
  readonly shown: SeenSound;
  readonly start: number;
  readonly end: number;
  /** Where its syllable or mora begins in the words, which part and which offset in its reading; of the first sound of one. */
  readonly beat?: { readonly part: SpokenPart; readonly at: number };
}

/** From one tie to the next: the sounds of its words, in order, and the frames that they fill. */
export interface LineStretch {
  /** The row on which it is first heard. */
  readonly from: number;
  /** The row before which it ends. */
  readonly end: number;
  readonly sounds: readonly PlacedSound[];
}

/** The sounds of words, or null where nobody can say how they are read. */
export type Pronounce = (text: string) => readonly MouthSound[] | null;

/** How far sounds are drawn out before a speaker pauses instead, where the words have a pause; common practice. */
const DRAWN_OUT = 1.5;

/** Null where some of its words cannot be read. */
export function lineStretches(line: Spoken, fps: number, pronounce: Pronounce): LineStretch[] | null {
  const stretches: { from: number; sounds: PartSound[] }[] = [{ from: line.frames.from, sounds: [] }];
  for (const part of line.parts) {
    const { reading, frame } = part;
    const sounds = pronounce(reading);
    if (!sounds) return null;
    if (frame !== null && frame > stretches.at(-1)!.from) stretches.push({ from: frame, sounds: [] });
    stretches.at(-1)!.sounds.push(...sounds.map((sound) => ({ ...sound, part })));
  }
  return stretches.map(({ from, sounds }, i) => {
    const next = stretches[i + 1];
    // Behind the last words there is nothing to pause for.
    const said = next ? sounds : sounds.slice(0, sounds.findLastIndex(({ shown }) => shown !== 'pause') + 1);
    const end = next?.from ?? line.frames.to + 1;
    return { from, end, sounds: spread(said, { from, end }, fps, line.open && !next) };
  });
}

type PartSound = MouthSound & { readonly part: SpokenPart };

/** `ownPace`: the end is not known, so that the words are not drawn out to reach it. */
function spread(
  sounds: readonly PartSound[],
  { from, end }: { readonly from: number; readonly end: number },
  fps: number,
  ownPace: boolean,
): PlacedSound[] {
  const natural = (some: readonly MouthSound[]) => some.reduce((sum, { seconds }) => sum + seconds * fps, 0);
  const all = natural(sounds);
  const pauses = natural(sounds.filter(({ shown }) => shown === 'pause'));
  if (all === 0) return [];
  const pace = ownPace ? 1 : (end - from) / all;
  const slow = pace > DRAWN_OUT && pauses > 0;
  const ofSounds = slow ? DRAWN_OUT : pace;
  const ofPauses = slow ? (end - from - DRAWN_OUT * (all - pauses)) / pauses : pace;
  let start = from;
  return sounds.map(({ shown, seconds, at, part }): PlacedSound => {
    const placed = { shown, start, end: start + seconds * fps * (shown === 'pause' ? ofPauses : ofSounds) };
    start = placed.end;
    return at === undefined ? placed : { ...placed, beat: { part, at } };
  });
}
