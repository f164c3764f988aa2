/** The way of one move, frame by frame, before anything else is added to it. */

import type { Leg, Move, MoveKind, MoveOf, Spacing } from '../../shot/camera/camera-model.js';
import { rests } from '../../shot/camera/move-facts.js';
import type { Stage } from './camera-tracks.js';
import { progress, sampled } from './easing.js';

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

/** Writes the frames of a move into the tracks, and gives its own way. */
export type Driver<K extends MoveKind> = (move: MoveOf<K>, stage: Stage) => Path;

/**
 * `place`: where the thing is with share p of the way from one end of a leg to the other done; `label`: what an end is called.
 * Each leg is as long as one step or more.
 */
export function pathOf<E>(
  move: Pick<Move, 'kind' | 'on'> & { readonly legs: readonly Leg<E>[] },
  place: (from: E, to: E, p: number) => Sample,
  label: (end: E) => string = () => '',
): Path {
  const { on } = move;
  const manner = rests(move) ? 'rests' : 'moved';
  const legs = move.legs.map(
    ({ start, end, spacing, from, to }): PathLeg => ({
      start,
      end,
      spacing,
      place: (p) => place(from, to, p),
      fromLabel: label(from),
      toLabel: label(to),
    }),
  );
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
