/** Moves that drive a number or swing about a place, and the table of which function drives which kind of move; everything else of a kind stands in the table of moves. */

import { diagnose } from '../../language/diagnostic.js';
import type { Move, MoveKind, MoveOf, Point } from '../../shot/camera/camera-model.js';
import { endOf, type KindsWith, kindOf, rowsOf, startOf } from '../../shot/camera/move-kinds.js';
import {
  before,
  clampFrame,
  type LevelTracks,
  named,
  SAME_SHARE,
  type Stage,
  write,
  written,
} from './camera-tracks.js';
import { between, byRatio, sampled } from './easing.js';
import { fieldDrives, placeDrives, sameTurn, wayDrives } from './field-moves.js';
import { type Driver, type Path, pathOf, type Sample } from './move-path.js';
import { clockwise, turnOf, type Vector } from './plane-turns.js';

function driveScale(move: MoveOf<'levelTruck'>, stage: Stage): Path {
  const path = valuePath(move, move.parameters.ratios ? byRatio : between);
  const first = path.at(path.start).value ?? 1;
  for (const tracks of named(stage, move.target.levels)) {
    const { level } = tracks;
    const scale = written(tracks, 'scale', stage);
    const scaleOffsetX = written(tracks, 'scaleOffsetX', stage);
    const scaleOffsetY = written(tracks, 'scaleOffsetY', stage);
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
    const { level } = tracks;
    const turn = written(tracks, 'turn', stage);
    const turnOffsetX = written(tracks, 'turnOffsetX', stage);
    const turnOffsetY = written(tracks, 'turnOffsetY', stage);
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

const levelDrives: { readonly [K in KindsWith<'scale' | 'angle'>]: Driver<K> } = {
  levelTruck: driveScale,
  turn: driveTurn,
};

type ValueMove = { [K in KindsWith<'scale' | 'angle'>]: MoveOf<K> }[KindsWith<'scale' | 'angle'>];

const valuePath = (move: ValueMove, spread: (a: number, b: number, p: number) => number): Path =>
  pathOf(
    move,
    (from, to, p) => ({ x: 0, y: 0, value: spread(from.value, to.value, p), turn: 0 }),
    ({ label }) => label,
  );

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

// ---- things that swing about their place: camera shake and the sway of a level

/**
 * Swing i = 0 … n−1 is ± (s₀ + (s₁ − s₀) i/n), one swing a frame or every `on` frames. The picture goes up first (to the
 * right, sideways), so the camera goes the other way, in its own axes.
 */
export function swing(move: MoveOf<'shake'>, frame: number): Vector {
  const { from, to } = rowsOf(move);
  if (frame < from || frame > to) return { x: 0, y: 0 };
  const on = Math.max(1, move.on);
  const swings = Math.ceil((to - from + 1) / on);
  const i = Math.floor((frame - from) / on);
  const { size: swung, sideways } = move.parameters;
  const size = swung.fromMm + ((swung.toMm - swung.fromMm) * i) / swings;
  const camera = i % 2 === 0 ? 0 - size : size;
  return sideways ? { x: camera, y: 0 } : { x: 0, y: camera };
}

function driveShake(move: MoveOf<'shake'>, stage: Stage): Path {
  const { camera, context } = stage;
  const offset = (frame: number): Sample => {
    const s = swing(move, frame);
    const turned = clockwise(turnOf(camera.turn[clampFrame(stage, frame)]!), s.x, s.y);
    return { x: turned.x, y: turned.y, value: null, turn: 0 };
  };
  each(move, context.length, (frame) => {
    const s = offset(frame);
    camera.shakeX[frame]! += s.x;
    camera.shakeY[frame]! += s.y;
  });
  return swingPath(move, offset);
}

/** s · sin(2π (f − a + 1)/period) on frame f of a..b; up first (to the right, sideways); 0 outside. */
export function swayMm(move: MoveOf<'sway'>, frame: number): number {
  const { from, to } = rowsOf(move);
  if (frame < from || frame > to) return 0;
  const i = sampled(frame - from + 1, to - from + 1, move.on, 'moved');
  const { period, size } = move.parameters;
  return size * turnOf(((i % period) / period) * 360).sin;
}

/** Along the screen's vertical (horizontal) of each frame; a level fixed to the camera sways in the picture. */
function driveSway(move: MoveOf<'sway'>, stage: Stage): Path {
  const { camera, context } = stage;
  const offset = (frame: number, inPicture: boolean): Sample => {
    const size = swayMm(move, frame);
    const turn = turnOf(inPicture ? 0 : camera.turn[clampFrame(stage, frame)]!);
    const v = move.parameters.sideways ? clockwise(turn, size, 0) : clockwise(turn, 0, size);
    return { x: v.x, y: v.y, value: null, turn: 0 };
  };
  const all = named(stage, move.target.levels);
  for (const tracks of all) {
    const swayX = written(tracks, 'swayX', stage);
    const swayY = written(tracks, 'swayY', stage);
    each(move, context.length, (frame) => {
      const s = offset(frame, tracks.level.carry);
      swayX[frame]! += s.x;
      swayY[frame]! += s.y;
    });
  }
  const inPicture = all[0]?.level.carry ?? false;
  return swingPath(move, (frame) => offset(frame, inPicture));
}

const swingDrives: { readonly [K in KindsWith<'swing'>]: Driver<K> } = {
  shake: driveShake,
  sway: driveSway,
};

/** It swings about a place instead of going to one. */
const swingPath = (move: Move, at: Path['at']): Path => ({
  start: startOf(move),
  end: endOf(move),
  at,
  alongMm: null,
  legs: [],
});

function each(move: Move, length: number, put: (frame: number) => void): void {
  const { from, to } = rowsOf(move);
  for (let frame = Math.max(1, from); frame <= Math.min(to, length); frame++) put(frame);
}

// ---- which function drives which kind of move; everything else of a kind stands in the table of moves

const drives: { readonly [K in MoveKind]: Driver<K> } = {
  ...fieldDrives,
  ...wayDrives,
  ...placeDrives,
  ...levelDrives,
  ...swingDrives,
};

/** Writes the frames of a move into the tracks, and gives its own way. */
export function driveMove(move: Move, stage: Stage): Path {
  const drive = drives[move.kind] as unknown as (move: Move, stage: Stage) => Path;
  return drive(move, stage);
}

/** What the move drives, as keys: `camera width`, `A slide`. A level cannot be called `camera width`: names hold no blank. */
export function drivenBy(move: Move): string[] {
  const { target, quantity } = kindOf(move);
  if (quantity === 'field')
    return (['centre', 'width'] as const)
      .filter((part) => (move.gives ?? part) === part)
      .map((part) => `camera ${part}`);
  return target === 'camera'
    ? [`camera ${quantity}`]
    : move.target.levels.map((name) => `${name} ${quantity}`);
}
