/** What moves and light are called in the camera column, the memo, the cut list, the camera chart and on the strip, made of the table of moves. */

import type { Field, Leg, LevelValue, Light, Move, Point } from '../../shot/camera/camera-model.js';
import {
  type GivenParameter,
  givenOf,
  growthOf,
  kindOf,
  type LegForm,
  type LegForms,
  legsOf,
  type MoveSign,
  parametersOf,
  placesOf,
  rowsOf,
  toldDegrees,
} from '../../shot/camera/move-kinds.js';
import type { Form, Parameter, Told } from '../../shot/camera/move-parameters.js';
import type { Settings } from '../../shot/settings.js';
import { curveOf } from '../../solve/camera/smooth-curve.js';
import type { Graduation } from '../../solve/camera/solved-camera.js';
import type { SolvedShot } from '../../solve/solved-shot.js';
import type { LabelLanguage } from '../../words/labels.js';
import { figure } from '../../words/number-format.js';
import type { MoveWords } from '../../words/sheet-words.js';
import { wordsOf } from '../../words/words.js';

/** How lengths are told, and by whose names neighbours go. */
export interface LabelContext {
  readonly words: MoveWords;
  /** In which ways and places are told. */
  readonly lengths: PrintedLengths;
  readonly fieldMm: number;
  length(frames: number): string;
  neighbour(way: 'in' | 'out'): string | null;
}

/** The sign in the camera column. */
export type CameraSign =
  | MoveSign
  | { readonly form: 'wedge'; readonly opens: boolean }
  /** A box with a slanting line; a wedge with a ring. */
  | { readonly form: 'slant' | 'iris'; readonly opens: boolean }
  | { readonly form: 'cross' | 'box' };

export interface CameraLabels<T> {
  sign(it: T): CameraSign;
  /** First row of its bar; for a position `@` the frame that it stands on. */
  first(it: T): number;
  last(it: T): number;
  /** What stands beside its line, long and short. */
  names(it: T, telling: LabelContext): readonly string[];
  /** The bare word, for the cut list. */
  short(it: T, words: MoveWords): string;
  /** The memo's line, without its time. */
  memo(it: T, telling: LabelContext): string;
  /** Names of places by frame, where they are not those of the graduations. */
  labels?(it: T, telling: LabelContext): ReadonlyMap<number, string>;
  /** What stands beside a graduation; `before`: the one before it, null for the first. */
  beside?(graduation: Graduation, before: Graduation | null, telling: LabelContext, it: T): string;
}

export const percent = (share: number): string => `${figure(share * 100, { decimals: 1 })}%`;
/** An angle of that turn. */
export const degrees = (value: number, move: Move): string =>
  `${figure(toldDegrees(move, value), { decimals: 1 })}°`;

export const joined = (...parts: readonly (string | readonly string[])[]): string =>
  parts
    .flat()
    .filter((part) => part !== '')
    .join(' ');

const frameBounds = {
  first: ({ frames }: { frames: { from: number } }) => frames.from,
  last: ({ frames }: { frames: { to: number } }) => frames.to,
};

const levels = (it: { readonly levels: readonly string[] }): string => it.levels.join(',');

// ---- how lengths on the artwork are printed: in millimetres, or in inches where the settings say so

const MM_AN_INCH = 25.4;

export interface PrintedLengths {
  readonly unit: 'mm' | 'in';
  /** The number alone, without noughts at its end: `12.7`. */
  figure(mm: number): string;
  /** With the unit: `12.7 mm`, `0.5 in`. */
  text(mm: number): string;
  /** With as many decimals as its neighbours in a column: two for mm, three for inches. */
  aligned(mm: number): string;
  /** The same, whole numbers bare. */
  step(mm: number): string;
  /** `560 × 200 mm` */
  area(widthMm: number, heightMm: number): string;
  /** A size that will do: never rounded down. */
  up(mm: number): number;
}

export function printedLengths({ lengths: unit }: Pick<Settings, 'lengths'>): PrintedLengths {
  const factor = unit === 'in' ? MM_AN_INCH : 1;
  const decimals = unit === 'in' ? 3 : 2;
  const number = (mm: number): string => figure(mm / factor, { decimals });
  return {
    unit,
    figure: number,
    text: (mm) => `${number(mm)} ${unit}`,
    aligned: (mm) => figure(mm / factor, { decimals, zeros: 'always' }),
    step: (mm) => figure(mm / factor, { decimals, zeros: 'unlessWhole' }),
    area: (width, height) => `${number(width)} × ${number(height)} ${unit}`,
    up: (mm) => (Math.ceil((mm / factor) * 10 ** decimals - 1e-6) / 10 ** decimals) * factor,
  };
}

/** `20,-10 mm` */
const pointText = ({ xMm, yMm }: Point, { figure: number, unit }: PrintedLengths): string =>
  `${number(xMm)},${number(yMm)} ${unit}`;

// ----
// What a move is called in the camera column, the memo, the camera chart and on the strip, made of the table of moves.

/** Whether numbered graduations stand on every row. */
export const graduated = (move: Move): boolean =>
  move.graduated || move.legs.some(({ spacing }) => spacing.form === 'steps');

/** Places on the way by name; null: its legs have none. */
const ENDS: {
  readonly [L in LegForm]: ((end: LegForms[L], telling: LabelContext, move: Move) => string) | null;
} = {
  field: ({ name }) => name,
  place: ({ label, xMm, yMm }, { lengths }) =>
    label === '' ? `(${lengths.figure(xMm)},${lengths.figure(yMm)})` : label,
  scale: ({ label, value }) => joined(label, percent(value)),
  angle: ({ label, value }, _, move) => joined(label, degrees(value, move)),
  way: null,
  swing: null,
};

function endName(move: Move, telling: LabelContext): ((end: unknown) => string) | null {
  const name = ENDS[kindOf(move).legs] as
    | ((end: unknown, telling: LabelContext, move: Move) => string)
    | null;
  return name && ((end) => name(end, telling, move));
}

/** The mark alone of what has one. */
function placeName(move: Move, telling: LabelContext): ((end: unknown) => string) | null {
  const name = endName(move, telling);
  return name && ((end) => (end as Partial<LevelValue>).label || name(end));
}

/** `A→B→C` */
const route = (legs: readonly Leg<unknown>[], name: (end: unknown) => string): string =>
  placesOf(legs).map(name).join('→');

/** In or out. */
const sense = (growth: number): string => (growth >= 0 ? 'T.U' : 'T.B');

/** The bare name: `T.U`, `Q.T.U/T.B`, `sway`. */
function nameOf(move: Move, words: MoveWords): string {
  const { name, carrying, graduated: numbered } = words.kinds[move.kind];
  if (kindOf(move).grows) return `${before(move, words)}${[...new Set(growthOf(move).map(sense))].join('/')}`;
  if (carrying !== undefined && givenOf(move, 'levels')?.length) return carrying;
  return numbered !== undefined && graduated(move) ? numbered : name;
}

/** What stands before `T.U`. */
function before(move: Move, words: MoveWords): string {
  const flags = parametersOf(move).filter(({ parameter, value }) => parameter.told === 'before' && value);
  return [...flags.map(({ name }) => toldWord(name, words)('')), words.kinds[move.kind].name].join('');
}

const toldWord = (name: string, { told: words }: MoveWords): ((text: string) => string) =>
  (words as Readonly<Record<string, (text: string) => string>>)[name]!;

/** Legs of one sense stand together: `T.U A→B→C`, `T.U A→B T.B B→A`. */
function trucked(move: Move, name: (end: unknown) => string, words: MoveWords): string {
  const groups: { sense: string; legs: Leg<unknown>[] }[] = [];
  growthOf(move).forEach((growth, i) => {
    const leg = move.legs[i]!;
    if (groups.at(-1)?.sense === sense(growth)) groups.at(-1)!.legs.push(leg);
    else groups.push({ sense: sense(growth), legs: [leg] });
  });
  return groups.map((group) => `${before(move, words)}${group.sense} ${route(group.legs, name)}`).join(' ');
}

const ARROWS = { left: '←', right: '→', up: '↑', down: '↓' } as const;

/** What a word is given of a flag. */
const SET = 'yes';
const UNSET = 'no';

type Texts = {
  readonly [F in Form]: (
    value: (GivenParameter & { readonly form: F })['value'],
    telling: LabelContext,
    parameter: Parameter<F>,
  ) => string;
};

const mm = (value: number, { lengths }: LabelContext): string => lengths.text(value);

/** The value of a parameter; '' where there is nothing to tell. */
const TEXTS: Texts = {
  flag: (value, _, { toldUnset }) => (value ? SET : toldUnset ? UNSET : ''),
  levels: (names) => names.join(','),
  sense: ({ positive, onward }, { words }) => (onward ? words.senses : words.positiveSenses)[positive],
  direction: ({ word, degrees: angle }) => (word === 'angle' ? `${figure(angle)}°` : ARROWS[word]),
  way: ({ rateMm, distanceMm }, telling) =>
    rateMm === null ? mm(distanceMm, telling) : `${mm(rateMm, telling)}/${telling.words.frame}`,
  swing: ({ fromMm, toMm }, telling) =>
    fromMm === toMm ? mm(fromMm, telling) : `${telling.lengths.figure(fromMm)}→${mm(toMm, telling)}`,
  measure: (value, telling, { unit }) => MEASURES[unit](value, telling),
  loop: (value, telling) => (value === null ? '' : mm(value, telling)),
  point: (point, { lengths }) => (point ? pointText(point, lengths) : ''),
};

const MEASURES: {
  readonly [U in Parameter<'measure'>['unit']]: (value: number, telling: LabelContext) => string;
} = {
  mm,
  degrees: (value) => `${figure(value, { decimals: 1 })}°`,
  frames: (value, telling) => telling.length(value),
};

function told(move: Move, telling: LabelContext, where: readonly Told[]): string[] {
  return parametersOf(move).flatMap(({ form, name, value, parameter }) => {
    if (!where.includes(parameter.told)) return [];
    const text = (TEXTS[form] as (value: unknown, telling: LabelContext, parameter: unknown) => string)(
      value,
      telling,
      parameter,
    );
    return text === '' ? [] : [toldWord(name, telling.words)(text)];
  });
}

/** What is said of legs, each time with the legs that it is said of where a move has several; '' is not said. */
function onLegs(move: Move, say: (leg: Leg<unknown>) => string, telling: LabelContext): string[] {
  const legs: readonly Leg<unknown>[] = move.legs;
  const texts = legs.map(say);
  const said = [...new Set(texts)].filter((text) => text !== '');
  const { words } = telling;
  const name = placeName(move, telling);
  if (legs.length === 1 || !name) return said;
  const routes = legs.map((leg) => route([leg], name));
  return said.map((text) => {
    const on = legs.flatMap((_, i) => (texts[i] === text ? [i] : []));
    if (on.length === legs.length) return words.onEachLeg(text);
    // Two legs may lead from and to places of the same names.
    const known = on.every((i) => routes.indexOf(routes[i]!) === routes.lastIndexOf(routes[i]!));
    return words.onLegs(
      text,
      on.map((i) => (known ? routes[i]! : words.leg(i + 1))),
    );
  });
}

/** How its way is spread, and other manners. */
function manner(move: Move, telling: LabelContext): string[] {
  const { words } = telling;
  const spacing = ({ spacing: one }: Leg<unknown>): string => {
    if (one.form === 'ease') return words.ease(one.leave, one.arrive);
    if (one.form === 'curve')
      return words.curve([one.x1, one.y1, one.x2, one.y2].map((value) => figure(value)).join(' '));
    return one.form === 'fair' ? `${words.fairing} ${one.mark}` : '';
  };
  const ofWidth = ({ spacing: { form } }: Leg<unknown>): string =>
    kindOf(move).handSteps === 'width' && form === 'steps' ? words.widthSteps : '';
  return [
    ...onLegs(move, spacing, telling),
    ...(move.gives ? [words.gives[move.gives].memo] : []),
    ...onLegs(move, ofWidth, telling),
    ...told(move, telling, ['manner']),
    ...(move.on > 1 ? [words.on(move.on)] : []),
  ];
}

/** What stands beside a graduation of what goes no way in mm: how large it is, or how far turned. */
const FIGURES: { readonly [L in LegForm]: (value: number, telling: LabelContext, move: Move) => string } = {
  field: (value, { fieldMm }) => percent(value / fieldMm),
  scale: percent,
  angle: (value, _, move) => degrees(value, move),
  place: () => '',
  way: () => '',
  swing: () => '',
};

export const moveKind: CameraLabels<Move> = {
  sign: (move) => kindOf(move).sign(move.parameters),
  first: (move) => rowsOf(move).from,
  last: (move) => rowsOf(move).to,
  names(move, telling) {
    const who = levels(move.target);
    const full = joined(who, nameOf(move, telling.words), told(move, telling, ['name']));
    const plain = telling.words.kinds[move.kind];
    const name = kindOf(move).grows ? nameOf(move, telling.words) : plain.name;
    const part = move.gives ? [telling.words.gives[move.gives].beside] : [];
    return [...new Set([joined(full, part), joined(who, name, part), full, joined(who, name), who])].filter(
      (text) => text !== '',
    );
  },
  short: nameOf,
  memo(move, telling) {
    const name = endName(move, telling);
    return joined(
      levels(move.target),
      kindOf(move).grows && name ? trucked(move, name, telling.words) : nameOf(move, telling.words),
      !kindOf(move).grows && name ? route(move.legs, name) : '',
      told(move, telling, ['name', 'memo']),
      manner(move, telling),
    );
  },
  labels(move, telling) {
    // The row has no room for more than a mark.
    const beside = placeName(move, telling);
    // Fields are named on the graduations themselves.
    if (!beside || legsOf(move, 'field').length > 0) return new Map();
    return new Map(
      (move.legs as readonly Leg<unknown>[]).flatMap(({ from, to, start, end }) => [
        [start, beside(from)] as const,
        [end, beside(to)] as const,
      ]),
    );
  },
  beside({ frame, value, stepMm }, before, telling, move) {
    const { goes, legs, handSteps } = kindOf(move);
    if (goes) return before ? telling.lengths.step(stepMm) : '';
    if (value === null) return '';
    const leg = move.legs.find(({ end }) => frame <= end) ?? move.legs[0]!;
    if (handSteps !== 'width' || leg.spacing.form !== 'steps') return FIGURES[legs](value, telling, move);
    // As typed: positive along the leg, whether the field gets narrower or wider.
    const { from, to } = leg as Leg<Field>;
    if (!before) return '';
    const gained = value - (before.value ?? value);
    return telling.lengths.step(to.widthMm < from.widthMm ? 0 - gained : gained);
  },
};

/** Levels whose artwork the camera chart shows where the move starts and where it ends. */
export const outlined = (move: Move): readonly string[] =>
  kindOf(move).legs === 'swing' ? [] : [...move.target.levels, ...(givenOf(move, 'levels') ?? [])];

/** Directions on screen, degrees counter-clockwise from right, by the frame from which they hold. `turned`: the camera's turn. */
export function arrowsOf(move: Move, turned: (frame: number) => number): ReadonlyMap<number, number> {
  const direction = givenOf(move, 'direction');
  if (direction) return new Map([[rowsOf(move).from, direction.degrees]]);
  const curve = curveOf(move);
  return new Map(
    legsOf(move, 'place').flatMap(({ from, to, start }, i) => {
      const curved = curve?.legs[i]?.directionAt(0);
      const [dx, dy] = curved ? [curved.x, curved.y] : [to.xMm - from.xMm, to.yMm - from.yMm];
      if (dx === 0 && dy === 0) return [];
      return [[start, (Math.atan2(dy, dx) * 180) / Math.PI + turned(start)] as const];
    }),
  );
}

// ---- the table of light on paper. A new kind is one entry

type LightOf<K extends Light['kind']> = Extract<Light, { kind: K }>;

const exposure = ({ from, to }: LightOf<'expose'>): string =>
  from === to ? percent(from) : `${percent(from)}→${percent(to)}`;
const fadeName = ({ white, way }: LightOf<'fade'>): string =>
  `${white ? 'W' : 'F'}.${way === 'in' ? 'I' : 'O'}`;

/** No arrow: beside its rows the name is set reading downwards, and an arrow would turn with it. */
const wipeName = ({ way, towards }: LightOf<'wipe'>, words: MoveWords): string =>
  `${words.wipe(way)} ${words.directions[towards]}`;

const lights: { readonly [K in Light['kind']]: CameraLabels<LightOf<K>> } = {
  fade: {
    ...frameBounds,
    sign: ({ way }) => ({ form: 'wedge', opens: way === 'in' }),
    names: (light) => [fadeName(light)],
    short: fadeName,
    memo: (light) => fadeName(light),
  },
  wipe: {
    ...frameBounds,
    sign: ({ way }) => ({ form: 'slant', opens: way === 'in' }),
    names: (light, { words }) => [wipeName(light, words), words.wipe(light.way)],
    short: ({ way }, words) => words.wipe(way),
    memo: (light, { words }) => wipeName(light, words),
  },
  iris: {
    ...frameBounds,
    sign: ({ way }) => ({ form: 'iris', opens: way === 'in' }),
    names: ({ way }, { words }) => [words.iris(way)],
    short: ({ way }, words) => words.iris(way),
    memo: ({ way, xMm, yMm }, { words, lengths }) =>
      words.irisAt(words.iris(way), pointText({ xMm, yMm }, lengths)),
  },
  overlap: {
    ...frameBounds,
    sign: () => ({ form: 'cross' }),
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
    ...frameBounds,
    sign: () => ({ form: 'box' }),
    names: (light, { words }) => [
      `${levels(light)} ${words.exposure} ${exposure(light)}`,
      `${levels(light)} ${exposure(light)}`,
      levels(light),
    ],
    short: (_, words) => words.exposure,
    memo: (light, { words }) => `${levels(light)} ${words.exposure} ${exposure(light)}`,
  },
  glow: {
    ...frameBounds,
    sign: () => ({ form: 'box' }),
    names: (light, { words }) => [`${levels(light)} ${words.glow}`, levels(light)],
    short: (_, words) => words.glow,
    memo: (light, { words }) => `${levels(light)} ${words.glow}`,
  },
  effect: {
    ...frameBounds,
    sign: () => ({ form: 'box' }),
    names: (light) => [joined(levels(light), light.text), light.text],
    short: (_, words) => words.effect,
    memo: (light) => joined(levels(light), light.text),
  },
};

/** The entry of a light, to be used with that light only. */
export const lightKind = (light: Light): CameraLabels<Light> =>
  lights[light.kind] as unknown as CameraLabels<Light>;

// ---- what the camera does in a cut, in as few words as the trade has for it

/** `PAN`, `T.U`, `O.L`: each name once, in the order of the first rows; `FIX` first where neither camera nor level moves. */
export function shortMoves({ shot, camera }: SolvedShot, language: LabelLanguage): string[] {
  const words = wordsOf({ labels: language, convention: shot.settings.convention }).moves;
  const seen = <T>(kind: { first(it: T): number }, it: T): boolean => kind.first(it) <= shot.length;
  const moves = camera.moves.filter(({ move }) => seen(moveKind, move));
  const light = camera.light.filter((one) => seen(lightKind(one.light), one.light));
  const named = [
    ...moves.map(({ move }) => ({ at: moveKind.first(move), name: moveKind.short(move, words) })),
    ...light.map((one) => ({
      at: lightKind(one.light).first(one.light),
      name: lightKind(one.light).short(one.light, words),
    })),
  ].sort((a, b) => a.at - b.at);
  return [...new Set([...(moves.length === 0 ? [words.fix] : []), ...named.map(({ name }) => name)])];
}
