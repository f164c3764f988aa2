/** What a part of a sound is expected to look like in a recording, and how far a moment of it is from that. Pure. */

import { BAND_EDGES, BANDS, centre, type SpeechFeatures } from './speech-features.js';
import type { SoundPart } from './speech-sounds.js';

export interface Template {
  readonly name: string;
  readonly shape: Float32Array;
  readonly loud: number;
  readonly voiced: number;
  /** How much the shape counts: nothing where there is next to no sound. */
  readonly shapeWeight: number;
}

const BANDWIDTHS = [80, 110, 160];

/** `tract`: 1 for a man's vocal tract, more for a shorter one: all formants are higher by it. */
export function templateOf(part: SoundPart, tract: number): Template {
  const shape = new Float32Array(BANDS);
  let most = Number.NEGATIVE_INFINITY;
  for (let band = 0; band < BANDS; band++) {
    const hz = BAND_EDGES[band + 1]!;
    const power =
      (part.formants ? resonances(hz, part.formants, tract) : 0) + (part.noise ? hiss(hz, part.noise) : 0);
    // Lifted as the features are: 1 - 0.9 z^-1, about hz above some hundred Hz.
    shape[band] = 10 * Math.log10(power * (0.01 + (hz / 4000) ** 2) + 1e-7);
    if (shape[band]! > most) most = shape[band]!;
  }
  centre(shape, most);
  const silent = !part.formants && !part.noise;
  return {
    name: part.name,
    shape,
    loud: part.loud,
    voiced: part.voiced,
    shapeWeight: silent ? 0 : part.formants ? 1 : 0.8,
  };
}

/** Power of a voice's harmonics behind three resonances: the source falls by 12 dB an octave, the lips lift by 6. */
function resonances(hz: number, formants: readonly number[], tract: number): number {
  let power = 1 / (1 + (hz / 500) ** 2);
  formants.forEach((formant, i) => {
    const centreHz = formant * tract;
    const width = BANDWIDTHS[i]!;
    const x = (hz / centreHz) ** 2;
    power *= 1 / ((1 - x) ** 2 + ((hz * width) / centreHz ** 2) ** 2 + 0.002);
  });
  return power;
}

function hiss(hz: number, [middle, width]: readonly [number, number]): number {
  return 0.3 * Math.exp(-(((hz - middle) / width) ** 2)) + 0.003;
}

export const SILENCE: Template = {
  name: 'silence',
  shape: new Float32Array(BANDS),
  loud: 0,
  voiced: 0.2,
  shapeWeight: 0,
};

/** How much each kind of distance counts. Tuned on lines that are no part of any test (see the bench). */
export interface DistanceWeights {
  /** A difference of so many dB a band counts 1. */
  readonly shapeDb: number;
  readonly loud: number;
  readonly voiced: number;
}
export const WEIGHTS: DistanceWeights = { shapeDb: 9, loud: 0.3, voiced: 0.5 };

/** The distance of every step of a recording from a template; about 1 where a moment looks as it should. */
export function distances(features: SpeechFeatures, template: Template, weights = WEIGHTS): Float32Array {
  const { steps, shape, loud, voiced } = features;
  const out = new Float32Array(steps);
  const { shapeWeight } = template;
  const scale = shapeWeight / (BANDS * weights.shapeDb ** 2);
  const isSilent = template.name === 'silence';
  for (let step = 0; step < steps; step++) {
    let far = 0;
    if (shapeWeight > 0) {
      const at = step * BANDS;
      for (let band = 0; band < BANDS; band++) {
        const one = shape[at + band]! - template.shape[band]!;
        far += one * one;
      }
    }
    const louder = loud[step]! - template.loud;
    // A vowel may be quieter than usual; silence is never loud.
    const louderCost = Math.min(4, (louder / weights.loud) ** 2);
    const voice = (voiced[step]! - template.voiced) / weights.voiced;
    out[step] =
      Math.min(6, far * scale) + louderCost + (isSilent || shapeWeight === 0 ? 0.3 : 1) * voice * voice;
    // What is silent looks like the silence of every stop; where both will do it is a pause.
    if (shapeWeight === 0) out[step]! += isSilent ? 0.2 : 0.4;
  }
  return out;
}

/** A template that has learned from the steps that were found to be its own; `prior`: how many steps the first guess counts for. */
export function learned(
  template: Template,
  features: SpeechFeatures,
  steps: readonly number[],
  prior: number,
): Template {
  if (steps.length === 0) return template;
  const weight = 1 / (prior + steps.length);
  const shape = Float32Array.from(template.shape, (one) => one * prior * weight);
  let loud = template.loud * prior * weight;
  let voiced = template.voiced * prior * weight;
  for (const step of steps) {
    for (let band = 0; band < BANDS; band++) shape[band]! += features.shape[step * BANDS + band]! * weight;
    loud += features.loud[step]! * weight;
    voiced += features.voiced[step]! * weight;
  }
  return { ...template, shape, loud, voiced };
}
