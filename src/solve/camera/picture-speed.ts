/**
 * How fast the picture passes the eye: what camera and levels do together, at the point of the picture that goes fastest. Where
 * everything is carried along nothing passes. Shake, sway, scale and turn of single levels are left aside: their drawings, not
 * the edges of their sheets, are what is looked at.
 */

import type { LevelTracks, Stage } from './camera-tracks.js';
import { clockwise, counterClockwise, turnOf, type Vector } from './plane-turns.js';

/**
 * For each frame (index; 0 is unused) how far the fastest point of the picture has come since the frame before, as a share of
 * the field's width; 0 where none of the levels shows. `names`: the levels that are looked at, or null for all.
 */
export function picturePassing(stage: Stage, names: readonly string[] | null): Float64Array {
  const { context } = stage;
  const shares = new Float64Array(context.length + 1);
  for (const tracks of stage.levels.values()) {
    if (names && !names.includes(tracks.level.name)) continue;
    for (let frame = 1; frame <= context.length; frame++)
      if (tracks.level.shown(frame))
        shares[frame] = Math.max(shares[frame]!, fastestPoint(stage, tracks, frame));
  }
  return shares;
}

/**
 * A point of the artwork is seen at u = (W/w) R⁻¹ (q + t − c), q where it lies at home, t the level's way, c, w and R the
 * camera's centre, width and turn. The change from frame to frame is affine in u, so that a corner of the picture goes fastest.
 */
function fastestPoint({ camera, context }: Stage, tracks: LevelTracks, frame: number): number {
  const { widthMm, heightMm } = context.settings.field;
  const before = frame - 1;
  const own = (f: number): Vector => ({
    x: tracks.slideX[f]! + tracks.pullX[f]!,
    y: tracks.slideY[f]! + tracks.pullY[f]!,
  });
  if (tracks.level.carry)
    return Math.hypot(own(frame).x - own(before).x, own(frame).y - own(before).y) / widthMm;
  // What level and camera go together is taken out before the difference is made.
  const apart = (f: number): Vector => ({
    x: own(f).x + (tracks.sharedX[f]! - camera.goneX[f]!) - camera.baseX[f]!,
    y: own(f).y + (tracks.sharedY[f]! - camera.goneY[f]!) - camera.baseY[f]!,
  });
  const [now, was] = [apart(frame), apart(before)];
  const [turnNow, turnWas] = [turnOf(camera.turn[frame]!), turnOf(camera.turn[before]!)];
  const [width, widthWas] = [camera.width[frame]!, camera.width[before]!];
  let most = 0;
  for (const sx of [-0.5, 0.5])
    for (const sy of [-0.5, 0.5]) {
      const u: Vector = { x: sx * widthMm, y: sy * heightMm };
      const out = clockwise(turnNow, (u.x * width) / widthMm, (u.y * width) / widthMm);
      const q: Vector = { x: out.x - now.x, y: out.y - now.y };
      const back = counterClockwise(turnWas, q.x + was.x, q.y + was.y);
      const x = (back.x * widthMm) / widthWas;
      const y = (back.y * widthMm) / widthWas;
      most = Math.max(most, Math.hypot(u.x - x, u.y - y) / widthMm);
    }
  return most;
}

/** A picture that is held this long between two steps is still one movement: moves on threes and fours. */
const LONGEST_HOLD = 4;

/** The steps as they are seen: a hold between two of them shows the step before it for so long. */
export function asSeen(shares: Float64Array): Float64Array {
  const seen = shares.slice();
  let last = 0;
  for (let frame = 1; frame < seen.length; frame++) {
    if (seen[frame]! > 1e-9) {
      const gap = frame - last - 1;
      if (last > 0 && gap > 0 && gap < LONGEST_HOLD) seen.fill(seen[last]!, last + 1, frame);
      last = frame;
    }
  }
  return seen;
}
