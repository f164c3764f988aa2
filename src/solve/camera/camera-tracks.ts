/**
 * The quantities that moves drive, one number a frame. Index = frame; index 0 is the moment before the first frame, from
 * which a range that begins on frame 1 leaves. A move writes its frames and holds its end to the last frame.
 */

import type { Report } from '../../language/diagnostic.js';
import type { Field, Move } from '../../shot/camera/camera-model.js';
import type { CameraContext, CameraLevel } from './camera-context.js';
import type { Path } from './move-path.js';

/** The centre is base + gone. `gone` is the way of the follows since the last field that was named; levels that followed share it. */
export interface CameraTracks {
  readonly baseX: Float64Array;
  readonly baseY: Float64Array;
  readonly goneX: Float64Array;
  readonly goneY: Float64Array;
  readonly width: Float64Array;
  readonly turn: Float64Array;
  readonly shakeX: Float64Array;
  readonly shakeY: Float64Array;
}

/** Displacement is slide + pull + shared + turnOffset + R · scaleOffset + sway. */
export interface LevelTracks {
  readonly level: CameraLevel;
  readonly slideX: Float64Array;
  readonly slideY: Float64Array;
  readonly pullX: Float64Array;
  readonly pullY: Float64Array;
  /** Gone together with the camera: follows and carries. */
  readonly sharedX: Float64Array;
  readonly sharedY: Float64Array;
  readonly scale: Float64Array;
  readonly scaleOffsetX: Float64Array;
  readonly scaleOffsetY: Float64Array;
  readonly turn: Float64Array;
  readonly turnOffsetX: Float64Array;
  readonly turnOffsetY: Float64Array;
  readonly swayX: Float64Array;
  readonly swayY: Float64Array;
}

export interface Stage {
  readonly context: CameraContext;
  /** Where the camera is before its first move. */
  readonly rest: Field;
  readonly camera: CameraTracks;
  readonly levels: ReadonlyMap<string, LevelTracks>;
  /** The move that drove a quantity of a target last, by `target quantity`. */
  readonly last: Map<string, Move>;
  readonly paths: Map<Move, Path>;
  readonly report: Report;
}

/** What counts as the same place, size or angle: far less than a pencil line. */
export const SAME_MM = 0.05;
export const SAME_SHARE = 1e-3;
export const SAME_DEGREES = 0.05;

export function stageOf(context: CameraContext, rest: Field, report: Report): Stage {
  const track = (value: number) => new Float64Array(context.length + 1).fill(value);
  const levels = new Map<string, LevelTracks>();
  for (const level of context.levels) {
    levels.set(level.name, {
      level,
      slideX: track(0),
      slideY: track(0),
      pullX: track(0),
      pullY: track(0),
      sharedX: track(0),
      sharedY: track(0),
      scale: track(1),
      scaleOffsetX: track(0),
      scaleOffsetY: track(0),
      turn: track(0),
      turnOffsetX: track(0),
      turnOffsetY: track(0),
      swayX: track(0),
      swayY: track(0),
    });
  }
  const camera = {
    baseX: track(rest.xMm),
    baseY: track(rest.yMm),
    goneX: track(0),
    goneY: track(0),
    width: track(rest.widthMm),
    turn: track(rest.turnDeg),
    shakeX: track(0),
    shakeY: track(0),
  };
  return { context, rest, camera, levels, last: new Map(), paths: new Map(), report };
}

/** Frames start+1 … end are the move's; after them its end is held to the last row. */
export function write(
  path: Path,
  length: number,
  put: (frame: number, sample: ReturnType<Path['at']>) => void,
): void {
  const last = Math.min(path.end, length);
  for (let frame = path.start + 1; frame <= last; frame++) put(frame, path.at(frame));
  const end = path.at(path.end);
  for (let frame = Math.max(last, path.start) + 1; frame <= length; frame++) put(frame, end);
}

/** The levels that a move names, those that are there. */
export function named(stage: Stage, names: readonly string[]): LevelTracks[] {
  return names.flatMap((name) => stage.levels.get(name) ?? []);
}

/** A frame of a track; before the sheet it is the moment before frame 1, behind it the last row. */
export function clampFrame(stage: Stage, frame: number): number {
  return Math.max(0, Math.min(stage.context.length, frame));
}

/** The last move of a quantity, unless it still runs then: that is an overlap, which is reported, and no jump. */
export function before(
  stage: Stage,
  key: string,
  start: number,
): { readonly last: Move | undefined; readonly running: boolean } {
  const last = stage.last.get(key);
  const path = last && stage.paths.get(last);
  return { last, running: path !== undefined && path.end > start };
}
