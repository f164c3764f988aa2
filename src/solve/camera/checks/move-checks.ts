/** Numbers that make no sense. A move that has one is left out of what is solved, so that nothing after it can go wrong. */

import type { Messages } from '../../../language/catalogue/index.js';
import type { FieldQuantity, NumberBounds, Quantity } from '../../../language/catalogue/message-terms.js';
import { diagnose, type Report, type Span } from '../../../language/diagnostic.js';
import type { Field, Leg, Move, MoveOf, Point } from '../../../shot/camera/camera-model.js';
import {
  endOf,
  fieldLegs,
  type GivenParameter,
  goingAlong,
  kindOf,
  type LegForm,
  type LegForms,
  movesOf,
  parametersOf,
  rowsOf,
  startOf,
} from '../../../shot/camera/move-kinds.js';
import type { Form, Parameter } from '../../../shot/camera/move-parameters.js';
import { type CameraContext, SAME_MM } from '../camera-tracks.js';
import { drivenBy, swayMm } from '../drive-move.js';

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
  const usable = fieldLegs(move).every(({ from, passing, to }) =>
    [from, ...passing, to].every((field) => !broken.has(field)),
  );
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
      [leg.from, ...leg.passing, leg.to].flatMap((end) =>
        ends(end).map((value) => ({ ...value, span: leg.span })),
      ),
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
  scale: ({ value }) => [{ what: 'scale', value, rule: 'scale' }],
  angle: ({ value }) => [{ what: 'turn', value, rule: 'degrees' }],
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

// ---- when moves run: not two of a kind at once, none past the end of the sheet, quick ones quick

/** `moves`: in the order of their starts. A move takes frames start+1 … end. */
export function checkTiming(moves: readonly Move[], context: CameraContext, report: Report): void {
  overlaps(moves, report);
  for (const move of moves) pastEnd(move, context, report);
  for (const truck of movesOf(moves, 'truck')) if (truck.parameters.quick) quickness(truck, context, report);
}

function overlaps(moves: readonly Move[], report: Report): void {
  const busy = new Map<string, Move>();
  for (const move of moves) {
    const kind = kindOf(move);
    const told = new Set<Move>();
    for (const key of new Set(drivenBy(move))) {
      const before = busy.get(key);
      const alongIt = before && startOf(move) < endOf(before);
      // The camera's centre and width are two things, and one overlap.
      if (kind.alone && alongIt && !(kind.target === 'camera' && told.has(before))) {
        told.add(before);
        const level = kind.target === 'camera' ? null : key.slice(0, key.indexOf(' '));
        const last = Math.min(endOf(before), endOf(move));
        report(
          diagnose(
            'moves-overlap',
            move.span,
            { move: move.kind, level, from: startOf(move) + 1, to: last },
            { notes: [{ note: 'other-one', span: before.span }] },
          ),
        );
      }
      if (!before || endOf(move) > endOf(before)) busy.set(key, move);
    }
  }
}

function pastEnd(move: Move, { length }: CameraContext, report: Report): void {
  const end = endOf(move);
  if (end <= length) return;
  report(diagnose('move-past-end', move.span, { light: false, end, rows: length }));
}

/** Quick trucks last around a second (common practice); longer than two is a slip or no quick truck. */
function quickness(move: Move, { fps }: CameraContext, report: Report): void {
  const frames = endOf(move) - startOf(move);
  if (frames <= 2 * fps) return;
  report(diagnose('quick-long', move.span, { frames, fps }));
}

// ----
// What levels can and cannot do at once: fixed to the camera and moved with it, pulled twice, swayed and left askew.

export function checkLevels(moves: readonly Move[], context: CameraContext, report: Report): void {
  for (const move of moves) carried(move, context, report);
  for (const move of movesOf(moves, 'sway')) unrest(move, report);
  pullsAlong(movesOf(moves, 'pull'), report);
}

/** `pulls`: by their starts. One that is along with several others on a level is reported with the first of them. */
function pullsAlong(pulls: readonly MoveOf<'pull'>[], report: Report): void {
  let running: MoveOf<'pull'>[] = [];
  for (const move of pulls) {
    running = running.filter((before) => endOf(before) > startOf(move));
    const told = new Set<string>();
    for (const before of running) {
      const level = alongEachOther(move, before);
      if (level === null || told.has(level)) continue;
      told.add(level);
      const notes = [{ note: 'other-pull', span: before.span }] as const;
      report(diagnose('pulls-along', move.span, { level }, { notes }));
      if (told.size === move.target.levels.length) break;
    }
    running.push(move);
  }
}

function carried(move: Move, { levels }: CameraContext, report: Report): void {
  for (const name of new Set(goingAlong(move))) {
    const level = levels.find((each) => each.name === name);
    if (!level?.carry) continue;
    report(
      diagnose(
        'carried-level',
        move.span,
        { level: name },
        { notes: [{ note: 'named-here', level: name, span: level.span }] },
      ),
    );
  }
}

/** The first level that both pull the same way or back, while both run. */
function alongEachOther(move: MoveOf<'pull'>, before: MoveOf<'pull'>): string | null {
  if (startOf(before) >= endOf(move)) return null;
  const apart = Math.abs(move.parameters.direction.degrees - before.parameters.direction.degrees) % 180;
  if (Math.min(apart, 180 - apart) > 1e-6) return null;
  return move.target.levels.find((name) => before.target.levels.includes(name)) ?? null;
}

function unrest(move: MoveOf<'sway'>, report: Report): void {
  const { from, to } = rowsOf(move);
  const off = swayMm(move, to);
  if (Math.abs(off) <= SAME_MM) return;
  const frames = to - from + 1;
  const { period } = move.parameters;
  const whole = (2 * frames) / period;
  const nearest = Math.max(1, Math.round(whole)) * (period / 2);
  report(
    diagnose('sway-unrest', move.span, {
      offMm: Math.abs(off),
      frame: to,
      levels: move.target.levels,
      frames: nearest,
    }),
  );
}
