/** Figures as hovers write them. */

import { feetAndFrames, inFrames, rowName, secondsAndFrames } from '../shot/time-notation.js';
import { figure } from '../words/number-format.js';

/** `48 frames (2+0)` */
export function lasting(frames: number, fps: number): string {
  return `${inFrames(frames)} (${secondsAndFrames(frames, fps)})`;
}

/** `frames 25–48`, `frame 25` */
export function between(from: number, to: number): string {
  return from === to ? `frame ${from}` : `frames ${from}–${to}`;
}

export function asLength(frames: number, fps: number): string {
  return `${inFrames(frames)} = ${secondsAndFrames(frames, fps)} = ${feetAndFrames(frames)} of 35 mm film`;
}

export function asPosition(frame: number, fps: number): string {
  return `frame ${frame}: row ${rowName(frame, fps, false)}, or ${rowName(frame, 16, true)} in feet; up to here ${asLength(frame, fps)}`;
}

export function millimetres(value: number): string {
  return `${figure(value)} mm`;
}

export function listed(parts: readonly string[], most = 6): string {
  return parts.length > most
    ? `${parts.slice(0, most).join(', ')} and ${parts.length - most} more`
    : parts.join(', ');
}
