/** Whether what stands behind a leg (ramps, curve, graduations, fairing mark) fits the leg. */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import { kindOf } from '../../../shot/camera/move-facts.js';
import type { Leg, Move } from '../../../shot/camera.js';
import { plural } from '../../../words/number.js';
import { legWay } from '../graduations.js';
import type { Path } from '../path.js';
import { asGoodAsStill, curveFits, cushionOf, easeFits } from '../spacing.js';
import { SAME_MM } from '../tracks.js';
import { millimetres, percent } from '../words.js';

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
  report(
    diagnose(
      'curve-range',
      leg.span,
      `The curve is ${c.x1} ${c.y1} ${c.x2} ${c.y2}; its first and third number are shares of the time and lie from 0 to 1 (CSS Easing, cubic-bezier), the others from -10 to 10.`,
    ),
  );
}

function ease(
  leg: Leg<unknown>,
  ramps: { leave: number; arrive: number },
  steps: number,
  report: Report,
): void {
  if (easeFits(ramps, steps)) return;
  const { leave, arrive } = ramps;
  report(
    diagnose(
      'ramps-long',
      leg.span,
      leave < 0 || arrive < 0
        ? `A ramp of ${Math.min(leave, arrive)} frames cannot be; 0 is none.`
        : `The ramps take ${leave} + ${arrive} frames, but this leg has only ${plural(steps, 'step')}; together they may be ${steps} at most.`,
    ),
  );
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
    report(
      diagnose(
        'steps-without-way',
        leg.span,
        'Graduations in mm are for moves that go from place to place: pans, pulls, follows and slides.',
      ),
    );
    return;
  }
  if (mm.length !== steps) {
    report(
      diagnose(
        'steps-count',
        leg.span,
        `There ${mm.length === 1 ? 'is' : 'are'} ${plural(mm.length, 'graduation')} for ${plural(steps, 'step')}, from frame ${leg.start} to frame ${leg.end}.`,
      ),
    );
  }
  const total = mm.reduce((sum, step) => sum + step, 0);
  if (Math.abs(total - wayMm) <= SAME_MM + 1e-9) return;
  report(
    diagnose(
      'steps-sum',
      leg.span,
      `The graduations add up to ${millimetres(total)} mm, but the way is ${millimetres(wayMm)} mm; they must agree within ${SAME_MM} mm.`,
    ),
  );
}

function fairing(
  leg: Leg<unknown>,
  fair: { mark: string; frame: number; share: number },
  steps: number,
  report: Report,
): void {
  const { mark, frame, share } = fair;
  if (!(share > 0 && share < 1)) {
    report(
      diagnose(
        'fairing-share',
        leg.span,
        `At the fairing mark ${mark} ${percent(share)} of the way would be done; it must be more than nothing and less than all.`,
      ),
    );
    return;
  }
  const cushion = cushionOf(fair, leg.start, leg.end);
  if (!cushion) {
    const [first, last] = [leg.start + 1, leg.end - 1];
    const must =
      last < first
        ? 'it must lie inside the move, and this one arrives on the frame after it leaves: give it more frames, or leave the mark out'
        : `it must lie inside the move, on frame ${first === last ? first : `${first} to ${last}`}`;
    report(
      diagnose('fairing-outside', leg.span, `The fairing mark ${mark} stands on frame ${frame}; ${must}.`),
    );
    return;
  }
  // k < 1 means p·T < T₁: the constant speed is below what an even move would have, and the cushion would have to hurry.
  if (cushion.power < 1 - 1e-12) {
    const latest = leg.start + Math.floor(share * steps + 1e-9);
    const least = Math.ceil((cushion.before / steps) * 1000 - 1e-9) / 10;
    const earlier = latest > leg.start ? `put the mark on frame ${latest} or earlier, or have ` : 'have ';
    report(
      diagnose(
        'fairing-slow',
        leg.span,
        `With ${percent(share)} done on frame ${frame} the move would have to go faster after the fairing mark ${mark} than before it; ${earlier}${least} % or more done there.`,
      ),
    );
    return;
  }
  const still = asGoodAsStill(cushion);
  if (still - cushion.before >= cushion.left / 2) return;
  report(
    diagnose(
      'cushion-short',
      leg.span,
      `The cushion after ${mark} has done 99.5 % of its way on frame ${Math.ceil(leg.start + still)}, before half of its ${plural(cushion.left, 'frame')}; the rest looks like a stop.`,
      {
        notes: [
          {
            message: `The cushion keeps the speed that the move has at the mark (k = ${millimetres(cushion.power)}; 2 is even slowing down). Less done at the mark, or a later mark, makes it longer.`,
          },
        ],
      },
    ),
  );
}
