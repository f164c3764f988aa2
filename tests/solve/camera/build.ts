/** Cameras put together by hand, for tests of the solver. */

import type { Span } from '../../../src/language/diagnostic.js';
import { messageOf } from '../../../src/language/message.js';
import type {
  Camera,
  Direction,
  Field,
  Leg,
  Light,
  Move,
  MoveOf,
  Place,
  Spacing,
} from '../../../src/shot/camera.js';
import { defaults, type Settings } from '../../../src/shot/settings.js';
import type { CameraContext, CameraLevel } from '../../../src/solve/camera/context.js';
import { solveCamera } from '../../../src/solve/camera/solve.js';

let place = 0;
/** Each call another place, so that messages can be told apart. */
export const span = (): Span => ({ file: 'test.cut', start: place++, end: place });

export const LINEAR: Spacing = { form: 'linear' };
export const W = defaults.field.widthMm;
export const H = defaults.field.heightMm;

export function field(name: string, more: Partial<Field> = {}): Field {
  return { name, xMm: 0, yMm: 0, widthMm: W, turnDeg: 0, notation: 'percent', span: span(), ...more };
}

export const FULL = field('full', { notation: 'full' });

export function leg<P>(from: P, start: number, to: P, end: number, spacing: Spacing = LINEAR): Leg<P> {
  return { from, to, start, end, spacing, span: span() };
}

const moved = () => ({ span: span(), on: 1, ticks: false });

export function pan(legs: readonly Leg<Field>[], more: Partial<MoveOf<'pan'>> = {}): Move {
  return { ...moved(), kind: 'pan', legs, carry: [], ...more };
}

export function truck(legs: readonly Leg<Field>[], more: Partial<MoveOf<'truck'>> = {}): Move {
  return { ...moved(), kind: 'truck', quick: false, log: false, legs, carry: [], ...more };
}

export const DIRECTIONS = { right: 0, up: 90, left: 180, down: 270 } as const;

export function direction(word: keyof typeof DIRECTIONS | number): Direction {
  return typeof word === 'number' ? { degrees: word, word: 'angle' } : { degrees: DIRECTIONS[word], word };
}

/** Frames from..to, as the text has it: the first of them has moved. */
export function pull(
  levels: readonly string[],
  way: keyof typeof DIRECTIONS | number,
  distanceMm: number,
  from: number,
  to: number,
  more: Partial<MoveOf<'pull'>> = {},
): Move {
  const common = {
    direction: direction(way),
    way: { distanceMm, rateMm: null },
    spacing: LINEAR,
    loopMm: null,
  };
  return { ...moved(), kind: 'pull', levels, start: from - 1, end: to, ...common, ...more };
}

export function follow(
  levels: readonly string[],
  way: keyof typeof DIRECTIONS | number,
  distanceMm: number,
  from: number,
  to: number,
  more: Partial<MoveOf<'follow'>> = {},
): Move {
  const common = { direction: direction(way), way: { distanceMm, rateMm: null }, spacing: LINEAR };
  return { ...moved(), kind: 'follow', levels, start: from - 1, end: to, ...common, ...more };
}

export const at = (xMm: number, yMm: number, label = ''): Place => ({ xMm, yMm, label });

export function slide(
  levels: readonly string[],
  legs: readonly Leg<Place>[],
  more: Partial<MoveOf<'slide'>> = {},
): Move {
  return { ...moved(), kind: 'slide', levels, legs, ...more };
}

export function scale(
  levels: readonly string[],
  legs: readonly Leg<number>[],
  about: { xMm: number; yMm: number } | null = null,
  more: Partial<MoveOf<'levelTruck'>> = {},
): Move {
  return { ...moved(), kind: 'levelTruck', levels, legs, about, log: false, ...more };
}

export function turn(
  levels: readonly string[],
  legs: readonly Leg<number>[],
  about: { xMm: number; yMm: number } | null = null,
  more: Partial<MoveOf<'turn'>> = {},
): Move {
  return { ...moved(), kind: 'turn', sense: 'cw', levels, legs, about, ...more };
}

export function shake(
  fromMm: number,
  toMm: number,
  from: number,
  to: number,
  more: Partial<MoveOf<'shake'>> = {},
): Move {
  return { ...moved(), kind: 'shake', fromMm, toMm, frames: { from, to }, sideways: false, ...more };
}

export function roll(
  levels: readonly string[],
  sizeMm: number,
  from: number,
  to: number,
  periodFrames: number,
  more: Partial<MoveOf<'roll'>> = {},
): Move {
  return {
    ...moved(),
    kind: 'roll',
    levels,
    sizeMm,
    frames: { from, to },
    periodFrames,
    sideways: false,
    ...more,
  };
}

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
export function cameraOf({ moves = [], light = [], flashing = [], fields, rest }: Scene): Camera {
  const first = moves.find((move) => move.kind === 'pan' || move.kind === 'truck');
  const start = first && (first.kind === 'pan' || first.kind === 'truck') ? first.legs[0]!.from : FULL;
  const all = moves.flatMap((move) =>
    move.kind === 'pan' || move.kind === 'truck' ? move.legs.flatMap((each) => [each.from, each.to]) : [],
  );
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

/** Messages of one code. */
export function said(scene: Scene, code: string): string[] {
  return solved(scene)
    .diagnostics.filter((each) => each.code === code)
    .map((one) => messageOf(one, 'en'));
}
