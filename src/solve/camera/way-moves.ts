/** Moves along a way: pulls under the camera, follows with it, and slides along marked places. */

import { diagnose } from '../../language/diagnostic.js';
import type { LevelPlace, MoveOf } from '../../shot/camera/camera-model.js';
import { startOf } from '../../shot/camera/move-facts.js';
import type { KindsWith } from '../../shot/camera/move-kinds.js';
import { before, clampFrame, named, SAME_MM, type Stage, write } from './camera-tracks.js';
import { between } from './easing.js';
import { centre } from './field-moves.js';
import { type Driver, type Path, pathOf, type Sample } from './move-path.js';
import { clockwise, turnOf, type Vector } from './plane-turns.js';

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
    write(own, context.length, (frame, sample) => {
      tracks.sharedX[frame]! += sample.x;
      tracks.sharedY[frame]! += sample.y;
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
    write(path, stage.context.length, (frame, sample) => {
      tracks.pullX[frame]! += sample.x;
      tracks.pullY[frame]! += sample.y;
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
  const path = pathOf(move, placeBetween, ({ label }) => label);
  const first = path.at(path.start);
  for (const { level, slideX, slideY } of named(stage, move.target.levels)) {
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
