/** Which moves a line of the memo tells whole, so that no camera chart need be printed for them. */

import { kindOf } from '../../shot/camera/move-facts.js';
import type { Level } from '../../shot/shot.js';
import type { SolvedMove } from '../../solve/camera/solved-camera.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import type { PrintedLengths } from '../printed-lengths.js';

/** Every step like every other: one line of words tells all. */
export function isConstant({ move, graduations }: SolvedMove): boolean {
  const { goes, legs } = kindOf(move);
  if (legs === 'swing' || move.on > 1 || move.legs.length > 1) return false;
  const steps = graduations
    .slice(1)
    .map(({ stepMm, value }, i) => (goes ? stepMm : (value ?? 0) - (graduations[i]!.value ?? 0)));
  return steps.every((step) => Math.abs(step - steps[0]!) < 1e-6);
}

/** A swing; a pull or a follow at constant speed, whose graduations were not asked for. */
function isTold(solved: SolvedMove): boolean {
  const { legs } = kindOf(solved.move);
  return legs === 'swing' || (legs === 'way' && !solved.move.ticks && isConstant(solved));
}

/** Something moves that the memo cannot tell, or the camera stands on a field that is not the standard one. */
export function needsCameraChart({ camera, shot }: SolvedShot): boolean {
  const { widthMm } = shot.settings.field;
  const moved = camera.moves.some((move) => !isTold(move));
  const rest = shot.camera.rest;
  const away =
    Math.hypot(rest.xMm, rest.yMm) > 1e-6 || Math.abs(rest.widthMm - widthMm) > 1e-6 || rest.turnDeg !== 0;
  return moved || away;
}

/**
 * The size of artwork that a moving level needs, where no chart is printed that tells it: `640 × 163 mm`. '' where any will do
 * (a level with the usual sheet that covers the picture).
 */
export function neededArtwork(level: Level, { camera }: SolvedShot, lengths: PrintedLengths): string {
  const made = camera.artwork.get(level.name);
  if (!made?.needed || made.loop || level.free || level.carry) return '';
  if (level.sizeMm === null && made.width !== null && !made.edge) return '';
  return lengths.area(lengths.up(made.needed.width), lengths.up(made.needed.height));
}
