/**
 * Frames in the ways that people write them. All functions take whole frames >= 0 and throw a RangeError for anything else:
 * a wrong argument is a fault of the program, never of a text.
 */

import { plural, rowLabel } from '../words/number-format.js';
import { FRAMES_A_FOOT } from './settings.js';

/** Frames of one foot of 16 mm film. Source: 16 mm film tables. */
export const FRAMES_A_FOOT_16 = 40;

function whole(frames: number): number {
  if (!Number.isSafeInteger(frames) || frames < 0) throw new RangeError(`not a number of frames: ${frames}`);
  return frames;
}

export function splitSeconds(frames: number, fps: number): { seconds: number; frames: number } {
  return { seconds: Math.floor(whole(frames) / fps), frames: frames % fps };
}

/** Of 35 mm film, unless it says otherwise. */
export function splitFeet(frames: number, perFoot = FRAMES_A_FOOT): { feet: number; frames: number } {
  return { feet: Math.floor(whole(frames) / perFoot), frames: frames % perFoot };
}

/** `4+04`: seconds and frames, the frames in two digits. */
export function secondsText(frames: number, fps: number): string {
  const split = splitSeconds(frames, fps);
  return `${split.seconds}+${String(split.frames).padStart(2, '0')}`;
}

/** `6-04`: feet and frames, the frames in two digits. */
export function feetText(frames: number, perFoot = FRAMES_A_FOOT): string {
  const split = splitFeet(frames, perFoot);
  return `${split.feet}-${String(split.frames).padStart(2, '0')}`;
}

/** A length as the language and the paper write it: `4+4`. */
export function secondsAndFrames(frames: number, fps: number): string {
  const split = splitSeconds(frames, fps);
  return `${split.seconds}+${split.frames}`;
}

/** The same in feet of 35 mm film: `6'04`. */
export function feetAndFrames(frames: number): string {
  const split = splitFeet(frames);
  return `${split.feet}'${String(split.frames).padStart(2, '0')}`;
}

/**
 * A row as the text of a cut names it: frame 120 at 24 fps is `4+24`, the row labelled 24 in the fifth second. `unit`: frames
 * of a second, or of a foot where `feet` says so.
 */
export function rowName(frame: number, unit: number, feet: boolean): string {
  return rowLabel(whole(frame), unit, feet);
}

/**
 * `00:00:04:04`, counted from 0. `nominal` is the whole number of frames that a timecode second is numbered by (24, 25, 30, 60).
 * With `drop` (30 for 29.97, 60 for 59.94 only) the first 2 (4) numbers of each minute are left out, but not in each tenth
 * minute, and the last separator is `;`. Source: the counting rule of SMPTE ST 12-1.
 */
export function timecode(frames: number, nominal: number, drop = false): string {
  let count = whole(frames);
  if (drop) {
    if (nominal !== 30 && nominal !== 60) throw new RangeError(`no drop-frame count for ${nominal}`);
    const dropped = nominal / 15;
    const minute = nominal * 60 - dropped;
    const tenMinutes = nominal * 600 - dropped * 9;
    const tens = Math.floor(count / tenMinutes);
    const rest = count % tenMinutes;
    // The first minute of each ten drops nothing, so it is longer than the other nine by what they drop.
    const minutes = rest < nominal * 60 ? 0 : 1 + Math.floor((rest - nominal * 60) / minute);
    count += dropped * (tens * 9 + minutes);
  }
  const two = (value: number) => String(value).padStart(2, '0');
  const seconds = Math.floor(count / nominal);
  const clock = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60].map(two).join(':');
  return `${clock}${drop ? ';' : ':'}${two(count % nominal)}`;
}

/** `1 frame`, `8 frames`; for messages. */
export function inFrames(count: number): string {
  return plural(count, 'frame');
}
