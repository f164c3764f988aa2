/** What a camera chart shows, on the artwork's plane, before it has a scale. */

import { fieldLegs, kindOf } from '../../shot/camera/move-facts.js';
import type { Settings } from '../../shot/settings.js';
import type { Level } from '../../shot/shot.js';
import { clockwise, turnOf } from '../../solve/camera/matrix.js';
import type { Graduation, PlacementFrame, SolvedMove } from '../../solve/camera/solved.js';
import type { SolvedShot } from '../../solve/solved.js';
import { graduated, moveKind, outlined } from '../camera/move-names.js';
import type { Pt } from '../marks.js';
import { boundsOf, type Corners, rectangle, seen } from './space.js';

export interface PlanField {
  readonly name: string;
  readonly corners: Corners;
  readonly centre: Pt;
  readonly used: boolean;
}

export interface Outline {
  readonly label: string;
  readonly corners: Corners;
}

export interface Dot {
  readonly at: Pt;
  readonly number: number;
  readonly key: boolean;
  readonly label: string;
}

export interface Way {
  readonly name: string;
  readonly dots: readonly Dot[];
  readonly ticks: boolean;
  /** Drawn beside its true place, across its direction: pulls, which have no place of their own. */
  readonly beside: boolean;
}

export interface Plan {
  readonly standard: Corners;
  /** A move starts from, passes or ends on the standard field, or the camera rests there. */
  readonly standardUsed: boolean;
  readonly fields: readonly PlanField[];
  /** Pairs of fields that a move goes between, drawn from corner to corner. */
  readonly between: readonly (readonly [Corners, Corners])[];
  readonly sheets: readonly Outline[];
  readonly least: readonly Outline[];
  readonly outlines: readonly Outline[];
  readonly ways: readonly Way[];
}

export function planOf(solved: SolvedShot, settings: Settings): Plan {
  const { camera, shot } = solved;
  const { field } = shot.settings;
  const fields = camera.fields.map(
    ({ field: f, used }): PlanField => ({
      name: f.name,
      corners: seen(f.xMm, f.yMm, f.widthMm, f.turnDeg, shot.settings),
      centre: [f.xMm, f.yMm],
      used,
    }),
  );
  const standard = rectangle(0, 0, field.widthMm, field.heightMm, 0);
  const rest = shot.camera.rest;
  const restsThere = rest.xMm === 0 && rest.yMm === 0 && rest.widthMm === field.widthMm && rest.turnDeg === 0;
  return {
    standard,
    standardUsed: restsThere || fields.some((f) => f.used && same(f.corners, standard)),
    fields,
    between: camera.moves.flatMap(({ move }) =>
      (kindOf(move).line === 'fields' ? fieldLegs(move) : []).map(({ from, to }): [Corners, Corners] => [
        seen(from.xMm, from.yMm, from.widthMm, from.turnDeg, shot.settings),
        seen(to.xMm, to.yMm, to.widthMm, to.turnDeg, shot.settings),
      ]),
    ),
    sheets: merged(shot.levels.flatMap((level) => sheetOf(level, solved))),
    least: merged(shot.levels.flatMap((level) => leastOf(level, solved))),
    outlines: merged(camera.moves.flatMap((move) => outlinesOf(move, solved, settings))),
    ways: distinct(camera.moves.flatMap((move) => waysOf(move, solved))),
  };
}

/** A centre that goes less far than this share of the standard field's width has no room for graduations. */
const CENTRE_STAYS = 0.04;

/** Whether a move shifts, turns or scales a level. */
function moves(level: string, solved: SolvedShot): boolean {
  return solved.camera.moves.some(({ move }) => outlined(move).includes(level));
}

/** A rectangle of the level's artwork as it lies on a frame; (qx, qy) is its middle from the artwork's own. */
function placed(level: Level, at: PlacementFrame, width: number, height: number, qx = 0, qy = 0): Corners {
  const q = clockwise(turnOf(at.rotation), qx * at.scale, qy * at.scale);
  const x = level.homeMm.xMm + at.x + q.x;
  const y = level.homeMm.yMm + at.y + q.y;
  return rectangle(x, y, width * at.scale, height * at.scale, at.rotation);
}

/** A still level's sheet where it lies; those of moving ones are outlines. */
function sheetOf(level: Level, solved: SolvedShot): Outline[] {
  const { camera, shot } = solved;
  const made = camera.artwork.get(level.name);
  if (made?.width == null || made.height == null) return [];
  if (moves(level.name, solved) || level.carry || shot.length === 0) return [];
  const at = camera.placement.get(level.name)?.[0];
  return at ? [{ label: level.name, corners: placed(level, at, made.width, made.height) }] : [];
}

/** Only where it tells something: for a level that has a size of its own or none, or moves. */
function leastOf(level: Level, solved: SolvedShot): Outline[] {
  const made = solved.camera.artwork.get(level.name);
  if (!made?.needed || level.free || level.carry) return [];
  if (level.sizeMm === null && made.width !== null && !moves(level.name, solved) && !made.edge) return [];
  const { x, y, width, height } = made.needed;
  return [{ label: level.name, corners: rectangle(x, y, width, height, 0) }];
}

function outlinesOf(solvedMove: SolvedMove, solved: SolvedShot, settings: Settings): Outline[] {
  const { move, graduations } = solvedMove;
  const { camera, shot } = solved;
  const last = shot.length;
  const [first, ...later] = moveKind.labels?.(move).values() ?? [];
  return outlined(move).flatMap((name): Outline[] => {
    const level = shot.levels.find((each) => each.name === name);
    const at = camera.placement.get(name);
    const made = camera.artwork.get(name);
    if (!level || !at || at.length === 0 || level.carry) return [];
    const width = made?.width ?? made?.needed?.width ?? settings.field.widthMm;
    const height = made?.height ?? made?.needed?.height ?? settings.field.heightMm;
    // A level whose sheet has no size yet is shown as large as it must become.
    const unsized = made?.width == null && made?.needed ? made.needed : null;
    const qx = unsized ? unsized.x - level.homeMm.xMm : 0;
    const qy = unsized ? unsized.y - level.homeMm.yMm : 0;
    const end = Math.min(last, solvedMove.end);
    let from = at[Math.max(1, solvedMove.start) - 1]!;
    const [g0, g1] = graduations;
    // Before frame 1: where the first step comes from.
    if (solvedMove.start < 1 && g0 && g1)
      from = { ...from, x: from.x - (g1.x - g0.x), y: from.y - (g1.y - g0.y) };
    const start = Math.max(1, solvedMove.start);
    const marks = [first ?? `[${start}]`, later.at(-1) ?? `[${end}]`];
    return [
      { label: `${name} ${marks[0]}`, corners: placed(level, from, width, height, qx, qy) },
      { label: `${name} ${marks[1]}`, corners: placed(level, at[end - 1]!, width, height, qx, qy) },
    ];
  });
}

function waysOf(solvedMove: SolvedMove, solved: SolvedShot): Way[] {
  const { move, graduations } = solvedMove;
  const { line } = kindOf(move);
  if (graduations.length === 0 || line === null) return [];
  const ticks = graduated(move);
  const dots = (dx: number, dy: number) =>
    graduations.map((g, i): Dot => dotOf(g, dx, dy, i === 0 || i === graduations.length - 1));
  const { levels } = move.target;
  switch (line) {
    case 'centre':
      return [{ name: '', dots: dots(0, 0), ticks, beside: false }];
    case 'fields': {
      const turn = fieldLegs(move)[0]?.from.turnDeg ?? 0;
      return [{ name: '', dots: cornerDots(graduations, dots(0, 0), turn, solved), ticks, beside: false }];
    }
    case 'levels':
      return levels.map((name): Way => {
        const home = solved.shot.levels.find((level) => level.name === name)?.homeMm ?? { xMm: 0, yMm: 0 };
        return { name, dots: dots(home.xMm, home.yMm), ticks, beside: false };
      });
    case 'beside': {
      const from = besideOf(solvedMove, levels[0]!, solved);
      return from ? [{ name: levels.join(','), dots: dots(...from), ticks, beside: true }] : [];
    }
  }
}

/** Where a level's way begins that has no place of its own: where the level lies on the first frame of the move. */
function besideOf(
  { graduations, start }: SolvedMove,
  name: string,
  { shot, camera }: SolvedShot,
): readonly [number, number] | null {
  const level = shot.levels.find((each) => each.name === name);
  const [first, second] = graduations;
  const at = camera.placement.get(name)?.[Math.max(1, start) - 1];
  if (!level || !at || !first) return null;
  const back = start < 1 && second ? { x: second.x - first.x, y: second.y - first.y } : { x: 0, y: 0 };
  return [level.homeMm.xMm + at.x - back.x - first.x, level.homeMm.yMm + at.y - back.y - first.y];
}

/**
 * The centre's places; where the centre hardly moves, those of the field's upper right corner, which show how far the move
 * has come on each frame.
 */
function cornerDots(
  graduations: readonly Graduation[],
  centres: readonly Dot[],
  turnAtFirst: number,
  { camera, shot }: SolvedShot,
): readonly Dot[] {
  const { left, right, bottom, top } = boundsOf(centres.map((dot) => dot.at));
  const { widthMm } = shot.settings.field;
  if (Math.hypot(right - left, top - bottom) > widthMm * CENTRE_STAYS) return centres;
  return centres.map((dot, i) => {
    const { frame, x, y, value } = graduations[i]!;
    const turn = frame < 1 ? turnAtFirst : (camera.frames[frame - 1]?.rotation ?? turnAtFirst);
    const corners = seen(x, y, value ?? widthMm, turn, shot.settings);
    return { ...dot, at: corners[1] };
  });
}

function dotOf(g: Graduation, dx: number, dy: number, end: boolean): Dot {
  return { at: [g.x + dx, g.y + dy], number: g.number, key: end || g.label !== '', label: g.label };
}

function same(a: Corners, b: Corners): boolean {
  return a.every(([x, y], i) => Math.hypot(x - b[i]![0], y - b[i]![1]) < 0.01);
}

/** Outlines that lie on one another become one with both labels. */
function merged(outlines: readonly Outline[]): Outline[] {
  const found: { labels: string[]; corners: Corners }[] = [];
  for (const { label, corners } of outlines) {
    const other = found.find((each) => same(each.corners, corners));
    if (!other) found.push({ labels: [label], corners });
    else if (!other.labels.includes(label)) other.labels.push(label);
  }
  return found.map(({ labels, corners }) => ({ label: labels.join(', '), corners }));
}

/** Ways of levels that go together become one. */
function distinct(ways: readonly Way[]): Way[] {
  const found: Way[] = [];
  for (const way of ways) {
    const i = found.findIndex(
      (each) =>
        each.dots.length === way.dots.length &&
        each.dots.every(
          ({ at }, k) => Math.hypot(at[0] - way.dots[k]!.at[0], at[1] - way.dots[k]!.at[1]) < 0.001,
        ),
    );
    if (i < 0) found.push(way);
    else found[i] = { ...way, name: [found[i]!.name, way.name].filter((n) => n !== '').join(',') };
  }
  return found;
}

/** A point inside a corner, `mm` from both sides, for names; outside where it is negative. */
export function inset(corners: Corners, corner: number, mm: number): Pt {
  const [x, y] = corners[corner]!;
  const next = corners[(corner + 1) % 4]!;
  const before = corners[(corner + 3) % 4]!;
  const unit = ([a, b]: Pt): Pt => {
    const length = Math.hypot(a - x, b - y) || 1;
    return [(a - x) / length, (b - y) / length];
  };
  const u = unit(next);
  const v = unit(before);
  return [x + (u[0] + v[0]) * mm, y + (u[1] + v[1]) * mm];
}
