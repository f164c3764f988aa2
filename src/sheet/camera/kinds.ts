/**
 * The table of moves and light on paper: what a kind is called, what the memo says of it, and which sign stands for it in
 * the camera column. A new kind is one entry.
 */

import type { Light, Move, MoveOf } from '../../shot/camera.js';
import type { Graduation } from '../../solve/camera/solved.js';
import type { CameraWords } from './words.js';

/** How lengths are told, and by whose names neighbours go. */
export interface Telling {
  readonly words: CameraWords;
  readonly fieldMm: number;
  length(frames: number): string;
  neighbour(way: 'in' | 'out'): string | null;
}

/** The sign in the camera column. */
export type Sign = 'line' | 'zigzag' | 'wave' | 'wedge' | 'cross' | 'box';

export interface Kind<T> {
  readonly sign: Sign;
  /** First row of its bar; for a position `@` the frame that it stands on. */
  first(it: T): number;
  last(it: T): number;
  /** What stands beside its line, long and short. */
  names(it: T, telling: Telling): readonly string[];
  /** The bare word, for the cut list. */
  short(it: T, words: CameraWords): string;
  /** The memo's line, without its time. */
  memo(it: T, telling: Telling): string;
  /** Names of places by frame, where they are not those of the graduations. */
  labels?(it: T): ReadonlyMap<number, string>;
  /** What the figures beside graduations say; the step in mm where nothing else is said. */
  beside?(graduation: Graduation, telling: Telling): string;
}

export const figure = (value: number, digits = 2): string => {
  const text = value.toFixed(digits).replace(/(\.\d*?)0+$/, '$1');
  return text.replace(/\.$/, '').replace(/^-0$/, '0');
};

const percent = (share: number): string => `${figure(share * 100, 1)}%`;
const degrees = (value: number): string => `${figure(value, 1)}°`;

type Legs<P> = readonly { readonly from: P; readonly to: P; readonly start: number; readonly end: number }[];

const route = <P>(legs: Legs<P>, name: (place: P) => string): string =>
  [legs[0]!.from, ...legs.map((leg) => leg.to)].map(name).join('→');

const marked = <P>(legs: Legs<P>, name: (place: P) => string): Map<number, string> =>
  new Map(legs.flatMap((leg) => [[leg.start, name(leg.from)] as const, [leg.end, name(leg.to)] as const]));

/** Manners that any move may have. */
function manner(move: Move, { words }: Telling): string[] {
  const spacings =
    'legs' in move ? move.legs.map((leg) => leg.spacing) : 'spacing' in move ? [move.spacing] : [];
  const said = spacings.flatMap((spacing): string[] => {
    if (spacing.form === 'ease') return [words.ease(spacing.leave, spacing.arrive)];
    if (spacing.form === 'curve')
      return [
        words.curve([spacing.x1, spacing.y1, spacing.x2, spacing.y2].map((one) => figure(one)).join(' ')),
      ];
    return spacing.form === 'fair' ? [`${words.fairing} ${spacing.mark}`] : [];
  });
  return [
    ...new Set(said),
    ...('log' in move && move.log ? [words.equalRatios] : []),
    ...('carry' in move && move.carry.length > 0 ? [words.carry(move.carry.join(','))] : []),
    ...(move.on > 1 ? [words.on(move.on)] : []),
  ];
}

const joined = (...parts: readonly (string | readonly string[])[]): string =>
  parts
    .flat()
    .filter((part) => part !== '')
    .join(' ');

const ARROWS: Readonly<Record<string, string>> = { left: '←', right: '→', up: '↑', down: '↓' };

function wayOf(move: MoveOf<'pull'> | MoveOf<'follow'>, { words }: Telling): string {
  const { rateMm, distanceMm } = move.way;
  return rateMm === null ? `${figure(distanceMm)} mm` : `${figure(rateMm)} mm/${words.frame}`;
}

const arrowOf = ({ direction }: MoveOf<'pull'> | MoveOf<'follow'>): string =>
  ARROWS[direction.word] ?? `${figure(direction.degrees)}°`;

/** In or out, as the sizes say. */
const inOrOut = (from: number, to: number): string => (to >= from ? 'T.U' : 'T.B');

/** Legs of one sense stand together: `T.U A→B→C`, `T.U A→B T.B B→A`. */
function trucked<P>(
  legs: Legs<P>,
  size: (place: P) => number,
  name: (place: P) => string,
  before: string,
): string {
  const groups: { sense: string; legs: Legs<P>[number][] }[] = [];
  for (const leg of legs) {
    const sense = inOrOut(size(leg.from), size(leg.to));
    if (groups.at(-1)?.sense === sense) groups.at(-1)!.legs.push(leg);
    else groups.push({ sense, legs: [leg] });
  }
  return groups.map((group) => `${before}${group.sense} ${route(group.legs, name)}`).join(' ');
}

const sensesOf = <P>(legs: Legs<P>, size: (place: P) => number): string =>
  [...new Set(legs.map((leg) => inOrOut(size(leg.from), size(leg.to))))].join('/');

const atLegs = <T extends { readonly legs: Legs<unknown> }>() => ({
  first: ({ legs }: T) => legs[0]!.start,
  last: ({ legs }: T) => legs.at(-1)!.end,
});
const inRange = {
  first: ({ start }: { start: number }) => start + 1,
  last: ({ end }: { end: number }) => end,
};
const inFrames = {
  first: ({ frames }: { frames: { from: number } }) => frames.from,
  last: ({ frames }: { frames: { to: number } }) => frames.to,
};

const panName = (move: MoveOf<'pan'>, words: CameraWords): string =>
  move.carry.length > 0 ? words.followPan : graduated(move) ? words.graduatedPan : words.pan;

const swing = ({ fromMm, toMm }: MoveOf<'shake'>): string =>
  fromMm === toMm ? `${figure(fromMm)} mm` : `${figure(fromMm)}→${figure(toMm)} mm`;

const placeName = ({ label, xMm, yMm }: { label: string; xMm: number; yMm: number }): string =>
  label === '' ? `(${figure(xMm)},${figure(yMm)})` : label;

const levels = (it: { readonly levels: readonly string[] }): string => it.levels.join(',');

/** Whether numbered graduations stand on every row. */
export function graduated(move: Move): boolean {
  const legs = 'legs' in move ? move.legs : [];
  const spacings = 'spacing' in move ? [move.spacing] : legs.map((leg) => leg.spacing);
  return move.ticks || spacings.some(({ form }) => form === 'steps');
}

const moves: { readonly [K in Move['kind']]: Kind<MoveOf<K>> } = {
  pan: {
    ...atLegs<MoveOf<'pan'>>(),
    sign: 'line',
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
    names: (move, { words }) => [`${levels(move)} ${words.slide}`, levels(move)],
    short: (_, words) => words.slide,
    memo: (move, telling) =>
      joined(levels(move), telling.words.slide, route(move.legs, placeName), manner(move, telling)),
    labels: (move) => marked(move.legs, placeName),
  },
  levelTruck: {
    ...atLegs<MoveOf<'levelTruck'>>(),
    sign: 'line',
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

type LightOf<K extends Light['kind']> = Extract<Light, { kind: K }>;

const exposure = ({ from, to }: LightOf<'expose'>): string =>
  from === to ? percent(from) : `${percent(from)}→${percent(to)}`;
const fadeName = ({ white, way }: LightOf<'fade'>): string =>
  `${white ? 'W' : 'F'}.${way === 'in' ? 'I' : 'O'}`;

const lights: { readonly [K in Light['kind']]: Kind<LightOf<K>> } = {
  fade: {
    ...inFrames,
    sign: 'wedge',
    names: (light) => [fadeName(light)],
    short: fadeName,
    memo: (light) => fadeName(light),
  },
  overlap: {
    ...inFrames,
    sign: 'cross',
    names: ({ way, length }, telling) => {
      const long = `O.L ${telling.length(length)}`;
      const cut = telling.neighbour(way);
      const named = (what: string) => (cut === null ? [] : [telling.words.overlap(what, way, cut)]);
      return [...named(long), ...named('O.L'), long, 'O.L'];
    },
    short: () => 'O.L',
    memo: ({ way, length }, telling) =>
      telling.words.overlap(`O.L ${telling.length(length)}`, way, telling.neighbour(way)),
  },
  expose: {
    ...inFrames,
    sign: 'box',
    names: (light, { words }) => [
      `${levels(light)} ${words.exposure} ${exposure(light)}`,
      `${levels(light)} ${exposure(light)}`,
      levels(light),
    ],
    short: (_, words) => words.exposure,
    memo: (light, { words }) => `${levels(light)} ${words.exposure} ${exposure(light)}`,
  },
  glow: {
    ...inFrames,
    sign: 'box',
    names: (light, { words }) => [`${levels(light)} ${words.glow}`, levels(light)],
    short: (_, words) => words.glow,
    memo: (light, { words }) => `${levels(light)} ${words.glow}`,
  },
  effect: {
    ...inFrames,
    sign: 'box',
    names: (light) => [joined(levels(light), light.text), light.text],
    short: (_, words) => words.effect,
    memo: (light) => joined(levels(light), light.text),
  },
};

/** The entry of a move, to be used with that move only. */
export const moveKind = (move: Move): Kind<Move> => moves[move.kind] as unknown as Kind<Move>;
export const lightKind = (light: Light): Kind<Light> => lights[light.kind] as unknown as Kind<Light>;
