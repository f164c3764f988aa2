/**
 * Fades and exposures that get in each other's way, and light that flashes. More than three flashes in any second can hurt
 * people with photosensitive epilepsy (WCAG 2.3.1, ITU-R BT.1702). What stands in the text can be counted, not measured.
 */

import { diagnose, type Report, type Span } from '../../../language/diagnostic.js';
import type { Light } from '../../../shot/camera.js';
import type { CameraContext } from '../context.js';

export function checkLight(
  lights: readonly Light[],
  flashing: readonly string[],
  context: CameraContext,
  report: Report,
): void {
  lights.forEach((light, index) => {
    if (light.kind === 'fade' && light.frames.to <= light.frames.from) {
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
  checkFlashes(lights, flashing, context, report);
}

const picture = (light: Light) => light.kind === 'fade' || light.kind === 'overlap';

function clash(a: Light, b: Light): boolean {
  if (a.frames.from > b.frames.to || b.frames.from > a.frames.to) return false;
  if (picture(a) && picture(b)) return true;
  return a.kind === 'expose' && b.kind === 'expose' && a.levels.some((level) => b.levels.includes(level));
}

/** The rule's number, in both sources: no more than three flashes in a second. */
const MOST_FLASHES = 3;

function checkFlashes(
  lights: readonly Light[],
  flashing: readonly string[],
  context: CameraContext,
  report: Report,
): void {
  const rises = new Map<number, Span>();
  const rise = (frame: number, span: Span) => {
    if (frame >= 1 && frame <= context.length && !rises.has(frame)) rises.set(frame, span);
  };
  for (const light of lights) {
    if (light.kind === 'glow') rise(light.frames.from, light.span);
    if (light.kind !== 'fade' || !light.white) continue;
    // Out to white and in again is one flash.
    const same = lights.some(
      (before) =>
        before.kind === 'fade' &&
        before.white &&
        before.way === 'out' &&
        light.way === 'in' &&
        before.frames.to + 1 === light.frames.from,
    );
    if (!same) rise(light.frames.from, light.span);
  }
  for (const name of flashing) {
    const level = context.levels.find((each) => each.name === name);
    if (!level) continue;
    for (let frame = 1; frame <= context.length; frame++) if (level.appears(frame)) rise(frame, level.span);
  }
  const frames = [...rises.keys()].sort((a, b) => a - b);
  let worst = { count: 0, from: 0, to: 0 };
  frames.forEach((from, index) => {
    const inside = frames.slice(index).filter((frame) => frame < from + context.fps);
    if (inside.length > worst.count) worst = { count: inside.length, from, to: inside[inside.length - 1]! };
  });
  if (worst.count <= MOST_FLASHES) return;
  report(
    diagnose(
      'flashes',
      rises.get(worst.from)!,
      { count: worst.count, from: worst.from, to: worst.to },
      { notes: [{ note: 'flashes-counted' }] },
    ),
  );
}
