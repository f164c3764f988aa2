/**
 * A recording → what an alignment looks at, every 10 ms: the shape of the spectrum in bands spaced as the ear hears (mel, Stevens and
 * Volkmann 1940, formula of O'Shaughnessy 1987: 2595 log10(1 + f/700)), how loud it is, how voiced. Pure.
 */

import FFT from 'fft.js';
import type { ByteSource, WaveHeader } from './wave-header.js';
import { eachBlock } from './wave-samples.js';

export const STEP_SECONDS = 0.01;
export const RATE = 16_000;
const STEP = RATE * STEP_SECONDS;
const WINDOW = 400;
const SIZE = 512;
export const BANDS = 20;
const LOWEST_HZ = 100;
const HIGHEST_HZ = 7600;
/** Bands this far below the strongest one of their moment are all the same, dB. */
export const SHAPE_FLOOR_DB = -40;
/** Nothing is quieter than this below the loudest moments, dB. */
const RANGE_DB = 50;

export interface SpeechFeatures {
  readonly steps: number;
  /** `BANDS` for each step: dB against the mean of the step's bands, floored. */
  readonly shape: Float32Array;
  /** 0: as quiet as the quiet moments; 1: as loud as the loud ones. */
  readonly loud: Float32Array;
  /** 0 to 1: how much each moment repeats itself at the pitch of a voice. */
  readonly voiced: Float32Array;
}

export const mel = (hz: number): number => 2595 * Math.log10(1 + hz / 700);
const hertz = (mels: number): number => 700 * (10 ** (mels / 2595) - 1);

/** Centres of the bands, Hz, with one more at either end. */
export const BAND_EDGES: readonly number[] = Array.from({ length: BANDS + 2 }, (_, i) =>
  hertz(mel(LOWEST_HZ) + ((mel(HIGHEST_HZ) - mel(LOWEST_HZ)) * i) / (BANDS + 1)),
);

/** Weights of each bin of the spectrum in each band. */
const FILTERS = BAND_EDGES.slice(1, -1).map((centre, i) => {
  const [low, high] = [BAND_EDGES[i]!, BAND_EDGES[i + 2]!];
  const weights: { bin: number; weight: number }[] = [];
  for (let bin = 1; bin < SIZE / 2; bin++) {
    const hz = (bin * RATE) / SIZE;
    const weight = hz <= centre ? (hz - low) / (centre - low) : (high - hz) / (high - centre);
    if (weight > 0) weights.push({ bin, weight });
  }
  if (weights.length === 0) weights.push({ bin: Math.round((centre * SIZE) / RATE), weight: 1 });
  return weights;
});

/** The samples from `first` on (below 0: silence first) for so many seconds, 16,000 a second. */
export function speechSamples(
  source: ByteSource,
  header: WaveHeader,
  first: number,
  seconds: number,
): Float32Array {
  const ratio = header.sampleRate / RATE;
  const out = new Float32Array(Math.max(0, Math.round(seconds * RATE)));
  const counts = ratio > 1 ? new Uint16Array(out.length) : null;
  let last = 0;
  const count = Math.ceil(seconds * header.sampleRate) + 2;
  eachBlock(
    source,
    header,
    Math.max(0, first),
    first < 0 ? Math.max(0, count + first) : count,
    (block, at) => {
      for (let i = 0; i < block.length; i++) {
        const value = block[i]!;
        const place = (at + i - first) / ratio;
        if (counts) {
          // More samples than needed: the mean of those that fall together, which also keeps high ones from folding down.
          const k = Math.floor(place);
          if (k < 0 || k >= out.length) continue;
          out[k]! += value;
          counts[k]!++;
        } else {
          // Fewer: a straight line between them.
          const from = Math.max(0, Math.ceil(place - 1 / ratio));
          for (let k = from; k <= place && k < out.length; k++)
            out[k] = last + (value - last) * (1 - (place - k) * ratio);
          last = value;
        }
      }
    },
  );
  if (counts) for (let k = 0; k < out.length; k++) if (counts[k]! > 1) out[k]! /= counts[k]!;
  return out;
}

/** Of samples at `RATE`. Step i is about the middle of its 10 ms. */
export function speechFeatures(samples: Float32Array): SpeechFeatures {
  const steps = Math.max(0, Math.floor(samples.length / STEP));
  const fft = new FFT(SIZE);
  const shape = new Float32Array(steps * BANDS);
  const voiced = new Float32Array(steps);
  const level = new Float32Array(steps);
  const frame = new Array<number>(SIZE).fill(0);
  const spectrum = fft.createComplexArray();
  const power = new Float64Array(SIZE / 2);
  const window = Float64Array.from(
    { length: WINDOW },
    (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / (WINDOW - 1)),
  );
  for (let step = 0; step < steps; step++) {
    const start = Math.round(step * STEP + STEP / 2 - WINDOW / 2);
    let energy = 0;
    for (let i = 0; i < WINDOW; i++) {
      const at = start + i;
      const value = at >= 0 && at < samples.length ? samples[at]! : 0;
      const before = at >= 1 && at <= samples.length ? samples[at - 1]! : 0;
      energy += value * value * window[i]!;
      // High frequencies are lifted, as is usual for speech.
      frame[i] = (value - 0.9 * before) * window[i]!;
    }
    for (let i = WINDOW; i < SIZE; i++) frame[i] = 0;
    fft.realTransform(spectrum, frame);
    for (let bin = 0; bin < SIZE / 2; bin++)
      power[bin] = spectrum[2 * bin]! ** 2 + spectrum[2 * bin + 1]! ** 2;
    level[step] = 10 * Math.log10(energy / WINDOW + 1e-10);
    writeShape(power, shape.subarray(step * BANDS, (step + 1) * BANDS));
    voiced[step] = periodicity(samples, start);
  }
  return { steps, shape, loud: relative(level), voiced };
}

function writeShape(power: Float64Array, into: Float32Array): void {
  let most = Number.NEGATIVE_INFINITY;
  for (let band = 0; band < BANDS; band++) {
    let sum = 0;
    let weights = 0;
    for (const { bin, weight } of FILTERS[band]!) {
      sum += power[bin]! * weight;
      weights += weight;
    }
    into[band] = 10 * Math.log10(sum / weights + 1e-12);
    if (into[band]! > most) most = into[band]!;
  }
  centre(into, most);
}

/** Floors a spectrum in dB below its strongest band and takes its mean off. */
export function centre(bands: Float32Array, most: number): void {
  let mean = 0;
  for (let band = 0; band < BANDS; band++) {
    bands[band] = Math.max(bands[band]! - most, SHAPE_FLOOR_DB);
    mean += bands[band]! / BANDS;
  }
  for (let band = 0; band < BANDS; band++) bands[band]! -= mean;
}

/** Loudness between the quiet and the loud moments. */
function relative(level: Float32Array): Float32Array {
  const sorted = Float32Array.from(level).sort();
  const at = (share: number): number => sorted[Math.floor((sorted.length - 1) * share)] ?? 0;
  const loud = at(0.95);
  const quiet = Math.max(at(0.08), loud - RANGE_DB);
  const range = Math.max(loud - quiet, 6);
  return level.map((one) => Math.max(-0.1, Math.min(1.2, (one - quiet) / range)));
}

const SHORTEST_PITCH = Math.floor(RATE / 4 / 380);
const LONGEST_PITCH = Math.ceil(RATE / 4 / 70);
const PITCH_SAMPLES = 120;

/** The highest correlation with itself at the distances of a voice's pitch, of every fourth sample: enough for what is below 2 kHz. */
function periodicity(samples: Float32Array, start: number): number {
  const from = start + WINDOW / 2 - PITCH_SAMPLES * 2;
  const value = (i: number): number => {
    const at = from + i * 4;
    return (samples[at] ?? 0) + (samples[at + 1] ?? 0) + (samples[at + 2] ?? 0) + (samples[at + 3] ?? 0);
  };
  const total = PITCH_SAMPLES + LONGEST_PITCH;
  const values = new Float64Array(total);
  for (let i = 0; i < total; i++) values[i] = value(i - LONGEST_PITCH / 2);
  let best = 0;
  for (let lag = SHORTEST_PITCH; lag <= LONGEST_PITCH; lag++) {
    let product = 0;
    let one = 1e-9;
    let other = 1e-9;
    for (let i = 0; i + lag < total && i < PITCH_SAMPLES; i++) {
      const [a, b] = [values[i]!, values[i + lag]!];
      product += a * b;
      one += a * a;
      other += b * b;
    }
    const share = product / Math.sqrt(one * other);
    if (share > best) best = share;
  }
  return best;
}

/** Some of the steps. */
export function cutOut({ shape, loud, voiced }: SpeechFeatures, from: number, to: number): SpeechFeatures {
  return {
    steps: to - from,
    shape: shape.subarray(from * BANDS, to * BANDS),
    loud: loud.subarray(from, to),
    voiced: voiced.subarray(from, to),
  };
}
