/** A move of each kind, with two values of each of its parameters, made of the table of moves: no kind and no form can be left out. */

import type { Move, MoveKind, Spacing } from '../src/shot/camera/camera-model.js';
import { kindOf, type LegForm, type LegForms, moveKinds } from '../src/shot/camera/move-kinds.js';
import type { Form, ParameterForms } from '../src/shot/camera/move-parameters.js';

export const KINDS = Object.keys(moveKinds) as readonly MoveKind[];

const span = { file: 'sample.cut', start: 0, end: 1 };
const field = (name: string, widthMm: number) => ({
  name,
  xMm: 0,
  yMm: 0,
  widthMm,
  turnDeg: 0,
  notation: 'percent' as const,
  span,
  sizeSpan: null,
  placeSpan: null,
});
const FIELDS = [field('P', 254), field('Q', 200)] as const;

/** Two ends of a leg. */
const ENDS: { readonly [L in LegForm]: readonly [LegForms[L], LegForms[L]] } = {
  field: FIELDS,
  place: [
    { label: 'ア', xMm: 0, yMm: 0 },
    { label: 'イ', xMm: 40, yMm: 0 },
  ],
  scale: [
    { label: '', value: 1 },
    { label: '', value: 1.4 },
  ],
  angle: [
    { label: '', value: 0 },
    { label: '', value: 90 },
  ],
  way: [null, null],
  swing: [null, null],
};

/** Ends of a turn whose sense is the second one. */
const LEFT = ENDS.angle.map(({ label, value }) => ({ label, value: 0 - value }));

/** Two values of a parameter. */
export const VALUES: { readonly [F in Form]: readonly [ParameterForms[F], ParameterForms[F]] } = {
  flag: [false, true],
  levels: [[], ['A']],
  sense: [
    { positive: 'cw', onward: true },
    { positive: 'ccw', onward: true },
  ],
  direction: [
    { degrees: 0, word: 'right' },
    { degrees: 30, word: 'angle' },
  ],
  way: [
    { distanceMm: 72, rateMm: 3 },
    { distanceMm: 96, rateMm: 4 },
  ],
  swing: [
    { fromMm: 5, toMm: 5 },
    { fromMm: 5, toMm: 9 },
  ],
  measure: [5, 9],
  loop: [null, 420],
  point: [null, { xMm: 10, yMm: 20 }],
};

export interface Changed {
  readonly on?: number;
  readonly graduated?: boolean;
  readonly spacing?: Spacing;
  readonly levels?: readonly string[];
  readonly end?: number;
  /** Of these parameters the second value. */
  readonly second?: readonly string[];
}

export const parameterNames = (kind: MoveKind): readonly string[] => Object.keys(kindOf({ kind }).parameters);

/** On frames 1 to `end`, of level A where it names levels. */
export function moveOf(kind: MoveKind, changed: Changed = {}): Move {
  const { target, parameters, legs } = kindOf({ kind });
  const { on = 1, graduated = false, spacing = { form: 'linear' }, end = 24, second = [] } = changed;
  const [from, to] = second.includes('sense') ? LEFT : ENDS[legs];
  const values = Object.entries(parameters).map(([name, { form }]) => [
    name,
    VALUES[form][second.includes(name) ? 1 : 0],
  ]);
  const move = {
    kind,
    target: {
      camera: target === 'camera',
      levels: changed.levels ?? (target === 'levels' ? ['A'] : []),
    },
    legs: [{ from, passing: [], to, start: legs === 'way' || legs === 'swing' ? 0 : 1, end, spacing, span }],
    on,
    graduated,
    parameters: Object.fromEntries(values),
    gives: null,
    span,
  };
  return move as unknown as Move;
}
