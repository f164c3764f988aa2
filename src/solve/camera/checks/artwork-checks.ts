/** Edges of artwork that come into the picture, and loops that are too short or do not lie along the paper. */

import { diagnose, type Fix, type Report } from '../../../language/diagnostic.js';
import type { Field, Leg, Move, MoveOf } from '../../../shot/camera/camera-model.js';
import { endOf, kindOf, movesOf, startOf } from '../../../shot/camera/move-kinds.js';
import type { Settings } from '../../../shot/settings.js';
import { figure } from '../../../words/number-format.js';
import {
  type CameraContext,
  type CameraLevel,
  clampFrame,
  type LevelTracks,
  type Stage,
} from '../camera-tracks.js';
import { sameWidth } from '../field-moves.js';
import type { Path, PathLeg, Sample } from '../move-path.js';
import type { Loop } from '../needed-artwork.js';
import { clockwise, counterClockwise, turnOf } from '../plane-turns.js';
import type { Artwork, CameraFrame, PlacementFrame } from '../solved-camera.js';

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

// ---- sizes of fields: a pan keeps them, a truck changes them; and where the speed jumps between two legs

/** Of moves between fields. */
export function checkSizes(moves: readonly Move[], report: Report): void {
  for (const move of movesOf(moves, 'pan')) {
    // Beside a truck, which gives the width, only the centres of its fields count.
    if (move.gives === 'centre') continue;
    const differs = ({ from, passing, to }: Leg<Field>) =>
      [...passing, to].find(({ widthMm }) => !sameWidth(from.widthMm, widthMm));
    const leg = move.legs.find(differs);
    if (!leg) continue;
    const { from } = leg;
    const to = differs(leg)!;
    report(
      diagnose(
        'pan-sizes',
        leg.span,
        { from: from.name, fromMm: from.widthMm, to: to.name, toMm: to.widthMm },
        { fix: word(move, 'truck') },
      ),
    );
  }
  for (const move of movesOf(moves, 'truck')) {
    if (move.legs.some(({ from, to }) => !sameWidth(from.widthMm, to.widthMm))) continue;
    const { from, to } = move.legs[0]!;
    const { quick, ratios } = move.parameters;
    report(
      diagnose(
        'truck-one-size',
        move.span,
        { from: from.name, to: to.name, widthMm: from.widthMm },
        quick || ratios ? {} : { fix: word(move, 'pan') },
      ),
    );
  }
}

/** The statement's first word stands at its start. */
function word(move: MoveOf<'pan'> | MoveOf<'truck'>, text: 'pan' | 'truck'): Fix {
  const { file, start } = move.span;
  return {
    action: 'write',
    written: text,
    edits: [{ span: { file, start, end: start + move.kind.length }, text }],
  };
}

/** A jump of a quarter of the faster speed is seen (our own measure); below a tenth of a mm a frame nothing is. */
const SEEN_SHARE = 0.25;
const SEEN_MM = 0.1;

/** Compares the speeds on both sides of each field passed through: the way in mm, and the growth of the field at its edge. */
export function checkSpeed(move: Move, path: Path, report: Report): void {
  if (!kindOf(move).passes) return;
  for (let i = 1; i < path.legs.length; i++) {
    const { start, fromLabel } = path.legs[i]!;
    const into = speedAt(path, lastSteps(path.legs[i - 1]!, move.on));
    const out = speedAt(path, firstSteps(path.legs[i]!, move.on));
    const jump = Math.hypot(...into.map((v, axis) => out[axis]! - v));
    const [before, after] = [Math.hypot(...into), Math.hypot(...out)];
    if (jump <= Math.max(SEEN_MM, SEEN_SHARE * Math.max(before, after))) continue;
    report(
      diagnose(
        'speed-jumps',
        move.legs[i]!.span,
        { frame: start, field: fromLabel || null, before, after },
        { notes: [{ note: 'even-speed' }] },
      ),
    );
  }
}

/** The frames between which a leg makes its first two steps, or its only one, in order. */
function firstSteps({ start, end }: PathLeg, on: number): number[] {
  return [start, ...(start + on < end ? [start + on] : []), Math.min(start + 2 * on, end)];
}

/** The same of its last two, the last one first: on twos that may be a single frame. */
function lastSteps({ start, end }: PathLeg, on: number): number[] {
  const begins = start + on * Math.floor((end - 1 - start) / on);
  return [end, begins, ...(begins > start ? [begins - on] : [])];
}

/**
 * Mm a frame on the first of the frames, from the two steps beside it; exact where the speed grows or falls evenly, as on ramps.
 * A leg of one step gives its mean.
 */
function speedAt(path: Path, [at, near, far]: readonly number[]): number[] {
  const along = (pick: (s: Sample) => number) => {
    const mean = (frame: number) => (pick(path.at(frame)) - pick(path.at(at!))) / (frame - at!);
    const one = mean(near!);
    return far === undefined ? one : one + ((one - mean(far)) * (near! - at!)) / (far - near!);
  };
  return [along((s) => s.x), along((s) => s.y), along((s) => (s.value ?? 0) / 2)];
}

// ---- whether fields lie on the field chart, and whether the scan has pixels enough for them

/**
 * A field fits the chart where |E| + F and |N| + F are not more than the chart's lines (computed from its geometry; a step
 * is half a line). A turned field reaches as far as its corners.
 */
export function checkChart(fields: readonly Field[], settings: Settings, report: Report): void {
  const { widthMm, heightMm } = settings.field;
  const lines = settings.fields;
  for (const field of fields) {
    if (field.notation !== 'chart') continue;
    const t = turnOf(field.turnDeg);
    const height = (field.widthMm * heightMm) / widthMm;
    const reachX = (Math.abs(field.widthMm * t.cos) + Math.abs(height * t.sin)) / widthMm;
    const reachY = (Math.abs(field.widthMm * t.sin) + Math.abs(height * t.cos)) / heightMm;
    const east = (Math.abs(field.xMm) / widthMm) * 2 * lines + reachX * lines;
    const north = (Math.abs(field.yMm) / heightMm) * 2 * lines + reachY * lines;
    const reaches: { lines: number; side: 'north' | 'south' | 'east' | 'west' }[] = [];
    if (east > lines + 1e-6) reaches.push({ lines: east, side: field.xMm < 0 ? 'west' : 'east' });
    if (north > lines + 1e-6) reaches.push({ lines: north, side: field.yMm < 0 ? 'south' : 'north' });
    if (reaches.length === 0) continue;
    report(diagnose('field-off-chart', field.span, { field: field.name, lines, reaches }));
  }
}

interface Smallest {
  readonly widthMm: number;
  readonly frame: number;
  readonly level: string | null;
}

/** From a field of (output pixels × 25.4 / dpi) mm down a scan is enlarged; a level that is trucked in is scanned no finer. */
export function checkScan(
  context: CameraContext,
  camera: readonly CameraFrame[],
  placement: ReadonlyMap<string, readonly PlacementFrame[]>,
  places: { readonly field: (frame: number) => Field; readonly level: (name: string) => Field['span'] },
  report: Report,
): void {
  const { settings } = context;
  const enoughMm = (settings.output.width * 25.4) / settings.scanDpi;
  const { widthMm: fieldMm } = settings.field;
  if (fieldMm < enoughMm) return;
  let least: Smallest = { widthMm: Infinity, frame: 0, level: null };
  for (const seen of camera) {
    if (seen.width < least.widthMm - 1e-9) least = { widthMm: seen.width, frame: seen.frame, level: null };
  }
  for (const level of context.levels) {
    const placed = placement.get(level.name);
    if (!placed) continue;
    let before: PlacementFrame | null = null;
    for (const { frame, width } of camera) {
      const at = placed[frame - 1]!;
      if (at === before) continue;
      const widthMm = width / at.scale;
      if (widthMm >= least.widthMm - 1e-9) before = at;
      else if (level.shown(frame)) least = { widthMm, frame, level: level.name };
    }
  }
  if (least.widthMm >= enoughMm - 1e-6) return;
  const field = places.field(least.frame);
  report(
    diagnose(
      'scan-enlarged',
      least.level === null ? field.span : places.level(least.level),
      {
        level: least.level,
        share: least.widthMm / fieldMm,
        frame: least.frame,
        dpi: settings.scanDpi,
        enough: enoughMm / fieldMm,
        pixels: settings.output.width,
      },
      { notes: [{ note: 'enough-dpi', dpi: Math.ceil((settings.output.width * 25.4) / least.widthMm) }] },
    ),
  );
}
