/**
 * What the camera chart shows: one panel for each thing that moves, on the artwork's plane (mm, y up), before it has a scale.
 * The camera comes first; then every level that moves by itself, levels that lie alike on every frame together.
 */

import type { Field, FieldPart, Move } from '../../shot/camera/camera-model.js';
import { fieldLegs, givenOf, goingAlong, kindOf, legsOf, startOf } from '../../shot/camera/move-kinds.js';
import type { Settings } from '../../shot/settings.js';
import type { Level } from '../../shot/shot.js';
import { clockwise, turnOf } from '../../solve/camera/plane-turns.js';
import { curveOf } from '../../solve/camera/smooth-curve.js';
import type { Graduation, PlacementFrame, SolvedMove } from '../../solve/camera/solved-camera.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import { keysOf } from '../camera/camera-plan.js';
import { graduated } from '../camera/move-labels.js';
import type { Pt } from '../display-list.js';
import { boundsOf, type Corners, rectangle, seen } from './artwork-plane.js';

export interface PanelField {
  readonly name: string;
  readonly corners: Corners;
  readonly centre: Pt;
  /** The camera stands on it on some frame; one that is never used is crossed out at its corners. */
  readonly used: boolean;
  /** The camera never stands on it, but a move takes its centre or its width from it, while another one gives the rest. */
  readonly gives: FieldPart | null;
  /** It is no field of the cut: the standard field, or what the camera sees on `row`. */
  readonly bare: boolean;
  /** On the panel of a level: the frame on which the camera stands there, where that must be told; else null. */
  readonly row: number | null;
  readonly standard: boolean;
}

export interface PanelOutline {
  readonly label: string;
  readonly corners: Corners;
  /** A sheet of artwork, the smallest that would do, or a moving level where it starts and where it ends. */
  readonly is: 'sheet' | 'needed' | 'start' | 'end';
}

/** Where the moving thing is on one frame. */
export interface WayPoint {
  readonly at: Pt;
  /** The frame (row) on which it is there; 0: before the first row. */
  readonly frame: number;
  /** Graduations from the one that it leaves from. */
  readonly count: number;
  /** A field, a mark or a fairing mark that stands here, else ''. */
  readonly name: string;
  /** New key drawings of the levels that go along, on this row. */
  readonly keys: readonly string[];
}

/** As they lie before turning. */
const CORNERS = ['topLeft', 'topRight', 'bottomRight', 'bottomLeft'] as const;
type Corner = (typeof CORNERS)[number];

export interface PanelWay {
  readonly solved: SolvedMove;
  readonly points: readonly WayPoint[];
  /** A curved way as it is drawn, closer than its graduations; null: from one to the next. */
  readonly line: readonly Pt[] | null;
  /** Marks without a frame that a curved way passes. */
  readonly passing: readonly { readonly at: Pt; readonly name: string }[];
  /** Graduations were typed (`graduated`, `steps`): their counts are printed too. */
  readonly counted: boolean;
  /** It is the way of that corner of the field or of the sheet, since the middle tells too little; else null. */
  readonly ofCorner: Corner | null;
}

export interface ChartPanel {
  /** Null: the camera. */
  readonly levels: readonly string[] | null;
  readonly fields: readonly PanelField[];
  readonly outlines: readonly PanelOutline[];
  /** Points about which the level is turned or scaled, where it lies when that begins. */
  readonly pivots: readonly Pt[];
  /** Pairs of fields that a truck goes between, joined corner to corner. */
  readonly between: readonly (readonly [Corners, Corners])[];
  readonly ways: readonly PanelWay[];
  /** Every move that is told here, those too that have no way (shake, sway). */
  readonly moves: readonly SolvedMove[];
}

/** `west`: keys are named by their final numbers, as in the western key column. */
export function chartPanels(solved: SolvedShot, west: boolean): ChartPanel[] {
  const { camera } = solved;
  const ofCamera = camera.moves.filter(({ move }) => kindOf(move).quantity === 'field');
  const groups = movingLevels(solved);
  const away = camera.fields.some(({ field, used }) => used && !isStandard(field, solved.shot.settings));
  const panels = [
    ...(ofCamera.length > 0 || away ? [cameraPanel(ofCamera, groups.flat(), solved, west)] : []),
    ...groups.map((levels) => levelPanel(levels, solved, west)),
  ];
  // Swings have no way. They are told with what swings, else on the first panel.
  const swings = camera.moves.filter(({ move }) => kindOf(move).legs === 'swing');
  const whose = (move: Move): number => {
    const own = panels.findIndex(({ levels }) =>
      levels === null
        ? move.target.camera
        : !move.target.camera && move.target.levels.some((name) => levels.includes(name)),
    );
    return Math.max(0, own);
  };
  return panels.map((panel, i) => ({
    ...panel,
    moves: [...panel.moves, ...swings.filter(({ move }) => whose(move) === i)],
  }));
}

/** Whether the cut has something for the camera's pages: a move, or a field that is not the standard one. */
export function hasCamera({ camera, shot }: SolvedShot): boolean {
  return camera.moves.length > 0 || camera.fields.some(({ field }) => !isStandard(field, shot.settings));
}

function isStandard(
  { xMm, yMm, turnDeg, widthMm }: { xMm: number; yMm: number; turnDeg: number; widthMm: number },
  { field }: Settings,
): boolean {
  return xMm === 0 && yMm === 0 && turnDeg === 0 && Math.abs(widthMm - field.widthMm) < 1e-6;
}

/** `apart`: levels that have panels of their own. */
function cameraPanel(
  moves: readonly SolvedMove[],
  apart: readonly string[],
  solved: SolvedShot,
  west: boolean,
): ChartPanel {
  const { settings } = solved.shot;
  const along = [...new Set(moves.flatMap(({ move }) => goingAlong(move)))];
  const own = fieldsOf(solved);
  return {
    levels: null,
    fields: [...own, ...sharedFields(moves, own, solved)],
    outlines: merged([
      ...solved.shot.levels
        .filter(({ name }) => !apart.includes(name))
        .flatMap((level) => [...sheetOf(level, solved), ...neededOf(level, solved)]),
      ...along.flatMap((name) => startAndEnd(name, moves, solved)),
    ]),
    pivots: [],
    between: moves.flatMap(({ move }) =>
      kindOf(move).grows && !move.gives
        ? fieldLegs(move).map(({ from, to }): [Corners, Corners] => [
            seen(from.xMm, from.yMm, from.widthMm, from.turnDeg, settings),
            seen(to.xMm, to.yMm, to.widthMm, to.turnDeg, settings),
          ])
        : [],
    ),
    ways: moves.flatMap((one) => cameraWay(one, solved, west)),
    moves,
  };
}

/** All fields of the cut, and the standard field where none of them lies on it. */
export function fieldsOf({ camera, shot }: SolvedShot): PanelField[] {
  const { field } = shot.settings;
  const own = camera.fields.map(
    ({ field: one, used }): PanelField => ({
      name: one.name,
      corners: seen(one.xMm, one.yMm, one.widthMm, one.turnDeg, shot.settings),
      centre: [one.xMm, one.yMm],
      used,
      gives: used ? null : partTaken(one, camera.moves),
      bare: false,
      row: null,
      standard: isStandard(one, shot.settings),
    }),
  );
  const standard = rectangle(0, 0, field.widthMm, field.heightMm, 0);
  if (own.some(({ corners }) => sameCorners(corners, standard))) return own;
  return [
    {
      name: '',
      corners: standard,
      centre: [0, 0],
      used: camera.standardUsed,
      gives: null,
      bare: true,
      row: null,
      standard: true,
    },
    ...own,
  ];
}

/** What a field that the camera never stands on is there for; null where no move names it, or all of it is meant. */
export function partTaken(field: Field, moves: readonly SolvedMove[]): FieldPart | null {
  for (const { move } of moves)
    if (move.gives && fieldLegs(move).some(({ from, to }) => from === field || to === field))
      return move.gives;
  return null;
}

/** What the camera sees where moves that share it begin and end, where that is no field of the cut. */
function sharedFields(
  moves: readonly SolvedMove[],
  own: readonly PanelField[],
  solved: SolvedShot,
): PanelField[] {
  const { camera, shot } = solved;
  const found: PanelField[] = [];
  for (const { move, start, end } of moves) {
    if (!move.gives) continue;
    for (const frame of [start, end]) {
      // Before the first row the camera rests on its field.
      const at = camera.frames[Math.min(shot.length, frame) - 1];
      if (!at) continue;
      const corners = seen(at.x, at.y, at.width, at.rotation, shot.settings);
      const known = [...own.filter(({ used }) => used), ...found];
      if (known.some((field) => sameCorners(field.corners, corners))) continue;
      const named = { name: '', corners, centre: [at.x, at.y] as Pt };
      found.push({ ...named, used: true, gives: null, bare: true, row: at.frame, standard: false });
    }
  }
  return found;
}

/** The path of the centre; of a corner where the field grows or shrinks, or the centre hardly moves. */
function cameraWay(one: SolvedMove, solved: SolvedShot, west: boolean): PanelWay[] {
  const { move, graduations } = one;
  if (graduations.length < 2) return [];
  const { settings } = solved.shot;
  const keys = keysOf(goingAlong(move), solved, west);
  const centres = graduations.map(({ x, y }): Pt => [x, y]);
  if (!kindOf(move).grows) return [wayOf(one, centres, keys, null, undefined, curveDrawn(move, [0, 0]))];
  const turns = turnsOf(graduations, fieldLegs(move)[0]!.from.turnDeg, solved);
  const corners = graduations.map(({ x, y, value }, i) =>
    seen(x, y, value ?? settings.field.widthMm, turns[i]!, settings),
  );
  const { way, corner } = longestCorner(corners);
  return [wayOf(one, way, keys, corner)];
}

/** The camera's turn on each graduation; before the first row that of the move's first field. */
function turnsOf(graduations: readonly Graduation[], first: number, { camera }: SolvedShot): number[] {
  return graduations.map(({ frame }) => (frame < 1 ? first : (camera.frames[frame - 1]?.rotation ?? first)));
}

/** The way of that corner which goes farthest. */
function longestCorner(all: readonly Corners[]): { readonly way: Pt[]; readonly corner: Corner } {
  const order = [1, 0, 2, 3];
  const ways = order.map((corner) => all.map((corners) => corners[corner]!));
  const lengths = ways.map((way) =>
    way.reduce(
      (sum, [x, y], i) => (i === 0 ? 0 : sum + Math.hypot(x - way[i - 1]![0], y - way[i - 1]![1])),
      0,
    ),
  );
  const most = Math.max(...lengths);
  const found = lengths.findIndex((length) => length >= most * 0.999);
  return { way: ways[found]!, corner: CORNERS[order[found]!]! };
}

/** Points to draw a leg of a curve with: chords so short that nobody sees their corners. */
const CURVE_POINTS = 96;

/** `home`: where its places are counted from. Fields that it passes are drawn as fields. */
function curveDrawn(move: Move, [hx, hy]: Pt): Pick<PanelWay, 'line' | 'passing'> {
  const curve = curveOf(move);
  if (!curve) return { line: null, passing: [] };
  const line = curve.legs.flatMap(({ at }, i) =>
    Array.from({ length: CURVE_POINTS + 1 }, (_, k): Pt => {
      const { x, y } = at(k / CURVE_POINTS);
      return [x + hx, y + hy];
    }).slice(i === 0 ? 0 : 1),
  );
  const passing = legsOf(move, 'place').flatMap((leg) =>
    leg.passing.map(({ xMm, yMm, label }) => ({ at: [xMm + hx, yMm + hy] as Pt, name: label })),
  );
  return { line, passing };
}

function wayOf(
  solved: SolvedMove,
  places: readonly Pt[],
  keys: ReadonlyMap<number, readonly string[]>,
  ofCorner: Corner | null,
  named: ReadonlyMap<number, string> = new Map(),
  curve: Pick<PanelWay, 'line' | 'passing'> = { line: null, passing: [] },
): PanelWay {
  return {
    ...curve,
    solved,
    counted: graduated(solved.move),
    ofCorner,
    points: solved.graduations.map(({ frame, number, label }, i) => ({
      at: places[i]!,
      frame,
      count: number,
      name: named.get(frame) ?? label,
      keys: keys.get(frame) ?? [],
    })),
  };
}

/** Levels that a move shifts, scales or turns by themselves; those that lie alike on every frame stand together. */
function movingLevels({ camera, shot }: SolvedShot): string[][] {
  const moving = shot.levels
    .map(({ name }) => name)
    .filter((name) =>
      camera.moves.some(
        ({ move }) =>
          !move.target.camera && kindOf(move).quantity !== 'sway' && move.target.levels.includes(name),
      ),
    );
  const groups: string[][] = [];
  for (const name of moving) {
    const at = camera.placement.get(name);
    const together = groups.find(([first]) => {
      const other = camera.placement.get(first!);
      return at !== undefined && other !== undefined && sameWay(at, other);
    });
    if (together) together.push(name);
    else groups.push([name]);
  }
  return groups;
}

/** Whether two levels lie alike on every frame. */
export function sameWay(a: readonly PlacementFrame[], b: readonly PlacementFrame[]): boolean {
  return a.every((p, i) => {
    const q = b[i]!;
    return p.x === q.x && p.y === q.y && p.scale === q.scale && p.rotation === q.rotation;
  });
}

function levelPanel(levels: readonly string[], solved: SolvedShot, west: boolean): ChartPanel {
  const { camera, shot } = solved;
  const [name] = levels;
  const moves = camera.moves.filter(
    ({ move }) =>
      !move.target.camera && kindOf(move).quantity !== 'sway' && move.target.levels.includes(name!),
  );
  const level = shot.levels.find((one) => one.name === name)!;
  const keys = keysOf(levels, solved, west);
  return {
    levels,
    fields: passedFields(moves, solved),
    outlines: merged([
      ...neededOf(level, solved),
      ...startAndEnd(name!, moves, solved).map((outline) => ({
        ...outline,
        label: outline.label.replace(name!, levels.join(', ')),
      })),
    ]),
    pivots: moves.flatMap((one) => pivotOf(one, level, camera.placement.get(level.name)!)),
    between: [],
    ways: ofOneCorner(moves.flatMap((one) => levelWay(one, level, solved, keys))),
    moves,
  };
}

/** What the camera sees while a level moves: where it is when the first move starts, and when the last one ends. */
function passedFields(moves: readonly SolvedMove[], { camera, shot }: SolvedShot): PanelField[] {
  const from = Math.min(...moves.map(({ start }) => start));
  const to = Math.max(...moves.map(({ end }) => end));
  const row = (frame: number): number => Math.min(shot.length, Math.max(1, frame));
  const found: PanelField[] = [];
  for (const frame of [row(from), row(to)]) {
    const at = camera.frames[frame - 1];
    if (!at) continue;
    const corners = seen(at.x, at.y, at.width, at.rotation, shot.settings);
    if (found.some((field) => sameCorners(field.corners, corners))) continue;
    const own = camera.fields.find(({ field }) =>
      sameCorners(seen(field.xMm, field.yMm, field.widthMm, field.turnDeg, shot.settings), corners),
    );
    const standard = sameCorners(
      corners,
      rectangle(0, 0, shot.settings.field.widthMm, shot.settings.field.heightMm, 0),
    );
    const bare = own === undefined;
    const name = own?.field.name ?? '';
    found.push({ name, corners, centre: [at.x, at.y], used: true, gives: null, bare, row: frame, standard });
  }
  // One that has a name of its own says enough, where it is the only one.
  return found.map((field) =>
    found.length === 1 && (field.standard || !field.bare) ? { ...field, row: null } : field,
  );
}

/** The way of a level's middle along a slide or a pull; of a corner of its sheet while it is scaled or turned. */
function levelWay(
  one: SolvedMove,
  level: Level,
  solved: SolvedShot,
  keys: ReadonlyMap<number, readonly string[]>,
): PanelWay[] {
  const { move, graduations } = one;
  if (graduations.length < 2) return [];
  const at = solved.camera.placement.get(level.name)!;
  const { goes, quantity } = kindOf(move);
  if (goes) {
    const [hx, hy] = quantity === 'pull' ? pulledFrom(one, level, at) : [level.homeMm.xMm, level.homeMm.yMm];
    const places = graduations.map(({ x, y }): Pt => [x + hx, y + hy]);
    const named = new Map(
      legsOf(move, 'place').flatMap(({ from, to, start, end }) => [
        [start, from.label] as const,
        [end, to.label] as const,
      ]),
    );
    return [wayOf(one, places, keys, null, named, curveDrawn(move, [hx, hy]))];
  }
  const sheet = sheetSize(level, solved);
  const corners = graduations.map(({ frame }) => {
    const placed = at[Math.min(at.length, Math.max(1, frame)) - 1]!;
    return placedSheet(level, placed, sheet);
  });
  const { way, corner } = longestCorner(corners);
  return [wayOf(one, way, keys, corner)];
}

/** A truck and a turn of a level on the same rows are one way of one corner, with the marks of both. */
function ofOneCorner(ways: readonly PanelWay[]): PanelWay[] {
  const found: PanelWay[] = [];
  for (const way of ways) {
    const i = found.findIndex((other) => way.ofCorner !== null && sameStations(way, other));
    const other = found[i];
    if (!other) {
      found.push(way);
      continue;
    }
    const points = other.points.map((point, k) => {
      const names = [point.name, way.points[k]!.name].filter((name) => name !== '');
      return { ...point, name: [...new Set(names)].join('/') };
    });
    found[i] = { ...other, counted: other.counted || way.counted, points };
  }
  return found;
}

const sameStations = (a: PanelWay, b: PanelWay): boolean =>
  a.ofCorner === b.ofCorner &&
  a.points.length === b.points.length &&
  a.points.every(({ frame, at: [x, y] }, i) => {
    const other = b.points[i]!;
    return frame === other.frame && x === other.at[0] && y === other.at[1];
  });

/** Where the way of a pull begins: where the level lies when it starts. */
function pulledFrom(
  { graduations, start }: SolvedMove,
  { homeMm }: Level,
  at: readonly PlacementFrame[],
): readonly [number, number] {
  const [first, second] = graduations;
  const placed = at[Math.min(at.length, Math.max(1, start)) - 1]!;
  // Before the first row: where the first step comes from.
  const back = start < 1 ? { x: second!.x - first!.x, y: second!.y - first!.y } : { x: 0, y: 0 };
  return [homeMm.xMm + placed.x - back.x - first!.x, homeMm.yMm + placed.y - back.y - first!.y];
}

/** The point that stays, where the text names one. */
function pivotOf({ move, start }: SolvedMove, { homeMm }: Level, at: readonly PlacementFrame[]): Pt[] {
  const about = givenOf(move, 'point');
  const placed = at[Math.min(at.length, Math.max(1, start)) - 1];
  if (!about || !placed) return [];
  const { scale } = placed;
  const q = clockwise(
    turnOf(placed.rotation),
    (about.xMm - homeMm.xMm) * scale,
    (about.yMm - homeMm.yMm) * scale,
  );
  return [[homeMm.xMm + placed.x + q.x, homeMm.yMm + placed.y + q.y]];
}

interface Sheet {
  readonly width: number;
  readonly height: number;
  /** Its middle from the artwork's own. */
  readonly x: number;
  readonly y: number;
}

/** A level whose sheet has no size yet is shown as large as it must become. */
function sheetSize(level: Level, { camera, shot }: SolvedShot): Sheet {
  const made = camera.artwork.get(level.name);
  if (made?.width != null && made.height != null)
    return { width: made.width, height: made.height, x: 0, y: 0 };
  if (!made?.needed)
    return { width: shot.settings.field.widthMm, height: shot.settings.field.heightMm, x: 0, y: 0 };
  const { width, height, x, y } = made.needed;
  return { width, height, x: x - level.homeMm.xMm, y: y - level.homeMm.yMm };
}

function placedSheet({ homeMm }: Level, at: PlacementFrame, { width, height, x, y }: Sheet): Corners {
  const q = clockwise(turnOf(at.rotation), x * at.scale, y * at.scale);
  return rectangle(
    homeMm.xMm + at.x + q.x,
    homeMm.yMm + at.y + q.y,
    width * at.scale,
    height * at.scale,
    at.rotation,
  );
}

/** A still level's sheet where it lies; those of moving ones are outlines at their start and end. */
function sheetOf(level: Level, solved: SolvedShot): PanelOutline[] {
  const { camera } = solved;
  const made = camera.artwork.get(level.name);
  const at = camera.placement.get(level.name)?.[0];
  if (made?.width == null || made.height == null || level.carry || !at) return [];
  // The usual sheet under everything else says nothing.
  if (level.sizeMm === null) return [];
  const moves = camera.moves.some(
    ({ move }) => goingAlong(move).includes(level.name) || move.target.levels.includes(level.name),
  );
  if (moves) return [];
  return [{ label: level.name, corners: placedSheet(level, at, sheetSize(level, solved)), is: 'sheet' }];
}

/** Only where it tells something: for a level that has a size of its own or none, or whose edge shows. */
function neededOf(level: Level, { camera }: SolvedShot): PanelOutline[] {
  const made = camera.artwork.get(level.name);
  if (!made?.needed || level.free || level.carry) return [];
  if (level.sizeMm === null && made.width !== null && !made.edge) return [];
  const { x, y, width, height } = made.needed;
  return [{ label: level.name, corners: rectangle(x, y, width, height, 0), is: 'needed' }];
}

function startAndEnd(name: string, moves: readonly SolvedMove[], solved: SolvedShot): PanelOutline[] {
  const level = solved.shot.levels.find((one) => one.name === name);
  const at = solved.camera.placement.get(name);
  if (!level || level.carry || !at || at.length === 0) return [];
  const from = Math.min(...moves.map(({ move }) => startOf(move)));
  const to = Math.min(at.length, Math.max(...moves.map(({ end }) => end)));
  const sheet = sheetSize(level, solved);
  let first = at[Math.max(1, from) - 1]!;
  // Before the first row: where the first step comes from.
  if (from < 1)
    for (const { graduations, start } of moves) {
      const [g0, g1] = graduations;
      if (start === from && g0 && g1)
        first = { ...first, x: first.x - (g1.x - g0.x), y: first.y - (g1.y - g0.y) };
    }
  return [
    { label: name, corners: placedSheet(level, first, sheet), is: 'start' },
    { label: name, corners: placedSheet(level, at[to - 1]!, sheet), is: 'end' },
  ];
}

export function sameCorners(a: Corners, b: Corners): boolean {
  return a.every(([x, y], i) => Math.hypot(x - b[i]![0], y - b[i]![1]) < 0.01);
}

/** Outlines of one kind that lie on one another become one with all their labels. */
function merged(outlines: readonly PanelOutline[]): PanelOutline[] {
  const found: { labels: string[]; corners: Corners; is: PanelOutline['is'] }[] = [];
  for (const { label, corners, is } of outlines) {
    const other = found.find((each) => each.is === is && sameCorners(each.corners, corners));
    if (!other) found.push({ labels: [label], corners, is });
    else if (!other.labels.includes(label)) other.labels.push(label);
  }
  return found.map(({ labels, corners, is }) => ({ label: labels.join(', '), corners, is }));
}

/** Everything that a panel must have room for. */
export function panelBounds({ fields, outlines, pivots, ways }: ChartPanel): ReturnType<typeof boundsOf> {
  return boundsOf([
    ...pivots,
    ...fields.flatMap(({ corners }) => [...corners]),
    ...outlines.flatMap(({ corners }) => [...corners]),
    ...ways.flatMap(({ points, line }) => [...points.map(({ at }) => at), ...(line ?? [])]),
  ]);
}
