/**
 * Fades and exposures that get in each other's way, and light that flashes. More than three flashes in any second can hurt
 * people with photosensitive epilepsy (WCAG 2.3.1, ITU-R BT.1702). What stands in the text can be counted, not measured.
 */

import { diagnose, type Report } from '../../../language/diagnostic.js';
import type { Light } from '../../../shot/camera/camera-model.js';
import type { CameraContext } from '../camera-context.js';
import { countFlashes, flashChanges } from '../flash-count.js';

export function checkLight(
  lights: readonly Light[],
  flashing: readonly string[],
  context: CameraContext,
  report: Report,
): { readonly flashes: boolean } {
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
  return { flashes: checkFlashes(lights, flashing, context, report) };
}

const picture = (light: Light) => light.kind === 'fade' || light.kind === 'overlap';

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
