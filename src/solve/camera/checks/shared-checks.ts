/** What can be wrong where a pan or a follow and a truck share the camera, one giving its centre, the other its width. */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import type { Move } from '../../../shot/camera/camera-model.js';
import { endOf, fieldLegs, givenOf, startOf } from '../../../shot/camera/move-kinds.js';
import { clampFrame, SAME_MM, type Stage } from '../camera-tracks.js';
import { sameTurn, sameWidth } from '../field-moves.js';

/** `stage`: when all moves have been driven. */
export function checkShared(moves: readonly Move[], stage: Stage, report: Report): void {
  for (const move of moves) {
    if (!move.gives) continue;
    const partner = moves.findLast(
      (other) =>
        other.gives !== null &&
        other.gives !== move.gives &&
        startOf(other) < endOf(move) &&
        startOf(move) < endOf(other),
    );
    if (!partner) continue;
    if (move.gives === 'width' && givenOf(move, 'levels')?.length)
      report(
        diagnose(
          'carry-width',
          move.span,
          { partner: partner.kind },
          { notes: [{ note: 'other-one', span: partner.span }] },
        ),
      );
    missed(move, partner, stage, report);
  }
}

/**
 * Where the fields of a move differ in what the other one gives, both were drawn for the same end: the camera should stand there once
 * both have arrived.
 */
function missed(move: Move, partner: Move, { camera, context }: Stage, report: Report): void {
  const legs = fieldLegs(move);
  const [first, last] = [legs[0], legs.at(-1)];
  if (!first || !last) return;
  const end = Math.max(endOf(move), endOf(partner));
  const f = clampFrame({ context }, end);
  const field = last.to;
  const notes = { notes: [{ note: 'other-one', span: partner.span }] } as const;
  const common = { field: field.name, frame: end, partner: partner.kind };
  if (move.gives === 'centre') {
    const meant = legs.some(({ from, to }) => !sameWidth(from.widthMm, to.widthMm));
    const widthMm = camera.width[f]!;
    if (meant && Math.abs(widthMm - field.widthMm) > SAME_MM)
      report(
        diagnose(
          'field-missed',
          last.span,
          { variant: 'width', ...common, widthMm, wantedMm: field.widthMm },
          notes,
        ),
      );
    return;
  }
  const meant = legs.some(
    ({ from, to }) => from.xMm !== to.xMm || from.yMm !== to.yMm || from.turnDeg !== to.turnDeg,
  );
  const [x, y] = [camera.baseX[f]! + camera.goneX[f]!, camera.baseY[f]! + camera.goneY[f]!];
  if (!meant) return;
  if (Math.hypot(x - field.xMm, y - field.yMm) > SAME_MM) {
    const wanted = { x: field.xMm, y: field.yMm };
    report(
      diagnose('field-missed', last.span, { variant: 'centre', ...common, at: { x, y }, wanted }, notes),
    );
  } else if (!sameTurn(camera.turn[f]!, field.turnDeg)) {
    const turns = { turnDeg: camera.turn[f]!, wantedDeg: field.turnDeg };
    report(diagnose('field-missed', last.span, { variant: 'turn', ...common, ...turns }, notes));
  }
}
