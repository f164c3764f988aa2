/**
 * The table of moves: what every stage needs to know of a kind. Where a stage has something of its own to say of each kind (how the
 * solver drives it, what it is called, its page in the reference), it has a table by `MoveKind` or by `LegForm`, so that a kind
 * without an entry does not compile.
 */

import type { MoveKind } from '../../language/tree-camera.js';
import type { Frames } from '../shot.js';
import type { Field, FieldPart, Leg, LevelPlace, LevelValue, Move, MoveOf } from './camera-model.js';
import type { Form, Parameter, ParameterForms } from './move-parameters.js';
import * as parameters from './move-parameters.js';

/**
 * What stands at the ends of a leg: a field, a place of a level, a scale (1 is 100 %), or degrees (clockwise positive), each on its
 * frame; or nothing, where a move runs during `a..b`: along a way, or swinging about where it is.
 */
export interface LegForms {
  readonly field: Field;
  readonly place: LevelPlace;
  readonly scale: LevelValue;
  readonly angle: LevelValue;
  readonly way: null;
  readonly swing: null;
}

export type LegForm = keyof LegForms;

/** A line with bars at both ends; or over it the swings, larger or smaller ones; or a wave with its period in frames. */
export type MoveSign =
  | { readonly form: 'line' }
  | { readonly form: 'zigzag'; readonly fromMm: number; readonly toMm: number }
  | { readonly form: 'wave'; readonly periodFrames: number };

type Parameters = Readonly<Record<string, Parameter<Form>>>;

export type Values<P> = {
  readonly [N in keyof P]: P[N] extends Parameter<infer F> ? ParameterForms[F] : never;
};

interface KindOfMove<L extends LegForm, P> {
  readonly legs: L;
  readonly parameters: P;
  /** What it drives: the camera, whatever else goes along, or each level that it names. */
  readonly target: 'camera' | 'levels';
  readonly quantity: 'field' | 'shake' | 'slide' | 'pull' | 'scale' | 'turn' | 'sway';
  /** Moves are solved in the order of their phases, since directions, pivots and swings need what came before. */
  readonly phase: number;
  /** Two at once of one quantity of one target are an error; else they add up. */
  readonly alone: boolean;
  /** Whether it goes a way from place to place. */
  readonly goes: boolean;
  /** What graduations by hand are mm of: the way, or the width of the field; null: it has none. */
  readonly handSteps: 'way' | 'width' | null;
  /** What of the picture it carries past the eye, so that its steps can strobe: every point alike, or the fastest point counts. */
  readonly passes: 'alike' | 'fastest' | null;
  /** Whether what it goes from and to grows and shrinks: it is called T.U or T.B by that. */
  readonly grows: boolean;
  /** Whether `graduated` means something for it. */
  readonly graduated: boolean;
  /** The sign over its rows in the camera column. */
  readonly sign: (values: Values<P>) => MoveSign;
}

/** Ties the types of an entry together. */
const kind = <const L extends LegForm, P extends Parameters>(entry: KindOfMove<L, P>): KindOfMove<L, P> =>
  entry;

const { about, carry, curved, direction, loop, period, quick, ratios, sense, sideways, size, swing, way } =
  parameters;

const ofCamera = { target: 'camera', alone: true } as const;
const ofLevels = { target: 'levels', alone: true } as const;
const line = (): MoveSign => ({ form: 'line' });

/** Parameters in the order in which a memo tells them. */
export const moveKinds = {
  pan: kind({
    ...ofCamera,
    legs: 'field',
    parameters: { curved, carry },
    quantity: 'field',
    phase: 1,
    goes: true,
    handSteps: 'way',
    passes: 'alike',
    grows: false,
    graduated: true,
    sign: line,
  }),
  truck: kind({
    ...ofCamera,
    legs: 'field',
    parameters: { ratios, quick, carry },
    quantity: 'field',
    phase: 1,
    goes: false,
    handSteps: 'width',
    passes: 'fastest',
    grows: true,
    graduated: true,
    sign: line,
  }),
  follow: kind({
    ...ofCamera,
    legs: 'way',
    parameters: { direction, way },
    quantity: 'field',
    phase: 1,
    goes: true,
    handSteps: 'way',
    passes: 'alike',
    grows: false,
    graduated: true,
    sign: line,
  }),
  shake: kind({
    ...ofCamera,
    legs: 'swing',
    parameters: { size: swing, sideways },
    quantity: 'shake',
    phase: 2,
    goes: false,
    handSteps: null,
    passes: null,
    grows: false,
    graduated: false,
    sign: ({ size: swings }) => ({ form: 'zigzag', ...swings }),
  }),
  slide: kind({
    ...ofLevels,
    legs: 'place',
    parameters: { curved },
    quantity: 'slide',
    phase: 3,
    goes: true,
    handSteps: 'way',
    passes: 'alike',
    grows: false,
    graduated: true,
    sign: line,
  }),
  pull: kind({
    ...ofLevels,
    legs: 'way',
    parameters: { direction, way, loop },
    quantity: 'pull',
    phase: 3,
    alone: false,
    goes: true,
    handSteps: 'way',
    passes: 'alike',
    grows: false,
    graduated: true,
    sign: line,
  }),
  levelTruck: kind({
    ...ofLevels,
    legs: 'scale',
    parameters: { ratios, about },
    quantity: 'scale',
    phase: 4,
    goes: false,
    handSteps: null,
    passes: null,
    grows: true,
    graduated: true,
    sign: line,
  }),
  turn: kind({
    ...ofLevels,
    legs: 'angle',
    parameters: { sense, about },
    quantity: 'turn',
    phase: 5,
    goes: false,
    handSteps: null,
    passes: null,
    grows: false,
    graduated: true,
    sign: line,
  }),
  sway: kind({
    ...ofLevels,
    legs: 'swing',
    parameters: { size: size('sway', 'mm'), sideways, period: period('sway-time') },
    quantity: 'sway',
    phase: 6,
    goes: false,
    handSteps: null,
    passes: null,
    grows: false,
    graduated: false,
    sign: (values) => ({ form: 'wave', periodFrames: values.period }),
  }),
} satisfies { readonly [K in MoveKind]: unknown };

type Kinds = typeof moveKinds;

export type LegFormOf<K extends MoveKind> = Kinds[K]['legs'];
export type LegEndOf<K extends MoveKind> = LegForms[LegFormOf<K>];
export type ParametersOf<K extends MoveKind> = Values<Kinds[K]['parameters']>;

/** The kinds whose legs have that form. */
export type KindsWith<L extends LegForm> = {
  [K in MoveKind]: LegFormOf<K> extends L ? K : never;
}[MoveKind];

/** The names of all parameters. */
export type ParameterName = { [K in MoveKind]: keyof Kinds[K]['parameters'] }[MoveKind];

type ToldBy<P> = { [N in keyof P]: P[N] extends { readonly told: 'never' } ? never : N }[keyof P];
/** Those that a sheet tells in words of their own. */
export type ToldName = { [K in MoveKind]: ToldBy<Kinds[K]['parameters']> }[MoveKind];

/**
 * A pan or a follow and a truck that run at once share the camera: the truck gives the width, the other one the centre and the turn,
 * for as long as each of them runs.
 */
export function sharing(moves: readonly Move[]): Move[] {
  const fields = moves.filter((move) => kindOf(move).quantity === 'field');
  const trucks = fields.filter((move) => kindOf(move).grows);
  const others = fields.filter((move) => !kindOf(move).grows);
  const along = (move: Move, partners: readonly Move[]) =>
    partners.some((other) => startOf(move) < endOf(other) && startOf(other) < endOf(move));
  const given = (move: Move): FieldPart | null => {
    if (kindOf(move).quantity !== 'field') return null;
    if (kindOf(move).grows) return along(move, others) ? 'width' : null;
    return along(move, trucks) ? 'centre' : null;
  };
  return moves.map((move) => ({ ...move, gives: given(move) }));
}

// ---- what follows from a move and its kind, for all stages

type AnyParameters = Readonly<Record<string, Parameter<Form>>>;

/** The entry of a move, to be used with that move only. */
export const kindOf = ({ kind }: { readonly kind: Move['kind'] }): KindOfMove<LegForm, AnyParameters> =>
  moveKinds[kind] as unknown as KindOfMove<LegForm, AnyParameters>;

/** Whether it stands on its first frame (`A@1 > B@24`); else it has moved there (`1..24`). */
export const rests = (move: Pick<Move, 'kind'>): boolean => {
  const { legs } = kindOf(move);
  return legs !== 'way' && legs !== 'swing';
};

/** The frame (or moment) that it leaves from. */
export const startOf = ({ legs }: Pick<Move, 'legs'>): number => legs[0]!.start;
/** The frame on which it has arrived. */
export const endOf = ({ legs }: Pick<Move, 'legs'>): number => legs.at(-1)!.end;

/** First and last frame that it is written with: one that stands on its first frame has that, too. */
export function rowsOf(move: Move): Frames {
  return { from: startOf(move) + (rests(move) ? 0 : 1), to: endOf(move) };
}

/** The legs of a move whose legs have that form; none of others. */
export const legsOf = <L extends LegForm>(move: Move, form: L): readonly Leg<LegForms[L]>[] =>
  kindOf(move).legs === form ? (move.legs as readonly Leg<unknown>[] as readonly Leg<LegForms[L]>[]) : [];

/** The legs of one that goes from field to field; none of others. */
export const fieldLegs = (move: Move): readonly Leg<Field>[] => legsOf(move, 'field');

/** All places of a move by name, in the order of its way. */
export const placesOf = <P>(legs: readonly Leg<P>[]): readonly P[] => [
  legs[0]!.from,
  ...legs.flatMap(({ passing, to }) => [...passing, to]),
];

/** Whether it goes one smooth way through all its places. */
export const isCurved = ({ parameters }: Pick<Move, 'parameters'>): boolean =>
  'curved' in parameters && parameters.curved;

/** How much the picture grows with each leg of a truck, in its own measure; negative where it shrinks. None of other moves. */
export function growthOf(move: Move): readonly number[] {
  if (!kindOf(move).grows) return [];
  return [
    ...legsOf(move, 'field').map(({ from, to }) => from.widthMm - to.widthMm),
    ...legsOf(move, 'scale').map(({ from, to }) => to.value - from.value),
  ];
}

/** A parameter of a move with its value. */
export type GivenParameter = {
  [F in Form]: {
    readonly form: F;
    readonly name: ParameterName;
    readonly parameter: Parameter<F>;
    readonly value: ParameterForms[F];
  };
}[Form];

/** All parameters of a move, in the order in which a memo tells them. */
export function parametersOf(move: Move): readonly GivenParameter[] {
  const values: Readonly<Record<string, unknown>> = move.parameters;
  return Object.entries(kindOf(move).parameters).map(
    ([name, parameter]) => ({ form: parameter.form, name, parameter, value: values[name] }) as GivenParameter,
  );
}

/** Its value of a parameter of that form; undefined where the kind has none. */
export function givenOf<F extends Form>(move: Move, form: F): ParameterForms[F] | undefined {
  return parametersOf(move).find((one) => one.form === form)?.value as ParameterForms[F] | undefined;
}

/** An angle of a turn, or by how much it grows, as it is told: in the sense of the move. Degrees clockwise of other moves. */
export const toldDegrees = (move: Move, degrees: number): number =>
  givenOf(move, 'sense')?.positive === 'ccw' ? 0 - degrees : degrees;

/** Levels that go along with a move of the camera: those that a follow names, and those that are carried. */
export const goingAlong = (move: Move): readonly string[] => [
  ...(move.target.camera ? move.target.levels : []),
  ...(givenOf(move, 'levels') ?? []),
];

/** Those of one kind, where something is particular to it. */
export const movesOf = <K extends Move['kind']>(moves: readonly Move[], kind: K): readonly MoveOf<K>[] =>
  moves.filter(
    (move): move is Extract<Move, { kind: K }> => move.kind === kind,
  ) as unknown as readonly MoveOf<K>[];
