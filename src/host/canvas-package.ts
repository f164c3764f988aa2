/** `@napi-rs/canvas`, if it is installed. It has a part in machine code, so it is no part of the bundle. */

import { createRequire } from 'node:module';

export type CanvasPackage = typeof import('@napi-rs/canvas');

/** Null where it is not there, or there is none for this kind of machine. */
export function canvasPackage(): CanvasPackage | null {
  try {
    return createRequire(import.meta.url)('@napi-rs/canvas') as CanvasPackage;
  } catch {
    return null;
  }
}
