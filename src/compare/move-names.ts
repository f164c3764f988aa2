/** What moves are called, and the rows that they are written with. */

import type { Leg, Move, Place } from '../shot/camera.js';
import type { Frames } from '../shot/shot.js';
import type { SolvedMove } from '../solve/camera/solved.js';
import type { MoveSeen } from './change.js';

type AnyLeg = Leg<unknown>;

export const legsOf = (move: Move): readonly AnyLeg[] => ('legs' in move ? move.legs : []);
export const levelsOf = (move: Move): readonly string[] => ('levels' in move ? move.levels : []);
export const isCamera = (move: Move): boolean => move.kind === 'pan' || move.kind === 'truck';

/** The rows that a move is written with: `@1 > @24` stands on 1 and on 24, `1..24` moves on all of them. */
export function rowsOf({ move, start, end }: SolvedMove): Frames {
  return { from: 'legs' in move ? Math.max(1, start) : start + 1, to: end };
}

/** Places on the way by name; scales in percent, turns in degrees. */
export function placesOf(move: Move): string[] {
  const name = (place: unknown): string => {
    if (typeof place === 'number')
      return move.kind === 'turn' ? `${round(Math.abs(place))}°` : `${round(place * 100)}%`;
    const { name, label, xMm, yMm } = place as { name?: string; label?: string } & Partial<Place>;
    return name ?? (label || `${round(xMm!)},${round(yMm!)}`);
  };
  const legs = legsOf(move);
  return legs.length === 0 ? [] : [name(legs[0]!.from), ...legs.map(({ to }) => name(to))];
}

export const round = (value: number): number => Math.round(value * 1000) / 1000;

export function seenMove(move: Move): MoveSeen {
  const sizes = legsOf(move).map(({ from, to }) => {
    if (move.kind === 'truck')
      return (from as { widthMm: number }).widthMm - (to as { widthMm: number }).widthMm;
    return move.kind === 'levelTruck' ? (to as number) - (from as number) : 0;
  });
  const grows = sizes.some((one) => one > 0);
  const shrinks = sizes.some((one) => one < 0);
  return {
    move: move.kind,
    levels: levelsOf(move),
    places: placesOf(move),
    sense: grows === shrinks ? null : grows ? 'in' : 'out',
    quick: move.kind === 'truck' && move.quick,
  };
}
