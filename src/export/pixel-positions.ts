/** Positions in pixels of the finished picture, beside the millimetres. */

import type { Settings } from '../shot/settings.js';
import type { PlacementFrame } from '../solve/camera/solved-camera.js';

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

/** Pixels by which the picture is taller than the field would make it at the picture's width; less than 1 is rounding. */
export function shapeFault({ output, field }: Pick<Settings, 'output' | 'field'>): number {
  const pixels = output.height - (output.width * field.heightMm) / field.widthMm;
  return Math.abs(pixels) < 1 ? 0 : pixels;
}
