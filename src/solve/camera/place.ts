/** Moves of a level's place: pulls under the camera, and slides along marked positions. */

import { diagnose } from '../../language/diagnostic.js';
import type { MoveOf, Place } from '../../shot/camera.js';
import { wayOf, wayPath } from './field.js';
import { type Path, pathOf, type Sample } from './path.js';
import { between } from './spacing.js';
import { before, clampFrame, named, SAME_MM, type Stage, write } from './tracks.js';
import { millimetres } from './words.js';

/** Adds to whatever else moves the level. A level fixed to the camera is pulled in the picture's own directions. */
export function drivePull(move: MoveOf<'pull'>, stage: Stage): Path {
  let shown: Path | null = null;
  for (const tracks of named(stage, move.levels)) {
    const path = wayPath(move, wayOf(move, stage, tracks.level.carry), { x: 0, y: 0 });
    shown ??= path;
    write(path, stage.context.length, (frame, sample) => {
      tracks.pullX[frame]! += sample.x;
      tracks.pullY[frame]! += sample.y;
    });
  }
  return shown ?? wayPath(move, wayOf(move, stage, false), { x: 0, y: 0 });
}

const placeBetween = (from: Place, to: Place, p: number): Sample => ({
  x: between(from.xMm, to.xMm, p),
  y: between(from.yMm, to.yMm, p),
  value: null,
  turn: 0,
});

export function driveSlide(move: MoveOf<'slide'>, stage: Stage): Path {
  const path = pathOf(
    move.legs.map((leg) => ({
      start: leg.start,
      end: leg.end,
      spacing: leg.spacing,
      place: (p: number) => placeBetween(leg.from, leg.to, p),
      fromLabel: leg.from.label,
      toLabel: leg.to.label,
    })),
    move.on,
    'rests',
  );
  const first = path.at(path.start);
  for (const { level, slideX, slideY } of named(stage, move.levels)) {
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
            `${level.name} would jump on frame ${path.start}: this slide starts at ${millimetres(first.x)}, ${millimetres(first.y)}, but its last slide ended at ${millimetres(x)}, ${millimetres(y)}.`,
            { notes: [{ message: 'The slide before.', span: last.span }] },
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
