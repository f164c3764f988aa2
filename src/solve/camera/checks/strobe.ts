/**
 * How fast the picture passes. Over 1/120 of the field's width a frame (0.1 in of a 12 in field) it probably strobes, from 1/48
 * (0.25 in) it is a zip pan and safe again (drawn-animation rule attributed to T. White). A full width in less than
 * seven seconds judders (a camera maker's panning guide). A ramp that only passes through either band, in less than a quarter of a
 * second, is let be (common practice): every quick move has one. In a truck the slowest point of the picture counts: where one
 * point stays still the eye rests on it, and nothing passes.
 */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import { fieldLegs, kindOf } from '../../../shot/camera/move-facts.js';
import type { CameraContext } from '../context.js';
import { counterClockwise, turnOf } from '../matrix.js';
import type { Graduation, SolvedMove } from '../solved.js';

/** What of the picture passes on a frame, as a share of the field's width and in mm. */
interface Passing {
  readonly frame: number;
  readonly share: number;
  readonly mm: number;
}

export const STROBES_OVER = 1 / 120;
export const SAFE_FROM = 1 / 48;
const JUDDER_SECONDS = 7;

export function checkStrobing(solved: SolvedMove, { fps, settings }: CameraContext, report: Report): void {
  const { move } = solved;
  const { passes } = kindOf(move);
  if (!passes) return;
  const { widthMm, heightMm } = settings.field;
  const steps = passes === 'slowest' ? inTruck(solved, heightMm / widthMm) : inPan(solved);
  const least = Math.min(fps / 4, steps.length);
  const strobing = sustained(
    steps,
    ({ share }) => share > STROBES_OVER + 1e-9 && share < SAFE_FROM - 1e-9,
    least,
  );
  const whole = passes === 'slowest';
  if (strobing.length > 0) {
    const most = fastest(strobing);
    report(
      diagnose(
        'strobing',
        move.span,
        {
          frames: strobing.map(({ frame }) => frame),
          whole,
          mm: most.mm,
          fraction: Math.round(1 / most.share),
        },
        { notes: [{ note: 'safe-speeds', widthMm: most.mm / most.share }] },
      ),
    );
    return;
  }
  const juddering = sustained(
    steps,
    ({ share }) => share > 1 / (JUDDER_SECONDS * fps) + 1e-9 && share <= STROBES_OVER + 1e-9,
    least,
  );
  if (juddering.length === 0) return;
  const most = fastest(juddering);
  report(
    diagnose(
      'judder',
      move.span,
      {
        frames: juddering.map(({ frame }) => frame),
        whole,
        seconds: 1 / most.share / fps,
        least: JUDDER_SECONDS,
      },
      { notes: [{ note: 'speed-limit', speed: most.mm / most.share / (JUDDER_SECONDS * fps) }] },
    ),
  );
}

/** Every point of the picture passes alike. */
function inPan({ graduations, start }: SolvedMove): Passing[] {
  return graduations
    .filter(({ frame }) => frame > start)
    .map(({ frame, stepShare, stepMm }) => ({ frame, share: Math.abs(stepShare), mm: Math.abs(stepMm) }));
}

/** The slowest point of the picture on each frame of a truck. `ratio`: height of the field over its width. */
function inTruck({ move, graduations, start }: SolvedMove, ratio: number): Passing[] {
  const legs = fieldLegs(move);
  return graduations.flatMap((now, i): Passing[] => {
    const before = graduations[i - 1];
    const leg = legs.findLast((one) => now.frame > one.start);
    if (!before || !leg || now.frame <= start || !now.value || !before.value) return [];
    // A field that turns has its still point elsewhere, and mostly in the picture.
    const still = leg.from.turnDeg !== leg.to.turnDeg;
    const share = still ? 0 : slowest(before, now, leg.from.turnDeg, ratio);
    return [{ frame: now.frame, share, mm: share * now.value }];
  });
}

/**
 * A point of the artwork that is seen at u (from the picture's centre, in widths of the field) now was seen at u w₁/w₀ + δ/w₀ a
 * frame before, where the centre goes by δ and the width from w₀ to w₁. It has come by u k − δ/w₀ with k = 1 − w₁/w₀, nothing at
 * δ/(w₀ k); the point of the picture nearest to that one is the slowest.
 */
function slowest(before: Graduation, now: Graduation, turnDeg: number, ratio: number): number {
  const width = before.value!;
  const k = 1 - now.value! / width;
  const gone = counterClockwise(turnOf(turnDeg), (now.x - before.x) / width, (now.y - before.y) / width);
  const nearest = (along: number, half: number) => (k === 0 ? 0 : Math.max(-half, Math.min(half, along / k)));
  return Math.hypot(nearest(gone.x, 0.5) * k - gone.x, nearest(gone.y, ratio / 2) * k - gone.y);
}

const fastest = (steps: readonly Passing[]): Passing => steps.reduce((a, b) => (b.share > a.share ? b : a));

/** Those for which `holds` is true on at least `least` steps running. */
function sustained(steps: readonly Passing[], holds: (one: Passing) => boolean, least: number): Passing[] {
  const kept: Passing[] = [];
  let run: Passing[] = [];
  for (const step of [...steps, null]) {
    if (step && holds(step)) run.push(step);
    else {
      if (run.length >= least) kept.push(...run);
      run = [];
    }
  }
  return kept;
}
