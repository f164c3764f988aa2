/**
 * How fast the picture passes. Over 1/120 of the field's width a frame (0.1 in of a 12 in field) it probably strobes, from 1/48
 * (0.25 in) it is a zip pan and safe again; in a truck with a pan the outer edges strobe first, though the centre keeps within
 * the limit, so the fastest point of the picture counts; a truck about the middle of the picture is left out (a rule of drawn
 * animation; its source stands beside the test). A full
 * width in less than seven seconds judders (a camera maker's panning guide): that is said of pans, in which every point passes
 * alike. A ramp that only passes through either band, in less than a quarter of a second, is let be (common practice): every
 * quick move has one.
 */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import { kindOf } from '../../../shot/camera/move-facts.js';
import { SAME_MM, type Stage } from '../camera-tracks.js';
import { asSeen, picturePassing } from '../picture-speed.js';
import type { SolvedMove } from '../solved-camera.js';

/** What of the picture passes on a frame, as a share of the field's width and in mm on the artwork. */
interface Passing {
  readonly frame: number;
  readonly share: number;
  readonly mm: number;
}

export const STROBES_OVER = 1 / 120;
export const SAFE_FROM = 1 / 48;
const JUDDER_SECONDS = 7;

/** Each frame is told once, of the camera before it is told of levels: what adds up to it is one picture. */
export function checkStrobing(moves: readonly SolvedMove[], stage: Stage, report: Report): void {
  const { fps, length } = stage.context;
  const told = new Set<number>();
  const passing = moves.filter((one) => passes(one));
  const ordered = [
    ...passing.filter(({ move }) => move.target.camera),
    ...passing.filter(({ move }) => !move.target.camera),
  ];
  const all = ordered.some(({ move }) => move.target.camera) ? asSeen(picturePassing(stage, null)) : null;
  for (const { move, start, end } of ordered) {
    const shares = move.target.camera ? all! : asSeen(picturePassing(stage, move.target.levels));
    const steps: Passing[] = [];
    for (let frame = Math.max(1, start + 1); frame <= Math.min(end, length); frame++) {
      const share = told.has(frame) ? 0 : shares[frame]!;
      steps.push({ frame, share, mm: share * stage.camera.width[frame]! });
    }
    const least = Math.min(fps / 4, steps.length);
    const edge = kindOf(move).passes === 'fastest';
    const strobing = sustained(
      steps,
      ({ share }) => share > STROBES_OVER + 1e-9 && share < SAFE_FROM - 1e-9,
      least,
    );
    for (const { frame } of strobing) told.add(frame);
    if (strobing.length > 0) {
      const most = fastest(strobing);
      report(
        diagnose(
          'strobing',
          move.span,
          {
            frames: strobing.map(({ frame }) => frame),
            edge,
            mm: most.mm,
            fraction: Math.round(1 / most.share),
          },
          { notes: [{ note: 'safe-speeds', widthMm: most.mm / most.share }] },
        ),
      );
      continue;
    }
    if (edge) continue;
    const juddering = sustained(
      steps,
      ({ share }) => share > 1 / (JUDDER_SECONDS * fps) + 1e-9 && share <= STROBES_OVER + 1e-9,
      least,
    );
    for (const { frame } of juddering) told.add(frame);
    if (juddering.length === 0) continue;
    const most = fastest(juddering);
    report(
      diagnose(
        'judder',
        move.span,
        {
          frames: juddering.map(({ frame }) => frame),
          seconds: 1 / most.share / fps,
          least: JUDDER_SECONDS,
        },
        { notes: [{ note: 'speed-limit', speed: most.mm / most.share / (JUDDER_SECONDS * fps) }] },
      ),
    );
  }
}

/** A truck about the middle of the picture passes nothing: the eye rests there. */
function passes({ move, graduations }: SolvedMove): boolean {
  const [first] = graduations;
  switch (kindOf(move).passes) {
    case 'alike':
      return true;
    case 'fastest':
      return graduations.some(({ x, y }) => Math.hypot(x - first!.x, y - first!.y) > SAME_MM);
    default:
      return false;
  }
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
