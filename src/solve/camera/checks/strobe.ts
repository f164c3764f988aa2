/**
 * How fast the picture passes. Over 1/120 of the field's width a frame (0.1 in of a 12 in field) it probably strobes, from 1/48
 * (0.25 in) it is a zip pan and safe again (drawn-animation rule attributed to T. White). A full width in less than
 * seven seconds judders (a camera maker's panning guide). A ramp that only passes through either band, in less than a quarter of a
 * second, is let be (common practice): every quick move has one.
 */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import type { CameraContext } from '../context.js';
import { kindOf } from '../moves.js';
import type { Graduation, SolvedMove } from '../solved.js';
import { frameList, millimetres } from '../words.js';

export const STROBES_OVER = 1 / 120;
export const SAFE_FROM = 1 / 48;
const JUDDER_SECONDS = 7;

export function checkStrobing(solved: SolvedMove, { fps }: CameraContext, report: Report): void {
  const { move } = solved;
  if (!kindOf(move).passes) return;
  const steps = solved.graduations.filter(({ frame }) => frame > solved.start);
  const rate = ({ stepShare }: Graduation) => Math.abs(stepShare);
  const strobing = sustained(
    steps,
    (g) => rate(g) > STROBES_OVER + 1e-9 && rate(g) < SAFE_FROM - 1e-9,
    Math.min(fps / 4, steps.length),
  );
  if (strobing.length > 0) {
    const most = strobing.reduce((a, b) => (rate(b) > rate(a) ? b : a));
    report(
      diagnose(
        'strobing',
        move.span,
        `On ${frameList(strobing.map((g) => g.frame))} the picture passes at up to ${millimetres(Math.abs(most.stepMm))} mm a frame, 1/${Math.round(1 / rate(most))} of the field's width: between 1/120 and 1/48 it probably strobes.`,
        {
          notes: [
            {
              message: `Up to ${millimetres((widthOf(most) ?? 0) / 120)} mm a frame it is safe, and from ${millimetres((widthOf(most) ?? 0) / 48)} mm it is a zip pan (rule attributed to T. White: 0.1 in and 0.25 in on a 12 in field).`,
            },
          ],
        },
      ),
    );
    return;
  }
  const juddering = sustained(
    steps,
    (g) => rate(g) > 1 / (JUDDER_SECONDS * fps) + 1e-9 && rate(g) <= STROBES_OVER + 1e-9,
    Math.min(fps / 4, steps.length),
  );
  if (juddering.length === 0) return;
  const most = juddering.reduce((a, b) => (rate(b) > rate(a) ? b : a));
  report(
    diagnose(
      'judder',
      move.span,
      `On ${frameList(juddering.map((g) => g.frame))} the picture passes a full width in ${millimetres(1 / rate(most) / fps)} seconds; in less than ${JUDDER_SECONDS} it can judder (a camera maker's panning guide).`,
      {
        notes: [
          {
            message: `${millimetres((widthOf(most) ?? 0) / (JUDDER_SECONDS * fps))} mm a frame is the limit on this field.`,
          },
        ],
      },
    ),
  );
}

/** Those for which `holds` is true on at least `least` steps running. */
function sustained(
  steps: readonly Graduation[],
  holds: (one: Graduation) => boolean,
  least: number,
): Graduation[] {
  const kept: Graduation[] = [];
  let run: Graduation[] = [];
  for (const step of [...steps, null]) {
    if (step && holds(step)) run.push(step);
    else {
      if (run.length >= least) kept.push(...run);
      run = [];
    }
  }
  return kept;
}

const widthOf = ({ stepMm, stepShare }: Graduation): number | null =>
  stepShare === 0 ? null : stepMm / stepShare;
