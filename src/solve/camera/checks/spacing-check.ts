/** Whether what stands behind a leg (ramps, curve, graduations, fairing mark) fits the leg. */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import type { Leg, Move } from '../../../shot/camera/camera-model.js';
import { kindOf } from '../../../shot/camera/move-facts.js';
import { SAME_MM } from '../camera-tracks.js';
import { asGoodAsStill, curveFits, cushionOf, easeFits } from '../easing.js';
import { legWay } from '../graduations.js';
import type { Path } from '../move-path.js';

/** `path`: the move's own, for the length of its legs. */
export function checkSpacing(move: Move, path: Path, report: Report): void {
  move.legs.forEach((leg, index) => {
    const { spacing } = leg;
    const steps = leg.end - leg.start;
    const pathLeg = path.legs[index];
    if (spacing.form === 'ease') ease(leg, spacing, steps, report);
    if (spacing.form === 'curve') curve(leg, spacing, report);
    if (spacing.form === 'steps') byHand(move, leg, spacing.mm, steps, pathLeg ? legWay(pathLeg) : 0, report);
    if (spacing.form === 'fair') fairing(leg, spacing, steps, report);
  });
}

function curve(
  leg: Leg<unknown>,
  c: { x1: number; y1: number; x2: number; y2: number },
  report: Report,
): void {
  if (curveFits(c)) return;
  report(diagnose('curve-range', leg.span, { x1: c.x1, y1: c.y1, x2: c.x2, y2: c.y2 }));
}

function ease(
  leg: Leg<unknown>,
  ramps: { leave: number; arrive: number },
  steps: number,
  report: Report,
): void {
  if (easeFits(ramps, steps)) return;
  const { leave, arrive } = ramps;
  report(diagnose('ramps-long', leg.span, { leave, arrive, steps }));
}

function byHand(
  move: Move,
  leg: Leg<unknown>,
  mm: readonly number[],
  steps: number,
  wayMm: number,
  report: Report,
): void {
  if (!kindOf(move).goes) {
    report(diagnose('steps-without-way', leg.span, {}));
    return;
  }
  if (mm.length !== steps) {
    report(
      diagnose('steps-count', leg.span, { graduations: mm.length, steps, start: leg.start, end: leg.end }),
    );
  }
  const total = mm.reduce((sum, step) => sum + step, 0);
  if (Math.abs(total - wayMm) <= SAME_MM + 1e-9) return;
  report(diagnose('steps-sum', leg.span, { sumMm: total, wayMm, withinMm: SAME_MM }));
}

function fairing(
  leg: Leg<unknown>,
  fair: { mark: string; frame: number; share: number },
  steps: number,
  report: Report,
): void {
  const { mark, frame, share } = fair;
  if (!(share > 0 && share < 1)) {
    report(diagnose('fairing-share', leg.span, { mark, share }));
    return;
  }
  const cushion = cushionOf(fair, leg.start, leg.end);
  if (!cushion) {
    report(diagnose('fairing-outside', leg.span, { mark, frame, first: leg.start + 1, last: leg.end - 1 }));
    return;
  }
  // k < 1 means p·T < T₁: the constant speed is below what an even move would have, and the cushion would have to hurry.
  if (cushion.power < 1 - 1e-12) {
    const latest = leg.start + Math.floor(share * steps + 1e-9);
    const least = Math.ceil((cushion.before / steps) * 1000 - 1e-9) / 10;
    report(
      diagnose('fairing-slow', leg.span, {
        mark,
        share,
        frame,
        latest: latest > leg.start ? latest : null,
        least,
      }),
    );
    return;
  }
  const still = asGoodAsStill(cushion);
  if (still - cushion.before >= cushion.left / 2) return;
  report(
    diagnose(
      'cushion-short',
      leg.span,
      { mark, still: Math.ceil(leg.start + still), frames: cushion.left },
      { notes: [{ note: 'cushion-speed', power: cushion.power }] },
    ),
  );
}
