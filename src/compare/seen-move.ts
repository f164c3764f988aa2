/** What moves are called, and the rows that they are written with. */

import type { Move } from '../shot/camera/camera-model.js';
import { growthOf, kindOf, parametersOf, rowsOf as rowsOfMove } from '../shot/camera/move-facts.js';
import type { LegForm, LegForms } from '../shot/camera/move-kinds.js';
import type { Frames } from '../shot/shot.js';
import type { SolvedMove } from '../solve/camera/solved-camera.js';
import { figure } from '../words/number-format.js';
import type { MoveSeen } from './change.js';

/** The rows that a move is written with: `@1 > @24` stands on 1 and on 24, `1..24` moves on all of them. */
export function sheetRowsOf({ move }: SolvedMove): Frames {
  const { from, to } = rowsOfMove(move);
  return { from: Math.max(1, from), to };
}

/** Null: its legs have no places. */
const NAMES: { readonly [L in LegForm]: ((end: LegForms[L]) => string) | null } = {
  field: ({ name }) => name,
  place: ({ label, xMm, yMm }) => label || `${round(xMm)},${round(yMm)}`,
  scale: (value) => `${round(value * 100)}%`,
  angle: (value) => `${round(Math.abs(value))}°`,
  way: null,
  swing: null,
};

/** Places on the way by name; scales in percent, turns in degrees. */
export function placeNamesOf(move: Move): string[] {
  const name = NAMES[kindOf(move).legs] as ((end: unknown) => string) | null;
  return name ? [move.legs[0]!.from, ...move.legs.map(({ to }) => to)].map(name) : [];
}

export const round = (value: number): string => figure(value, { decimals: 3 });

export function seenMove(move: Move): MoveSeen {
  const growth = growthOf(move);
  const grows = growth.some((one) => one > 0);
  const shrinks = growth.some((one) => one < 0);
  return {
    move: move.kind,
    levels: move.target.levels,
    places: placeNamesOf(move),
    sense: grows === shrinks ? null : grows ? 'in' : 'out',
    quick: parametersOf(move).some(({ name, value }) => name === 'quick' && value === true),
  };
}
