/** `Shot` → `SolvedShot`. Pure. */

import type { Diagnostic, Report } from '../language/diagnostic.js';
import type { Level, Shot } from '../shot/shot.js';
import type { TrackSound } from '../sound/track-sound.js';
import type { CameraLevel } from './camera/camera-context.js';
import { solveCamera } from './camera/solve-camera.js';
import { solveLevel } from './solve-level.js';
import { solveTrack } from './solve-track.js';
import type { Counts, SolvedLevel, SolvedShot } from './solved-shot.js';

export interface SolveContext {
  /**
   * For levels that reuse one of another cut, by their name here: that level, solved. Drawings that it shows keep their names and
   * numbers and are not counted; others are new, numbered on from its highest number. Without it (a cut looked at by itself)
   * the other cut's numbers cannot be known: every drawing counts as reused, and is numbered as if it were this cut's own.
   */
  readonly reused?: ReadonlyMap<string, SolvedLevel>;
  /** The cut's recording on its rows, where it could be read. */
  readonly sound?: TrackSound | null;
  /** Asked instead of solving a level. */
  readonly recall?: Recall;
}

/** Gives a level solved before, with its messages, or solves it. */
export type Recall = (level: Level, solve: (report: Report) => SolvedLevel, report: Report) => SolvedLevel;

export function solve(shot: Shot, { reused, sound = null, recall = afresh }: SolveContext = {}): SolvedShot {
  const diagnostics: Diagnostic[] = [];
  const said = new Set<string>();
  const report = (diagnostic: Diagnostic) => {
    const { code, span } = diagnostic;
    // A phrase that several levels play is written once: what is wrong with it is said once.
    const id = `${code} ${span.file} ${span.start} ${span.end}`;
    if (said.has(id)) return;
    said.add(id);
    diagnostics.push(diagnostic);
  };
  const levels = shot.levels.map((level) =>
    recall(
      level,
      (tell) => solveLevel(level, shot, (level.reuse && reused?.get(level.name)) ?? null, tell),
      report,
    ),
  );
  const camera = solveCamera(shot.camera, {
    length: shot.length,
    fps: shot.fps,
    levels: shot.levels.map((level, i) => seenByCamera(level, levels[i]!)),
    settings: shot.settings,
  });
  for (const diagnostic of camera.diagnostics) report(diagnostic);
  const track = solveTrack(shot, sound, report);
  return { shot, levels, counts: count(levels), camera: camera.solved, track, diagnostics };
}

const afresh: Recall = (_, solve, report) => solve(report);

/** A level that is simply there shows throughout, and appears on the first frame. */
function seenByCamera(
  { name, span, homeMm, sizeMm, free, carry }: Level,
  { timed, exposures }: SolvedLevel,
): CameraLevel {
  const shown = (frame: number) => !timed || exposures[frame - 1]?.kind !== 'empty';
  const appears = (frame: number) => (timed ? shown(frame) && exposures[frame - 1]!.starts : frame === 1);
  return { name, span, homeMm, sizeMm, timed, free, carry, shown, appears };
}

/** New drawings by kind, and the reused ones and the backgrounds by themselves. */
function count(levels: readonly SolvedLevel[]): Counts {
  const all = levels.flatMap(({ background, drawings }) => (background ? [] : drawings));
  const painted = levels.flatMap(({ background, drawings }) => (background ? drawings : []));
  const fresh = all.filter((drawing) => !drawing.reused);
  const kinds = (kind: string) => fresh.filter((drawing) => drawing.kind === kind).length;
  return {
    keys: kinds('key'),
    breakdowns: kinds('breakdown'),
    inbetweens: kinds('inbetween'),
    drawings: fresh.length,
    reused: all.length - fresh.length,
    backgrounds: painted.filter((drawing) => !drawing.reused).length,
  };
}
