/** Fields: sizes and places in percent, millimetres or chart notation → millimetres and degrees. */

import { diagnose, guessFix, type Span } from '../../language/diagnostic.js';
import type { Word } from '../../language/tree.js';
import type { Binder, Binding } from '../binding.js';
import type { Settings } from '../settings.js';
import { single } from '../statements/bind-sheet.js';
import type { Camera, CameraDraft, CameraNode, DrawnGoal, Field } from './camera-model.js';
import { fieldLegs, kindOf, sharing, startOf } from './move-kinds.js';

const FULL = 'full';

export function standardField({ field }: Settings, span: Span): Field {
  return {
    name: FULL,
    xMm: 0,
    yMm: 0,
    widthMm: field.widthMm,
    turnDeg: 0,
    notation: 'full',
    span,
    sizeSpan: null,
    placeSpan: null,
  };
}

/** One step E or W is half a line of the chart, the width over twice its lines; N and S the same of the height. */
export function makeField(
  { name, size, place, turned, span }: CameraNode<'field'>,
  settings: Settings,
): Field {
  const { widthMm, heightMm } = settings.field;
  const steps = 2 * settings.fields;
  const turn = turned ? (turned.sense === 'cw' ? turned.degrees : 0 - turned.degrees) : 0;
  const at =
    place?.form === 'chart'
      ? { xMm: (place.east * widthMm) / steps, yMm: (place.north * heightMm) / steps }
      : { xMm: place?.xMm ?? 0, yMm: place?.yMm ?? 0 };
  return {
    name: name.text,
    ...at,
    widthMm: widthOf(size, settings),
    turnDeg: turn,
    notation: size.form,
    span,
    sizeSpan: size.span,
    placeSpan: place?.span ?? null,
  };
}

function widthOf(size: CameraNode<'field'>['size'], { field, fields }: Settings): number {
  switch (size.form) {
    case 'full':
      return field.widthMm;
    case 'percent':
      return (size.percent / 100) * field.widthMm;
    case 'chart':
      return (size.fields / fields) * field.widthMm;
    case 'mm':
      return size.widthMm;
  }
}

/** The field of that name; null where there is none, which is reported. */
export function fieldOf(word: Word, binding: Binding): Field | null {
  const { draft, settings, broken, guess: guessName, report } = binding;
  const { named, shared, goals, made } = draft.camera;
  const name = word.text;
  const known = made.get(name);
  if (known) return known;
  const goal = named.has(name) ? undefined : goals.get(name);
  if (goal) return drawnField(goal, word, binding);
  const statement = named.get(name) ?? shared.get(name);
  if (!statement && name !== FULL) {
    if (broken.has(name)) return null;
    const guess = guessName(name, [FULL, ...named.keys(), ...goals.keys(), ...shared.keys()]);
    report(diagnose('unknown-field', word.span, { name, guess: guess ?? null }, guessFix(guess, word.span)));
    return null;
  }
  const field = statement ? makeField(statement, settings) : standardField(settings, word.span);
  made.set(name, field);
  return field;
}

/**
 * The field that graduations lead to; null where they begin nowhere, which their move reports. A loop, not a recursion: a text may
 * chain as many as it has moves.
 */
function drawnField(goal: DrawnGoal, word: Word, binding: Binding): Field | null {
  const { named, shared, goals, made } = binding.draft.camera;
  const chain = new Set<DrawnGoal>();
  let from = word;
  for (let next: DrawnGoal | undefined = goal; next; ) {
    if (chain.has(next)) {
      binding.report(diagnose('unknown-field', word.span, { name: word.text, guess: null }));
      return null;
    }
    chain.add(next);
    from = next.from;
    next = named.has(from.text) || made.has(from.text) ? undefined : goals.get(from.text);
  }
  const known = from.text === FULL || [named, shared, made].some((fields) => fields.has(from.text));
  let field = known ? fieldOf(from, binding) : null;
  for (const { name, degrees, mm } of [...chain].reverse()) {
    if (!field) return null;
    const angle = ((degrees - field.turnDeg) * Math.PI) / 180;
    field = {
      ...field,
      name: name.text,
      xMm: field.xMm + exact(mm * Math.cos(angle)),
      yMm: field.yMm + exact(mm * Math.sin(angle)),
      span: name.span,
      sizeSpan: null,
      placeSpan: null,
    };
    made.set(name.text, field);
  }
  return field;
}

/** Without what sines leave of nothing: to a millionth of a millimetre. */
const exact = (mm: number): number => Math.round(mm * 1e6) / 1e6;

/** Percent and chart notation in one cut: two measures for one thing, as different people write them. */
function mixed(statement: CameraNode<'field'>, { draft, report }: Binding): void {
  const { form } = statement.size;
  if (form !== 'percent' && form !== 'chart') return;
  const first = [...draft.camera.named.values()].find(
    ({ size }) => size.form === 'percent' || size.form === 'chart',
  );
  if (!first || first.size.form === form) return;
  report(
    diagnose(
      'field-measures',
      statement.size.span,
      { field: statement.name.text, other: first.name.text, percent: form === 'percent' },
      { notes: [{ note: 'other-one-here', span: first.size.span }] },
    ),
  );
}

export const fieldBinders: {
  readonly field: Binder<CameraNode<'field'>>;
  readonly fix: Binder<CameraNode<'fix'>>;
} = {
  field: {
    once: ({ name }) => ({ code: 'name-twice', parameters: { of: 'field', name: name.text } }),
    declare(statement, draft, report) {
      const { name } = statement;
      if (name.text === FULL) {
        report(diagnose('field-full', name.span, {}));
        return;
      }
      draft.camera.named.set(name.text, statement);
    },
    share: (statement, draft) => {
      if (statement.name.text !== FULL) draft.camera.shared.set(statement.name.text, statement);
    },
    bind: (statement, binding) => {
      if (statement.name.text !== FULL) fieldOf(statement.name, binding);
      mixed(statement, binding);
    },
  },
  fix: {
    once: single,
    declare: (statement, draft) => {
      draft.camera.fix = statement;
    },
    bind: ({ field }, binding) => void fieldOf(field, binding),
  },
};

// ---- the draft of the camera, put in order

/** `whole`: the place of what stands in no text, the standard field where nothing names it. */
export function finishCamera(
  draft: CameraDraft,
  flashing: readonly string[],
  settings: Settings,
  whole: Span,
): Camera {
  const moves = sharing([...draft.moves].sort((a, b) => startOf(a) - startOf(b)));
  const full = draft.made.get(FULL) ?? standardField(settings, whole);
  const named = new Set<Field>();
  for (const move of moves)
    for (const { from, passing, to } of fieldLegs(move))
      for (const field of [from, ...passing, to]) named.add(field);
  const fixed = draft.fix && draft.made.get(draft.fix.field.text);
  if (fixed) named.add(fixed);
  const first = moves.find((move) => kindOf(move).quantity === 'field');
  // A follow names no field: the truck that shares the camera with it does.
  const names =
    first?.gives && fieldLegs(first).length === 0 ? moves.find(({ gives }) => gives === 'width') : first;
  const begins = (names && fieldLegs(names)[0]?.from) ?? full;
  // Those of used files only where they are used.
  const own = [...draft.made.values()].filter((field) => draft.named.has(field.name) || named.has(field));
  return {
    fields: own.sort((a, b) => Number(b.name === FULL) - Number(a.name === FULL) || byPlace(a, b, draft)),
    rest: fixed ?? begins,
    moves,
    light: [...draft.light].sort((a, b) => a.frames.from - b.frames.from),
    flashing,
  };
}

/** Own fields in the order of writing, then others by name. */
function byPlace(a: Field, b: Field, { named }: CameraDraft): number {
  const own = Number(named.has(b.name)) - Number(named.has(a.name));
  if (own !== 0) return own;
  return named.has(a.name) ? a.span.start - b.span.start : a.name < b.name ? -1 : 1;
}
