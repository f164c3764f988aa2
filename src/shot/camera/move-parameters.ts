/** What a move says besides its levels, its legs and its frames: parameters of a few forms, and how each is read from the tree. */

import type { MoveNumber } from '../../language/catalogue/message-terms.js';
import { diagnose, type Span } from '../../language/diagnostic.js';
import type {
  DirectionNode,
  MarkedNumber,
  MoveOptions,
  MoveStatement,
  SpacingNode,
} from '../../language/tree-camera.js';
import type { Binding } from '../binding.js';
import { levelsOf } from '../statements/bind-levels.js';
import type { Direction, Leg, Point, PullWay, Spacing, Swing } from './camera-model.js';

/**
 * How the angles of a turn are told, whatever sense they were typed in. Where all of them lie on one side, they count from upright to
 * that side and none has a minus; else they count clockwise, as everywhere.
 */
export interface AngleSense {
  readonly positive: 'cw' | 'ccw';
  /** No angle is negative and none is smaller than the one before: what is turned goes only that way. */
  readonly onward: boolean;
}

/** The values of each form. Lengths in mm, times in frames, angles in degrees. */
export interface ParameterForms {
  readonly flag: boolean;
  readonly levels: readonly string[];
  readonly sense: AngleSense;
  readonly direction: Direction;
  readonly way: PullWay;
  readonly swing: Swing;
  readonly measure: number;
  /** Length of the painted loop; null: it is painted as none. */
  readonly loop: number | null;
  /** A point of the artwork as it lies at home; null: the artwork's centre. */
  readonly point: Point | null;
}

export type Form = keyof ParameterForms;

export type Option = Exclude<keyof MoveOptions, 'on'>;

/**
 * Where a sheet tells it: before the move's word; behind it, beside the rows and in the memo; in the memo only; behind the spacing,
 * as a manner of the move; or nowhere.
 */
export type Told = 'before' | 'name' | 'memo' | 'manner' | 'never';

export interface Parameter<F extends Form, T extends Told = Told> {
  readonly form: F;
  readonly told: T;
  /** The option that says it, if it is one. */
  readonly option: Option | null;
  /** Of measures: the unit, and what messages call it. */
  readonly unit: 'mm' | 'degrees' | 'frames';
  readonly what: MoveNumber | null;
  /** Of flags: a sheet tells also that it is not set (`up and down` as `sideways`). */
  readonly toldUnset?: true;
  /** Undefined where it cannot be had. `leg`: the leg of a move that runs for a while. */
  readonly read: (
    node: MoveStatement,
    binding: Binding,
    leg: Leg<unknown> | null,
  ) => ParameterForms[F] | undefined;
}

type Rest<T extends Told> = Omit<Parameter<Form, T>, 'form' | 'read'>;

const plain = { option: null, unit: 'mm', what: null } as const;

function parameter<F extends Form, const T extends Told>(
  form: F,
  rest: Rest<T>,
  read: Parameter<F>['read'],
): Parameter<F, T> {
  return { form, ...rest, read };
}

/** `option` stands behind the move or not. */
const flag = <const T extends Told>(
  option: 'sideways' | 'curved',
  told: T,
  rest: { readonly toldUnset?: true } = {},
) => parameter('flag', { ...plain, ...rest, told, option }, ({ options }) => options[option] !== null);

/** Graduations by hand of a camera's truck are widths already: no ratios besides. */
export const ratios = parameter(
  'flag',
  { ...plain, told: 'manner', option: 'log' },
  ({ kind, options: { log }, legs }, { report }) => {
    if (!log) return false;
    const byHand = legs.some(({ spacing }) => spacing.some(({ form }) => form === 'steps'));
    if (kind === 'truck' && byHand)
      report(
        diagnose(
          'steps-by-ratios',
          log,
          {},
          { fix: { action: 'leave-out', edits: [{ span: log, text: '' }] } },
        ),
      );
    return true;
  },
);
/** One smooth way through all places instead of straight ones from each to the next. */
export const curved = flag('curved', 'manner');
export const sideways = flag('sideways', 'memo', { toldUnset: true });

/** Levels that go along. */
export const carry = parameter('levels', { ...plain, told: 'manner', option: 'carry' }, (node, binding) =>
  levelsOf(node.options.carry, binding),
);

export const quick = parameter('flag', { ...plain, told: 'before' }, ({ parts, legs }, { report }) => {
  if (parts.quick && !legs.some(({ spacing }) => spacing.some(({ form }) => form === 'fair')))
    report(diagnose('quick-without-fairing', parts.quick, {}));
  return parts.quick !== undefined;
});

const DEGREES = { right: 0, up: 90, left: 180, down: 270 } as const;

/** Counter-clockwise from right. */
export function degreesOf(node: DirectionNode): number {
  return node.form === 'angle' ? node.degrees : DEGREES[node.word];
}

export const direction = parameter(
  'direction',
  { ...plain, told: 'memo' },
  ({ parts: { direction: node } }) => {
    if (!node) return undefined;
    return { degrees: degreesOf(node), word: node.form === 'angle' ? 'angle' : node.word };
  },
);

/** A rate is that of the constant part; ramps take the way of half their frames. */
function wayOf(form: 'rate' | 'distance', mm: number, { start, end, spacing }: Leg<unknown>): PullWay {
  if (form === 'distance') return { distanceMm: mm, rateMm: null };
  return { distanceMm: mm * evenSteps(spacing, end - start), rateMm: mm };
}

export const way = parameter('way', { ...plain, told: 'name' }, ({ parts }, _, leg) =>
  parts.way && leg ? wayOf(parts.way.form, parts.way.mm, leg) : undefined,
);

export const loop = parameter(
  'loop',
  { ...plain, told: 'memo', option: 'loop' },
  ({ options }) => options.loop?.value ?? null,
);

export const about = parameter(
  'point',
  { ...plain, told: 'memo', option: 'about' },
  ({ options: { about: point } }) => point && { xMm: point.xMm, yMm: point.yMm },
);

/** `angles`: clockwise, in the order of the way. */
function angleSense(angles: readonly number[]): AngleSense {
  const left = angles.some((angle) => angle < 0);
  const right = angles.some((angle) => angle > 0);
  const positive = left && !right ? 'ccw' : 'cw';
  const told = positive === 'cw' ? angles : angles.map((angle) => -angle);
  return { positive, onward: !(left && right) && told.every((angle, i) => i === 0 || angle >= told[i - 1]!) };
}

/** Which way degrees count; a move that does not say is reported, and counts clockwise. */
export const sense = parameter('sense', { ...plain, told: 'name', option: 'sense' }, (node, { report }) => {
  const typed = [node.from, ...node.legs.map(({ to }) => to)].flatMap((stop) =>
    stop ? [(stop.value as MarkedNumber).value] : [],
  );
  if (node.options.sense) {
    const { sense: given } = node.options.sense;
    return angleSense(given === 'cw' ? typed : typed.map((angle) => -angle));
  }
  const end: Span = { ...node.span, start: node.span.end };
  report(
    diagnose(
      'turn-sense',
      node.span,
      {},
      { fix: { action: 'turn-clockwise', edits: [{ span: end, text: ' cw' }] } },
    ),
  );
  return angleSense(typed);
});

export const swing = parameter('swing', { ...plain, told: 'name' }, ({ parts: { size, lastSize } }) =>
  size ? { fromMm: size.value, toMm: (lastSize ?? size).value } : undefined,
);

/** `what`: as a message calls it. */
export const size = (what: MoveNumber, unit: 'mm' | 'degrees') =>
  parameter('measure', { option: null, told: 'name', unit, what }, ({ parts }) => parts.size?.value);

/** How long one of it lasts. */
export const period = (what: MoveNumber) =>
  parameter('measure', { option: null, told: 'memo', unit: 'frames', what }, ({ parts }, { clock }) =>
    parts.every ? (clock.length(parts.every) ?? undefined) : undefined,
  );

// ---- how the way of a leg is spread over its steps

/**
 * How many steps at constant speed go as far as `steps` steps with these ramps: a ramp of constant acceleration takes the way of
 * half its frames (s = a t² / 2).
 */
export function evenSteps(spacing: Spacing, steps: number): number {
  return spacing.form === 'ease' ? steps - (spacing.leave + spacing.arrive) / 2 : steps;
}

/** `quick`: whether it is a leg of a quick truck, the only move with a fairing mark. Null where a time cannot be had. */
export function spacingOf(
  nodes: readonly SpacingNode[],
  quick: boolean,
  { clock, report }: Binding,
): Spacing | null {
  const [node, second] = nodes;
  if (second) {
    report(
      diagnose('spacing-twice', second.span, {}, { notes: [{ note: 'spread-here', span: node!.span }] }),
    );
  }
  switch (node?.form) {
    case undefined:
      return { form: 'linear' };
    case 'ease':
      return { form: 'ease', leave: node.leave.value, arrive: node.arrive.value };
    case 'curve': {
      const [x1, y1, x2, y2] = node.values.map(({ value }) => value) as [number, number, number, number];
      return { form: 'curve', x1, y1, x2, y2 };
    }
    case 'steps':
      return { form: 'steps', mm: bySteps(node) };
    case 'fair': {
      const frame = clock.position(node.at);
      if (frame === null) return null;
      if (!quick) {
        report(diagnose('fairing-misplaced', node.span, {}));
        return { form: 'linear' };
      }
      return { form: 'fair', mark: node.mark.text, frame, share: node.share.value / 100 };
    }
  }
}

/** More graduations than any sheet has rows; a slip of the hand cannot fill the memory. */
const MOST_STEPS = 100_000;

/** Each graduation in mm, in order. */
export function bySteps({ steps }: SpacingNode & { form: 'steps' }): number[] {
  const mm: number[] = [];
  for (const { mm: step, times } of steps) {
    for (let i = 0; i < times && mm.length < MOST_STEPS; i++) mm.push(step.value);
  }
  return mm;
}
