/** The package that paints in Node. It is optional, and loaded only by what needs it. */

import type { Canvas, Image } from '@napi-rs/canvas';
import type { Host } from '../host/host.js';

export type { Canvas } from '@napi-rs/canvas';
/** What it draws. */
export type Drawn = Canvas | Image;

export interface CanvasKit {
  createCanvas(width: number, height: number): Canvas;
  /** A picture out of a file's bytes. Rejects what it does not know. */
  loadImage(bytes: Uint8Array): Promise<Image>;
  /** The name of the shipped font, in both weights. */
  readonly family: string;
}

const FAMILY = 'Cutwright Sheet';

/** Null where the package is not installed. */
export function openCanvas(host: Host): CanvasKit | null {
  const kit = host.canvas();
  if (!kit) return null;
  const { createCanvas, loadImage, GlobalFonts } = kit;
  if (!GlobalFonts.has(FAMILY))
    for (const weight of ['regular', 'bold'] as const) {
      const font = host.font(weight);
      if (font.ok) GlobalFonts.register(Buffer.from(font.value), FAMILY);
    }
  return {
    createCanvas,
    // A copy that is the library's own: it reads the bytes on another thread.
    loadImage: (bytes) => loadImage(Buffer.from(bytes)),
    family: GlobalFonts.has(FAMILY) ? FAMILY : 'sans-serif',
  };
}
