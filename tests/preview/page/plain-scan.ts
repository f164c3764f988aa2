/** Scans of one colour. */

import { PNG } from 'pngjs';
import { withDensity } from '../../picture/png-density.js';

/** As large as the standard field of 254 mm × 142.875 mm, to less than a pixel. */
export function plainScan(red: number, green: number, blue: number): Uint8Array {
  const png = new PNG({ width: 100, height: 56 });
  for (let i = 0; i < png.data.length; i += 4) png.data.set([red, green, blue, 255], i);
  // 10 pixels an inch.
  return withDensity(PNG.sync.write(png), 394);
}
