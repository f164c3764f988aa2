/** Sizes of fields: a pan keeps them, a truck changes them; and where the speed jumps between two legs. */

import { diagnose, type Fix, type Report } from '../../../language/diagnostic.js';
import type { Move, MoveOf } from '../../../shot/camera/camera-model.js';
import { kindOf, movesOf } from '../../../shot/camera/move-facts.js';
import { sameWidth } from '../field-moves.js';
import type { Path, Sample } from '../move-path.js';

/** Of moves between fields. */
export function checkSizes(moves: readonly Move[], report: Report): void {
  for (const move of movesOf(moves, 'pan')) {
    const leg = move.legs.find(({ from, to }) => !sameWidth(from.widthMm, to.widthMm));
    if (!leg) continue;
    const { from, to } = leg;
    report(
      diagnose(
        'pan-sizes',
        leg.span,
        { from: from.name, fromMm: from.widthMm, to: to.name, toMm: to.widthMm },
        { fix: word(move, 'truck') },
      ),
    );
  }
  for (const move of movesOf(moves, 'truck')) {
    if (move.legs.some(({ from, to }) => !sameWidth(from.widthMm, to.widthMm))) continue;
    const { from, to } = move.legs[0]!;
    const { quick, ratios } = move.parameters;
    report(
      diagnose(
        'truck-one-size',
        move.span,
        { from: from.name, to: to.name, widthMm: from.widthMm },
        quick || ratios ? {} : { fix: word(move, 'pan') },
      ),
    );
  }
}

/** The statement's first word stands at its start. */
function word(move: MoveOf<'pan'> | MoveOf<'truck'>, text: 'pan' | 'truck'): Fix {
  const { file, start } = move.span;
  return {
    action: 'write',
    written: text,
    edits: [{ span: { file, start, end: start + move.kind.length }, text }],
  };
}

/** A jump of a quarter of the faster speed is seen (our own measure); below a tenth of a mm a frame nothing is. */
const SEEN_SHARE = 0.25;
const SEEN_MM = 0.1;

/** Compares the speeds on both sides of each field passed through: the way in mm, and the growth of the field at its edge. */
export function checkSpeed(move: Move, path: Path, report: Report): void {
  if (!kindOf(move).passes) return;
  for (let i = 1; i < path.legs.length; i++) {
    const { start, end, fromLabel } = path.legs[i]!;
    const into = speedAt(path, start, -move.on, start - path.legs[i - 1]!.start);
    const out = speedAt(path, start, move.on, end - start);
    const jump = Math.hypot(...into.map((v, axis) => out[axis]! - v));
    const [before, after] = [Math.hypot(...into), Math.hypot(...out)];
    if (jump <= Math.max(SEEN_MM, SEEN_SHARE * Math.max(before, after))) continue;
    report(
      diagnose(
        'speed-jumps',
        move.legs[i]!.span,
        { frame: start, field: fromLabel || null, before, after },
        { notes: [{ note: 'even-speed' }] },
      ),
    );
  }
}

/**
 * Mm a frame at a frame, from the two steps on one side of it; exact where the speed grows or falls evenly, as on ramps.
 * A leg with no room for two gives the mean of its one.
 */
function speedAt(path: Path, frame: number, step: number, steps: number): number[] {
  const reach = Math.abs(step);
  const side = Math.sign(step);
  const at = path.at(frame);
  const near = path.at(frame + side * Math.min(reach, steps));
  const far = steps < 2 * reach ? null : path.at(frame + 2 * step);
  const along = (pick: (s: Sample) => number) => {
    const one = (pick(near) - pick(at)) / (side * Math.min(reach, steps));
    return far ? 2 * one - (pick(far) - pick(at)) / (2 * step) : one;
  };
  return [along((s) => s.x), along((s) => s.y), along((s) => (s.value ?? 0) / 2)];
}
