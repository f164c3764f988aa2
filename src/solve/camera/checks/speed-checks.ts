/** Whether what stands behind a leg (ramps, curve, graduations, fairing mark) fits the leg. */

import { diagnose, type Fix, type Report } from '../../../language/diagnostic.js';
import type { Field, Leg, Move } from '../../../shot/camera/camera-model.js';
import { kindOf } from '../../../shot/camera/move-kinds.js';
import { figure } from '../../../words/number-format.js';
import { type LevelTracks, SAME_MM, type Stage, stands } from '../camera-tracks.js';
import { asGoodAsStill, curveFits, cushionOf, easeFits } from '../easing.js';
import { legWay, legWidth, type Path, type PathLeg } from '../move-path.js';
import { clockwise, counterClockwise, turnOf } from '../plane-turns.js';
import type { SolvedMove } from '../solved-camera.js';

/** `path`: the move's own, for the length of its legs. */
export function checkSpacing(move: Move, path: Path, report: Report): void {
  move.legs.forEach((leg, index) => {
    const { spacing } = leg;
    const steps = leg.end - leg.start;
    const pathLeg = path.legs[index];
    if (spacing.form === 'ease') ease(leg, spacing, steps, report);
    if (spacing.form === 'curve') curve(leg, spacing, report);
    if (spacing.form === 'steps' && pathLeg) byHand(move, leg, spacing.mm, pathLeg, report);
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
  report(diagnose('ease-long', leg.span, { leave, arrive, steps }));
}

function byHand(move: Move, leg: Leg<unknown>, mm: readonly number[], path: PathLeg, report: Report): void {
  const { handSteps } = kindOf(move);
  if (!handSteps) {
    report(diagnose('steps-without-distance', leg.span, {}));
    return;
  }
  const steps = leg.end - leg.start;
  if (mm.length !== steps) {
    report(
      diagnose('steps-count', leg.span, { graduations: mm.length, steps, start: leg.start, end: leg.end }),
    );
  }
  const total = mm.reduce((sum, step) => sum + step, 0);
  const wayMm = handSteps === 'width' ? legWidth(path) : legWay(path);
  if (Math.abs(total - wayMm) <= SAME_MM + 1e-9) return;
  // Another field would leave the wrong number of graduations.
  const ends = handSteps === 'width' ? sizedField(leg, total) : placedField(move, leg, total / wayMm);
  const fix = mm.length === steps ? ends : undefined;
  report(
    diagnose(
      'steps-sum',
      leg.span,
      { of: handSteps, sumMm: total, wayMm, withinMm: SAME_MM },
      fix ? { fix } : {},
    ),
  );
}

/** The field that a truck goes to, as wide as the graduations make it, where its size stands in the same file. */
function sizedField({ from, to, span }: Leg<unknown>, totalMm: number): Fix | undefined {
  const [first, last] = [from, to] as readonly Field[] as readonly [Field, Field];
  const width = first.widthMm + (last.widthMm < first.widthMm ? -totalMm : totalMm);
  if (last.sizeSpan?.file !== span.file || !(width > 0)) return undefined;
  const size = `${figure(width, { decimals: 6 })}mm`;
  return { action: 'size-field', field: last.name, size, edits: [{ span: last.sizeSpan, text: size }] };
}

/** The field that a pan goes to, where the graduations end on the straight way to it, if its place stands in the same file. */
function placedField(move: Move, leg: Leg<unknown>, share: number): Fix | undefined {
  if (move.kind !== 'pan' || leg.passing.length > 0 || !Number.isFinite(share)) return undefined;
  const [first, last] = [leg.from, leg.to] as readonly Field[] as readonly [Field, Field];
  if (last.sizeSpan === null || last.sizeSpan.file !== leg.span.file) return undefined;
  const [x, y] = [first.xMm + (last.xMm - first.xMm) * share, first.yMm + (last.yMm - first.yMm) * share].map(
    (mm) => figure(mm, { decimals: 3 }),
  );
  const place = `${x},${y}`;
  const end = { ...last.sizeSpan, start: last.sizeSpan.end };
  return {
    action: 'place-field',
    field: last.name,
    place,
    edits: [last.placeSpan ? { span: last.placeSpan, text: place } : { span: end, text: ` at ${place}` }],
  };
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
      'fairing-short',
      leg.span,
      { mark, still: Math.ceil(leg.start + still), frames: cushion.left },
      { notes: [{ note: 'fairing-speed', power: cushion.power }] },
    ),
  );
}

// ----
// How fast the picture passes. Over 1/120 of the field's width a frame (0.1 in of a 12 in field) it probably strobes, from 1/48
// (0.25 in) it is a zip pan and safe again; in a truck with a pan the outer edges strobe first, though the centre keeps within
// the limit, so the fastest point of the picture counts; a truck about the middle of the picture is left out (a rule of drawn
// animation; its source stands beside the test). A full
// width in less than seven seconds judders (a camera maker's panning guide): that is said of pans, in which every point passes
// alike. A ramp that only passes through either band, in less than a quarter of a second, is let be (common practice): every
// quick move has one.

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

// ----
// How fast the picture passes the eye: what camera and levels do together, at the point of the picture that goes fastest. Where
// everything is carried along nothing passes. Shake, sway, scale and turn of single levels are left aside: their drawings, not
// the edges of their sheets, are what is looked at.

/**
 * For each frame (index; 0 is unused) how far the fastest point of the picture has come since the frame before, as a share of
 * the field's width; 0 where none of the levels shows. `names`: the levels that are looked at, or null for all.
 */
function picturePassing(stage: Stage, names: readonly string[] | null): Float64Array {
  const { length } = stage.context;
  const shares = new Float64Array(length + 1);
  /** Before levels that stand still the camera passes alike. */
  let still: Float64Array | null = null;
  for (const tracks of stage.levels.values()) {
    const { name, carry, shown } = tracks.level;
    if (names && !names.includes(name)) continue;
    let own: Float64Array;
    if (carry || !stands(tracks, WAYS, stage)) own = levelPassing(stage, tracks);
    else {
      still ??= levelPassing(stage, tracks);
      own = still;
    }
    for (let frame = 1; frame <= length; frame++)
      if (own[frame]! > shares[frame]! && shown(frame)) shares[frame] = own[frame]!;
  }
  return shares;
}

const WAYS = ['slideX', 'slideY', 'pullX', 'pullY', 'sharedX', 'sharedY'] as const;

/**
 * The same of one level, shown or not. A point of the artwork is seen at u = (W/w) R⁻¹ (q + t − c), q where it lies at home, t the
 * level's way, c, w and R the camera's centre, width and turn. The change from frame to frame is affine in u, so that a corner of
 * the picture goes fastest.
 */
function levelPassing({ camera, context }: Stage, tracks: LevelTracks): Float64Array {
  const { widthMm, heightMm } = context.settings.field;
  const { baseX, baseY, goneX, goneY, turn, width } = camera;
  const { slideX, slideY, pullX, pullY, sharedX, sharedY } = tracks;
  const shares = new Float64Array(context.length + 1);
  const ownX = (f: number): number => slideX[f]! + pullX[f]!;
  const ownY = (f: number): number => slideY[f]! + pullY[f]!;
  // What level and camera go together is taken out before the difference is made.
  const apartX = (f: number): number => ownX(f) + (sharedX[f]! - goneX[f]!) - baseX[f]!;
  const apartY = (f: number): number => ownY(f) + (sharedY[f]! - goneY[f]!) - baseY[f]!;
  for (let frame = 1; frame <= context.length; frame++) {
    const before = frame - 1;
    if (tracks.level.carry) {
      shares[frame] = Math.hypot(ownX(frame) - ownX(before), ownY(frame) - ownY(before)) / widthMm;
      continue;
    }
    const [nowX, nowY, wasX, wasY] = [apartX(frame), apartY(frame), apartX(before), apartY(before)];
    const [wide, wideBefore] = [width[frame]!, width[before]!];
    if (nowX === wasX && nowY === wasY && wide === wideBefore && turn[frame] === turn[before]) continue;
    const [turnNow, turnWas] = [turnOf(turn[frame]!), turnOf(turn[before]!)];
    let most = 0;
    for (const sx of [-0.5, 0.5])
      for (const sy of [-0.5, 0.5]) {
        const [x, y] = [sx * widthMm, sy * heightMm];
        const out = clockwise(turnNow, (x * wide) / widthMm, (y * wide) / widthMm);
        const back = counterClockwise(turnWas, out.x - nowX + wasX, out.y - nowY + wasY);
        const [backX, backY] = [(back.x * widthMm) / wideBefore, (back.y * widthMm) / wideBefore];
        most = Math.max(most, Math.hypot(x - backX, y - backY) / widthMm);
      }
    shares[frame] = most;
  }
  return shares;
}

/** A picture that is held this long between two steps is still one movement: moves on threes and fours. */
const LONGEST_HOLD = 4;

/** The steps as they are seen: a hold between two of them shows the step before it for so long. */
export function asSeen(shares: Float64Array): Float64Array {
  const seen = shares.slice();
  let last = 0;
  for (let frame = 1; frame < seen.length; frame++) {
    if (seen[frame]! > 1e-9) {
      const gap = frame - last - 1;
      if (last > 0 && gap > 0 && gap < LONGEST_HOLD) seen.fill(seen[last]!, last + 1, frame);
      last = frame;
    }
  }
  return seen;
}
