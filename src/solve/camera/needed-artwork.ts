/**
 * How large a level's artwork must be: in the level's own axes, the smallest upright rectangle that holds the field of every
 * frame on which the level shows. The field, w by h and turned by d against the artwork, needs |w cos d| + |h sin d| by
 * |w sin d| + |h cos d| about its centre.
 */

import type { Settings } from '../../shot/settings.js';
import type { CameraLevel } from './camera-tracks.js';
import { counterClockwise, turnOf } from './plane-turns.js';
import type { Artwork, ArtworkSide, CameraFrame, PlacementFrame } from './solved-camera.js';

/** What of the artwork one frame shows, from the artwork's centre, mm of the artwork. */
export interface SeenArtwork {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** `ratio`: height of the field over its width. */
export function seenOf(
  camera: CameraFrame,
  at: PlacementFrame,
  home: CameraLevel['homeMm'],
  ratio: number,
): SeenArtwork {
  const centre = counterClockwise(
    turnOf(at.rotation),
    camera.x - home.xMm - at.x,
    camera.y - home.yMm - at.y,
  );
  const d = turnOf(camera.rotation - at.rotation);
  const halfWidth = camera.width / 2 / at.scale;
  const halfHeight = halfWidth * ratio;
  const reachX = Math.abs(halfWidth * d.cos) + Math.abs(halfHeight * d.sin);
  const reachY = Math.abs(halfWidth * d.sin) + Math.abs(halfHeight * d.cos);
  const x = centre.x / at.scale;
  const y = centre.y / at.scale;
  return { left: x - reachX, right: x + reachX, bottom: y - reachY, top: y + reachY };
}

/** Edges that show by less are taken for none: rounding, not paper. */
export const EDGE_MM = 1e-6;

export interface Loop {
  readonly lengthMm: number;
  readonly axis: 'x' | 'y';
}

export function artworkOf(
  level: CameraLevel,
  camera: readonly CameraFrame[],
  placement: readonly PlacementFrame[],
  loop: Loop | null,
  settings: Settings,
): Artwork {
  const size = level.sizeMm ?? (level.timed ? settings.artwork : null);
  const ratio = settings.field.heightMm / settings.field.widthMm;
  const box = { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity };
  let longest = 0;
  let edge: Artwork['edge'] = null;
  let before: PlacementFrame | null = null;
  const still = placement[0] === placement.at(-1);
  for (const seen of camera) {
    const at = placement[seen.frame - 1]!;
    // What is seen from the same place as on the frame before, by the same camera, shows nothing new.
    if (before === at || !level.shown(seen.frame)) continue;
    before = at;
    const s = seenOf(seen, at, level.homeMm, ratio);
    box.left = Math.min(box.left, s.left);
    box.right = Math.max(box.right, s.right);
    box.bottom = Math.min(box.bottom, s.bottom);
    box.top = Math.max(box.top, s.top);
    if (loop) longest = Math.max(longest, loop.axis === 'x' ? s.right - s.left : s.top - s.bottom);
    if (size && !level.free) edge = worse(edge, seen.frame, overhang(s, size, loop));
    if (still) break;
  }
  const { xMm, yMm } = level.homeMm;
  const tiledX = loop?.axis === 'x';
  const tiledY = loop?.axis === 'y';
  return {
    width: size?.widthMm ?? null,
    height: size?.heightMm ?? null,
    homeX: xMm,
    homeY: yMm,
    needed:
      box.left > box.right
        ? null
        : {
            width: tiledX ? Math.max(longest, loop.lengthMm) : box.right - box.left,
            height: tiledY ? Math.max(longest, loop.lengthMm) : box.top - box.bottom,
            x: tiledX ? xMm : xMm + (box.left + box.right) / 2,
            y: tiledY ? yMm : yMm + (box.bottom + box.top) / 2,
          },
    edge,
    loop,
  };
}

/** The side on which the field reaches furthest over the paper; a loop has no ends along its axis. */
function overhang(
  s: SeenArtwork,
  size: { widthMm: number; heightMm: number },
  loop: Loop | null,
): { side: ArtworkSide; byMm: number } {
  const { widthMm, heightMm } = size;
  let side: ArtworkSide = 'left';
  let byMm = Number.NEGATIVE_INFINITY;
  const over = (other: ArtworkSide, mm: number): void => {
    if (mm > byMm) {
      side = other;
      byMm = mm;
    }
  };
  if (loop?.axis !== 'x') {
    over('left', -widthMm / 2 - s.left);
    over('right', s.right - widthMm / 2);
  }
  if (loop?.axis !== 'y') {
    over('bottom', -heightMm / 2 - s.bottom);
    over('top', s.top - heightMm / 2);
  }
  return { side, byMm };
}

function worse(
  edge: Artwork['edge'],
  frame: number,
  { side, byMm }: { side: ArtworkSide; byMm: number },
): Artwork['edge'] {
  if (!(byMm > EDGE_MM)) return edge;
  if (!edge) return { frame, side, byMm, worstMm: byMm, worstFrame: frame };
  return byMm > edge.worstMm ? { ...edge, worstMm: byMm, worstFrame: frame } : edge;
}
