/** Things that swing about their place: camera shake and the sway of a level. */

import type { MoveOf } from '../../shot/camera.js';
import { clockwise, turnOf, type Vector } from './matrix.js';
import type { Path, Sample } from './path.js';
import { sampled } from './spacing.js';
import { clampFrame, named, type Stage } from './tracks.js';

/**
 * Swing i = 0 … n−1 is ± (s₀ + (s₁ − s₀) i/n), one swing a frame or every `on` frames. The picture goes up first (to the
 * right, sideways), so the camera goes the other way, in its own axes.
 */
export function swing(move: MoveOf<'shake'>, frame: number): Vector {
  const { from, to } = move.frames;
  if (frame < from || frame > to) return { x: 0, y: 0 };
  const on = Math.max(1, move.on);
  const swings = Math.ceil((to - from + 1) / on);
  const i = Math.floor((frame - from) / on);
  const size = move.fromMm + ((move.toMm - move.fromMm) * i) / swings;
  const camera = i % 2 === 0 ? 0 - size : size;
  return move.sideways ? { x: camera, y: 0 } : { x: 0, y: camera };
}

export function driveShake(move: MoveOf<'shake'>, stage: Stage): Path {
  const { camera, context } = stage;
  const offset = (frame: number): Sample => {
    const s = swing(move, frame);
    const turned = clockwise(turnOf(camera.turn[clampFrame(stage, frame)]!), s.x, s.y);
    return { x: turned.x, y: turned.y, value: null, turn: 0 };
  };
  each(move.frames, context.length, (frame) => {
    const s = offset(frame);
    camera.shakeX[frame]! += s.x;
    camera.shakeY[frame]! += s.y;
  });
  return { start: move.frames.from - 1, end: move.frames.to, at: offset, legs: [] };
}

/** s · sin(2π (f − a + 1)/period) on frame f of a..b; up first (to the right, sideways); 0 outside. */
export function sway(move: MoveOf<'roll'>, frame: number): number {
  const { from, to } = move.frames;
  if (frame < from || frame > to) return 0;
  const i = sampled(frame - from + 1, to - from + 1, move.on, 'moved');
  const part = (i % move.periodFrames) / move.periodFrames;
  return move.sizeMm * turnOf(part * 360).sin;
}

/** Along the screen's vertical (horizontal) of each frame; a level fixed to the camera sways in the picture. */
export function driveRoll(move: MoveOf<'roll'>, stage: Stage): Path {
  const { camera, context } = stage;
  const offset = (frame: number, inPicture: boolean): Sample => {
    const size = sway(move, frame);
    const turn = turnOf(inPicture ? 0 : camera.turn[clampFrame(stage, frame)]!);
    const v = move.sideways ? clockwise(turn, size, 0) : clockwise(turn, 0, size);
    return { x: v.x, y: v.y, value: null, turn: 0 };
  };
  const all = named(stage, move.levels);
  for (const tracks of all) {
    each(move.frames, context.length, (frame) => {
      const s = offset(frame, tracks.level.carry);
      tracks.swayX[frame]! += s.x;
      tracks.swayY[frame]! += s.y;
    });
  }
  const inPicture = all[0]?.level.carry ?? false;
  return {
    start: move.frames.from - 1,
    end: move.frames.to,
    at: (frame) => offset(frame, inPicture),
    legs: [],
  };
}

function each(frames: { from: number; to: number }, length: number, put: (frame: number) => void): void {
  for (let frame = Math.max(1, frames.from); frame <= Math.min(frames.to, length); frame++) put(frame);
}
