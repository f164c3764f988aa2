/** The way of one move, frame by frame, before anything else is added to it. */

import type { Leg, Move, MoveKind, MoveOf, Spacing } from '../../shot/camera/camera-model.js';
import { rests } from '../../shot/camera/move-kinds.js';
import type { Stage } from './camera-tracks.js';
import { progress, sampled } from './easing.js';
import type { CurvedLegs } from './smooth-curve.js';
import type { CameraFrame, Graduation, SolvedMove } from './solved-camera.js';

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
  /** How long it is along its curve, mm; null: straight from its start to its end. */
  readonly curveMm: number | null;
  readonly fromLabel: string;
  readonly toLabel: string;
}

export interface Path {
  readonly start: number;
  readonly end: number;
  /** Frames outside give the nearest end. */
  readonly at: (frame: number) => Sample;
  /** Along a curve: how far it has gone since the start, mm; null where its legs are straight. */
  readonly alongMm: ((frame: number) => number) | null;
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
  curve: CurvedLegs | null = null,
): Path {
  const { on } = move;
  const manner = rests(move) ? 'rests' : 'moved';
  const legs = move.legs.map(
    ({ start, end, spacing, from, to }, i): PathLeg => ({
      start,
      end,
      spacing,
      place: curve ? (p) => ({ ...place(from, to, p), ...curve.legs[i]!.at(p) }) : (p) => place(from, to, p),
      curveMm: curve ? curve.legs[i]!.lengthMm : null,
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
  const shareAt = (frame: number): number => {
    if (!(frame > near.leg.start && frame <= near.leg.end)) {
      near = timed.findLast(({ leg }) => frame > leg.start) ?? first;
    }
    const i = Math.max(0, Math.min(near.steps, frame - near.leg.start));
    return near.spread(sampled(i, near.steps, on, manner));
  };
  const sampleAt = (frame: number): Sample => {
    const share = shareAt(frame);
    return near.leg.place(share);
  };
  const { start } = first.leg;
  const { end } = timed[timed.length - 1]!.leg;
  // Frame by frame they are asked for by the tracks, by the graduations and by the checks.
  const samples: Sample[] = [];
  const at = (frame: number): Sample => {
    if (!(frame >= start && frame <= end)) return sampleAt(frame);
    samples[frame - start] ??= sampleAt(frame);
    return samples[frame - start]!;
  };
  const alongMm = (frame: number): number => {
    const share = shareAt(frame);
    const before = legs.slice(0, legs.indexOf(near.leg)).reduce((sum, { curveMm }) => sum + curveMm!, 0);
    return before + share * near.leg.curveMm!;
  };
  return {
    start,
    end,
    at,
    alongMm: curve ? alongMm : null,
    legs,
  };
}

// ---- the graduations of a move: where its moving thing is on each frame, numbered from 0 where it leaves

/**
 * `path` is the move's own way: the camera's centre for camera moves, the place for slides, the way gone for pulls, the swing
 * for shake and sway. Steps count along their leg, backwards negative, so that they add up to its way.
 */
export function solveMove(
  move: Move,
  path: Path,
  camera: readonly CameraFrame[],
  outputWidth: number,
): SolvedMove {
  const last = Math.min(path.end, Math.max(camera.length, path.start));
  const graduations: Graduation[] = [];
  let largest = 0;
  let largestShare = 0;
  const ends = path.legs.map(({ place }) => ({ from: place(0), to: place(1) }));
  let before = path.at(path.start);
  for (let frame = path.start; frame <= last; frame++) {
    const sample = path.at(frame);
    let leg = ends.length - 1;
    while (leg > 0 && frame <= path.legs[leg]!.start) leg--;
    // What gives the width alone goes no way: the centre is another move's.
    const stays = frame === path.start || move.gives === 'width';
    const stepMm = stays
      ? 0
      : path.alongMm
        ? path.alongMm(frame) - path.alongMm(frame - 1)
        : stepAlong(ends[leg], sample.x - before.x, sample.y - before.y);
    const width = camera[Math.max(1, frame) - 1]?.width;
    const stepShare = width ? stepMm / width : 0;
    largest = Math.max(largest, Math.abs(stepMm));
    largestShare = Math.max(largestShare, Math.abs(stepShare));
    graduations.push({
      frame,
      number: frame - path.start,
      x: sample.x,
      y: sample.y,
      value: sample.value,
      stepMm,
      stepShare,
      label: labelAt(path, frame),
    });
    before = sample;
  }
  const wayMm = path.legs.length
    ? path.legs.reduce((sum, leg) => sum + legWay(leg), 0)
    : graduations.reduce((sum, g) => sum + Math.abs(g.stepMm), 0);
  return {
    move,
    start: path.start,
    end: path.end,
    graduations,
    wayMm,
    largestStepMm: largest,
    largestStepShare: largestShare,
    largestStepPx: largestShare * outputWidth,
  };
}

/** From the leg's start to its end, mm: straight, or along its curve. */
export function legWay(leg: PathLeg): number {
  if (leg.curveMm !== null) return leg.curveMm;
  const from = leg.place(0);
  const to = leg.place(1);
  return Math.hypot(to.x - from.x, to.y - from.y);
}

/** By how much the width of the field changes on it, mm. */
export function legWidth(leg: PathLeg): number {
  return Math.abs((leg.place(1).value ?? 0) - (leg.place(0).value ?? 0));
}

/** `ends`: of the leg, where it has some. */
function stepAlong(
  ends: { readonly from: Sample; readonly to: Sample } | undefined,
  dx: number,
  dy: number,
): number {
  const length = Math.hypot(dx, dy);
  if (!ends || length === 0) return length;
  const { from, to } = ends;
  return dx * (to.x - from.x) + dy * (to.y - from.y) < 0 ? -length : length;
}

function labelAt(path: Path, frame: number): string {
  for (const leg of path.legs) {
    if (frame === leg.start && leg.fromLabel) return leg.fromLabel;
    if (frame === leg.end && leg.toLabel) return leg.toLabel;
    if (leg.spacing.form === 'fair' && leg.spacing.frame === frame) return leg.spacing.mark;
  }
  return '';
}
