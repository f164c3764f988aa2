/** Moves of the camera from field to field, and what is carried along. */

import { diagnose } from '../../language/diagnostic.js';
import type { Field, MoveOf } from '../../shot/camera/camera-model.js';
import { startOf } from '../../shot/camera/move-facts.js';
import type { KindsWith } from '../../shot/camera/move-kinds.js';
import { before, clampFrame, named, SAME_DEGREES, SAME_MM, type Stage, write } from './camera-tracks.js';
import { between, byRatio } from './easing.js';
import { type Driver, type Path, pathOf, type Sample } from './move-path.js';
import type { Vector } from './plane-turns.js';

/** Whether two widths are one size; 60% and 152.4mm of 254 are. */
export const sameWidth = (a: number, b: number) => Math.abs(a - b) <= 1e-6 * Math.max(a, b);

/**
 * The camera with share p of the way from one field to another done. Where the sizes differ the centre runs linearly with
 * the width, so that the point (c₁w₀ − c₀w₁)/(w₀ − w₁) stays still in the picture.
 */
export function fieldBetween(from: Field, to: Field, log: boolean, p: number): Sample {
  const width = log ? byRatio(from.widthMm, to.widthMm, p) : between(from.widthMm, to.widthMm, p);
  const share = sameWidth(from.widthMm, to.widthMm)
    ? p
    : (width - from.widthMm) / (to.widthMm - from.widthMm);
  return {
    x: between(from.xMm, to.xMm, share),
    y: between(from.yMm, to.yMm, share),
    value: width,
    turn: between(from.turnDeg, to.turnDeg, p),
  };
}

type FieldMove = { [K in KindsWith<'field'>]: MoveOf<K> }[KindsWith<'field'>];

function driveFields(move: FieldMove, log: boolean, stage: Stage): Path {
  const path = pathOf(
    move,
    (a, b, p) => fieldBetween(a, b, log, p),
    ({ name }) => name,
  );
  const { camera, context } = stage;
  const start = clampFrame(stage, path.start);
  checkJump(move, path.at(path.start), start, stage);
  const from = centre(stage, start);
  write(path, context.length, (frame, sample) => {
    camera.baseX[frame] = sample.x;
    camera.baseY[frame] = sample.y;
    camera.goneX[frame] = 0;
    camera.goneY[frame] = 0;
    camera.width[frame] = sample.value ?? context.settings.field.widthMm;
    camera.turn[frame] = sample.turn;
  });
  for (const tracks of named(stage, move.parameters.carry)) {
    if (tracks.level.carry) continue;
    write(path, context.length, (frame, sample) => {
      tracks.sharedX[frame]! += sample.x - from.x;
      tracks.sharedY[frame]! += sample.y - from.y;
    });
  }
  return path;
}

export const fieldDrives: { readonly [K in KindsWith<'field'>]: Driver<K> } = {
  pan: (move, stage) => driveFields(move, false, stage),
  truck: (move, stage) => driveFields(move, move.parameters.ratios, stage),
};

/** Centre of the camera without shake. */
export function centre(stage: Stage, frame: number): Vector {
  const { camera } = stage;
  return {
    x: camera.baseX[frame]! + camera.goneX[frame]!,
    y: camera.baseY[frame]! + camera.goneY[frame]!,
  };
}

/** Degrees that show the same picture: 0 and 360. */
export function sameTurn(a: number, b: number): boolean {
  const off = Math.abs(a - b) % 360;
  return Math.min(off, 360 - off) <= SAME_DEGREES;
}

function checkJump(move: FieldMove, begins: Sample, frame: number, stage: Stage): void {
  const { last, running } = before(stage, 'camera field', startOf(move));
  if (running) return;
  const at = centre(stage, frame);
  const width = stage.camera.width[frame]!;
  const turn = stage.camera.turn[frame]!;
  const jump = Math.hypot(begins.x - at.x, begins.y - at.y);
  const sized = Math.abs((begins.value ?? width) - width) <= SAME_MM;
  if (jump <= SAME_MM && sized && sameTurn(turn, begins.turn)) return;
  const first = move.legs[0]!;
  stage.report(
    diagnose(
      'move-jumps',
      first.span,
      {
        variant: 'camera',
        frame: first.start,
        move: move.kind,
        field: first.from.name,
        widthMm: width,
        xMm: at.x,
        yMm: at.y,
        turnDeg: turn,
      },
      {
        notes: [
          last
            ? { note: 'move-ends-there', span: last.span }
            : { note: 'camera-rests-there', span: stage.rest.span },
        ],
      },
    ),
  );
}
