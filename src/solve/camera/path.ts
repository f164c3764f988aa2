/** The way of one move, frame by frame, before anything else is added to it. */

import type { Spacing } from '../../shot/camera.js';
import { progress, sampled } from './spacing.js';

/** Where the moved thing is: the camera's centre or a displacement, and what the move drives besides. */
export interface Sample {
  readonly x: number;
  readonly y: number;
  /** Field width in mm, scale, or degrees; null where only the place moves. */
  readonly value: number | null;
  /** Rotation of the field, degrees; 0 elsewhere. */
  readonly turn: number;
}

/** One leg of a move in time; `place(p)` is where the thing is with share p of the way done. */
export interface PathLeg {
  readonly start: number;
  readonly end: number;
  readonly spacing: Spacing;
  readonly place: (p: number) => Sample;
  readonly fromLabel: string;
  readonly toLabel: string;
}

export interface Path {
  readonly start: number;
  readonly end: number;
  /** Frames outside give the nearest end. */
  readonly at: (frame: number) => Sample;
  /** Empty where the thing swings about a place instead of going to one. */
  readonly legs: readonly PathLeg[];
}

/** `legs`: one at least, each as long as one step or more, in the order of time. */
export function pathOf(legs: readonly PathLeg[], on: number, manner: 'rests' | 'moved'): Path {
  const timed = legs.map((leg) => ({
    leg,
    steps: leg.end - leg.start,
    spread: progress(leg.spacing, leg.end - leg.start, leg.start),
  }));
  const first = timed[0]!;
  let near = first;
  const at = (frame: number): Sample => {
    if (!(frame > near.leg.start && frame <= near.leg.end)) {
      near = timed.findLast(({ leg }) => frame > leg.start) ?? first;
    }
    const i = Math.max(0, Math.min(near.steps, frame - near.leg.start));
    return near.leg.place(near.spread(sampled(i, near.steps, on, manner)));
  };
  return { start: first.leg.start, end: timed[timed.length - 1]!.leg.end, at, legs };
}
