/** What levels can and cannot do at once: fixed to the camera and moved with it, pulled twice, swayed and left askew. */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import { endOf, goingAlong, movesOf, rowsOf, startOf } from '../../../shot/camera/move-facts.js';
import type { Move, MoveOf } from '../../../shot/camera.js';
import type { CameraContext } from '../context.js';
import { sway } from '../swing-moves.js';
import { SAME_MM } from '../tracks.js';

export function checkLevels(moves: readonly Move[], context: CameraContext, report: Report): void {
  for (const move of moves) carried(move, context, report);
  for (const move of movesOf(moves, 'roll')) unrest(move, report);
  const pulls = movesOf(moves, 'pull');
  pulls.forEach((move, i) => {
    for (const before of pulls.slice(0, i)) alongEachOther(move, before, report);
  });
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

function alongEachOther(move: MoveOf<'pull'>, before: MoveOf<'pull'>, report: Report): void {
  const shared = move.target.levels.find((name) => before.target.levels.includes(name));
  if (!shared || startOf(move) >= endOf(before) || startOf(before) >= endOf(move)) return;
  const apart = Math.abs(move.parameters.direction.degrees - before.parameters.direction.degrees) % 180;
  if (Math.min(apart, 180 - apart) > 1e-6) return;
  report(
    diagnose(
      'pulls-along',
      move.span,
      { level: shared },
      { notes: [{ note: 'other-pull', span: before.span }] },
    ),
  );
}

function unrest(move: MoveOf<'roll'>, report: Report): void {
  const { from, to } = rowsOf(move);
  const off = sway(move, to);
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
