import type { ByteSource } from '../../src/sound/wave-header.js';

/** Bytes in memory as a file that is read in parts. */
export function source(bytes: Uint8Array): ByteSource {
  return { size: bytes.length, read: (at, count) => bytes.subarray(at, at + count) };
}
