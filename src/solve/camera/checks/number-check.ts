/** Numbers that make no sense. A move that has one is left out of what is solved, so that nothing after it can go wrong. */

import type { Messages } from '../../../language/catalogue/index.js';
import type { FieldQuantity, NumberBounds, Quantity } from '../../../language/catalogue/message-terms.js';
import { diagnose, type Report, type Span } from '../../../language/diagnostic.js';
import type { Field, Leg, Move, Point } from '../../../shot/camera/camera-model.js';
import { fieldLegs, type GivenParameter, kindOf, parametersOf } from '../../../shot/camera/move-facts.js';
import type { LegForm, LegForms } from '../../../shot/camera/move-kinds.js';
import type { Form, Parameter } from '../../../shot/camera/move-parameters.js';

/** Nothing on paper is longer than a hundred metres; beyond that a number is a slip of the hand. */
const LONGEST_MM = 100_000;
/** Bounds of a scale: a hundredth to a hundred times. */
const SCALES = { least: 0.01, most: 100 };
/** A thousand full turns. */
const MOST_DEGREES = 360_000;

interface Value {
  /** A string: of the move. */
  readonly what: Quantity | { readonly field: string; readonly quantity: FieldQuantity };
  readonly value: number;
  readonly rule: NumberBounds;
  readonly span: Span;
}

const FITS: { readonly [B in NumberBounds]: (value: number) => boolean } = {
  length: (v) => Math.abs(v) <= LONGEST_MM,
  size: (v) => v >= 0.01 && v <= LONGEST_MM,
  scale: (v) => v >= SCALES.least && v <= SCALES.most,
  degrees: (v) => Math.abs(v) <= MOST_DEGREES,
  frames: (v) => v >= 1,
};

/** Reports each value out of its bounds; true where all fit. NaN fits nowhere. */
function checkAll(values: readonly Value[], report: Report): boolean {
  let fine = true;
  for (const { what, value, rule, span } of values) {
    if (FITS[rule](value)) continue;
    fine = false;
    const number = { value, bounds: rule };
    const parameters: Messages['number-senseless'] =
      typeof what === 'string'
        ? { variant: 'move', quantity: what, ...number }
        : { variant: 'field', ...what, ...number };
    report(diagnose('number-senseless', span, parameters));
  }
  return fine;
}

export function checkFieldNumbers(field: Field, report: Report): boolean {
  const what = (quantity: FieldQuantity) => ({ field: field.name, quantity });
  const { span } = field;
  return checkAll(
    [
      { what: what('width'), value: field.widthMm, rule: 'size', span },
      { what: what('x'), value: field.xMm, rule: 'length', span },
      { what: what('y'), value: field.yMm, rule: 'length', span },
      { what: what('turn'), value: field.turnDeg, rule: 'degrees', span },
    ],
    report,
  );
}

/** `broken`: fields whose own numbers were reported already. */
export function checkMoveNumbers(move: Move, broken: ReadonlySet<Field>, report: Report): boolean {
  const usable = fieldLegs(move).every(({ from, to }) => !broken.has(from) && !broken.has(to));
  const on: Value = { what: 'on', value: move.on, rule: 'frames', span: move.span };
  const timed = move.legs.map((leg) => {
    if (leg.end > leg.start) return true;
    report(diagnose('move-backwards', leg.span, { start: leg.start, end: leg.end }));
    return false;
  });
  return checkAll([...valuesOf(move), on], report) && usable && timed.every((fine) => fine);
}

function valuesOf(move: Move): Value[] {
  const ends = OF_ENDS[kindOf(move).legs] as (end: unknown) => Plain[];
  const legs: readonly Leg<unknown>[] = move.legs;
  return [
    ...legs.flatMap((leg) =>
      [leg.from, leg.to].flatMap((end) => ends(end).map((value) => ({ ...value, span: leg.span }))),
    ),
    ...parametersOf(move).flatMap((given) =>
      ofParameter(given).map((value) => ({ ...value, span: move.span })),
    ),
  ];
}

type Plain = Omit<Value, 'span'>;

const ofPoint = (what: 'place' | 'point', { xMm, yMm }: Point): Plain[] => [
  { what: `${what}-x`, value: xMm, rule: 'length' },
  { what: `${what}-y`, value: yMm, rule: 'length' },
];

/** Numbers at the ends of a leg; those of fields are checked with the fields. */
const OF_ENDS: { readonly [L in LegForm]: (end: LegForms[L]) => Plain[] } = {
  field: () => [],
  place: (place) => ofPoint('place', place),
  scale: (value) => [{ what: 'scale', value, rule: 'scale' }],
  angle: (value) => [{ what: 'turn', value, rule: 'degrees' }],
  way: () => [],
  swing: () => [],
};

const RULES = { mm: 'length', degrees: 'degrees', frames: 'frames' } as const;

type Numbers = {
  readonly [F in Form]: (
    value: (GivenParameter & { readonly form: F })['value'],
    parameter: Parameter<F>,
  ) => Plain[];
};

const OF_PARAMETERS: Numbers = {
  flag: () => [],
  levels: () => [],
  sense: () => [],
  direction: ({ degrees }) => [{ what: 'direction', value: degrees, rule: 'degrees' }],
  way: ({ distanceMm }) => [{ what: 'way', value: distanceMm, rule: 'length' }],
  // It may grow from nothing or die away to nothing, but it has to swing.
  swing: ({ fromMm, toMm }) => [
    { what: 'swing', value: fromMm, rule: toMm === 0 ? 'size' : 'length' },
    { what: 'last-swing', value: toMm, rule: 'length' },
  ],
  measure: (value, { what, unit }) => (what ? [{ what, value, rule: RULES[unit] }] : []),
  loop: (value) => (value === null ? [] : [{ what: 'loop', value, rule: 'size' }]),
  point: (point) => (point ? ofPoint('point', point) : []),
};

function ofParameter({ form, value, parameter }: GivenParameter): Plain[] {
  return (OF_PARAMETERS[form] as (value: unknown, parameter: unknown) => Plain[])(value, parameter);
}
