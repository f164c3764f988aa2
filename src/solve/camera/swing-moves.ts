/** Things that swing about their place: camera shake and the sway of a level. */

import type { Move, MoveOf } from '../../shot/camera/camera-model.js';
import { endOf, rowsOf, startOf } from '../../shot/camera/move-facts.js';
import type { KindsWith } from '../../shot/camera/move-kinds.js';
import { clampFrame, named, type Stage } from './camera-tracks.js';
import { sampled } from './easing.js';
import type { Driver, Path, Sample } from './move-path.js';
import { clockwise, turnOf, type Vector } from './plane-turns.js';

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
export function sway(move: MoveOf<'roll'>, frame: number): number {
  const { from, to } = rowsOf(move);
  if (frame < from || frame > to) return 0;
  const i = sampled(frame - from + 1, to - from + 1, move.on, 'moved');
  const { period, size } = move.parameters;
  return size * turnOf(((i % period) / period) * 360).sin;
}

/** Along the screen's vertical (horizontal) of each frame; a level fixed to the camera sways in the picture. */
function driveRoll(move: MoveOf<'roll'>, stage: Stage): Path {
  const { camera, context } = stage;
  const offset = (frame: number, inPicture: boolean): Sample => {
    const size = sway(move, frame);
    const turn = turnOf(inPicture ? 0 : camera.turn[clampFrame(stage, frame)]!);
    const v = move.parameters.sideways ? clockwise(turn, size, 0) : clockwise(turn, 0, size);
    return { x: v.x, y: v.y, value: null, turn: 0 };
  };
  const all = named(stage, move.target.levels);
  for (const tracks of all) {
    each(move, context.length, (frame) => {
      const s = offset(frame, tracks.level.carry);
      tracks.swayX[frame]! += s.x;
      tracks.swayY[frame]! += s.y;
    });
  }
  const inPicture = all[0]?.level.carry ?? false;
  return swingPath(move, (frame) => offset(frame, inPicture));
}

export const swingDrives: { readonly [K in KindsWith<'swing'>]: Driver<K> } = {
  shake: driveShake,
  roll: driveRoll,
};

/** It swings about a place instead of going to one. */
const swingPath = (move: Move, at: Path['at']): Path => ({
  start: startOf(move),
  end: endOf(move),
  at,
  legs: [],
});

function each(move: Move, length: number, put: (frame: number) => void): void {
  const { from, to } = rowsOf(move);
  for (let frame = Math.max(1, from); frame <= Math.min(to, length); frame++) put(frame);
}
