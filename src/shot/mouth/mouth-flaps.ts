/**
 * A mouth whose words are not read: closed, half and open mixed evenly, never one twice in a row and never in a cycle, as television does
 * it (video-knowledge.com/kuchipaku). The same seed gives the same mouths.
 */

import type { MouthShape } from '../shot.js';
import { type MouthRows, type MouthTiming, slots, withoutFlashes } from './mouth-rows.js';

/** Of a line on rows from..to. `all`: the mouth's shapes, the closed one among them. */
export function flapRows(
  { from, to }: { readonly from: number; readonly to: number },
  { on, lead }: MouthTiming,
  all: readonly MouthShape[],
  seed: string,
): MouthRows {
  const random = numbersFrom(seed);
  const found = slots(from - lead, to - lead, on);
  const mixed: MouthShape[] = [];
  let round: readonly MouthShape[] = [];
  while (mixed.length < found.length) {
    round = nextRound(all, mixed.at(-1) ?? 'closed', round, random);
    mixed.push(...round);
  }
  const rows = found.flatMap((slot, i) => {
    const shape = mixed[i]!;
    // Before the last row, which is closed, the mouth is not.
    const instead = i === found.length - 1 && shape === 'closed' ? otherThan(mixed[i - 1], all) : shape;
    return Array.from({ length: slot.end - slot.from }, () => instead);
  });
  return { from: from - lead, shapes: withoutFlashes([...rows, 'closed']) };
}

/** Every shape once: does not begin as the last round ended, and is not the same again. */
function nextRound(
  all: readonly MouthShape[],
  last: MouthShape,
  before: readonly MouthShape[],
  random: () => number,
): MouthShape[] {
  for (;;) {
    const round = [...all];
    for (let i = round.length - 1; i > 0; i--) {
      const j = Math.floor(random() * (i + 1));
      [round[i], round[j]] = [round[j]!, round[i]!];
    }
    if (round[0] !== last && round.some((shape, i) => shape !== before[i])) return round;
  }
}

function otherThan(before: MouthShape | undefined, all: readonly MouthShape[]): MouthShape {
  return all.find((shape) => shape !== 'closed' && shape !== before)!;
}

/** Numbers in [0, 1) out of a text: FNV-1a for the seed, then mulberry32 (both public domain; from memory). */
function numbersFrom(seed: string): () => number {
  let state = 0x811c9dc5;
  for (const character of seed) state = Math.imul(state ^ character.codePointAt(0)!, 0x01000193);
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
