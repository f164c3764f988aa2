/** Moves of the camera: pan, truck, follow, and what is carried along. */

import { diagnose } from '../../language/diagnostic.js';
import type { Field, MoveOf } from '../../shot/camera.js';
import { clockwise, turnOf, type Vector } from './matrix.js';
import { type Path, pathOf, type Sample } from './path.js';
import { between, byRatio } from './spacing.js';
import { before, clampFrame, named, SAME_DEGREES, SAME_MM, type Stage, write } from './tracks.js';
import { degrees, millimetres } from './words.js';

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

export function driveFields(move: MoveOf<'pan' | 'truck'>, stage: Stage): Path {
  const log = move.kind === 'truck' && move.log;
  const path = pathOf(
    move.legs.map((leg) => ({
      start: leg.start,
      end: leg.end,
      spacing: leg.spacing,
      place: (p: number) => fieldBetween(leg.from, leg.to, log, p),
      fromLabel: leg.from.name,
      toLabel: leg.to.name,
    })),
    move.on,
    'rests',
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
  for (const tracks of named(stage, move.carry)) {
    if (tracks.level.carry) continue;
    write(path, context.length, (frame, sample) => {
      tracks.sharedX[frame]! += sample.x - from.x;
      tracks.sharedY[frame]! += sample.y - from.y;
    });
  }
  return path;
}

export function driveFollow(move: MoveOf<'follow'>, stage: Stage): Path {
  const { camera, context } = stage;
  const way = wayOf(move, stage, false);
  const start = clampFrame(stage, move.start);
  const from = centre(stage, start);
  const own = wayPath(move, way, { x: 0, y: 0 });
  write(own, context.length, (frame, sample) => {
    camera.goneX[frame]! += sample.x;
    camera.goneY[frame]! += sample.y;
  });
  for (const tracks of named(stage, move.levels)) {
    if (tracks.level.carry) continue;
    write(own, context.length, (frame, sample) => {
      tracks.sharedX[frame]! += sample.x;
      tracks.sharedY[frame]! += sample.y;
    });
  }
  return wayPath(move, way, from);
}

/** The way of a pull or follow on the artwork: its direction is that of the screen on the move's first frame. */
export function wayOf(move: MoveOf<'pull' | 'follow'>, stage: Stage, inPicture: boolean): Vector {
  const frame = clampFrame(stage, move.start + 1);
  const camera = turnOf(inPicture ? 0 : stage.camera.turn[frame]!);
  const right = turnOf(-move.direction.degrees);
  const unit = clockwise(right, 1, 0);
  const turned = clockwise(camera, unit.x, unit.y);
  return { x: turned.x * move.way.distanceMm, y: turned.y * move.way.distanceMm };
}

/** The same with another start. */
export function wayPath(move: MoveOf<'pull' | 'follow'>, way: Vector, from: Vector): Path {
  const place = (p: number): Sample => ({
    x: from.x + way.x * p,
    y: from.y + way.y * p,
    value: null,
    turn: 0,
  });
  const leg = { start: move.start, end: move.end, spacing: move.spacing, place, fromLabel: '', toLabel: '' };
  return pathOf([leg], move.on, 'moved');
}

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

function checkJump(move: MoveOf<'pan' | 'truck'>, begins: Sample, frame: number, stage: Stage): void {
  const { last, running } = before(stage, 'camera field', move.legs[0]!.start);
  if (running) return;
  const at = centre(stage, frame);
  const width = stage.camera.width[frame]!;
  const turn = stage.camera.turn[frame]!;
  const jump = Math.hypot(begins.x - at.x, begins.y - at.y);
  const sized = Math.abs((begins.value ?? width) - width) <= SAME_MM;
  if (jump <= SAME_MM && sized && sameTurn(turn, begins.turn)) return;
  const first = move.legs[0]!;
  const is = `${millimetres(width)} mm wide at ${millimetres(at.x)}, ${millimetres(at.y)}${turn === 0 ? '' : ` turned ${degrees(turn)}`}`;
  stage.report(
    diagnose(
      'move-jumps',
      first.span,
      `The camera would jump on frame ${move.legs[0]!.start}: this ${move.kind} starts from field ${first.from.name}, but the camera is ${is}.`,
      {
        notes: [
          last
            ? { message: 'The move before ends there.', span: last.span }
            : { message: 'The camera rests there.', span: stage.rest.span },
        ],
      },
    ),
  );
}
