/** How lengths and places are written on paper. */

import { FRAMES_A_FOOT } from './settings.js';

/** A length: `5+12`. */
export function secondsAndFrames(frames: number, fps: number): string {
  return `${Math.floor(frames / fps)}+${frames % fps}`;
}

/** A length of 35 mm film: `8'04`. */
export function feetAndFrames(frames: number): string {
  return `${Math.floor(frames / FRAMES_A_FOOT)}'${String(frames % FRAMES_A_FOOT).padStart(2, '0')}`;
}

/** A row as the text of a cut names it: frame 120 at 24 fps is `4+24`, the row labelled 24 in the fifth second. */
export function rowName(frame: number, unit: number, feet: boolean): string {
  const whole = Math.floor((frame - 1) / unit);
  const rest = frame - whole * unit;
  return feet ? `${whole}'${String(rest).padStart(2, '0')}` : `${whole}+${rest}`;
}
