/** The draft of the camera, put in order. */

import type { Span } from '../../language/diagnostic.js';
import type { Settings } from '../settings.js';
import { FULL, standardField } from './bind-fields.js';
import type { CameraDraft } from './camera-draft.js';
import type { Camera, Field } from './camera-model.js';
import { fieldLegs, kindOf, startOf } from './move-facts.js';

/** `whole`: the place of what stands in no text, the standard field where nothing names it. */
export function finishCamera(
  draft: CameraDraft,
  flashing: readonly string[],
  settings: Settings,
  whole: Span,
): Camera {
  const moves = [...draft.moves].sort((a, b) => startOf(a) - startOf(b));
  const full = draft.made.get(FULL) ?? standardField(settings, whole);
  const named = new Set<Field>();
  for (const move of moves) for (const { from, to } of fieldLegs(move)) named.add(from).add(to);
  const fixed = draft.fix && draft.made.get(draft.fix.field.text);
  if (fixed) named.add(fixed);
  const first = moves.find((move) => kindOf(move).quantity === 'field');
  const begins = (first && fieldLegs(first)[0]?.from) ?? full;
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
