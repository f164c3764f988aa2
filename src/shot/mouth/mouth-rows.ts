/**
 * A line's sounds → what the mouth shows on which row. Rules of which mouth for which sound: saraemi.com, 1608kutipaku (closed for u
 * and n, half for i and e, open for a and o; with a mouth for each vowel, closed ones between) and common practice (closed for
 * m, b, p and pauses, half for most consonants).
 */

import type { MouthShape, Vowel } from '../shot.js';
import type { LineStretch, PlacedSound, SeenSound } from './line-sounds.js';

export interface MouthTiming {
  /** Frames that a drawing is exposed for. */
  readonly on: number;
  /** Frames by which the mouth leads the sound. */
  readonly lead: number;
}

/** What a mouth shows on rows in a row, from `from` on; its last row is closed. */
export interface MouthRows {
  readonly from: number;
  readonly shapes: readonly MouthShape[];
}

/** Rows that show one drawing. */
export interface MouthSlot {
  readonly from: number;
  readonly end: number;
}

const OF_THREE: Readonly<Record<Vowel, MouthShape>> = {
  a: 'open',
  o: 'open',
  i: 'half',
  e: 'half',
  u: 'closed',
};

/** Which mouth shows a sound; `vowels`: each vowel has its own. */
export function shapeOf(shown: SeenSound, vowels: boolean): MouthShape {
  if (shown === 'closure' || shown === 'pause') return 'closed';
  if (shown === 'consonant') return vowels ? 'closed' : 'half';
  return vowels ? shown : OF_THREE[shown];
}

/** A sound with the mouth that shows it. */
interface ShapedSound extends PlacedSound {
  readonly shape: MouthShape;
}

/** A consonant between two vowels that both have the mouth half open closes it, so that the mouth moves. */
function shaped(sounds: readonly PlacedSound[], vowels: boolean): ShapedSound[] {
  let before: MouthShape | null = null;
  return sounds.map((sound, i) => {
    const { shown } = sound;
    const shape = shapeOf(shown, vowels);
    const next = sounds[i + 1]?.shown;
    const between =
      before === 'half' && next !== undefined && isVowel(next) && shapeOf(next, vowels) === 'half';
    if (isVowel(shown)) before = shape;
    else if (shown === 'pause') before = null;
    return { ...sound, shape: shown === 'consonant' && between ? 'closed' : shape };
  });
}

/**
 * The rows from..end - 1, `on` by `on` from the first on. A single row that is left over goes to the slot before it, so that nothing is
 * seen for one frame that was not asked for.
 */
export function slots(from: number, end: number, on: number): MouthSlot[] {
  const found: { from: number; end: number }[] = [];
  for (let row = from; row < end; row += on) found.push({ from: row, end: Math.min(row + on, end) });
  const last = found.at(-1);
  if (on > 1 && found.length > 1 && last && last.end - last.from === 1) {
    found.pop();
    found.at(-1)!.end = end;
  }
  return found;
}

/**
 * The mouth of one line. Each slot shows the sound of which most would be lost otherwise, and never one that began before the
 * slot's first row: a mouth that opens after its sound looks wrong, one that leads does not (joshuanava.biz/drawn-animation).
 */
export function readRows(
  stretches: readonly LineStretch[],
  { on, lead }: MouthTiming,
  vowels: boolean,
): MouthRows {
  const shapes: MouthShape[] = [];
  const from = stretches[0]!.from - lead;
  let before = CLOSED;
  for (const [i, { from: heard, end: over, sounds }] of stretches.entries()) {
    // The line's last row is closed.
    const end = (i === stretches.length - 1 ? over - 1 : over) - lead;
    const seen = shaped(sounds, vowels);
    for (const slot of slots(heard - lead, end, on)) {
      before = chosen(slot, seen, { on, lead }, before);
      for (let row = slot.from; row < slot.end; row++) shapes.push(before.shape);
    }
  }
  shapes.push('closed');
  return { from, shapes: withoutFlashes(shapes) };
}

interface MouthChoice {
  readonly shape: MouthShape;
  readonly sound: ShapedSound | null;
}

function chosen(
  { from, end }: MouthSlot,
  sounds: readonly ShapedSound[],
  { on, lead }: MouthTiming,
  before: MouthChoice,
): MouthChoice {
  const heard = { from: from + lead, end: end + lead };
  let best: MouthChoice | null = null;
  let most = 0;
  for (const sound of sounds) {
    if (sound.end <= heard.from) continue;
    if (sound.start >= heard.end) break;
    const { shape } = sound;
    // What it shows already may go on; anything else must not come late.
    if (shape !== before.shape && Math.floor(sound.start) < from) continue;
    const lost =
      within(sound, heard) +
      (Math.floor(sound.start) < end ? within(sound, { from: heard.end, end: heard.end + on }) : 0);
    const weight = lost * weightOf(sound.shown, before.shape);
    if (weight > most) {
      most = weight;
      best = { shape, sound };
    }
  }
  // Between the last sound and the next tie nobody speaks.
  if (!best)
    return sounds.some(({ start, end: until }) => until > heard.from && start < heard.end) ? before : CLOSED;
  const { sound, shape } = best;
  if (sound === before.sound || shape !== before.shape || shape === 'closed' || !sound) return best;
  // The same mouth for another syllable: its consonant is shown, so that the mouth moves, unless the vowel goes on for long.
  const onset = sounds[sounds.indexOf(sound) - 1];
  if (!onset || isVowel(onset.shown) || Math.floor(onset.start) < from || sound.end - heard.end >= on / 2)
    return best;
  return { shape: onset.shape, sound };
}

const CLOSED: MouthChoice = { shape: 'closed', sound: null };

const isVowel = (shown: SeenSound): shown is Vowel => shown.length === 1;

/** What is seen most of speech: lips that close, unless they are closed already, then vowels; other consonants hardly. */
function weightOf(shown: SeenSound, before: MouthShape): number {
  if (shown === 'closure') return before === 'closed' ? 0.4 : 1.5;
  return shown === 'consonant' ? 0.4 : 1;
}

function within({ start, end }: PlacedSound, frames: MouthSlot): number {
  return Math.max(0, Math.min(end, frames.end) - Math.max(start, frames.from));
}

/**
 * A mouth that opens for one frame between closed ones is a flash: it opens a frame earlier, or where that cannot be, not at all.
 * The last row stays closed.
 */
export function withoutFlashes(shapes: readonly MouthShape[]): MouthShape[] {
  const rows = [...shapes];
  for (let i = 0; i < rows.length; i++) {
    if (
      rows[i] === 'closed' ||
      (rows[i - 1] ?? 'closed') !== 'closed' ||
      (rows[i + 1] ?? 'closed') !== 'closed'
    )
      continue;
    if (i > 0 && (i === 1 || rows[i - 2] === 'closed')) rows[i - 1] = rows[i]!;
    else rows[i] = 'closed';
  }
  return rows;
}
