/** The graduations of a move: where its moving thing is on each frame, numbered from 0 where it leaves. */

import type { Move } from '../../shot/camera/camera-model.js';
import type { Path, PathLeg } from './move-path.js';
import type { CameraFrame, Graduation, SolvedMove } from './solved-camera.js';

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
  let before = path.at(path.start);
  for (let frame = path.start; frame <= last; frame++) {
    const sample = path.at(frame);
    const leg = path.legs.findLast((l) => frame > l.start) ?? path.legs[0];
    const stepMm = frame === path.start ? 0 : stepAlong(leg, sample.x - before.x, sample.y - before.y);
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

/** Straight from the leg's start to its end, mm. */
export function legWay(leg: PathLeg): number {
  const from = leg.place(0);
  const to = leg.place(1);
  return Math.hypot(to.x - from.x, to.y - from.y);
}

function stepAlong(leg: PathLeg | undefined, dx: number, dy: number): number {
  const length = Math.hypot(dx, dy);
  if (!leg || length === 0) return length;
  const from = leg.place(0);
  const to = leg.place(1);
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
