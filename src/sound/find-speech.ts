/** Where in a recording somebody speaks, whatever is said. Pure. */

import type { SearchWindow } from './find-lines.js';
import { STEP_SECONDS, speechFeatures, speechSamples } from './speech-features.js';
import { type ByteSource, readWaveHeader } from './wave-header.js';

/** A pause that ends no line, seconds; and what is too short to be one. Common practice. */
const PAUSE_SECONDS = 0.4;
const SHORTEST_SECONDS = 0.15;
const LOUD = 0.3;
const VOICED = 0.6;

/** Stretches that are loud and in part voiced, in seconds from where the search begins. */
export function findSpeech(
  source: ByteSource,
  { firstSample, seconds }: SearchWindow,
): { from: number; to: number }[] {
  const reading = readWaveHeader(source);
  if (!reading.ok) return [];
  const { steps, loud, voiced } = speechFeatures(speechSamples(source, reading.header, firstSample, seconds));
  const pause = Math.round(PAUSE_SECONDS / STEP_SECONDS);
  const found: { from: number; to: number; voicedSteps: number }[] = [];
  for (let step = 0; step < steps; step++) {
    if (loud[step]! < LOUD) continue;
    const last = found.at(-1);
    const isVoiced = voiced[step]! > VOICED ? 1 : 0;
    if (last && step - last.to <= pause) {
      last.to = step + 1;
      last.voicedSteps += isVoiced;
    } else found.push({ from: step, to: step + 1, voicedSteps: isVoiced });
  }
  return found
    .filter(({ from, to }) => (to - from) * STEP_SECONDS >= SHORTEST_SECONDS)
    .filter(({ from, to, voicedSteps }) => voicedSteps > (to - from) * 0.2)
    .map(({ from, to }) => ({ from: from * STEP_SECONDS, to: to * STEP_SECONDS }));
}
