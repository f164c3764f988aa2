/** Moves of the camera from field to field, and what is carried along. */

import { diagnose } from '../../language/diagnostic.js';
import type { Field, FieldPart, LevelPlace, MoveOf } from '../../shot/camera/camera-model.js';
import { type KindsWith, startOf } from '../../shot/camera/move-kinds.js';
import {
  before,
  clampFrame,
  named,
  SAME_DEGREES,
  SAME_MM,
  type Stage,
  write,
  written,
} from './camera-tracks.js';
import { between, byRatio } from './easing.js';
import { type Driver, type Path, pathOf, type Sample } from './move-path.js';
import { clockwise, turnOf, type Vector } from './plane-turns.js';
import { curveOf } from './smooth-curve.js';

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

/** What one of two moves that share the camera gives of it; the rest stays, whatever its fields say. */
function partOf(sample: Sample, gives: FieldPart | null): Sample {
  switch (gives) {
    case null:
      return sample;
    case 'centre':
      return { ...sample, value: null };
    case 'width':
      return { ...sample, x: 0, y: 0, turn: 0 };
  }
}

type FieldMove = { [K in KindsWith<'field'>]: MoveOf<K> }[KindsWith<'field'>];

function driveFields(move: FieldMove, log: boolean, stage: Stage): Path {
  const { camera, context } = stage;
  const { gives } = move;
  const path = pathOf(
    move,
    (a, b, p) => partOf(fieldBetween(a, b, log, p), gives),
    ({ name }) => name,
    curveOf(move),
  );
  const start = clampFrame(stage, path.start);
  checkJump(move, path.at(path.start), start, stage);
  const from = centre(stage, start);
  write(path, context.length, (frame, sample) => {
    if (gives !== 'centre') camera.width[frame] = sample.value ?? context.settings.field.widthMm;
    if (gives === 'width') return;
    camera.baseX[frame] = sample.x;
    camera.baseY[frame] = sample.y;
    camera.goneX[frame] = 0;
    camera.goneY[frame] = 0;
    camera.turn[frame] = sample.turn;
  });
  // The other move has the centre.
  if (gives === 'width') return path;
  for (const tracks of named(stage, move.parameters.carry)) {
    if (tracks.level.carry) continue;
    const sharedX = written(tracks, 'sharedX', stage);
    const sharedY = written(tracks, 'sharedY', stage);
    write(path, context.length, (frame, sample) => {
      sharedX[frame]! += sample.x - from.x;
      sharedY[frame]! += sample.y - from.y;
    });
  }
  return path;
}

export const fieldDrives: { readonly [K in KindsWith<'field'>]: Driver<K> } = {
  pan: (move, stage) => driveFields(move, false, stage),
  truck: (move, stage) => driveFields(move, move.parameters.ratios, stage),
};

/** Centre of the camera without shake. */
function centre(stage: Stage, frame: number): Vector {
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
  const { gives } = move;
  const { last, running } = before(
    stage,
    gives === 'width' ? 'camera width' : 'camera centre',
    startOf(move),
  );
  if (running) return;
  const at = centre(stage, frame);
  const width = stage.camera.width[frame]!;
  const turn = stage.camera.turn[frame]!;
  const placed =
    gives === 'width' ||
    (Math.hypot(begins.x - at.x, begins.y - at.y) <= SAME_MM && sameTurn(turn, begins.turn));
  const sized = Math.abs((begins.value ?? width) - width) <= SAME_MM;
  if (placed && sized) return;
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

// ---- moves along a way: pulls under the camera, follows with it, and slides along marked places

type WayMove = { [K in KindsWith<'way'>]: MoveOf<K> }[KindsWith<'way'>];

/** The way of a pull or follow on the artwork: its direction is that of the screen on the move's first frame. */
function wayOf(move: WayMove, stage: Stage, inPicture: boolean): Vector {
  const frame = clampFrame(stage, startOf(move) + 1);
  const camera = turnOf(inPicture ? 0 : stage.camera.turn[frame]!);
  const right = turnOf(-move.parameters.direction.degrees);
  const unit = clockwise(right, 1, 0);
  const turned = clockwise(camera, unit.x, unit.y);
  const { distanceMm } = move.parameters.way;
  return { x: turned.x * distanceMm, y: turned.y * distanceMm };
}

/** The same with another start. */
function wayPath(move: WayMove, way: Vector, from: Vector): Path {
  return pathOf(move, (_, __, p) => ({ x: from.x + way.x * p, y: from.y + way.y * p, value: null, turn: 0 }));
}

function driveFollow(move: MoveOf<'follow'>, stage: Stage): Path {
  const { camera, context } = stage;
  const way = wayOf(move, stage, false);
  const start = clampFrame(stage, startOf(move));
  const from = centre(stage, start);
  const own = wayPath(move, way, { x: 0, y: 0 });
  write(own, context.length, (frame, sample) => {
    camera.goneX[frame]! += sample.x;
    camera.goneY[frame]! += sample.y;
  });
  for (const tracks of named(stage, move.target.levels)) {
    if (tracks.level.carry) continue;
    const sharedX = written(tracks, 'sharedX', stage);
    const sharedY = written(tracks, 'sharedY', stage);
    write(own, context.length, (frame, sample) => {
      sharedX[frame]! += sample.x;
      sharedY[frame]! += sample.y;
    });
  }
  return wayPath(move, way, from);
}

/** Adds to whatever else moves the level. A level fixed to the camera is pulled in the picture's own directions. */
function drivePull(move: MoveOf<'pull'>, stage: Stage): Path {
  let shown: Path | null = null;
  for (const tracks of named(stage, move.target.levels)) {
    const path = wayPath(move, wayOf(move, stage, tracks.level.carry), { x: 0, y: 0 });
    shown ??= path;
    const pullX = written(tracks, 'pullX', stage);
    const pullY = written(tracks, 'pullY', stage);
    write(path, stage.context.length, (frame, sample) => {
      pullX[frame]! += sample.x;
      pullY[frame]! += sample.y;
    });
  }
  return shown ?? wayPath(move, wayOf(move, stage, false), { x: 0, y: 0 });
}

const placeBetween = (from: LevelPlace, to: LevelPlace, p: number): Sample => ({
  x: between(from.xMm, to.xMm, p),
  y: between(from.yMm, to.yMm, p),
  value: null,
  turn: 0,
});

export const wayDrives: { readonly [K in KindsWith<'way'>]: Driver<K> } = {
  pull: drivePull,
  follow: driveFollow,
};

function driveSlide(move: MoveOf<'slide'>, stage: Stage): Path {
  const path = pathOf(move, placeBetween, ({ label }) => label, curveOf(move));
  const first = path.at(path.start);
  for (const tracks of named(stage, move.target.levels)) {
    const { level } = tracks;
    const slideX = written(tracks, 'slideX', stage);
    const slideY = written(tracks, 'slideY', stage);
    const { last, running } = before(stage, `${level.name} slide`, path.start);
    if (!last) {
      slideX.fill(first.x);
      slideY.fill(first.y);
    } else {
      const start = clampFrame(stage, path.start);
      const x = slideX[start]!;
      const y = slideY[start]!;
      if (!running && Math.hypot(first.x - x, first.y - y) > SAME_MM) {
        stage.report(
          diagnose(
            'move-jumps',
            move.legs[0]!.span,
            {
              variant: 'slide',
              frame: path.start,
              level: level.name,
              starts: { x: first.x, y: first.y },
              ended: { x, y },
            },
            { notes: [{ note: 'slide-before', span: last.span }] },
          ),
        );
      }
    }
    write(path, stage.context.length, (frame, sample) => {
      slideX[frame] = sample.x;
      slideY[frame] = sample.y;
    });
  }
  return path;
}

export const placeDrives: { readonly [K in KindsWith<'place'>]: Driver<K> } = { slide: driveSlide };
