/**
 * Scale and turn of a level about points of it. A level is first scaled, then turned, then moved; each of both keeps an offset
 * of its own, written so that a move's own point stays still while the move runs and the offsets of earlier ones are kept.
 * Points are given as they lie at home; q is such a point seen from the artwork's centre.
 */

import { diagnose } from '../../language/diagnostic.js';
import type { MoveOf, Point } from '../../shot/camera/camera-model.js';
import type { KindsWith } from '../../shot/camera/move-kinds.js';
import {
  before,
  clampFrame,
  type LevelTracks,
  named,
  SAME_SHARE,
  type Stage,
  write,
} from './camera-tracks.js';
import { between, byRatio } from './easing.js';
import { sameTurn } from './field-moves.js';
import { type Driver, type Path, pathOf } from './move-path.js';
import { clockwise, turnOf, type Vector } from './plane-turns.js';

function driveScale(move: MoveOf<'levelTruck'>, stage: Stage): Path {
  const path = valuePath(move, move.parameters.ratios ? byRatio : between);
  const first = path.at(path.start).value ?? 1;
  for (const tracks of named(stage, move.target.levels)) {
    const { scale, scaleOffsetX, scaleOffsetY, level } = tracks;
    const q = pivot(move.parameters.about, tracks);
    const { last, running } = before(stage, `${level.name} scale`, path.start);
    if (!last) {
      scale.fill(first);
      scaleOffsetX.fill(q.x * (1 - first));
      scaleOffsetY.fill(q.y * (1 - first));
    }
    const start = clampFrame(stage, path.start);
    const begun = scale[start]!;
    if (!running && Math.abs(begun - first) > SAME_SHARE) {
      jump(move, level.name, path.start, 'scale', first, begun, last, stage);
    }
    const stillX = scaleOffsetX[start]! + begun * q.x;
    const stillY = scaleOffsetY[start]! + begun * q.y;
    write(path, stage.context.length, (frame, sample) => {
      const s = sample.value ?? 1;
      scale[frame] = s;
      scaleOffsetX[frame] = stillX - s * q.x;
      scaleOffsetY[frame] = stillY - s * q.y;
    });
  }
  return path;
}

/** Runs after the scale moves: the point of a turn lies where scaling has taken it. */
function driveTurn(move: MoveOf<'turn'>, stage: Stage): Path {
  const path = valuePath(move, between);
  const first = path.at(path.start).value ?? 0;
  for (const tracks of named(stage, move.target.levels)) {
    const { turn, turnOffsetX, turnOffsetY, level } = tracks;
    const q = pivot(move.parameters.about, tracks);
    const { last, running } = before(stage, `${level.name} turn`, path.start);
    if (!last && first !== 0) {
      const m = scaledPoint(tracks, q, 0);
      const r = clockwise(turnOf(first), m.x, m.y);
      turn.fill(first);
      turnOffsetX.fill(m.x - r.x);
      turnOffsetY.fill(m.y - r.y);
    }
    const start = clampFrame(stage, path.start);
    const begun = turn[start]!;
    if (!running && !sameTurn(begun, first)) {
      jump(move, level.name, path.start, 'angle', first, begun, last, stage);
    }
    const baseX = turnOffsetX[start]!;
    const baseY = turnOffsetY[start]!;
    const from = turnOf(begun);
    const put = (frame: number, value: number) => {
      const m = scaledPoint(tracks, q, frame);
      const was = clockwise(from, m.x, m.y);
      const now = clockwise(turnOf(value), m.x, m.y);
      turn[frame] = value;
      turnOffsetX[frame] = baseX + was.x - now.x;
      turnOffsetY[frame] = baseY + was.y - now.y;
    };
    const end = clampFrame(stage, path.end);
    write(path, stage.context.length, (frame, sample) => {
      if (frame <= end) put(frame, sample.value ?? 0);
      else {
        turn[frame] = turn[end]!;
        turnOffsetX[frame] = turnOffsetX[end]!;
        turnOffsetY[frame] = turnOffsetY[end]!;
      }
    });
  }
  return path;
}

export const levelDrives: { readonly [K in KindsWith<'scale' | 'angle'>]: Driver<K> } = {
  levelTruck: driveScale,
  turn: driveTurn,
};

type ValueMove = { [K in KindsWith<'scale' | 'angle'>]: MoveOf<K> }[KindsWith<'scale' | 'angle'>];

const valuePath = (move: ValueMove, spread: (a: number, b: number, p: number) => number): Path =>
  pathOf(move, (from, to, p) => ({ x: 0, y: 0, value: spread(from, to, p), turn: 0 }));

function pivot(about: Point | null, { level }: LevelTracks): Vector {
  if (!about) return { x: 0, y: 0 };
  return { x: about.xMm - level.homeMm.xMm, y: about.yMm - level.homeMm.yMm };
}

function scaledPoint(tracks: LevelTracks, q: Vector, frame: number): Vector {
  const s = tracks.scale[frame]!;
  return { x: tracks.scaleOffsetX[frame]! + s * q.x, y: tracks.scaleOffsetY[frame]! + s * q.y };
}

function jump(
  move: ValueMove,
  level: string,
  frame: number,
  of: 'scale' | 'angle',
  starts: number,
  is: number,
  last: { span: MoveOf<'turn'>['span'] } | undefined,
  stage: Stage,
): void {
  stage.report(
    diagnose(
      'move-jumps',
      move.legs[0]!.span,
      { variant: 'level', frame, level, of, starts, is },
      { notes: last ? [{ note: 'move-ends-there', span: last.span }] : [] },
    ),
  );
}
