/** Fades, dissolves and exposures: how much light reaches the picture on each frame. */

import { diagnose, type Report, type Span } from '../../language/diagnostic.js';
import type { Light } from '../../shot/camera/camera-model.js';
import type { CameraContext } from './camera-tracks.js';
import type { SolvedLight } from './solved-camera.js';

/**
 * On frame f of a..b a fade has (f − a)/(b − a) of its way: the first frame shows nothing of it, the last all. An effect
 * has no share of its own.
 */
export function solveLight(light: Light, length: number): SolvedLight {
  const { from, to } = light.frames;
  const shares: { frame: number; share: number }[] = [];
  if (light.kind !== 'effect') {
    for (let frame = Math.max(1, from); frame <= Math.min(to, length); frame++) {
      shares.push({ frame, share: shareOf(light, to > from ? (frame - from) / (to - from) : 1) });
    }
  }
  return { light, shares };
}

function shareOf(light: Light, way: number): number {
  switch (light.kind) {
    case 'fade':
    case 'overlap':
    case 'wipe':
    case 'iris':
      return light.way === 'in' ? way : 1 - way;
    case 'expose':
      return way === 1 ? light.to : light.from + (light.to - light.from) * way;
    default:
      return 1;
  }
}

/** A light that brings the picture or takes it away, and how far it has got: 0 … 1. */
export interface Ruling<L> {
  readonly light: L;
  readonly way: number;
}

/**
 * Which of several such lights says how much of the picture is seen on a frame: the one that runs, else the last one before, which has
 * got to its end, else the first one to come, which has not begun.
 */
export function rulingOn<L extends Pick<Light, 'frames'>>(
  lights: readonly L[],
  frame: number,
): Ruling<L> | null {
  const now = lights.find(({ frames }) => frame >= frames.from && frame <= frames.to);
  if (now) {
    const steps = now.frames.to - now.frames.from;
    return { light: now, way: steps > 0 ? (frame - now.frames.from) / steps : 1 };
  }
  const before = lights.findLast(({ frames }) => frames.to < frame);
  if (before) return { light: before, way: 1 };
  const after = lights.find(({ frames }) => frames.from > frame);
  return after ? { light: after, way: 0 } : null;
}

/** How much of the picture is faded away on a frame: between a fade out and the next fade in all of it. */
export function fadedOn(fades: readonly (Light & { kind: 'fade' })[], frame: number): number {
  const ruling = rulingOn(fades, frame);
  if (!ruling) return 0;
  return ruling.light.way === 'in' ? 1 - ruling.way : ruling.way;
}

/** The share of a level's light on a frame; what is not exposed otherwise is there as it is. */
export function exposureOn(lights: readonly Light[], frame: number): number {
  for (const light of lights) {
    if (light.kind !== 'expose' || frame < light.frames.from || frame > light.frames.to) continue;
    const steps = light.frames.to - light.frames.from;
    return light.from + (light.to - light.from) * (steps > 0 ? (frame - light.frames.from) / steps : 1);
  }
  return 1;
}

// ----
// How often light flashes, as far as the text says: fades to and from black and white, exposures, light through, and levels
// whose appearing is a flash. A flash is a pair of opposing changes of at least a tenth of the most light that a picture has
// (WCAG 2.2, "general flash"), so falls count as rises do. What is in the picture itself is not known here.

/** A change of light that counts, on the frame on which it begins to show. */
export interface LightChange {
  readonly frame: number;
  readonly up: boolean;
  readonly span: Span;
}

/** The least change that counts, of the light of the whole picture. Source: WCAG 2.2, definition of general flash (10 %). */
const LEAST_CHANGE = 0.1;

/** The changes of each light that the text names, rising and falling in turn, in the order of time. */
export function flashChanges(
  lights: readonly Light[],
  flashing: readonly string[],
  { length, levels }: Pick<CameraContext, 'length' | 'levels'>,
): LightChange[][] {
  const at = <T>(amount: (frame: number) => T): T[] => Array.from({ length }, (_, i) => amount(i + 1));
  const all: LightChange[][] = [];
  const fades = lights.filter((light) => light.kind === 'fade');
  for (const white of [false, true]) {
    const own = fades.filter((fade) => fade.white === white);
    if (own.length === 0) continue;
    const hidden = at((frame) => fadedOn(own, frame));
    // Whatever the cut before ended on, black needs no change to begin with; white is more light than any picture.
    all.push(
      changesOf(
        hidden.map((share) => (white ? share : -share)),
        white ? 0 : null,
        own[0]!.span,
      ),
    );
  }
  for (const light of lights) {
    if (light.kind !== 'glow') continue;
    const { from, to } = light.frames;
    all.push(
      changesOf(
        at((frame) => Number(frame >= from && frame <= to)),
        0,
        light.span,
      ),
    );
  }
  for (const name of new Set(lights.flatMap((light) => (light.kind === 'expose' ? light.levels : [])))) {
    const own = lights.filter((light) => light.kind === 'expose' && light.levels.includes(name));
    const shown = levels.find((one) => one.name === name)?.shown ?? (() => true);
    // An empty level has no light that could change; the next drawing goes on from where the last one ended.
    let amount: number | null = null;
    const amounts = at((frame) => {
      if (shown(frame)) amount = exposureOn(own, frame);
      return amount;
    });
    const first = amounts.find((one) => one !== null) ?? 1;
    all.push(
      changesOf(
        amounts.map((one) => one ?? first),
        null,
        own[0]!.span,
      ),
    );
  }
  for (const name of flashing) {
    const level = levels.find((one) => one.name === name);
    if (!level) continue;
    // Each drawing that appears is a flash by itself, whatever follows it.
    all.push(
      at((frame) => frame)
        .filter(level.appears)
        .map((frame) => ({ frame, up: true, span: level.span })),
    );
  }
  return all;
}

/**
 * From each dark place to the next bright one and back, small changes left out. `before`: the amount before the first frame;
 * null where it is that of the first.
 */
export function changesOf(amounts: readonly number[], before: number | null, span: Span): LightChange[] {
  const changes: LightChange[] = [];
  const start = before ?? amounts[0] ?? 0;
  let lowest = { amount: start, frame: 0 };
  let highest = lowest;
  let up: boolean | null = null;
  amounts.forEach((amount, i) => {
    const here = { amount, frame: i + 1 };
    if (up !== true && amount >= lowest.amount + LEAST_CHANGE - 1e-9) {
      changes.push({ frame: lowest.frame + 1, up: true, span });
      up = true;
      highest = here;
    } else if (up !== false && amount <= highest.amount - LEAST_CHANGE + 1e-9) {
      changes.push({ frame: highest.frame + 1, up: false, span });
      up = false;
      lowest = here;
    }
    if (up !== false && amount >= highest.amount) highest = here;
    if (up !== true && amount <= lowest.amount) lowest = here;
  });
  return changes;
}

export interface FlashCount {
  /** The most flashes within one second, and the frames on which that second's first and last change begin. */
  readonly most: number;
  readonly from: number;
  readonly to: number;
  readonly span: Span | null;
  /** Whether anything flashes at all: a light that changes twice within a second. */
  readonly any: boolean;
}

/**
 * Counts pairs of opposing changes that begin within one second; lights that change together are one change. A change whose
 * partner lies outside counts as a flash as well, since the eye has seen it.
 */
export function countFlashes(all: readonly (readonly LightChange[])[], fps: number): FlashCount {
  const changes = all.flat().sort((a, b) => a.frame - b.frame);
  let worst = { most: 0, from: 0, to: 0, span: null as Span | null };
  let end = 0;
  for (const [first, { frame: from, span }] of changes.entries()) {
    while (end < changes.length && changes[end]!.frame < from + fps) end++;
    // Not even if all of them were of one kind.
    if (end - first <= worst.most) continue;
    const inside = changes.slice(first, end);
    const frames = (up: boolean) =>
      new Set(inside.filter((change) => change.up === up).map(({ frame }) => frame)).size;
    const most = Math.max(frames(true), frames(false));
    if (most > worst.most) worst = { most, from, to: inside.at(-1)!.frame, span };
  }
  const twice = (own: readonly LightChange[]) =>
    own.some(({ frame }, i) => i > 0 && frame < own[i - 1]!.frame + fps);
  return { ...worst, any: all.some(twice) };
}

// ----
// Fades and exposures that get in each other's way, and light that flashes. More than three flashes in any second can hurt
// people with photosensitive epilepsy (WCAG 2.3.1, ITU-R BT.1702). What stands in the text can be counted, not measured.

export function checkLight(
  lights: readonly Light[],
  flashing: readonly string[],
  context: CameraContext,
  report: Report,
): { readonly flashes: boolean } {
  lights.forEach((light, index) => {
    if (whole(light) && light.frames.to <= light.frames.from) {
      report(diagnose('fade-short', light.span, {}));
    }
    if (light.frames.to > context.length || light.frames.from > context.length) {
      report(
        diagnose('move-past-end', light.span, { light: true, end: light.frames.to, rows: context.length }),
      );
    }
    const other = lights.slice(0, index).find((before) => clash(before, light));
    if (other) {
      const from = Math.max(other.frames.from, light.frames.from);
      const to = Math.min(other.frames.to, light.frames.to);
      report(
        diagnose(
          'light-overlaps',
          light.span,
          { levels: light.kind === 'expose' ? light.levels : null, from, to },
          { notes: [{ note: 'other-one', span: other.span }] },
        ),
      );
    }
  });
  return { flashes: checkFlashes(lights, flashing, context, report) };
}

/** What shows nothing of the picture at one end and all of it at the other. */
const whole = (light: Light) => light.kind === 'fade' || light.kind === 'wipe' || light.kind === 'iris';

const picture = (light: Light) => whole(light) || light.kind === 'overlap';

function clash(a: Light, b: Light): boolean {
  if (a.frames.from > b.frames.to || b.frames.from > a.frames.to) return false;
  if (picture(a) && picture(b)) return true;
  return a.kind === 'expose' && b.kind === 'expose' && a.levels.some((level) => b.levels.includes(level));
}

/** The rule's number, in both sources: no more than three flashes in a second. */
const MOST_FLASHES = 3;

/** Whether the sheet needs a caution: something flashes, or is so much light at once that it may. */
function checkFlashes(
  lights: readonly Light[],
  flashing: readonly string[],
  context: CameraContext,
  report: Report,
): boolean {
  const { most, from, to, span, any } = countFlashes(flashChanges(lights, flashing, context), context.fps);
  const bright = lights.find((light) => light.kind === 'glow' || (light.kind === 'fade' && light.white));
  if (most > MOST_FLASHES)
    report(diagnose('flashes', span!, { count: most, from, to }, { notes: [{ note: 'flashes-counted' }] }));
  const flashes = any || bright !== undefined || (flashing.length > 0 && most > 0);
  if (flashes && most <= MOST_FLASHES)
    report(diagnose('flash-unmeasured', span ?? bright!.span, { count: most }));
  return flashes;
}
