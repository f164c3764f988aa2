/** PNG files with a density of their own. */

import { crc32 } from 'node:zlib';

/** The same picture with a pHYs chunk behind its header: pixels a metre. */
export function withDensity(png: Uint8Array, perMetre: number): Uint8Array {
  const body = Buffer.alloc(13);
  body.write('pHYs', 0, 'latin1');
  body.writeUInt32BE(perMetre, 4);
  body.writeUInt32BE(perMetre, 8);
  body.writeUInt8(1, 12);
  const chunk = Buffer.alloc(21);
  chunk.writeUInt32BE(9, 0);
  body.copy(chunk, 4);
  chunk.writeUInt32BE(crc32(body), 17);
  return Buffer.concat([png.subarray(0, 33), chunk, png.subarray(33)]);
}
