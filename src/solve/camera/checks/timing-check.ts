/** When moves run: not two of a kind at once, none past the end of the sheet, quick ones quick. */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import type { Move } from '../../../shot/camera/camera-model.js';
import { endOf, kindOf, movesOf, startOf } from '../../../shot/camera/move-facts.js';
import type { CameraContext } from '../camera-context.js';
import { drivenBy } from '../drive-move.js';

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
    for (const key of new Set(drivenBy(move))) {
      const before = busy.get(key);
      if (kind.alone && before && startOf(move) < endOf(before)) {
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
