/** What is the same in the names of moves and light: figures, routes, manners. */

import type { Move, Spacing } from '../../shot/camera.js';
import type { Graduation } from '../../solve/camera/solved.js';
import type { MoveWords } from '../../words/move-words.js';

/** How lengths are told, and by whose names neighbours go. */
export interface Telling {
  readonly words: MoveWords;
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
  short(it: T, words: MoveWords): string;
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

export const percent = (share: number): string => `${figure(share * 100, 1)}%`;
export const degrees = (value: number): string => `${figure(value, 1)}°`;

type Legs<P> = readonly { readonly from: P; readonly to: P; readonly start: number; readonly end: number }[];

export const route = <P>(legs: Legs<P>, name: (place: P) => string): string =>
  [legs[0]!.from, ...legs.map((leg) => leg.to)].map(name).join('→');

export const marked = <P>(legs: Legs<P>, name: (place: P) => string): Map<number, string> =>
  new Map(legs.flatMap((leg) => [[leg.start, name(leg.from)] as const, [leg.end, name(leg.to)] as const]));

/** Manners that any move may have. */
export function manner(move: Move, { words }: Telling): string[] {
  const said = spacingsOf(move).flatMap((spacing): string[] => {
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

export const joined = (...parts: readonly (string | readonly string[])[]): string =>
  parts
    .flat()
    .filter((part) => part !== '')
    .join(' ');

/** In or out, as the sizes say. */
const inOrOut = (from: number, to: number): string => (to >= from ? 'T.U' : 'T.B');

/** Legs of one sense stand together: `T.U A→B→C`, `T.U A→B T.B B→A`. */
export function trucked<P>(
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

export const sensesOf = <P>(legs: Legs<P>, size: (place: P) => number): string =>
  [...new Set(legs.map((leg) => inOrOut(size(leg.from), size(leg.to))))].join('/');

export const atLegs = <T extends { readonly legs: Legs<unknown> }>() => ({
  first: ({ legs }: T) => legs[0]!.start,
  last: ({ legs }: T) => legs.at(-1)!.end,
});
export const inRange = {
  first: ({ start }: { start: number }) => start + 1,
  last: ({ end }: { end: number }) => end,
};
export const inFrames = {
  first: ({ frames }: { frames: { from: number } }) => frames.from,
  last: ({ frames }: { frames: { to: number } }) => frames.to,
};

export const levels = (it: { readonly levels: readonly string[] }): string => it.levels.join(',');

/** How the way is spread over the steps of each leg; none for a swing. */
export const spacingsOf = (move: Move): readonly Spacing[] =>
  'spacing' in move ? [move.spacing] : 'legs' in move ? move.legs.map((leg) => leg.spacing) : [];

/** Whether numbered graduations stand on every row. */
export const graduated = (move: Move): boolean =>
  move.ticks || spacingsOf(move).some(({ form }) => form === 'steps');
