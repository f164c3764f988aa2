/** Sizes of fields: a pan keeps them, a truck changes them; and where the speed jumps between two legs. */

import { diagnose, type Fix, type Report } from '../../../language/diagnostic.js';
import type { Move } from '../../../shot/camera.js';
import { sameWidth } from '../field.js';
import type { Path, Sample } from '../path.js';
import { millimetres } from '../words.js';

export function checkSizes(move: Move, report: Report): void {
  if (move.kind === 'pan') {
    const leg = move.legs.find(({ from, to }) => !sameWidth(from.widthMm, to.widthMm));
    if (!leg) return;
    const { from, to } = leg;
    report(
      diagnose(
        'pan-sizes',
        leg.span,
        `Field ${from.name} is ${millimetres(from.widthMm)} mm wide and ${to.name} ${millimetres(to.widthMm)} mm: where the sizes differ it is a truck.`,
        { fix: word(move, 'truck') },
      ),
    );
  }
  if (move.kind === 'truck') {
    if (move.legs.some(({ from, to }) => !sameWidth(from.widthMm, to.widthMm))) return;
    const { from, to } = move.legs[0]!;
    const fix = move.quick || move.log ? {} : { fix: word(move, 'pan') };
    report(
      diagnose(
        'truck-one-size',
        move.span,
        `Fields ${from.name} and ${to.name} are both ${millimetres(from.widthMm)} mm wide: where the size stays it is a pan.`,
        fix,
      ),
    );
  }
}

/** The statement's first word stands at its start. */
function word(move: Move, text: 'pan' | 'truck'): Fix {
  const { file, start } = move.span;
  return {
    title: `write \`${text}\``,
    edits: [{ span: { file, start, end: start + move.kind.length }, text }],
  };
}

/** A jump of a quarter of the faster speed is seen (our own measure); below a tenth of a mm a frame nothing is. */
const SEEN_SHARE = 0.25;
const SEEN_MM = 0.1;

/** Compares the last step of each leg with the first of the next: the way in mm, and the growth of the field at its edge. */
export function checkSpeed(move: Move, path: Path, report: Report): void {
  if (move.kind !== 'pan' && move.kind !== 'truck' && move.kind !== 'slide') return;
  for (let i = 1; i < path.legs.length; i++) {
    const leg = path.legs[i]!;
    const n = Math.max(1, move.on);
    const at = path.at(leg.start);
    const into = speed(path.at(leg.start - n), at, n);
    const out = speed(at, path.at(leg.start + n), n);
    const jump = Math.hypot(...into.map((v, axis) => out[axis]! - v));
    const faster = Math.max(Math.hypot(...into), Math.hypot(...out));
    if (jump <= Math.max(SEEN_MM, SEEN_SHARE * faster)) continue;
    const label = leg.fromLabel || `frame ${leg.start}`;
    report(
      diagnose(
        'speed-jumps',
        move.legs[i]!.span,
        `The speed jumps on frame ${leg.start}, where the move passes ${label}: ${millimetres(Math.hypot(...into))} mm a frame before, ${millimetres(Math.hypot(...out))} after.`,
        { notes: [{ message: 'Ramps (`ease`) on both legs, or other frames, would make it even.' }] },
      ),
    );
  }
}

const speed = (a: Sample, b: Sample, frames: number): number[] => [
  (b.x - a.x) / frames,
  (b.y - a.y) / frames,
  ((b.value ?? 0) - (a.value ?? 0)) / 2 / frames,
];
