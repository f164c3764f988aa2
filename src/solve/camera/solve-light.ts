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
