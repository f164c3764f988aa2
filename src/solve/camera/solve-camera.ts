/** Camera → where everything is on every frame, how large the artwork must be, and what is wrong with it. */

import { type Diagnostic, diagnose, type Report, type Span } from '../../language/diagnostic.js';
import type { Camera, Field, Move } from '../../shot/camera/camera-model.js';
import { fieldLegs, kindOf, movesOf, startOf } from '../../shot/camera/move-kinds.js';
import {
  type CameraContext,
  cameraFrames,
  clampFrame,
  placementFrames,
  SAME_MM,
  type Stage,
  stageOf,
  written,
} from './camera-tracks.js';
import {
  checkArtwork,
  checkChart,
  checkScan,
  checkSizes,
  checkSpeed,
  loopOf,
} from './checks/artwork-checks.js';
import { checkFieldNumbers, checkLevels, checkMoveNumbers, checkTiming } from './checks/move-checks.js';
import { checkShared } from './checks/shared-checks.js';
import { checkSpacing, checkStrobing } from './checks/speed-checks.js';
import { driveMove, drivenBy } from './drive-move.js';
import { sameTurn } from './field-moves.js';
import { type Path, solveMove } from './move-path.js';
import { artworkOf } from './needed-artwork.js';
import { checkLight, solveLight } from './solve-light.js';
import type { Artwork, SolvedCamera, SolvedMove } from './solved-camera.js';

/**
 * Pure. The result is complete whatever was reported: moves whose numbers make no sense are left out, other faults are solved
 * as well as can be. No number in it is ever NaN or infinite.
 */
export function solveCamera(
  camera: Camera,
  context: CameraContext,
): { solved: SolvedCamera; diagnostics: Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  const report: Report = (diagnostic) => diagnostics.push(diagnostic);
  const { settings, length } = context;

  const broken = new Set<Field>();
  for (const field of fieldsOf(camera)) if (!checkFieldNumbers(field, report)) broken.add(field);
  const moves = camera.moves
    .filter((move) => checkMoveNumbers(move, broken, report))
    .sort((a, b) => startOf(a) - startOf(b));
  checkTiming(moves, context, report);
  checkLevels(moves, context, report);
  checkSizes(moves, report);

  const rest = broken.has(camera.rest) ? standardField(camera, context) : camera.rest;
  const stage = stageOf(context, rest, report);
  drive(moves, stage);
  keepPositive(stage, moves, report);

  const frames = cameraFrames(stage.camera, length, settings);
  const solvedMoves = moves.map((move): SolvedMove => {
    const path = stage.paths.get(move)!;
    checkSpacing(move, path, report);
    checkSpeed(move, path, report);
    return solveMove(move, move.gives ? asDriven(path, stage) : path, frames, settings.output.width);
  });
  checkShared(moves, stage, report);
  checkStrobing(solvedMoves, stage, report);

  const placement = placementFrames(stage, frames);
  const artwork = new Map<string, Artwork>();
  const pulls = movesOf(moves, 'pull');
  for (const [name, tracks] of stage.levels) {
    const placed = placement.get(name)!;
    const made = artworkOf(tracks.level, frames, placed, loopOf(tracks, pulls, stage, report), settings);
    checkArtwork(tracks.level, made, report);
    artwork.set(name, made);
  }

  checkChart(camera.fields, settings, report);
  const places = {
    field: (frame: number) => fieldAt(moves, frame) ?? rest,
    level: (name: string): Span => scaledBy(moves, name) ?? context.levels.find((l) => l.name === name)!.span,
  };
  checkScan(context, frames, placement, places, report);
  const light = checkLight(camera.light, camera.flashing, context, report);

  const passed = new Set(moves.flatMap(fieldLegs).flatMap(({ passing }) => passing));
  const rests = usedAt(stage, length, rest);
  const used = (field: Field) => passed.has(field) || rests(field);
  return {
    solved: {
      frames,
      placement,
      artwork,
      moves: solvedMoves,
      light: camera.light.map((light) => solveLight(light, length)),
      fields: camera.fields.map((field) => ({ field, used: used(field) })),
      standardUsed: used(standardField(camera, context)),
      flashes: light.flashes,
      fixed: moves.every(({ target }) => !target.camera),
    },
    diagnostics,
  };
}

function drive(moves: readonly Move[], stage: Stage): void {
  const ordered = [...moves].sort((a, b) => kindOf(a).phase - kindOf(b).phase || startOf(a) - startOf(b));
  for (const move of ordered) {
    stage.paths.set(move, driveMove(move, stage));
    for (const key of drivenBy(move)) stage.last.set(key, move);
  }
}

/** The way that the camera goes while two moves share it. */
function asDriven(path: Path, stage: Stage): Path {
  const { camera } = stage;
  const at = (frame: number) => {
    const f = clampFrame(stage, Math.max(path.start, Math.min(path.end, frame)));
    return {
      x: camera.baseX[f]! + camera.goneX[f]!,
      y: camera.baseY[f]! + camera.goneY[f]!,
      value: camera.width[f]!,
      turn: camera.turn[f]!,
    };
  };
  return { ...path, at };
}

/** A curve that swings past its end can take a small size through nothing. */
function keepPositive(stage: Stage, moves: readonly Move[], report: Report): void {
  const least = 0.01;
  const hold = (track: Float64Array, level: string | null, span: (frame: number) => Span) => {
    const frame = track.findIndex((value) => !(value >= least));
    if (frame < 0) return;
    report(diagnose('size-vanishes', span(frame), { level, frame: Math.max(1, frame) }));
    for (let i = 0; i < track.length; i++) if (!(track[i]! >= least)) track[i] = least;
  };
  const of = (quantity: string) => (frame: number) =>
    (moves.findLast((m) => drivenBy(m).includes(quantity) && frame > startOf(m)) ?? moves[0])!.span;
  // What no move drives is as it was, and no field is without size.
  if (stage.last.has('camera width')) hold(stage.camera.width, null, of('camera width'));
  for (const [name, tracks] of stage.levels) {
    const quantity = `${name} scale`;
    if (stage.last.has(quantity)) hold(written(tracks, 'scale', stage), name, of(quantity));
  }
}

/** All fields that matter, each once: those of the cut, where the camera rests, and those that moves name. */
function fieldsOf(camera: Camera): Set<Field> {
  const all = new Set([...camera.fields, camera.rest]);
  for (const move of camera.moves)
    for (const { from, passing, to } of fieldLegs(move))
      for (const field of [from, ...passing, to]) all.add(field);
  return all;
}

/**
 * Whether the camera stands on a field on some frame, shake left aside, whatever brought it there and whatever it is called.
 * `rest` counts too: it is where a move that begins with frame 1 leaves from.
 */
function usedAt({ camera, paths }: Stage, length: number, rest: Field): (field: Field) => boolean {
  let last: View = rest;
  const views = [last];
  for (let f = 1; f <= length && paths.size > 0; f++) {
    const xMm = camera.baseX[f]! + camera.goneX[f]!;
    const yMm = camera.baseY[f]! + camera.goneY[f]!;
    const widthMm = camera.width[f]!;
    const turnDeg = camera.turn[f]!;
    if (last.xMm === xMm && last.yMm === yMm && last.widthMm === widthMm && last.turnDeg === turnDeg)
      continue;
    last = { xMm, yMm, widthMm, turnDeg };
    views.push(last);
  }
  return (field) => views.some((view) => same(field, view));
}

type View = Pick<Field, 'xMm' | 'yMm' | 'widthMm' | 'turnDeg'>;

const same = (a: View, b: View): boolean =>
  Math.abs(a.xMm - b.xMm) <= SAME_MM &&
  Math.abs(a.yMm - b.yMm) <= SAME_MM &&
  Math.abs(a.widthMm - b.widthMm) <= SAME_MM &&
  sameTurn(a.turnDeg, b.turnDeg);

/** The field that a camera move goes to, or has gone to, on a frame. */
function fieldAt(moves: readonly Move[], frame: number): Field | null {
  let found: Field | null = null;
  for (const leg of moves.flatMap(fieldLegs)) {
    if (frame > leg.start) found = leg.to;
    else if (frame === leg.start) found = leg.from;
  }
  return found;
}

function scaledBy(moves: readonly Move[], level: string): Span | null {
  const move = moves.find((each) => drivenBy(each).includes(`${level} scale`));
  return move?.span ?? null;
}

function standardField(camera: Camera, { settings }: CameraContext): Field {
  return {
    name: 'full',
    xMm: 0,
    yMm: 0,
    widthMm: settings.field.widthMm,
    turnDeg: 0,
    notation: 'full',
    span: camera.rest.span,
    sizeSpan: null,
    placeSpan: null,
  };
}
