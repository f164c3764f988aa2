/**
 * The table of moves. A kind of move says what it drives and how; everything else (overlaps, order, graduations, checks of
 * speed) follows from its entry and its path.
 */

import type { Span } from '../../language/diagnostic.js';
import type { Move, MoveOf, Spacing } from '../../shot/camera.js';
import { driveFields, driveFollow } from './field.js';
import { driveScale, driveTurn } from './level.js';
import type { Path } from './path.js';
import { drivePull, driveSlide } from './place.js';
import { driveRoll, driveShake } from './shake.js';
import type { Quantity, Stage } from './tracks.js';

/** A leg in time, whatever it leads to. */
export interface LegView {
  readonly start: number;
  readonly end: number;
  readonly spacing: Spacing;
  readonly span: Span;
}

export interface MoveKind<K extends Move['kind']> {
  readonly quantity: Quantity;
  /** What it drives: the camera, or each level that it names. */
  readonly target: 'camera' | 'levels';
  /** Two at once of one quantity of one target are an error; else they add up. */
  readonly alone: boolean;
  /** Moves are solved in the order of their phases, since directions, pivots and swings need what came before. */
  readonly phase: number;
  /** Whether graduations in mm can be given by hand: it goes a way from place to place. */
  readonly goes: boolean;
  /** Whether it carries the picture past the eye, so that its steps can strobe. */
  readonly passes: boolean;
  readonly legs: (move: MoveOf<K>) => readonly LegView[];
  readonly drive: (move: MoveOf<K>, stage: Stage) => Path;
}

const ranged = (move: { start: number; end: number; spacing: Spacing; span: Span }): LegView[] => [move];
const swung = (move: { frames: { from: number; to: number }; span: Span }): LegView[] => [
  { start: move.frames.from - 1, end: move.frames.to, spacing: { form: 'linear' }, span: move.span },
];

const camera = { quantity: 'field', target: 'camera', alone: true, phase: 1 } as const;
const level = { target: 'levels', alone: true } as const;

const table: { readonly [K in Move['kind']]: MoveKind<K> } = {
  pan: { ...camera, goes: true, passes: true, legs: (m) => m.legs, drive: driveFields },
  truck: { ...camera, goes: false, passes: true, legs: (m) => m.legs, drive: driveFields },
  follow: { ...camera, goes: true, passes: true, legs: ranged, drive: driveFollow },
  shake: {
    quantity: 'shake',
    target: 'camera',
    alone: true,
    phase: 2,
    goes: false,
    passes: false,
    legs: swung,
    drive: driveShake,
  },
  slide: {
    ...level,
    quantity: 'slide',
    phase: 3,
    goes: true,
    passes: true,
    legs: (m) => m.legs,
    drive: driveSlide,
  },
  pull: {
    ...level,
    quantity: 'pull',
    alone: false,
    phase: 3,
    goes: true,
    passes: true,
    legs: ranged,
    drive: drivePull,
  },
  levelTruck: {
    ...level,
    quantity: 'scale',
    phase: 4,
    goes: false,
    passes: false,
    legs: (m) => m.legs,
    drive: driveScale,
  },
  turn: {
    ...level,
    quantity: 'turn',
    phase: 5,
    goes: false,
    passes: false,
    legs: (m) => m.legs,
    drive: driveTurn,
  },
  roll: { ...level, quantity: 'sway', phase: 6, goes: false, passes: false, legs: swung, drive: driveRoll },
};

/** The entry of a move, to be used with that move only. */
export function kindOf(move: Move): MoveKind<Move['kind']> {
  return table[move.kind] as unknown as MoveKind<Move['kind']>;
}

export const legsOf = (move: Move): readonly LegView[] => kindOf(move).legs(move);

export const startOf = (move: Move): number => legsOf(move)[0]?.start ?? 0;
export const endOf = (move: Move): number => legsOf(move).at(-1)?.end ?? 0;

/** What the move drives, as keys: `camera field`, `A slide`. A level cannot be called `camera field`: names hold no blank. */
export function drives(move: Move): string[] {
  const { target, quantity } = kindOf(move);
  if (target === 'camera') return [`camera ${quantity}`];
  return 'levels' in move ? move.levels.map((name) => `${name} ${quantity}`) : [];
}
