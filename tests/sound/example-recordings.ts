/** The recordings that the reference's examples name, made once: somebody speaks on the rows of the lines that stand beside them. */

import { tone, wave } from './wave-writer.js';

const RATE = 4000;
let made: Readonly<Record<string, Uint8Array>> | null = null;

export function exampleRecordings(): Readonly<Record<string, Uint8Array>> {
  const recording = (seconds: number, from: number, to: number) =>
    wave(tone(seconds, from, to, RATE), { rate: RATE });
  made ??= {
    'sound/c012.wav': recording(5, 1.25, 2.8),
    'sound/reel2.wav': recording(30, 13.7, 15.2),
  };
  return made;
}
