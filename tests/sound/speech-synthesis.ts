/**
 * A synthesiser of our own for tests and demonstrations: pulses and noise through resonances, one sound after the other, with the times of
 * its words. It sounds like nobody.
 */

import { type Dictionary, pronounce } from '../../src/sound/pronunciation.js';
import { ENGLISH_SOUNDS, JAPANESE_SOUNDS, type SoundPart } from '../../src/sound/speech-sounds.js';

export interface Synthesised {
  readonly rate: number;
  readonly samples: Float32Array;
  /** Seconds at which each word of each line begins, and the last one ends. */
  readonly lines: readonly { readonly words: readonly number[]; readonly end: number }[];
}

export interface Speaker {
  readonly pitchHz: number;
  /** 1: a man's formants; more: higher ones. */
  readonly tract: number;
  /** Lengths against usual ones. */
  readonly slow: number;
}

const RATE = 16_000;

/** `lines`: what is said and when it begins. */
export function synthesise(
  seconds: number,
  lines: readonly { readonly at: number; readonly text: string; readonly speaker?: Partial<Speaker> }[],
  dictionary: Dictionary = () => null,
): Synthesised {
  const samples = new Float32Array(Math.round(seconds * RATE));
  const random = randomOf(7);
  for (let i = 0; i < samples.length; i++) samples[i] = 0.0006 * (random() * 2 - 1);
  const told = lines.map(({ at, text, speaker }) => {
    const voice: Speaker = { pitchHz: 120, tract: 1.05, slow: 1.1, ...speaker };
    const words: number[] = [];
    let now = at;
    for (const word of pronounce(text, dictionary).words) {
      words.push(now);
      const table = word.language === 'ja' ? JAPANESE_SOUNDS : ENGLISH_SOUNDS;
      for (const { sound, seconds: length } of word.sounds)
        for (const part of table.get(sound)!.parts) {
          const lasts = length * part.share * voice.slow;
          speak(samples, now, lasts, part, voice, random);
          now += lasts;
        }
      now += word.pause === 'short' ? 0.2 : word.pause === 'long' ? 0.05 : 0;
    }
    return { words, end: now };
  });
  return { rate: RATE, samples, lines: told };
}

/** Adds a part of a sound, its ends drawn over 8 ms. */
function speak(
  samples: Float32Array,
  at: number,
  seconds: number,
  part: SoundPart,
  { pitchHz, tract }: Speaker,
  random: () => number,
): void {
  const start = Math.round(at * RATE);
  const count = Math.round(seconds * RATE);
  const period = Math.round(RATE / pitchHz);
  const resonators = (part.formants ?? []).map((hz, i) => resonator(hz * tract, [80, 110, 160][i]!));
  const noise = part.noise ? [resonator(part.noise[0], part.noise[1])] : [];
  const edge = Math.min(128, count / 3);
  for (let i = 0; i < count && start + i < samples.length; i++) {
    const fade = Math.min(1, i / edge, (count - i) / edge);
    const pulse = (start + i) % period === 0 ? 1 : 0;
    let value = resonators.length > 0 ? resonators.reduce((sum, filter) => filter(sum), pulse) * 6 : 0;
    for (const filter of noise) value += filter(random() * 2 - 1) * 0.5;
    samples[start + i]! += value * part.loud ** 2 * fade * 0.25;
  }
}

function resonator(hz: number, width: number): (value: number) => number {
  const radius = Math.exp((-Math.PI * Math.min(width, 3000)) / RATE);
  const b = 2 * radius * Math.cos((2 * Math.PI * hz) / RATE);
  const c = -radius * radius;
  const a = 1 - b - c;
  let one = 0;
  let two = 0;
  return (value) => {
    const next = Math.abs(a) * value + b * one + c * two;
    two = one;
    one = next;
    return next;
  };
}

/** Numbers from 0 to 1, the same in every run. */
export function randomOf(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
