/**
 * One smooth way through several places, measured along itself: a centripetal Catmull-Rom curve. Each piece between two places is a cubic
 * whose time is the square root of its chord; this is the only such choice without a loop or a cusp in a piece (C. Yuksel, S. Schaefer,
 * J. Keyser, “Parameterization and applications of Catmull-Rom curves”, Computer-Aided Design 43, 2011). It was taken before a natural
 * cubic spline since moving a place changes no more than two pieces on each side of it: a retake leaves the rest of the drawn way alone,
 * and no piece swings out further than its neighbours make it.
 *
 * At a place the curve halves the bend: there its direction is the sum of the unit vectors of both chords. Before the first and behind the
 * last place, where there is no neighbour, a piece is the parabola through the three places there; three places are one parabola.
 */

import type { Leg, Move, Point } from '../../shot/camera/camera-model.js';
import { isCurved, placesOf } from '../../shot/camera/move-kinds.js';
import type { Vector } from './plane-turns.js';

export interface SmoothCurve {
  /** Along the curve from the first place to each, mm. */
  readonly lengths: readonly number[];
  /** The place so far along it; before the first and behind the last place it goes on straight. */
  at(mm: number): Vector;
  /** The way in which it leads there, a vector of length 1; null where all places are one. */
  directionAt(mm: number): Vector | null;
}

/** The way of a curved move, leg by leg. */
export interface CurvedLegs {
  readonly legs: readonly {
    readonly lengthMm: number;
    /** With share p of its length done. */
    at(p: number): Vector;
    directionAt(p: number): Vector | null;
  }[];
}

/** Null for a move that goes straight. Fields by their centres, marks by their places. */
export function curveOf({ parameters, legs: typed }: Pick<Move, 'parameters' | 'legs'>): CurvedLegs | null {
  if (!isCurved({ parameters } as Move)) return null;
  const legs = typed as readonly Leg<unknown>[] as readonly Leg<Point>[];
  const curve = smoothCurve(placesOf(legs).map(({ xMm, yMm }) => ({ x: xMm, y: yMm })));
  let place = 0;
  return {
    legs: legs.map(({ passing }) => {
      const startMm = curve.lengths[place]!;
      place += passing.length + 1;
      const endMm = curve.lengths[place]!;
      const lengthMm = endMm - startMm;
      return {
        lengthMm,
        // The end is the place itself, whatever adding up makes of it.
        at: (p) => curve.at(p === 1 ? endMm : startMm + p * lengthMm),
        directionAt: (p) => curve.directionAt(startMm + p * lengthMm),
      };
    }),
  };
}

/** A cubic from one place to the next, u from 0 to 1: p + v u + b u² + a u³. */
interface Piece {
  readonly p: Vector;
  readonly v: Vector;
  readonly b: Vector;
  readonly a: Vector;
  readonly startMm: number;
  readonly lengthMm: number;
}

/** Places nearer to each other are one: nothing bends between them. */
const ONE_PLACE_MM = 1e-6;

const plus = (a: Vector, b: Vector, by = 1): Vector => ({ x: a.x + b.x * by, y: a.y + b.y * by });
const scaled = (a: Vector, by: number): Vector => ({ x: a.x * by, y: a.y * by });
const apart = (a: Vector, b: Vector): number => Math.hypot(b.x - a.x, b.y - a.y);

/** `places`: one at least. Where one is repeated the curve stands still between the two. */
export function smoothCurve(places: readonly Vector[]): SmoothCurve {
  const own: Vector[] = [];
  const indices = places.map((place) => {
    const last = own.at(-1);
    if (!last || apart(last, place) > ONE_PLACE_MM) own.push(place);
    return own.length - 1;
  });
  const pieces = piecesOf(own);
  const ends = [0, ...pieces.map(({ startMm, lengthMm }) => startMm + lengthMm)];
  const whole = ends.at(-1)!;
  const find = (mm: number): { piece: Piece; u: number } => {
    const piece = pieces.findLast(({ startMm }) => mm >= startMm) ?? pieces[0]!;
    return { piece, u: parameterAt(piece, mm - piece.startMm) };
  };
  const directionAt = (mm: number): Vector | null => {
    if (pieces.length === 0) return null;
    const { piece, u } = find(Math.max(0, Math.min(whole, mm)));
    const v = velocity(piece, u);
    const speed = Math.hypot(v.x, v.y);
    // Where it turns right back it stands still for a moment, and leads on along the chord.
    return speed > 1e-12 ? scaled(v, 1 / speed) : unit(piece.p, position(piece, 1));
  };
  return {
    lengths: indices.map((index) => ends[index]!),
    directionAt,
    at(mm) {
      const at = ends.indexOf(mm);
      if (at >= 0) return own[at]!;
      if (pieces.length === 0) return own[0]!;
      if (mm < 0) return plus(own[0]!, directionAt(0)!, mm);
      if (mm > whole) return plus(own.at(-1)!, directionAt(whole)!, mm - whole);
      const { piece, u } = find(mm);
      return position(piece, u);
    },
  };
}

const unit = (a: Vector, b: Vector): Vector => scaled(plus(b, a, -1), 1 / apart(a, b));

function piecesOf(own: readonly Vector[]): Piece[] {
  const chords = own.slice(1).map((to, i) => plus(to, own[i]!, -1));
  const times = chords.map(({ x, y }) => Math.sqrt(Math.hypot(x, y)));
  /** mm for each unit of time along a chord. */
  const slopes = chords.map((chord, i) => scaled(chord, 1 / times[i]!));
  const tangent = (i: number): Vector => {
    if (slopes.length === 1) return slopes[0]!;
    // At the ends the derivative of the parabola through three places, elsewhere that of the same parabola at its middle one.
    const [before, after] = i === 0 ? [0, 1] : i === slopes.length ? [i - 2, i - 1] : [i - 1, i];
    const [h, k] = [times[before!]!, times[after!]!];
    const bend = scaled(plus(slopes[after!]!, slopes[before!]!, -1), 1 / (h + k));
    if (i === 0) return plus(slopes[0]!, bend, -h);
    if (i === slopes.length) return plus(slopes[i - 1]!, bend, k);
    return plus(slopes[before!]!, bend, h);
  };
  let startMm = 0;
  return chords.map((chord, i) => {
    const v = scaled(tangent(i), times[i]!);
    const w = scaled(tangent(i + 1), times[i]!);
    const piece = {
      p: own[i]!,
      v,
      b: plus(plus(scaled(chord, 3), v, -2), w, -1),
      a: plus(plus(v, w), chord, -2),
      startMm,
      lengthMm: 0,
    };
    const lengthMm = lengthTo(piece, 1);
    startMm += lengthMm;
    return { ...piece, lengthMm };
  });
}

const position = ({ p, v, b, a }: Piece, u: number): Vector => ({
  x: p.x + u * (v.x + u * (b.x + u * a.x)),
  y: p.y + u * (v.y + u * (b.y + u * a.y)),
});

const velocity = ({ v, b, a }: Pick<Piece, 'v' | 'b' | 'a'>, u: number): Vector => ({
  x: v.x + u * (2 * b.x + 3 * u * a.x),
  y: v.y + u * (2 * b.y + 3 * u * a.y),
});

/** Gauss-Legendre with five points: abscissae and weights on [-1, 1] (NIST Digital Library of Mathematical Functions, 3.5). */
const GAUSS = [
  [0, 128 / 225],
  [Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
] as const;

/** Parts that are integrated one by one: the speed of a cubic changes smoothly within each. */
const PARTS = 16;

function lengthBetween(piece: Pick<Piece, 'v' | 'b' | 'a'>, from: number, to: number): number {
  const [middle, half] = [(from + to) / 2, (to - from) / 2];
  const speed = (u: number) => {
    const v = velocity(piece, u);
    return Math.hypot(v.x, v.y);
  };
  let sum = GAUSS[0][1] * speed(middle);
  for (const [x, weight] of GAUSS.slice(1))
    sum += weight * (speed(middle - half * x) + speed(middle + half * x));
  return sum * half;
}

function lengthTo(piece: Pick<Piece, 'v' | 'b' | 'a'>, u: number): number {
  let sum = 0;
  for (let i = 0; i < PARTS; i++) sum += lengthBetween(piece, (u * i) / PARTS, (u * (i + 1)) / PARTS);
  return sum;
}

/** Where a piece has that length behind it: Newton's method, halving the bracket wherever a step would leave it. */
function parameterAt(piece: Piece, mm: number): number {
  let [low, high] = [0, 1];
  let u = Math.max(0, Math.min(1, mm / piece.lengthMm));
  for (let round = 0; round < 60; round++) {
    const off = lengthTo(piece, u) - mm;
    if (Math.abs(off) < 1e-10) return u;
    if (off > 0) high = u;
    else low = u;
    const v = velocity(piece, u);
    const next = u - off / Math.hypot(v.x, v.y);
    u = next > low && next < high ? next : (low + high) / 2;
  }
  return u;
}
