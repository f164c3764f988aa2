import { isUtf8 } from 'node:buffer';

/**
 * The offset of the first byte that is no UTF-8, or null where all of them are.
 * Well-formed sequences: Unicode Standard, table 3-7 (no overlong forms, no surrogates, nothing above U+10FFFF).
 */
export function firstInvalidByte(bytes: Uint8Array): number | null {
  if (isUtf8(bytes)) return null;
  let at = 0;
  while (at < bytes.length) {
    const lead = bytes[at]!;
    const more =
      lead < 0x80 ? 0 : lead < 0xc2 ? -1 : lead < 0xe0 ? 1 : lead < 0xf0 ? 2 : lead < 0xf5 ? 3 : -1;
    if (more < 0) return at;
    for (let i = 1; i <= more; i++) {
      const byte = bytes[at + i];
      const low = i > 1 ? 0x80 : lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
      const high = i > 1 ? 0xbf : lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
      if (byte === undefined || byte < low || byte > high) return at;
    }
    at += more + 1;
  }
  return null;
}
