/** What follows from a move and its kind, for all stages. */

import type { Frames } from '../shot.js';
import type { Field, Leg, Move, MoveOf } from './camera-model.js';
import { type KindOfMove, type LegForm, type LegForms, moveKinds, type ParameterName } from './move-kinds.js';
import type { Form, Parameter, ParameterForms } from './move-parameters.js';

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

/** How much the picture grows with each leg of a truck, in its own measure; negative where it shrinks. None of other moves. */
export function growthOf(move: Move): readonly number[] {
  if (!kindOf(move).grows) return [];
  return [
    ...legsOf(move, 'field').map(({ from, to }) => from.widthMm - to.widthMm),
    ...legsOf(move, 'scale').map(({ from, to }) => to - from),
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
