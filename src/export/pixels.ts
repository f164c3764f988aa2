/** Positions in pixels of the finished picture, beside the millimetres. */

import type { Settings } from '../shot/settings.js';
import type { PlacementFrame } from '../solve/camera/solved.js';

export interface ExportOptions {
  /** Adds `pixelX`, `pixelY` to each level's placement. */
  readonly pixels?: boolean;
}

export interface Pixels {
  readonly pixelX: number;
  readonly pixelY: number;
}

/** `screenX`, `screenY` in pixels of the finished picture: from its centre, x to the right, y up, fractions kept. */
export function pixelsOf({ screenX, screenY }: PlacementFrame, { output, field }: Settings): Pixels {
  return {
    pixelX: (screenX * output.width) / field.widthMm,
    pixelY: (screenY * output.height) / field.heightMm,
  };
}
