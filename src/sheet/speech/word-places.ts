/** On which frame each place of a line's words is spoken: as the mouth of who speaks reckons it, so that sheet and mouth agree. */

import { withoutRuby } from '../../language/ruby.js';
import { lineStretches, type Pronounce } from '../../shot/mouth/line-sounds.js';
import type { Spoken, SpokenPart } from '../../shot/shot.js';
import { type WordStretch, wordStretches } from '../../shot/word-stretches.js';

/** A stretch with the syllables or morae of its words. */
export interface ReadStretch extends WordStretch {
  /** In order; null where somebody has to guess how the words are read. */
  readonly places: readonly WordPlace[] | null;
}

export interface WordPlace {
  /** In the text of the stretch: where the syllable or mora begins. Morae of one kanji begin at the same place. */
  readonly offset: number;
  /** When it is first heard; row r lasts from r to r + 1. */
  readonly frame: number;
}

export function readStretches(line: Spoken, fps: number, pronounce: Pronounce): ReadStretch[] {
  const beats = beatsOf(line, fps, pronounce);
  return wordStretches(line).map((stretch) => ({
    ...stretch,
    places:
      beats &&
      stretch.parts.flatMap(({ part, offset }) =>
        (beats.get(part) ?? []).map(({ at, frame }) => ({
          offset: offset + printed(part.reading, at),
          frame,
        })),
      ),
  }));
}

/** Beats by the part that they are of, each at its offset in the reading. */
function beatsOf(
  line: Spoken,
  fps: number,
  pronounce: Pronounce,
): Map<SpokenPart, { at: number; frame: number }[]> | null {
  const read = lineStretches(line, fps, pronounce);
  if (!read) return null;
  const beats = new Map<SpokenPart, { at: number; frame: number }[]>();
  for (const { beat, start } of read.flatMap(({ sounds }) => sounds)) {
    if (!beat) continue;
    const known = beats.get(beat.part) ?? [];
    beats.set(beat.part, [...known, { at: beat.at, frame: start }]);
  }
  return beats;
}

/** The offset in a part's words as they are printed: without readings, with single blanks. */
const printed = (reading: string, at: number): number =>
  withoutRuby(reading.slice(0, at)).replace(/\s+/gu, ' ').trimStart().length;

/** When what stands at an offset of the text is spoken: between two places in even steps. */
export function frameAt({ from, to, text, places }: ReadStretch, offset: number): number {
  let before: WordPlace = { offset: 0, frame: from };
  for (const place of [...(places ?? []), { offset: text.length, frame: to + 1 }]) {
    if (place.offset > offset)
      return (
        before.frame +
        ((place.frame - before.frame) * (offset - before.offset)) / (place.offset - before.offset)
      );
    if (place.offset > before.offset) before = place;
  }
  return before.frame;
}

/** The row of what stands at an offset, a row of the stretch. */
export function rowAt(stretch: ReadStretch, offset: number): number {
  // Sums of lengths may come to a hair less than a whole frame.
  const row = Math.floor(frameAt(stretch, offset) + 1e-6);
  return Math.max(stretch.from, Math.min(stretch.to, row));
}
