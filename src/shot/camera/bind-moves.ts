/** Moves: frames, millimetres and degrees of each. A move with a name or time that cannot be had is left out. */

import { diagnose, type Fix, type Span } from '../../language/diagnostic.js';
import type { Range, Word } from '../../language/tree.js';
import type {
  MarkedNumber,
  MarkedPlace,
  MoveKind,
  MoveOptions,
  MoveStatement,
  StopValue,
} from '../../language/tree-camera.js';
import type { Binder, Binding, Draft } from '../binding.js';
import { levelsOf } from '../statements/bind-levels.js';
import { bindOn } from '../timeline-items.js';
import { fieldOf } from './bind-fields.js';
import type { CameraNode, Leg, Move, Spacing } from './camera-model.js';
import { kindOf, type LegForm, type LegForms, moveKinds } from './move-kinds.js';
import { bySteps, degreesOf, type Option, spacingOf } from './move-parameters.js';

type PlaceForm = Exclude<LegForm, 'way' | 'swing'>;

/** What stands on a frame, by what the legs of the move go between. Null where it cannot be had. */
const ENDS: {
  readonly [L in PlaceForm]: (value: StopValue, node: MoveStatement, binding: Binding) => LegForms[L] | null;
} = {
  field: (value, _, binding) => fieldOf(value as Word, binding),
  place: (value) => {
    const { label, xMm, yMm } = value as MarkedPlace;
    return { label: label?.text ?? '', xMm, yMm };
  },
  scale: (stop) => {
    const { label, value } = stop as MarkedNumber;
    return { label: label?.text ?? '', value: value / 100 };
  },
  angle: (stop, { options }) => {
    const { label, value } = stop as MarkedNumber;
    return { label: label?.text ?? '', value: value * (options.sense?.sense === 'ccw' ? -1 : 1) + 0 };
  },
};

/** `A@a > B@b`: at rest on frame a, arrived on b. Everything is looked at before giving up, so that one run tells all. */
function placedLegs(node: MoveStatement, form: PlaceForm, binding: Binding): readonly Leg<unknown>[] | null {
  if (!node.from) return null;
  const made: Leg<unknown>[] = [];
  const quick = node.parts.quick !== undefined;
  const value = (stop: StopValue) => ENDS[form](stop, node, binding);
  let whole = true;
  let start = {
    value: value(node.from.value),
    at: binding.clock.position(node.from.at),
    span: node.from.span,
  };
  checkCurve(node, binding);
  for (const { passing, to, towards, spacing } of node.legs) {
    const between = passing.map(value);
    if (towards) checkGoal(to.value as Word, binding);
    const spread = spacingOf(spacing, quick, binding);
    const end = {
      value: value(to.value),
      at: to.at ? binding.clock.position(to.at) : arrival(start.at, spread),
      span: to.span,
    };
    if (
      between.includes(null) ||
      start.value === null ||
      end.value === null ||
      start.at === null ||
      end.at === null ||
      !spread
    )
      whole = false;
    else {
      const last = spacing.at(-1)?.span ?? to.span;
      made.push({
        from: start.value,
        passing: between,
        to: end.value,
        start: start.at,
        end: end.at,
        spacing: spread,
        span: { ...start.span, end: last.end },
      });
    }
    start = end;
  }
  return whole && made.length > 0 ? made : null;
}

/** The frame of the last graduation, one a frame. */
function arrival(start: number | null, spacing: Spacing | null): number | null {
  return start !== null && spacing?.form === 'steps' ? start + spacing.mm.length : null;
}

/** A field has its place from a statement or from graduations, and once. */
function checkGoal({ text: name, span }: Word, { draft, report }: Binding): void {
  const { named, goals } = draft.camera;
  const other = named.get(name)?.name ?? goals.get(name)?.name;
  if (name !== 'full' && (!other || other.span.start === span.start)) return;
  if (name === 'full') report(diagnose('field-full', span, {}));
  else
    report(
      diagnose(
        'name-twice',
        span,
        { of: 'field', name },
        { notes: [{ note: 'other-one-here', span: other!.span }] },
      ),
    );
}

/** The fields that the graduations of pans lead to: each is where the one before it was, moved by their sum. */
function declareGoals({ from, legs }: MoveStatement, { camera: { goals } }: Draft): void {
  let start = from?.value;
  for (const { to, towards, spacing } of legs) {
    const [byHand] = spacing;
    if (towards && byHand?.form === 'steps') {
      const name = to.value as Word;
      const mm = bySteps(byHand).reduce((sum, step) => sum + step, 0);
      const goal = { name, from: start as Word, degrees: degreesOf(towards), mm };
      if (name.text !== 'full' && !goals.has(name.text)) goals.set(name.text, goal);
    }
    start = to.value;
  }
}

/** A way bends at a third place; and only one that bends passes a place when it gets there. */
function checkCurve({ legs, options: { curved }, span }: MoveStatement, { report }: Binding): void {
  const passed = legs.flatMap(({ passing }) => passing)[0];
  if (passed && !curved) {
    const end: Span = { ...span, start: span.end };
    const fix: Fix = { action: 'write', written: 'curved', edits: [{ span: end, text: ' curved' }] };
    report(diagnose('place-passed', passed.span, {}, { fix }));
  }
  if (curved && legs.length < 2 && !passed)
    report(
      diagnose(
        'curve-straight',
        curved,
        {},
        { fix: { action: 'leave-out', edits: [{ span: curved, text: '' }] } },
      ),
    );
}

/** `a..b`: every frame of the range has moved, so it is at rest on the frame (or the moment) before. */
function during(range: Range, { clock, rows }: Binding): { start: number; end: number } | null {
  const frames = clock.range(range);
  if (!frames || (!frames.closed && rows === null)) return null;
  return { start: frames.from - 1, end: frames.to };
}

/** The one leg of a move that runs for a while. Swings are all alike: whatever would spread them is reported. */
function rangedLeg(
  node: MoveStatement,
  form: 'way' | 'swing',
  binding: Binding,
): readonly Leg<null>[] | null {
  const frames = node.range && during(node.range, binding);
  if (form === 'swing')
    for (const { span, form: word } of node.spacing) misplaced(word, node.kind, span, binding);
  const spacing = spacingOf(form === 'swing' ? [] : node.spacing, false, binding);
  if (!frames || !spacing) return null;
  return [{ from: null, passing: [], to: null, ...frames, spacing, span: node.span }];
}

function misplaced(word: string, kind: MoveKind, span: Span, { report }: Binding): void {
  report(diagnose('option-misplaced', span, { option: word, move: kind }));
}

/** Where an option is said; null where it is not. */
function placeOf(options: MoveOptions, option: Option): Span | null {
  switch (option) {
    case 'graduated':
    case 'log':
    case 'sideways':
    case 'curved':
      return options[option];
    case 'carry':
      return options.carry[0]?.span ?? null;
    default:
      return options[option]?.span ?? null;
  }
}

const OPTIONS: readonly Option[] = [
  'graduated',
  'log',
  'carry',
  'about',
  'sense',
  'loop',
  'sideways',
  'curved',
];

/** Reports the options that say nothing of such a move; `on` may stand behind any. */
function checkOptions({ kind, options }: MoveStatement, binding: Binding): void {
  const { graduated, parameters } = moveKinds[kind];
  const fitting = new Set<Option | null>(Object.values(parameters).map(({ option }) => option));
  if (graduated) fitting.add('graduated');
  for (const option of OPTIONS) {
    const span = placeOf(options, option);
    if (span && !fitting.has(option))
      misplaced(option === 'sense' ? options.sense!.sense : option, kind, span, binding);
  }
}

function bindMove(node: MoveStatement, binding: Binding): void {
  const { legs: form, target, parameters } = kindOf(node);
  const { options, span } = node;
  checkOptions(node, binding);
  const on = options.on ? (bindOn(options.on.value, options.on.span, binding.report) ?? 1) : 1;
  const levels = levelsOf(node.levels, binding);
  const legs =
    form === 'way' || form === 'swing' ? rangedLeg(node, form, binding) : placedLegs(node, form, binding);
  const values: [string, unknown][] = Object.entries(parameters).map(([name, { read }]) => [
    name,
    read(node, binding, legs?.[0] ?? null),
  ]);
  if (!legs || values.some(([, value]) => value === undefined)) return;
  if (levels.length === 0 && node.levels.length > 0) return;
  const move = {
    kind: node.kind,
    target: { camera: target === 'camera', levels },
    legs,
    on,
    graduated: options.graduated !== null,
    parameters: Object.fromEntries(values),
    gives: null,
    span,
  };
  // The table has read what its own types say of the kind.
  binding.draft.camera.moves.push(move as unknown as Move);
}

export const moveBinders = Object.fromEntries(
  Object.keys(moveKinds).map((kind) => [kind, { declare: declareGoals, bind: bindMove }]),
) as unknown as { readonly [K in MoveKind]: Binder<CameraNode<K>> };
