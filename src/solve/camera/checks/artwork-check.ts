/** Edges of artwork that come into the picture, and loops that are too short or do not lie along the paper. */

import { diagnose, type Fix, type Report } from '../../../language/diagnostic.js';
import type { MoveOf } from '../../../shot/camera/camera-model.js';
import { endOf, startOf } from '../../../shot/camera/move-facts.js';
import { figure } from '../../../words/number-format.js';
import type { CameraLevel } from '../camera-context.js';
import type { LevelTracks, Stage } from '../camera-tracks.js';
import { clampFrame } from '../camera-tracks.js';
import type { Loop } from '../needed-artwork.js';
import { clockwise, counterClockwise, turnOf } from '../plane-turns.js';
import type { Artwork } from '../solved-camera.js';

export function checkArtwork(level: CameraLevel, artwork: Artwork, report: Report): void {
  const { needed, edge, loop } = artwork;
  if (!needed) return;
  if (edge && artwork.width !== null && artwork.height !== null) {
    report(
      diagnose(
        'artwork-edge',
        level.span,
        {
          level: level.name,
          ...edge,
          needed: { width: needed.width, height: needed.height, x: needed.x, y: needed.y },
        },
        {
          notes: [
            {
              note: 'artwork',
              level: level.name,
              width: artwork.width,
              height: artwork.height,
              x: artwork.homeX,
              y: artwork.homeY,
            },
          ],
          fix: larger(level, artwork),
        },
      ),
    );
  }
  if (Math.max(needed.width, needed.height) > LONG_MM) {
    report(
      diagnose('artwork-long', level.span, {
        level: level.name,
        lengthMm: Math.max(needed.width, needed.height),
      }),
    );
  }
  if (!loop) return;
  const along = loop.axis === 'x' ? needed.width : needed.height;
  const painted = loop.axis === 'x' ? artwork.width : artwork.height;
  if (loop.lengthMm < along - 1e-6) {
    report(
      diagnose('loop-short', level.span, {
        variant: 'field',
        level: level.name,
        loopMm: loop.lengthMm,
        neededMm: along,
      }),
    );
  }
  if (level.sizeMm && painted !== null && painted < loop.lengthMm - 1e-6) {
    report(
      diagnose('loop-short', level.span, {
        variant: 'artwork',
        level: level.name,
        loopMm: loop.lengthMm,
        paintedMm: painted,
      }),
    );
  }
}

/** Five metres: more than any background that is painted in one piece (our own measure). */
const LONG_MM = 5000;

/** A hundred metres: what asks for more than that is a slip in a number, and no artwork. */
const LARGEST_MM = 99_999;

/**
 * The size that would do, written where the size is; the artwork's centre stays, since points of the artwork are counted from it.
 * In whole millimetres; a side that is long enough stays as it is.
 */
function larger({ sizeMm, span: named }: CameraLevel, { needed, homeX, homeY }: Artwork): Fix | undefined {
  // What a house file says of a level holds for other cuts, too.
  if (!sizeMm?.span || sizeMm.span.file !== named.file || !needed) return undefined;
  const side = (has: number, from: number, size: number) => {
    const wants = 2 * Math.abs(from) + size;
    return has >= wants ? has : Math.ceil(wants - 1e-6);
  };
  const width = side(sizeMm.widthMm, needed.x - homeX, needed.width);
  const height = side(sizeMm.heightMm, needed.y - homeY, needed.height);
  if (Math.max(width, height) > LARGEST_MM) return undefined;
  const text = `${typed(width)}x${typed(height)}mm`;
  return { action: 'paint-on', size: text, edits: [{ span: sizeMm.span, text }] };
}

/** As exactly as sizes are typed: never rounded down by anything that can be seen. */
const typed = (mm: number) => figure(mm, { decimals: 6 });

/** The loop that a level is painted as; one whose pulls disagree or run askew is reported, and tiled along none. */
export function loopOf(
  tracks: LevelTracks,
  pulls: readonly MoveOf<'pull'>[],
  stage: Stage,
  report: Report,
): Loop | null {
  const { level } = tracks;
  let loop: Loop | null = null;
  let first: MoveOf<'pull'> | null = null;
  for (const pull of pulls) {
    const lengthMm = pull.parameters.loop;
    if (lengthMm === null || !pull.target.levels.includes(level.name)) continue;
    const axis = axisOf(pull, tracks, stage);
    if (!axis) {
      report(diagnose('loop-askew', pull.span, { level: level.name }));
      return null;
    }
    if (loop && first && (loop.lengthMm !== lengthMm || loop.axis !== axis)) {
      report(
        diagnose(
          'loop-two',
          pull.span,
          {
            level: level.name,
            here: { mm: lengthMm, axis },
            there: { mm: loop.lengthMm, axis: loop.axis },
          },
          { notes: [{ note: 'other-pull', span: first.span }] },
        ),
      );
      return loop;
    }
    loop = { lengthMm, axis };
    first = pull;
  }
  return loop;
}

/** Along which of the level's own axes a pull runs, throughout; null: along neither. */
function axisOf(pull: MoveOf<'pull'>, tracks: LevelTracks, stage: Stage): 'x' | 'y' | null {
  const cameraTurn = tracks.level.carry ? 0 : stage.camera.turn[clampFrame(stage, startOf(pull) + 1)]!;
  const unit = clockwise(turnOf(-pull.parameters.direction.degrees), 1, 0);
  const way = clockwise(turnOf(cameraTurn), unit.x, unit.y);
  let axis: 'x' | 'y' | null = null;
  const last = clampFrame(stage, endOf(pull));
  for (let frame = clampFrame(stage, startOf(pull) + 1); frame <= last; frame++) {
    const own = counterClockwise(turnOf(tracks.turn[frame]!), way.x, way.y);
    const now = Math.abs(own.y) < 1e-9 ? 'x' : Math.abs(own.x) < 1e-9 ? 'y' : null;
    if (!now || (axis && now !== axis)) return null;
    axis = now;
  }
  return axis;
}
