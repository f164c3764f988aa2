/** Cameras put together by hand, for tests of the solver. */

import type { Span } from '../../../src/language/diagnostic.js';
import { messageOf } from '../../../src/language/message.js';
import type {
  Camera,
  Direction,
  Field,
  Leg,
  LevelPlace,
  LevelValue,
  Light,
  Move,
  MoveKind,
  MoveOf,
  Point,
  Spacing,
} from '../../../src/shot/camera/camera-model.js';
import { fieldLegs, kindOf, type ParametersOf, sharing } from '../../../src/shot/camera/move-kinds.js';
import { defaults, type Settings } from '../../../src/shot/settings.js';
import type { CameraContext, CameraLevel } from '../../../src/solve/camera/camera-tracks.js';
import { solveCamera } from '../../../src/solve/camera/solve-camera.js';

let place = 0;
/** Each call another place, so that messages can be told apart. */
export const span = (): Span => ({ file: 'test.cut', start: place++, end: place });

export const LINEAR: Spacing = { form: 'linear' };
export const W = defaults.field.widthMm;
export const H = defaults.field.heightMm;

export function field(name: string, more: Partial<Field> = {}): Field {
  return {
    name,
    xMm: 0,
    yMm: 0,
    widthMm: W,
    turnDeg: 0,
    notation: 'percent',
    span: span(),
    sizeSpan: null,
    placeSpan: null,
    ...more,
  };
}

export const FULL = field('full', { notation: 'full' });

export function leg<P>(from: P, start: number, to: P, end: number, spacing: Spacing = LINEAR): Leg<P> {
  return { from, passing: [], to, start, end, spacing, span: span() };
}

/** What may be set besides: of a move, and of its parameters. */
type More<K extends MoveKind> = Partial<Pick<MoveOf<K>, 'on' | 'graduated'> & ParametersOf<K>>;

function made<K extends MoveKind>(
  kind: K,
  levels: readonly string[],
  legs: MoveOf<K>['legs'],
  parameters: ParametersOf<K>,
  more: More<K>,
): Move {
  const { on = 1, graduated = false, ...other }: { on?: number; graduated?: boolean } = more;
  const target = { camera: kindOf({ kind }).target === 'camera', levels };
  const move = {
    kind,
    target,
    legs,
    on,
    graduated,
    parameters: { ...parameters, ...other },
    gives: null,
    span: span(),
  };
  return move as unknown as Move;
}

/** Frames from..to, as the text has it: the first of them has moved. */
const during = (from: number, to: number, spacing: Spacing = LINEAR): [Leg<null>] => [
  leg(null, from - 1, null, to, spacing),
];

export const pan = (legs: readonly Leg<Field>[], more: More<'pan'> = {}): Move =>
  made('pan', [], legs, { curved: false, carry: [] }, more);

export const truck = (legs: readonly Leg<Field>[], more: More<'truck'> = {}): Move =>
  made('truck', [], legs, { quick: false, ratios: false, carry: [] }, more);

export const DIRECTIONS = { right: 0, up: 90, left: 180, down: 270 } as const;

export function direction(word: keyof typeof DIRECTIONS | number): Direction {
  return typeof word === 'number' ? { degrees: word, word: 'angle' } : { degrees: DIRECTIONS[word], word };
}

type Spread = { readonly spacing?: Spacing };

export function pull(
  levels: readonly string[],
  way: keyof typeof DIRECTIONS | number,
  distanceMm: number,
  from: number,
  to: number,
  { spacing, ...more }: More<'pull'> & Spread = {},
): Move {
  const parameters = { direction: direction(way), way: { distanceMm, rateMm: null }, loop: null };
  return made('pull', levels, during(from, to, spacing), parameters, more);
}

export function follow(
  levels: readonly string[],
  way: keyof typeof DIRECTIONS | number,
  distanceMm: number,
  from: number,
  to: number,
  { spacing, ...more }: More<'follow'> & Spread = {},
): Move {
  const parameters = { direction: direction(way), way: { distanceMm, rateMm: null } };
  return made('follow', levels, during(from, to, spacing), parameters, more);
}

export const at = (xMm: number, yMm: number, label = ''): LevelPlace => ({ xMm, yMm, label });

export const slide = (
  levels: readonly string[],
  legs: readonly Leg<LevelPlace>[],
  more: More<'slide'> = {},
): Move => made('slide', levels, legs, { curved: false }, more);

const unmarked = (legs: readonly Leg<number>[]): Leg<LevelValue>[] =>
  legs.map((one) => ({
    ...one,
    from: { label: '', value: one.from },
    passing: [],
    to: { label: '', value: one.to },
  }));

export const scale = (
  levels: readonly string[],
  legs: readonly Leg<number>[],
  about: Point | null = null,
  more: More<'levelTruck'> = {},
): Move => made('levelTruck', levels, unmarked(legs), { about, ratios: false }, more);

export const turn = (
  levels: readonly string[],
  legs: readonly Leg<number>[],
  about: Point | null = null,
  more: More<'turn'> = {},
): Move => made('turn', levels, unmarked(legs), { sense: { positive: 'cw', onward: true }, about }, more);

export const shake = (
  fromMm: number,
  toMm: number,
  from: number,
  to: number,
  more: More<'shake'> = {},
): Move => made('shake', [], during(from, to), { size: { fromMm, toMm }, sideways: false }, more);

export const sway = (
  levels: readonly string[],
  size: number,
  from: number,
  to: number,
  period: number,
  more: More<'sway'> = {},
): Move => made('sway', levels, during(from, to), { size, period, sideways: false }, more);

export function level(name: string, more: Partial<CameraLevel> = {}): CameraLevel {
  return {
    name,
    span: span(),
    homeMm: { xMm: 0, yMm: 0 },
    sizeMm: null,
    timed: false,
    free: false,
    carry: false,
    shown: () => true,
    appears: (frame) => frame === 1,
    ...more,
  };
}

export interface Scene {
  readonly length?: number;
  readonly levels?: readonly CameraLevel[];
  readonly moves?: readonly Move[];
  readonly light?: readonly Light[];
  readonly flashing?: readonly string[];
  readonly fields?: readonly Field[];
  readonly rest?: Field;
  readonly settings?: Partial<Settings>;
}

/** The camera rests where its first move starts, else on the standard field. */
export function cameraOf({ moves: typed = [], light = [], flashing = [], fields, rest }: Scene): Camera {
  const moves = sharing(typed);
  const legs = moves.flatMap(fieldLegs);
  const all = legs.flatMap(({ from, to }) => [from, to]);
  const start = all[0] ?? FULL;
  return { fields: fields ?? [...new Set(all)], rest: rest ?? start, moves, light, flashing };
}

export function contextOf({ length = 48, levels = [level('BG')], settings = {} }: Scene): CameraContext {
  const all = { ...defaults, ...settings };
  return { length, fps: all.fps, levels, settings: all };
}

export function solved(scene: Scene) {
  return solveCamera(cameraOf(scene), contextOf(scene));
}

export const codes = (scene: Scene): string[] => solved(scene).diagnostics.map(({ code }) => code);

/** Parameters of every message with this code, in order. */
export const parametersOf = (scene: Scene, code: string): unknown[] =>
  solved(scene)
    .diagnostics.filter((one) => one.code === code)
    .map(({ parameters }) => parameters);

/** Messages of one code. */
export function said(scene: Scene, code: string): string[] {
  return solved(scene)
    .diagnostics.filter((each) => each.code === code)
    .map((one) => messageOf(one, 'en'));
}

/** Fails where a number is none; what was typed may hold such, and is passed over. */
export function expectSound(value: unknown): void {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`a number is ${value}`);
    return;
  }
  if (value instanceof Map) for (const each of value.values()) expectSound(each);
  else if (value !== null && typeof value === 'object') {
    for (const [key, each] of Object.entries(value)) if (key !== 'move' && key !== 'field') expectSound(each);
  }
}
