/** Fades, dissolves and exposures: how much light reaches the picture on each frame. */

import type { Light } from '../../shot/camera/camera-model.js';
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
      return light.way === 'in' ? way : 1 - way;
    case 'expose':
      return way === 1 ? light.to : light.from + (light.to - light.from) * way;
    default:
      return 1;
  }
}

/** How much of the picture is faded away on a frame: between a fade out and the next fade in all of it. */
export function fadedOn(fades: readonly (Light & { kind: 'fade' })[], frame: number): number {
  const now = fades.find(({ frames }) => frame >= frames.from && frame <= frames.to);
  if (now) {
    const steps = now.frames.to - now.frames.from;
    const way = steps > 0 ? (frame - now.frames.from) / steps : 1;
    return now.way === 'in' ? 1 - way : way;
  }
  const before = fades.findLast(({ frames }) => frames.to < frame);
  if (before) return before.way === 'out' ? 1 : 0;
  const after = fades.find(({ frames }) => frames.from > frame);
  return after?.way === 'in' ? 1 : 0;
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
