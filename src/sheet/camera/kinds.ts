/**
 * The table of moves on paper: what a kind is called in the camera column, the memo, the camera chart and on the strip, and
 * how it is drawn. A new kind is one entry.
 */

import type { Field, Move, MoveOf } from '../../shot/camera.js';
import type { MoveWords } from '../../words/move-words.js';
import {
  atLegs,
  degrees,
  figure,
  graduated,
  inFrames,
  inRange,
  joined,
  type Kind,
  levels,
  manner,
  marked,
  percent,
  route,
  sensesOf,
  type Telling,
  trucked,
} from './naming.js';

/**
 * What of a move is drawn as a line on the camera chart: the way of the camera's centre; the same between fields of two
 * sizes, whose centre may stay; the way of each level on the artwork; or the way of a level as an arrow beside it.
 */
export type Way = 'centre' | 'fields' | 'levels' | 'beside';

export interface MoveKind<T> extends Kind<T> {
  /** It moves the camera, whatever else it moves: it stands in the first lanes. */
  readonly ofCamera: boolean;
  /** Null: nothing of it is a line on the camera chart, and it has no length in mm. */
  readonly way: Way | null;
  /** Whether its graduations are printed in true size: where written frame by frame, even ones too, or never. */
  readonly strip: 'graduated' | 'even' | 'never';
  /** Levels whose artwork the camera chart shows where the move starts and where it ends. */
  outlined(move: T): readonly string[];
  /** Fields from one to the other of which the chart has lines, corner to corner. */
  between?(move: T): readonly (readonly [Field, Field])[];
  /** Directions on screen, degrees counter-clockwise from right, by the frame from which they hold. `turned`: the camera's turn. */
  arrows?(move: T, turned: (frame: number) => number): ReadonlyMap<number, number>;
}

const ARROWS: Readonly<Record<string, string>> = { left: '←', right: '→', up: '↑', down: '↓' };

function wayOf(move: MoveOf<'pull'> | MoveOf<'follow'>, { words }: Telling): string {
  const { rateMm, distanceMm } = move.way;
  return rateMm === null ? `${figure(distanceMm)} mm` : `${figure(rateMm)} mm/${words.frame}`;
}

const arrowOf = ({ direction }: MoveOf<'pull'> | MoveOf<'follow'>): string =>
  ARROWS[direction.word] ?? `${figure(direction.degrees)}°`;

const panName = (move: MoveOf<'pan'>, words: MoveWords): string =>
  move.carry.length > 0 ? words.followPan : graduated(move) ? words.graduatedPan : words.pan;

const swing = ({ fromMm, toMm }: MoveOf<'shake'>): string =>
  fromMm === toMm ? `${figure(fromMm)} mm` : `${figure(fromMm)}→${figure(toMm)} mm`;

const placeName = ({ label, xMm, yMm }: { label: string; xMm: number; yMm: number }): string =>
  label === '' ? `(${figure(xMm)},${figure(yMm)})` : label;

const moves: { readonly [K in Move['kind']]: MoveKind<MoveOf<K>> } = {
  pan: {
    ...atLegs<MoveOf<'pan'>>(),
    sign: 'line',
    ofCamera: true,
    way: 'centre',
    strip: 'even',
    outlined: ({ carry }) => carry,
    names: (move, { words }) => [panName(move, words), words.pan],
    short: panName,
    memo: (move, telling) =>
      joined(
        panName(move, telling.words),
        route(move.legs, ({ name }) => name),
        manner(move, telling),
      ),
  },
  truck: {
    ...atLegs<MoveOf<'truck'>>(),
    sign: 'line',
    ofCamera: true,
    way: 'fields',
    strip: 'never',
    outlined: ({ carry }) => carry,
    between: ({ legs }) => legs.map(({ from, to }) => [from, to] as const),
    names: (move) => [`${move.quick ? 'Q.' : ''}${sensesOf(move.legs, ({ widthMm }) => -widthMm)}`],
    short: (move) => `${move.quick ? 'Q.' : ''}${sensesOf(move.legs, ({ widthMm }) => -widthMm)}`,
    memo: (move, telling) =>
      joined(
        trucked(
          move.legs,
          ({ widthMm }) => -widthMm,
          ({ name }) => name,
          move.quick ? 'Q.' : '',
        ),
        manner(move, telling),
      ),
    beside: ({ value }, { fieldMm }) => (value === null ? '' : percent(value / fieldMm)),
  },
  pull: {
    ...inRange,
    sign: 'line',
    ofCamera: false,
    way: 'beside',
    strip: 'graduated',
    outlined: (move) => move.levels,
    arrows: ({ start, direction }) => new Map([[start + 1, direction.degrees]]),
    names: (move, telling) => [
      `${levels(move)} ${telling.words.pull} ${wayOf(move, telling)}`,
      `${levels(move)} ${telling.words.pull}`,
      levels(move),
    ],
    short: (_, words) => words.pull,
    memo: (move, telling) =>
      joined(
        levels(move),
        telling.words.pull,
        arrowOf(move),
        wayOf(move, telling),
        move.loopMm === null ? '' : `${telling.words.loop} ${figure(move.loopMm)} mm`,
        manner(move, telling),
      ),
  },
  follow: {
    ...inRange,
    sign: 'line',
    ofCamera: true,
    way: 'centre',
    strip: 'graduated',
    outlined: (move) => move.levels,
    arrows: ({ start, direction }) => new Map([[start + 1, direction.degrees]]),
    names: (move, telling) => [
      `${levels(move)} ${telling.words.follow} ${wayOf(move, telling)}`,
      `${levels(move)} ${telling.words.follow}`,
      levels(move),
    ],
    short: (_, words) => words.follow,
    memo: (move, telling) =>
      joined(levels(move), telling.words.follow, arrowOf(move), wayOf(move, telling), manner(move, telling)),
  },
  slide: {
    ...atLegs<MoveOf<'slide'>>(),
    sign: 'line',
    ofCamera: false,
    way: 'levels',
    strip: 'graduated',
    outlined: (move) => move.levels,
    arrows: ({ legs }, turned) =>
      new Map(
        legs.flatMap(({ from, to, start }) => {
          const [dx, dy] = [to.xMm - from.xMm, to.yMm - from.yMm];
          if (dx === 0 && dy === 0) return [];
          return [[start, (Math.atan2(dy, dx) * 180) / Math.PI + turned(start)] as const];
        }),
      ),
    names: (move, { words }) => [`${levels(move)} ${words.slide}`, levels(move)],
    short: (_, words) => words.slide,
    memo: (move, telling) =>
      joined(levels(move), telling.words.slide, route(move.legs, placeName), manner(move, telling)),
    labels: (move) => marked(move.legs, placeName),
  },
  levelTruck: {
    ...atLegs<MoveOf<'levelTruck'>>(),
    sign: 'line',
    ofCamera: false,
    way: null,
    strip: 'never',
    outlined: (move) => move.levels,
    names: (move, { words }) => [
      `${levels(move)} ${words.level}${sensesOf(move.legs, (scale) => scale)}`,
      levels(move),
    ],
    short: (move, words) => `${words.level}${sensesOf(move.legs, (scale) => scale)}`,
    memo: (move, telling) =>
      joined(
        levels(move),
        trucked(move.legs, (scale) => scale, percent, telling.words.level),
        manner(move, telling),
      ),
    labels: (move) => marked(move.legs, percent),
    beside: ({ value }) => (value === null ? '' : percent(value)),
  },
  turn: {
    ...atLegs<MoveOf<'turn'>>(),
    sign: 'line',
    ofCamera: false,
    way: null,
    strip: 'never',
    outlined: (move) => move.levels,
    names: (move, { words }) => [`${levels(move)} ${words.turn}`, levels(move)],
    short: (_, words) => words.turn,
    memo: (move, telling) =>
      joined(
        levels(move),
        telling.words.turn,
        route(move.legs, (value) => degrees(Math.abs(value))),
        move.sense === 'cw' ? telling.words.clockwise : telling.words.counterClockwise,
        manner(move, telling),
      ),
    labels: (move) => marked(move.legs, (value) => degrees(Math.abs(value))),
    beside: ({ value }) => (value === null ? '' : degrees(Math.abs(value))),
  },
  shake: {
    ...inFrames,
    sign: 'zigzag',
    ofCamera: true,
    way: null,
    strip: 'never',
    outlined: () => [],
    names: (move, { words }) => [`${words.shake} ${swing(move)}`, words.shake],
    short: (_, words) => words.shake,
    memo: (move, telling) =>
      joined(
        telling.words.shake,
        swing(move),
        move.sideways ? telling.words.sideways : '',
        manner(move, telling),
      ),
  },
  roll: {
    ...inFrames,
    sign: 'wave',
    ofCamera: false,
    way: null,
    strip: 'never',
    outlined: () => [],
    names: (move, { words }) => [
      `${levels(move)} ${words.roll} ${figure(move.sizeMm)} mm`,
      `${levels(move)} ${words.roll}`,
      levels(move),
    ],
    short: (_, words) => words.roll,
    memo: (move, telling) =>
      joined(
        levels(move),
        telling.words.roll,
        `${figure(move.sizeMm)} mm`,
        telling.words.every(telling.length(move.periodFrames)),
        move.sideways ? telling.words.sideways : '',
        manner(move, telling),
      ),
  },
};

/** The entry of a move, to be used with that move only. */
export const moveKind = (move: Move): MoveKind<Move> => moves[move.kind] as unknown as MoveKind<Move>;
