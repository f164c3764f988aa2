/** Numbers that make no sense. A move that has one is left out of what is solved, so that nothing after it can go wrong. */

import { diagnose, type Report, type Span } from '../../../language/diagnostic.js';
import type { Field, Move } from '../../../shot/camera.js';
import { legsOf } from '../moves.js';

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

const round = (value: number) => Number(value.toPrecision(6));

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
  const usable =
    'legs' in move ? move.legs.every((leg) => ends(leg).every((end) => !isField(end, broken))) : true;
  const values = valuesOf(move);
  const on: Value = { what: '`on`', value: move.on, rule: 'frames', span: move.span };
  const timed = legsOf(move).map((leg) => {
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
  return checkAll([...values, on], report) && usable && timed.every((fine) => fine);
}

const ends = (leg: { readonly from: unknown; readonly to: unknown }) => [leg.from, leg.to];
const isField = (end: unknown, broken: ReadonlySet<Field>) => broken.has(end as Field);

function valuesOf(move: Move): Value[] {
  const { span } = move;
  switch (move.kind) {
    case 'pan':
    case 'truck':
      return [];
    case 'pull':
    case 'follow': {
      const values: Value[] = [
        { what: 'The way in mm', value: move.way.distanceMm, rule: 'length', span },
        { what: 'The direction in degrees', value: move.direction.degrees, rule: 'degrees', span },
      ];
      if (move.kind === 'pull' && move.loopMm !== null) {
        values.push({ what: 'The length of the loop in mm', value: move.loopMm, rule: 'size', span });
      }
      return values;
    }
    case 'slide':
      return move.legs.flatMap((leg) =>
        [leg.from, leg.to].flatMap((place): Value[] => [
          { what: 'The place to the right in mm', value: place.xMm, rule: 'length', span: leg.span },
          { what: 'The place upwards in mm', value: place.yMm, rule: 'length', span: leg.span },
        ]),
      );
    case 'levelTruck':
    case 'turn': {
      const rule = move.kind === 'turn' ? 'degrees' : 'scale';
      const what = move.kind === 'turn' ? 'The turn in degrees' : 'The scale (1 is 100 %)';
      const values = move.legs.flatMap((leg): Value[] => [
        { what, value: leg.from, rule, span: leg.span },
        { what, value: leg.to, rule, span: leg.span },
      ]);
      const { about } = move;
      if (about) {
        values.push({ what: 'The point to the right in mm', value: about.xMm, rule: 'length', span });
        values.push({ what: 'The point upwards in mm', value: about.yMm, rule: 'length', span });
      }
      return values;
    }
    case 'shake':
      return [
        { what: 'The swing in mm', value: move.fromMm, rule: 'length', span },
        { what: 'The last swing in mm', value: move.toMm, rule: 'length', span },
      ];
    case 'roll':
      return [
        { what: 'The sway in mm', value: move.sizeMm, rule: 'length', span },
        { what: 'The time of one sway in frames', value: move.periodFrames, rule: 'frames', span },
      ];
  }
}
