/** What stands in the camera column, and which moves stand beside which. */

import type { Move } from '../../shot/camera/camera-model.js';
import { isCurved, kindOf, legsOf } from '../../shot/camera/move-kinds.js';
import type { Settings } from '../../shot/settings.js';
import type { Level, Shot } from '../../shot/shot.js';
import { feetAndFrames, rowName, secondsAndFrames } from '../../shot/time-notation.js';
import type { SolvedLight, SolvedMove } from '../../solve/camera/solved-camera.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import { wordsOf } from '../../words/words.js';
import type { Neighbours } from '../page-look.js';
import { unitOf } from '../sheet-geometry.js';
import {
  arrowsOf,
  type CameraLabels,
  type CameraSign,
  degrees,
  graduated,
  joined,
  type LabelContext,
  lightKind,
  moveKind,
  outlined,
  type PrintedLengths,
  percent,
  printedLengths,
} from './move-labels.js';

/** One move or light, as the column and the memo need it. */
export interface CameraItem {
  readonly sign: CameraSign;
  /** Rows of its bars. */
  readonly first: number;
  readonly last: number;
  /** The first row that it needs: that of graduation 0, where it is a row before the bar. */
  readonly from: number;
  readonly names: readonly string[];
  readonly memo: string;
  /** Places that are named, by frame. */
  readonly labels: ReadonlyMap<number, string>;
  /** New keys of levels that go along, by frame, where graduations stand: `A2`. */
  readonly keys: ReadonlyMap<number, string>;
  /** Directions on screen, degrees counter-clockwise from right, by the frame from which they hold. */
  readonly arrows: ReadonlyMap<number, number>;
  /** Numbered graduations on every row, and what stands beside each. */
  readonly graduated: boolean;
  readonly numbers: ReadonlyMap<number, { readonly number: number; readonly beside: string }>;
  readonly solved: SolvedMove | null;
  readonly light: SolvedLight | null;
}

export interface LaneItem {
  readonly item: CameraItem;
  readonly lane: number;
  /** It leaves on the row on which the move before it in the lane has arrived: the place is named there already. */
  readonly goesOn: boolean;
}

export interface CameraPlan {
  readonly items: readonly CameraItem[];
  readonly placed: readonly LaneItem[];
  /** Of each lane its width, in widths of the narrowest. */
  readonly lanes: readonly number[];
  /** What each would take besides, in the same widths, if the column had room to spare. */
  readonly wishes: readonly number[];
  readonly fixed: string | null;
  /** Levels whose edge comes into the picture, and on which rows. */
  readonly edges: readonly string[];
  readonly telling: LabelContext;
}

/** Lanes with numbers need room for numbers, labels and steps. */
const GRADUATED_LANE = 2;

/** Letters beside a number for which such a lane has room, and how many more one width has. */
const LANE_LETTERS = 8;
const LETTERS_A_WIDTH = 8;

/** How many widths more a lane should have so that the keys of several levels and a step stand on one row. */
function wishOf({ keys, numbers }: CameraItem): number {
  const letters = [...keys].map(([frame, key]) => key.length + (numbers.get(frame)?.beside.length ?? 0));
  return Math.max(0, ...letters.map((count) => (count - LANE_LETTERS) / LETTERS_A_WIDTH));
}

/** What of the settings decides how moves are named. */
export type FormSettings = Pick<Settings, 'labels' | 'convention' | 'lengths'>;

export function cameraPlan(
  solved: SolvedShot,
  form: FormSettings,
  neighbours: Neighbours | undefined,
): CameraPlan {
  const { shot, camera } = solved;
  const west = form.convention === 'west';
  const telling = tellingOf(shot, form, neighbours);
  const unit = unitOf(form, shot.fps);
  const row = (frame: number): string => rowName(frame, unit, west);
  const items = [
    ...camera.moves.map((move) =>
      moveItem(move, solved, { telling, west, artwork: !needsCameraChart(solved) }),
    ),
    ...camera.light.map((light) => lightItem(light, shot.length, telling)),
  ]
    .filter((item) => item.first <= shot.length && item.last >= item.first)
    .map((item): CameraItem => {
      const before = beforeFirst(item, solved);
      const until = before === '' ? '' : `, ${telling.words.until(before, row(item.first))}`;
      return { ...item, memo: `${item.memo}  ${row(item.first)}–${row(item.last)}${until}` };
    });
  const { rest } = shot.camera;
  const { fix } = telling.words;
  const placed = intoLanes(items);
  const lanes: number[] = [1];
  const wishes: number[] = [0];
  for (const { item, lane } of placed) {
    lanes[lane] = Math.max(lanes[lane] ?? 1, item.graduated ? GRADUATED_LANE : 1);
    wishes[lane] = Math.max(wishes[lane] ?? 0, wishOf(item));
  }
  return {
    items,
    placed,
    lanes,
    wishes,
    fixed: !camera.fixed ? null : rest.notation === 'full' ? fix : `${fix} ${rest.name}`,
    edges: [...camera.artwork].flatMap(([name, { edge }]) => {
      if (!edge) return [];
      const by = telling.lengths.text(edge.worstMm);
      const told = wordsOf(form).cameraPages.edgeShows(row(edge.frame), by, row(edge.worstFrame));
      return [`! ${name}: ${told}`];
    }),
    telling,
  };
}

/** Names of places and graduations of the frames after `since`, up to `frame`. */
export function saidOn({ labels, numbers }: CameraItem, since: number, frame: number): string {
  const names: string[] = [];
  for (let at = since + 1; at <= frame; at++) if (labels.has(at)) names.push(labels.get(at)!);
  const graduation = numbers.get(frame);
  return [
    names.length > 0 ? `(${names.join(' ')})` : '',
    graduation ? `${graduation.number}${graduation.beside && ` ${graduation.beside}`}` : '',
  ]
    .filter(Boolean)
    .join(' ');
}

/** How large or how far turned a level already is on the rows before its move; '' where it is as drawn, or has moved before. */
function beforeFirst({ first, solved }: CameraItem, { camera }: SolvedShot): string {
  if (!solved || first < 2) return '';
  const { move } = solved;
  const [name] = move.target.levels;
  const placed = name === undefined ? undefined : camera.placement.get(name)?.[0];
  const [scaled] = legsOf(move, 'scale');
  if (scaled) {
    const { value } = scaled.from;
    return value !== 1 && placed?.scale === value ? percent(value) : '';
  }
  const [turned] = legsOf(move, 'angle');
  const angle = turned?.from.value ?? 0;
  return angle !== 0 && placed?.rotation === angle ? degrees(angle, move) : '';
}

export function tellingOf(shot: Shot, form: FormSettings, neighbours: Neighbours | undefined): LabelContext {
  const west = form.convention === 'west';
  return {
    words: wordsOf(form).moves,
    lengths: printedLengths(form),
    fieldMm: shot.settings.field.widthMm,
    length: (frames) => (west ? feetAndFrames(frames) : secondsAndFrames(frames, shot.fps)),
    neighbour: (way) => (way === 'in' ? neighbours?.before : neighbours?.after) ?? null,
  };
}

function rowsOf<T>(kind: CameraLabels<T>, it: T, length: number): { first: number; last: number } {
  return { first: Math.max(1, kind.first(it)), last: Math.min(length, kind.last(it)) };
}

interface Asked {
  readonly telling: LabelContext;
  readonly west: boolean;
  /** Whether the memo tells how large the artwork must be, since no chart does. */
  readonly artwork: boolean;
}

/** `BG pull ← 2 mm/f (sheet at least 640 × 163 mm)` */
function memoOf({ move }: SolvedMove, solved: SolvedShot, { telling, artwork }: Asked): string {
  const memo = moveKind.memo(move, telling);
  if (!artwork) return memo;
  const levels = solved.shot.levels.filter(({ name }) => outlined(move).includes(name));
  const sizes = levels.flatMap((level) => neededArtwork(level, solved, telling.lengths) || []);
  return [memo, ...[...new Set(sizes)].map((size) => telling.words.artwork(size))].join(' ');
}

/** Frames on which a level that goes along shows a new key: `A2`. */
function keysAlong(move: Move, solved: SolvedShot, west: boolean): ReadonlyMap<number, string> {
  const all = outlined(move).map((name) => [name, keysOf([name], solved, west)] as const);
  const found = new Map<number, string>();
  for (const [name, keys] of all)
    for (const [frame, numbers] of keys)
      found.set(frame, joined(found.get(frame) ?? '', ...numbers.map((number) => `${name}${number}`)));
  return found;
}

function moveItem(solved: SolvedMove, shot: SolvedShot, asked: Asked): CameraItem {
  const { telling, west } = asked;
  const { move, graduations } = solved;
  const { first, last } = rowsOf(moveKind, move, shot.shot.length);
  const sign = moveKind.sign(move);
  const numbered = sign.form === 'line' && graduated(move);
  const named = graduations.flatMap(({ frame, label }) => (label === '' ? [] : [[frame, label] as const]));
  const own = moveKind.labels?.(move, telling) ?? [];
  return {
    sign,
    first,
    last,
    from: numbered ? Math.max(1, solved.start) : first,
    names: moveKind.names(move, telling),
    memo: memoOf(solved, shot, asked),
    labels: new Map([...named, ...own]),
    keys: numbered ? keysAlong(move, shot, west) : new Map(),
    arrows: arrowsOf(move, (frame) => shot.camera.frames[Math.max(1, frame) - 1]?.rotation ?? 0),
    graduated: numbered,
    numbers: new Map(
      numbered
        ? graduations.map((graduation, i) => {
            const { frame, number } = graduation;
            const beside = moveKind.beside?.(graduation, graduations[i - 1] ?? null, telling, move) ?? '';
            return [frame, { number, beside }] as const;
          })
        : [],
    ),
    solved,
    light: null,
  };
}

function lightItem(light: SolvedLight, length: number, telling: LabelContext): CameraItem {
  const kind = lightKind(light.light);
  const { first, last } = rowsOf(kind, light.light, length);
  return {
    sign: kind.sign(light.light),
    first,
    last,
    from: first,
    names: kind.names(light.light, telling),
    memo: kind.memo(light.light, telling),
    labels: new Map(),
    keys: new Map(),
    arrows: new Map(),
    graduated: false,
    numbers: new Map(),
    solved: null,
    light,
  };
}

/** Each item in the first lane that is free on its rows: no more lanes than moves that run at the same time. */
function intoLanes(items: readonly CameraItem[]): LaneItem[] {
  const lanes: CameraItem[] = [];
  const onCamera = (item: CameraItem): number => (item.solved?.move.target.camera ? 0 : 1);
  return [...items]
    .sort((a, b) => a.from - b.from || onCamera(a) - onCamera(b))
    .map((item) => {
      let lane = lanes.findIndex((before) => follows(item, before));
      if (lane < 0) lane = lanes.findIndex((before) => before.last < item.from);
      if (lane < 0) lane = lanes.length;
      const before = lanes[lane];
      lanes[lane] = item;
      return { item, lane, goesOn: before !== undefined && follows(item, before) };
    });
}

/** Whether a move goes on where another ends, on one row: both are drawn in one lane. */
function follows(item: CameraItem, before: CameraItem): boolean {
  const plain = (one: CameraItem): boolean =>
    one.sign.form === 'line' && !one.graduated && one.solved !== null;
  if (!plain(item) || !plain(before) || before.last !== item.first || before.first === before.last)
    return false;
  const levels = (one: CameraItem): string => one.solved!.move.target.levels.join();
  const name = item.labels.get(item.first);
  return name !== undefined && name === before.labels.get(item.first) && levels(item) === levels(before);
}

/** New key drawings by row: `2`, or `A 2` where several levels go along. In the west by their final numbers. */
export function keysOf(
  levels: readonly string[],
  { levels: solved }: SolvedShot,
  west: boolean,
): ReadonlyMap<number, readonly string[]> {
  const found = new Map<number, string[]>();
  const named = solved.filter(({ name }) => levels.includes(name));
  for (const { name, exposures } of named)
    for (const { frame, kind, drawing, cel, starts } of exposures) {
      if (kind !== 'key' || !starts) continue;
      const key = String(west ? cel : drawing);
      const all = found.get(frame) ?? [];
      all.push(named.length > 1 ? `${name} ${key}` : key);
      found.set(frame, all);
    }
  return found;
}

// ---- which moves a line of the memo tells whole, so that no camera chart need be printed for them

/** Every step like every other: one line of words tells all. */
export function isConstant({ move, graduations }: SolvedMove): boolean {
  const { goes, legs } = kindOf(move);
  // A bend needs its places, however even its speed.
  if (legs === 'swing' || isCurved(move) || move.on > 1 || move.legs.length > 1) return false;
  const steps = graduations
    .slice(1)
    .map(({ stepMm, value }, i) => (goes ? stepMm : (value ?? 0) - (graduations[i]!.value ?? 0)));
  return steps.every((step) => Math.abs(step - steps[0]!) < 1e-6);
}

/** A swing; a pull or a follow at constant speed, whose graduations were not asked for. */
function isTold(solved: SolvedMove): boolean {
  const { legs } = kindOf(solved.move);
  return legs === 'swing' || (legs === 'way' && !solved.move.graduated && isConstant(solved));
}

/** Something moves that the memo cannot tell, or the camera stands on a field that is not the standard one. */
export function needsCameraChart({ camera, shot }: SolvedShot): boolean {
  const { widthMm } = shot.settings.field;
  const moved = camera.moves.some((move) => !isTold(move));
  const rest = shot.camera.rest;
  const away =
    Math.hypot(rest.xMm, rest.yMm) > 1e-6 || Math.abs(rest.widthMm - widthMm) > 1e-6 || rest.turnDeg !== 0;
  return moved || away;
}

/**
 * The size of artwork that a moving level needs, where no chart is printed that tells it: `640 × 163 mm`. '' where any will do
 * (a level with the usual sheet that covers the picture).
 */
export function neededArtwork(level: Level, { camera }: SolvedShot, lengths: PrintedLengths): string {
  const made = camera.artwork.get(level.name);
  if (!made?.needed || made.loop || level.free || level.carry) return '';
  if (level.sizeMm === null && made.width !== null && !made.edge) return '';
  return lengths.area(lengths.up(made.needed.width), lengths.up(made.needed.height));
}

// ----
// The camera's lines of the memo: one for each move and each light, or that nothing moves; before them the levels whose edge shows.

export function cameraMemo({ edges, fixed, items }: CameraPlan): string[] {
  return [...edges, ...(fixed === null ? [] : [fixed]), ...items.map(({ memo }) => memo)];
}
