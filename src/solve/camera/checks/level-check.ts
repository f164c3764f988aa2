/** What levels can and cannot do at once: fixed to the camera and moved with it, pulled twice, swayed and left askew. */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import type { Move, MoveOf } from '../../../shot/camera/camera-model.js';
import { endOf, goingAlong, movesOf, rowsOf, startOf } from '../../../shot/camera/move-facts.js';
import type { CameraContext } from '../camera-context.js';
import { SAME_MM } from '../camera-tracks.js';
import { sway } from '../swing-moves.js';

export function checkLevels(moves: readonly Move[], context: CameraContext, report: Report): void {
  for (const move of moves) carried(move, context, report);
  for (const move of movesOf(moves, 'roll')) unrest(move, report);
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
