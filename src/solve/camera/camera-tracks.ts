/** What the camera's solver needs to know of the rest of the cut. */

import type { Report, Span } from '../../language/diagnostic.js';
import type { Field, Move } from '../../shot/camera/camera-model.js';
import type { Settings } from '../../shot/settings.js';
import type { Path } from './move-path.js';
import { clockwise, counterClockwise, turnOf } from './plane-turns.js';
import type { CameraFrame, PlacementFrame } from './solved-camera.js';

export interface CameraLevel {
  readonly name: string;
  /** Where the level was first named, for messages. */
  readonly span: Span;
  readonly homeMm: { readonly xMm: number; readonly yMm: number };
  /** Null: not said. Then a level with a timeline is as large as the episode's paper, and one without has no edge to check. */
  readonly sizeMm: { readonly widthMm: number; readonly heightMm: number; readonly span?: Span } | null;
  /** Whether it has a timeline. */
  readonly timed: boolean;
  readonly free: boolean;
  readonly carry: boolean;
  readonly shown: (frame: number) => boolean;
  /** Another drawing than on the frame before, or the first after emptiness. */
  readonly appears: (frame: number) => boolean;
}

export interface CameraContext {
  /** Rows of the sheet. */
  readonly length: number;
  readonly fps: number;
  /** The stack, bottom to top. */
  readonly levels: readonly CameraLevel[];
  readonly settings: Settings;
}

// ----
// The quantities that moves drive, one number a frame. Index = frame; index 0 is the moment before the first frame, from
// which a range that begins on frame 1 leaves. A move writes its frames and holds its end to the last frame.

/** The centre is base + gone. `gone` is the way of the follows since the last field that was named; levels that followed share it. */
interface CameraTracks {
  readonly baseX: Float64Array;
  readonly baseY: Float64Array;
  readonly goneX: Float64Array;
  readonly goneY: Float64Array;
  readonly width: Float64Array;
  readonly turn: Float64Array;
  readonly shakeX: Float64Array;
  readonly shakeY: Float64Array;
}

/** A track of a level that is only read: it may be one that all levels share. */
export interface Track {
  readonly [frame: number]: number;
  readonly length: number;
}

/** Displacement is slide + pull + shared + turnOffset + R · scaleOffset + sway; `shared` is gone together with the camera: follows and carries. */
const LEVEL_TRACKS = [
  ...([
    'slideX',
    'slideY',
    'pullX',
    'pullY',
    'sharedX',
    'sharedY',
    'scale',
    'scaleOffsetX',
    'scaleOffsetY',
  ] as const),
  ...(['turn', 'turnOffsetX', 'turnOffsetY', 'swayX', 'swayY'] as const),
] as const;
type TrackName = (typeof LEVEL_TRACKS)[number];

export interface LevelTracks extends Readonly<Record<TrackName, Track>> {
  readonly level: CameraLevel;
}

export interface Stage {
  readonly context: CameraContext;
  /** Where the camera is before its first move. */
  readonly rest: Field;
  readonly camera: CameraTracks;
  readonly levels: ReadonlyMap<string, LevelTracks>;
  /** What the tracks of levels are that nothing has been written to: most of them. */
  readonly still: { readonly zero: Track; readonly one: Track };
  /** The move that drove a quantity of a target last, by `target quantity`. */
  readonly last: Map<string, Move>;
  readonly paths: Map<Move, Path>;
  readonly report: Report;
}

/** What counts as the same place, size or angle: far less than a pencil line. */
export const SAME_MM = 0.05;
export const SAME_SHARE = 1e-3;
export const SAME_DEGREES = 0.05;

const CAMERA_TRACKS = 8;

export function stageOf(context: CameraContext, rest: Field, report: Report): Stage {
  const frames = context.length + 1;
  // They lie in one piece of memory.
  const all = new Float64Array(frames * (CAMERA_TRACKS + 2));
  let taken = 0;
  const track = (value: number): Float64Array => {
    const own = all.subarray(taken, taken + frames);
    taken += frames;
    return value === 0 ? own : own.fill(value);
  };
  const still = { zero: track(0), one: track(1) };
  const levels = new Map<string, LevelTracks>();
  for (const level of context.levels) {
    const { zero, one } = still;
    levels.set(level.name, {
      level,
      slideX: zero,
      slideY: zero,
      pullX: zero,
      pullY: zero,
      sharedX: zero,
      sharedY: zero,
      scale: one,
      scaleOffsetX: zero,
      scaleOffsetY: zero,
      turn: zero,
      turnOffsetX: zero,
      turnOffsetY: zero,
      swayX: zero,
      swayY: zero,
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
  return { context, rest, camera, levels, still, last: new Map(), paths: new Map(), report };
}

/** A track of a level, to be written to: from now on it is the level's own. */
export function written(tracks: LevelTracks, name: TrackName, { still }: Stage): Float64Array {
  const known = tracks[name];
  if (known !== still.zero && known !== still.one) return known as Float64Array;
  const own = Float64Array.from(known);
  (tracks as Record<TrackName, Track>)[name] = own;
  return own;
}

/** Whether nothing has been written to any of these tracks. */
export function stands(tracks: LevelTracks, names: readonly TrackName[], { still }: Stage): boolean {
  return names.every((name) => tracks[name] === still.zero || tracks[name] === still.one);
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
export function clampFrame(stage: Pick<Stage, 'context'>, frame: number): number {
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

// ---- tracks to what is printed and exported: where camera and levels are on each frame

export function cameraFrames(c: CameraTracks, length: number, settings: Settings): CameraFrame[] {
  const standard = settings.field.widthMm;
  const frames: CameraFrame[] = [];
  for (let f = 1; f <= length; f++) {
    const width = c.width[f]!;
    frames.push({
      frame: f,
      x: c.baseX[f]! + c.goneX[f]! + c.shakeX[f]!,
      y: c.baseY[f]! + c.goneY[f]! + c.shakeY[f]!,
      width,
      percent: (width / standard) * 100,
      field: (width / standard) * settings.fields,
      rotation: c.turn[f]!,
    });
  }
  return frames;
}

/**
 * Where each level is. Most stand still before a camera that does: what is as on the frame before is not computed again, and is the
 * same object. `camera`: one a frame.
 */
export function placementFrames(
  stage: Stage,
  camera: readonly CameraFrame[],
): Map<string, readonly PlacementFrame[]> {
  const standard = stage.context.settings.field.widthMm;
  // Without moves nothing was written.
  const ofCamera = stage.paths.size === 0 ? [] : Object.values(stage.camera).filter(changes);
  const placed = new Map<string, readonly PlacementFrame[]>();
  for (const [name, tracks] of stage.levels) {
    const own = LEVEL_TRACKS.filter((each) => !stands(tracks, [each], stage)).map((each) => tracks[each]);
    const differing = [...ofCamera, ...own.filter(changes)];
    if (differing.length === 0 && camera.length > 0) {
      const still = placementAt(tracks, stage.camera, camera[0]!, standard);
      placed.set(name, new Array<PlacementFrame>(camera.length).fill(still));
      continue;
    }
    let last: PlacementFrame | null = null;
    const frames: PlacementFrame[] = [];
    for (const seen of camera) {
      const f = seen.frame;
      if (!last || differing.some((track) => track[f] !== track[f - 1]))
        last = placementAt(tracks, stage.camera, seen, standard);
      frames.push(last);
    }
    placed.set(name, frames);
  }
  return placed;
}

/** Whether a track differs on any two frames; the moment before the first frame does not count. */
function changes(track: Track): boolean {
  for (let f = 2; f < track.length; f++) if (track[f] !== track[1]) return true;
  return false;
}

/**
 * A point q of the artwork lies at P = home + (x, y) + scale · R · q; on screen at (W/w) · Rcam⁻¹ · (P − c).
 * The way that a level shares with the camera is taken out before the difference is made, so that a follow and the pull the
 * other way are the same on screen to the last digit.
 */
function placementAt(t: LevelTracks, c: CameraTracks, seen: CameraFrame, standard: number): PlacementFrame {
  const f = seen.frame;
  const scale = t.scale[f]!;
  const turn = turnOf(t.turn[f]!);
  const scaled = clockwise(turn, t.scaleOffsetX[f]!, t.scaleOffsetY[f]!);
  const offsetX = t.turnOffsetX[f]! + scaled.x + t.swayX[f]!;
  const offsetY = t.turnOffsetY[f]! + scaled.y + t.swayY[f]!;
  const cameraTurn = turnOf(seen.rotation);
  const zoom = standard / seen.width;
  if (t.level.carry) {
    const { xMm, yMm } = t.level.homeMm;
    const own = clockwise(
      cameraTurn,
      xMm + t.slideX[f]! + t.pullX[f]! + offsetX,
      yMm + t.slideY[f]! + t.pullY[f]! + offsetY,
    );
    const x = seen.x + own.x / zoom - xMm;
    const y = seen.y + own.y / zoom - yMm;
    const screen = counterClockwise(cameraTurn, x - seen.x, y - seen.y);
    return {
      x,
      y,
      scale: scale / zoom,
      rotation: t.turn[f]! + seen.rotation,
      screenX: zoom * screen.x + 0,
      screenY: zoom * screen.y + 0,
    };
  }
  const alongX = t.pullX[f]! + t.sharedX[f]!;
  const alongY = t.pullY[f]! + t.sharedY[f]!;
  const apartX = t.slideX[f]! - c.baseX[f]! - c.shakeX[f]! + (alongX - c.goneX[f]!) + offsetX;
  const apartY = t.slideY[f]! - c.baseY[f]! - c.shakeY[f]! + (alongY - c.goneY[f]!) + offsetY;
  const screen = counterClockwise(cameraTurn, apartX, apartY);
  return {
    x: t.slideX[f]! + alongX + offsetX + 0,
    y: t.slideY[f]! + alongY + offsetY + 0,
    scale,
    rotation: t.turn[f]!,
    screenX: zoom * screen.x + 0,
    screenY: zoom * screen.y + 0,
  };
}
