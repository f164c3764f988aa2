/** A recording and the lines that are spoken in it → where each word begins. Pure; times are seconds from where the search begins. */

import {
  type AlignmentLine,
  type AlignmentSettings,
  alignLines,
  type LineSound,
  SETTINGS,
} from './forced-alignment.js';
import { type Dictionary, pronounce, type SpokenWord } from './pronunciation.js';
import {
  cutOut,
  type SpeechFeatures,
  STEP_SECONDS,
  speechFeatures,
  speechSamples,
} from './speech-features.js';
import { ENGLISH_SOUNDS, JAPANESE_SOUNDS } from './speech-sounds.js';
import { type ByteSource, readWaveHeader } from './wave-header.js';

/** Which part of a recording is searched: `firstSample` in its own samples, below 0 where it begins later. */
export interface SearchWindow {
  readonly firstSample: number;
  readonly seconds: number;
}

export interface LineToFind {
  readonly text: string;
  /** Between which seconds it is looked for, or null: anywhere. */
  readonly from: number | null;
  readonly to: number | null;
  /** Words, by their offset in the text, whose beginning is known. */
  readonly ties: readonly { readonly at: number; readonly seconds: number }[];
}

export interface FoundWord {
  /** Its place in the text, UTF-16 offsets, the second excluded. */
  readonly start: number;
  readonly end: number;
  readonly seconds: number;
  readonly endSeconds: number;
  /** Where each of its syllables or morae begins. */
  readonly beats: readonly number[];
}

export interface FoundLine {
  /** Null: it is not in the recording, or holds nothing that can be read. */
  readonly words: readonly FoundWord[] | null;
  /** Kanji without ruby and the like, by their place in the text. */
  readonly unread: readonly { readonly start: number; readonly end: number; readonly text: string }[];
  /** 0 to 1: how much more it is like the line than like the same sounds in another order. */
  readonly likeness: number;
}

/** Lines in the order in which they are spoken. Null: the recording cannot be read. */
export function findLines(
  source: ByteSource,
  window: SearchWindow,
  lines: readonly LineToFind[],
  dictionary: Dictionary,
  settings: AlignmentSettings = SETTINGS,
): FoundLine[] {
  const reading = readWaveHeader(source);
  const read = lines.map(({ text }) => pronounce(text, dictionary));
  if (!reading.ok) return read.map(({ unread }) => ({ words: null, unread, likeness: 0 }));
  const samples = speechSamples(source, reading.header, window.firstSample, window.seconds);
  const features = speechFeatures(samples);
  const prepared = lines.map((line, i) => prepare(line, read[i]!.words, features.steps));
  const found = new Map<number, { starts: readonly number[]; likeness: number }>();
  let asked = [...prepared.keys()].filter((i) => prepared[i]!.sounds.length > 0);
  // A line that is not there may have taken the place of another: without it the others are looked for again.
  for (let round = 0; round < 2 && asked.length > 0; round++) {
    const aligned = alignLines(
      features,
      asked.map((i) => prepared[i]!),
      settings,
    );
    found.clear();
    asked.forEach((i, place) => {
      const { starts } = aligned[place]!;
      if (starts) found.set(i, { starts, likeness: likeness(features, prepared[i]!, starts, settings) });
    });
    const there = asked.filter((i) => (found.get(i)?.likeness ?? 0) >= UNLIKELY);
    if (there.length === asked.length) break;
    asked = there;
  }
  return lines.map((line, i): FoundLine => {
    const { words, unread } = read[i]!;
    const one = asked.includes(i) ? found.get(i) : undefined;
    if (!one || one.likeness < UNLIKELY) return { words: null, unread, likeness: one?.likeness ?? 0 };
    return { words: placed(words, one.starts, line), unread, likeness: one.likeness };
  });
}

/** Below it a line is said not to be there; what is a little above is in doubt. Measured: see the bench. */
export const UNLIKELY = 0.06;
export const DOUBTFUL = 0.2;

/** A clear recording is as near as this to what is expected; what is farther off is less likely, up to a point: voices differ. */
const USUAL_DISTANCE = 0.5;
const MOST_STRANGE = 0.15;

/** What is as far as this from what is expected is something else. */
const FAR = 0.9;

/** Whether another order of sounds is another one: at a third of the places at least. */
function isOther(sounds: readonly LineSound[], other: readonly LineSound[]): boolean {
  const same = sounds.filter(({ parts }, i) => parts === other[i]!.parts).length;
  return same < sounds.length * 0.67;
}

/** Silence before and behind a line that is looked at by itself, steps. */
const AROUND = 25;

/**
 * How much more a stretch of the recording is like a line than like the same sounds in another order: 0 where there is no difference, towards 1 where the
 * line fits and the others do not at all. It is a comparison within one recording, so that neither voice nor microphone matters much.
 */
function likeness(
  features: SpeechFeatures,
  line: AlignmentLine,
  starts: readonly number[],
  settings: AlignmentSettings,
): number {
  const from = Math.max(0, starts[0]! - AROUND);
  const to = Math.min(features.steps, starts.at(-1)! + AROUND);
  const part = cutOut(features, from, to);
  const whole = { from: 0, to: part.steps, anchors: new Map<number, number>() };
  const alone: AlignmentSettings = { ...settings, missing: 1e6, rounds: Math.min(2, settings.rounds) };
  const far = (sounds: readonly LineSound[]): number =>
    alignLines(part, [{ ...whole, sounds }], alone)[0]!.distance;
  const backwards = line.sounds.toReversed();
  const half = Math.floor(line.sounds.length / 2);
  const turned = [...line.sounds.slice(half), ...line.sounds.slice(0, half)];
  const own = far(line.sounds);
  const others = [backwards, turned].filter((other) => isOther(line.sounds, other)).map(far);
  // "No no no" is itself in any order: only how near it is can be said.
  if (others.length === 0) return Math.max(0, 1 - own / FAR);
  const least = Math.min(...others);
  const strange = Math.min(MOST_STRANGE, Math.max(0, own - USUAL_DISTANCE) / 2);
  return least === 0 ? 0 : Math.max(0, 1 - own / least - strange);
}

function prepare({ from, to, ties }: LineToFind, words: readonly SpokenWord[], steps: number): AlignmentLine {
  const sounds: LineSound[] = [];
  const anchors = new Map<number, number>();
  words.forEach((word, w) => {
    const before = words[w - 1];
    const tie = tieOf(word, before, ties);
    if (tie) anchors.set(sounds.length, Math.round(tie.seconds / STEP_SECONDS));
    const table = word.language === 'ja' ? JAPANESE_SOUNDS : ENGLISH_SOUNDS;
    const lastBeat = word.beats - 1;
    word.sounds.forEach((sound, i) => {
      sounds.push({
        parts: table.get(sound.sound)!.parts,
        seconds: sound.seconds,
        word: w,
        first: i === 0,
        pause: before?.pause ?? 'none',
        last: word.pause !== 'none' && sound.beat === lastBeat && sound.kind === 'vowel',
      });
    });
  });
  return {
    sounds,
    from: from === null ? 0 : Math.max(0, Math.floor(from / STEP_SECONDS)),
    to: to === null ? steps : Math.min(steps, Math.ceil(to / STEP_SECONDS)),
    anchors,
  };
}

/** A piece may begin with a dash or dots: its tie is that of its first word. */
function tieOf(
  { start }: SpokenWord,
  before: SpokenWord | undefined,
  ties: LineToFind['ties'],
): LineToFind['ties'][number] | undefined {
  return ties.find(({ at }) => at >= (before?.end ?? 0) && at <= start);
}

function placed(words: readonly SpokenWord[], starts: readonly number[], { ties }: LineToFind): FoundWord[] {
  const found: FoundWord[] = [];
  let sound = 0;
  for (const [w, word] of words.entries()) {
    const first = sound;
    const beats: number[] = [];
    for (const one of word.sounds) {
      if (one.beat === beats.length) beats.push(starts[sound]! * STEP_SECONDS);
      sound += 1;
    }
    found.push({
      start: word.start,
      end: word.end,
      // What is known is not found.
      seconds: tieOf(word, words[w - 1], ties)?.seconds ?? starts[first]! * STEP_SECONDS,
      endSeconds: starts[sound]! * STEP_SECONDS,
      beats,
    });
  }
  return found;
}
