/** Which frame is shown at a reading of a clock. Nothing is counted: a frame that comes late leaves the next one where it was. Pure. */

/** Frames first..last, both included. */
export interface FrameRange {
  readonly first: number;
  readonly last: number;
}

export interface Playing {
  /** The reading, in seconds, at which `from` is shown. */
  readonly start: number;
  /** A time of the film in frames: 0 is the beginning of frame 1, 1 that of frame 2. */
  readonly from: number;
  readonly fps: number;
  /** 1, ½ or ¼ of the film's own. */
  readonly speed: number;
  readonly range: FrameRange;
  readonly loop: boolean;
}

export interface Played {
  /** From 1. */
  readonly frame: number;
  /** The time of the film, in frames. */
  readonly time: number;
  /** The last frame has been shown for its whole time. */
  readonly ended: boolean;
}

/** A reading may fall short of the beginning of a frame by the last digits of its seconds. */
const DIGITS = 1e-6;

export function playedAt(playing: Playing, now: number): Played {
  const { start, from, fps, speed, range, loop } = playing;
  const first = range.first - 1;
  const whole = from + Math.max(0, now - start) * fps * speed;
  if (whole < range.last - DIGITS) return { frame: frameOf(whole), time: whole, ended: false };
  if (!loop) return { frame: range.last, time: range.last, ended: true };
  const time = first + wrapped(whole - first, range.last - first);
  return { frame: frameOf(time), time, ended: false };
}

function frameOf(time: number): number {
  return Math.floor(time + DIGITS) + 1;
}

/** What is left behind whole passes; a reading just before the end of a pass is of the next one. */
function wrapped(time: number, length: number): number {
  const rest = time % length;
  return length - rest < DIGITS ? 0 : rest;
}

/** One frame or none can be outside of what is played. */
export function within(frame: number, { first, last }: FrameRange): number {
  return Math.min(last, Math.max(first, frame));
}
