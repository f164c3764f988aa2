/** Numbers that make no sense. A move that has one is left out of what is solved, so that nothing after it can go wrong. */

import { diagnose, type Report, type Span } from '../../../language/diagnostic.js';
import { fieldLegs, type Given, kindOf, parametersOf } from '../../../shot/camera/move-facts.js';
import type { LegForm, LegForms } from '../../../shot/camera/move-kinds.js';
import type { Form, Parameter } from '../../../shot/camera/parameters.js';
import type { Field, Leg, Move, Point } from '../../../shot/camera.js';
import { significant } from '../../../words/number.js';

/** Nothing on paper is longer than a hundred metres; beyond that a number is a slip of the hand. */
const LONGEST_MM = 100_000;
/** Bounds of a scale: a hundredth to a hundred times. */
const SCALES = { least: 0.01, most: 100 };
/** A thousand full turns. */
const MOST_DEGREES = 360_000;

interface Value {
  readonly what: string;
  readonly value: number;
  readonly rule: 'length' | 'size' | 'scale' | 'degrees' | 'frames';
  readonly span: Span;
}

const WRONG: { readonly [R in Value['rule']]: { fits: (value: number) => boolean; says: string } } = {
  length: { fits: (v) => Math.abs(v) <= LONGEST_MM, says: 'a length of 100 metres at most' },
  size: { fits: (v) => v >= 0.01 && v <= LONGEST_MM, says: 'more than nothing, and 100 metres at most' },
  scale: { fits: (v) => v >= SCALES.least && v <= SCALES.most, says: 'between 1 % and 10000 %' },
  degrees: { fits: (v) => Math.abs(v) <= MOST_DEGREES, says: 'a thousand full turns at most' },
  frames: { fits: (v) => v >= 1, says: 'one frame at least' },
};

/** Reports each value out of its bounds; true where all fit. NaN fits nowhere. */
function checkAll(values: readonly Value[], report: Report): boolean {
  let fine = true;
  for (const { what, value, rule, span } of values) {
    if (WRONG[rule].fits(value)) continue;
    fine = false;
    report(diagnose('number-senseless', span, `${what} is ${round(value)}; it must be ${WRONG[rule].says}.`));
  }
  return fine;
}

const round = (value: number) => significant(value, 6);

export function checkFieldNumbers(field: Field, report: Report): boolean {
  const what = `field ${field.name}`;
  const { span } = field;
  return checkAll(
    [
      { what: `The width of ${what} in mm`, value: field.widthMm, rule: 'size', span },
      { what: `The place of ${what} to the right in mm`, value: field.xMm, rule: 'length', span },
      { what: `The place of ${what} upwards in mm`, value: field.yMm, rule: 'length', span },
      { what: `The turn of ${what} in degrees`, value: field.turnDeg, rule: 'degrees', span },
    ],
    report,
  );
}

/** `broken`: fields whose own numbers were reported already. */
export function checkMoveNumbers(move: Move, broken: ReadonlySet<Field>, report: Report): boolean {
  const usable = fieldLegs(move).every(({ from, to }) => !broken.has(from) && !broken.has(to));
  const on: Value = { what: '`on`', value: move.on, rule: 'frames', span: move.span };
  const timed = move.legs.map((leg) => {
    if (leg.end > leg.start) return true;
    report(
      diagnose(
        'move-backwards',
        leg.span,
        `This leg should arrive on frame ${leg.end}, but it leaves on frame ${leg.start}; it needs one frame at least.`,
      ),
    );
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

const ofPoint = (what: string, { xMm, yMm }: Point): Plain[] => [
  { what: `The ${what} to the right in mm`, value: xMm, rule: 'length' },
  { what: `The ${what} upwards in mm`, value: yMm, rule: 'length' },
];

/** Numbers at the ends of a leg; those of fields are checked with the fields. */
const OF_ENDS: { readonly [L in LegForm]: (end: LegForms[L]) => Plain[] } = {
  field: () => [],
  place: (place) => ofPoint('place', place),
  scale: (value) => [{ what: 'The scale (1 is 100 %)', value, rule: 'scale' }],
  angle: (value) => [{ what: 'The turn in degrees', value, rule: 'degrees' }],
  way: () => [],
  swing: () => [],
};

const RULES = { mm: 'length', degrees: 'degrees', frames: 'frames' } as const;

type Numbers = {
  readonly [F in Form]: (value: (Given & { readonly form: F })['value'], parameter: Parameter<F>) => Plain[];
};

const OF_PARAMETERS: Numbers = {
  flag: () => [],
  levels: () => [],
  sense: () => [],
  direction: ({ degrees }) => [{ what: 'The direction in degrees', value: degrees, rule: 'degrees' }],
  way: ({ distanceMm }) => [{ what: 'The way in mm', value: distanceMm, rule: 'length' }],
  swing: ({ fromMm, toMm }) => [
    { what: 'The swing in mm', value: fromMm, rule: 'length' },
    { what: 'The last swing in mm', value: toMm, rule: 'length' },
  ],
  measure: (value, { what, unit }) => [{ what: `The ${what} in ${unit}`, value, rule: RULES[unit] }],
  loop: (value) => (value === null ? [] : [{ what: 'The length of the loop in mm', value, rule: 'size' }]),
  point: (point) => (point ? ofPoint('point', point) : []),
};

function ofParameter({ form, value, parameter }: Given): Plain[] {
  return (OF_PARAMETERS[form] as (value: unknown, parameter: unknown) => Plain[])(value, parameter);
}
