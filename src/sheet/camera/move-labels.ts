/** What a move is called in the camera column, the memo, the camera chart and on the strip, made of the table of moves. */

import type { Leg, Move } from '../../shot/camera/camera-model.js';
import {
  type GivenParameter,
  givenOf,
  growthOf,
  kindOf,
  legsOf,
  parametersOf,
  rowsOf,
} from '../../shot/camera/move-facts.js';
import type { LegForm, LegForms } from '../../shot/camera/move-kinds.js';
import type { Form, Parameter, Told } from '../../shot/camera/move-parameters.js';
import { figure } from '../../words/number-format.js';
import type { MoveWords } from '../../words/sheet-words.js';
import {
  type CameraLabels,
  degrees,
  joined,
  type LabelContext,
  levels,
  percent,
} from './shared-move-labels.js';

/** Whether numbered graduations stand on every row. */
export const graduated = (move: Move): boolean =>
  move.ticks || move.legs.some(({ spacing }) => spacing.form === 'steps');

/** Places on the way by name; null: its legs have none. */
const ENDS: { readonly [L in LegForm]: ((end: LegForms[L], telling: LabelContext) => string) | null } = {
  field: ({ name }) => name,
  place: ({ label, xMm, yMm }, { lengths }) =>
    label === '' ? `(${lengths.figure(xMm)},${lengths.figure(yMm)})` : label,
  scale: percent,
  angle: (value) => degrees(Math.abs(value)),
  way: null,
  swing: null,
};

function endName(move: Move, telling: LabelContext): ((end: unknown) => string) | null {
  const name = ENDS[kindOf(move).legs] as ((end: unknown, telling: LabelContext) => string) | null;
  return name && ((end) => name(end, telling));
}

/** `A→B→C` */
const route = (legs: readonly Leg<unknown>[], name: (end: unknown) => string): string =>
  [legs[0]!.from, ...legs.map(({ to }) => to)].map(name).join('→');

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
  sense: (value, { words }) => (value === 'cw' ? words.clockwise : words.counterClockwise),
  direction: ({ word, degrees: angle }) => (word === 'angle' ? `${figure(angle)}°` : ARROWS[word]),
  way: ({ rateMm, distanceMm }, telling) =>
    rateMm === null ? mm(distanceMm, telling) : `${mm(rateMm, telling)}/${telling.words.frame}`,
  swing: ({ fromMm, toMm }, telling) =>
    fromMm === toMm ? mm(fromMm, telling) : `${telling.lengths.figure(fromMm)}→${mm(toMm, telling)}`,
  measure: (value, telling, { unit }) => MEASURES[unit](value, telling),
  loop: (value, telling) => (value === null ? '' : mm(value, telling)),
  point: (point, { lengths }) => (point ? `${lengths.figure(point.xMm)}, ${lengths.figure(point.yMm)}` : ''),
};

const MEASURES: {
  readonly [U in Parameter<'measure'>['unit']]: (value: number, telling: LabelContext) => string;
} = { mm, degrees, frames: (value, telling) => telling.length(value) };

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

/** How its way is spread, and other manners. */
function manner(move: Move, telling: LabelContext): string[] {
  const { words } = telling;
  const spacing = move.legs.flatMap(({ spacing: one }): string[] => {
    if (one.form === 'ease') return [words.ease(one.leave, one.arrive)];
    if (one.form === 'curve')
      return [words.curve([one.x1, one.y1, one.x2, one.y2].map((value) => figure(value)).join(' '))];
    return one.form === 'fair' ? [`${words.fairing} ${one.mark}`] : [];
  });
  return [
    ...new Set(spacing),
    ...told(move, telling, ['manner']),
    ...(move.on > 1 ? [words.on(move.on)] : []),
  ];
}

/** What stands beside a graduation of what goes no way in mm: how large it is, or how far turned. */
const FIGURES: { readonly [L in LegForm]: (value: number, telling: LabelContext) => string } = {
  field: (value, { fieldMm }) => percent(value / fieldMm),
  scale: percent,
  angle: (value) => degrees(Math.abs(value)),
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
    return [...new Set([full, joined(who, name), who])].filter((text) => text !== '');
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
    const name = endName(move, telling);
    // Fields are named on the graduations themselves.
    if (!name || legsOf(move, 'field').length > 0) return new Map();
    return new Map(
      (move.legs as readonly Leg<unknown>[]).flatMap(({ from, to, start, end }) => [
        [start, name(from)] as const,
        [end, name(to)] as const,
      ]),
    );
  },
  beside({ value, number, stepMm }, telling, move) {
    const { goes, legs } = kindOf(move);
    if (!goes) return value === null ? '' : FIGURES[legs](value, telling);
    return number === 0 ? '' : telling.lengths.step(stepMm);
  },
};

/** Levels whose artwork the camera chart shows where the move starts and where it ends. */
export const outlined = (move: Move): readonly string[] =>
  kindOf(move).legs === 'swing' ? [] : [...move.target.levels, ...(givenOf(move, 'levels') ?? [])];

/** Directions on screen, degrees counter-clockwise from right, by the frame from which they hold. `turned`: the camera's turn. */
export function arrowsOf(move: Move, turned: (frame: number) => number): ReadonlyMap<number, number> {
  const direction = givenOf(move, 'direction');
  if (direction) return new Map([[rowsOf(move).from, direction.degrees]]);
  return new Map(
    legsOf(move, 'place').flatMap(({ from, to, start }) => {
      const [dx, dy] = [to.xMm - from.xMm, to.yMm - from.yMm];
      if (dx === 0 && dy === 0) return [];
      return [[start, (Math.atan2(dy, dx) * 180) / Math.PI + turned(start)] as const];
    }),
  );
}
