/** What the first bytes of a scan say of it: PNG (ISO/IEC 15948), JPEG (ITU-T T.81 with JFIF, ITU-T T.871), WebP (RFC 9649). */

export interface ScanHeader {
  readonly form: 'png' | 'jpeg' | 'webp';
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Pixels an inch, or null where the file says nothing. */
  readonly dpi: { readonly x: number; readonly y: number } | null;
  /** Whether pixels of it can be transparent. */
  readonly alpha: boolean;
}

/** So many bytes hold the header of nearly every file, pictures inside it and colour profiles included. */
export const SCAN_HEADER_BYTES = 1024 * 1024;

/** The longest side, in pixels, and the largest area, in millions: a pan of two metres at 200 dpi; more would not fit into memory beside others. */
export const LONGEST_SCAN_SIDE = 16_384;
export const LARGEST_SCAN_MILLIONS = 128;

/** Whether its pixels may be read at all. */
export function scanFits({ width, height }: Pick<ScanHeader, 'width' | 'height'>): boolean {
  return Math.max(width, height) <= LONGEST_SCAN_SIDE && width * height <= LARGEST_SCAN_MILLIONS * 1e6;
}

const INCH_MM = 25.4;

/** Null where it is none of the three, or too little of it is there. Never throws. */
export function scanHeader(bytes: Uint8Array): ScanHeader | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const read = [pngHeader, jpegHeader, webpHeader];
  for (const one of read) {
    const header = one(view);
    if (header) return header.width > 0 && header.height > 0 ? header : null;
  }
  return null;
}

/** So near to the end of a file its last mark stands, whatever some program has put behind it. */
const TAIL_BYTES = 4096;

/** Whether all bytes of a file seem to be there, by the mark that ends it or the length that it begins with. */
export function isWholeScan(bytes: Uint8Array, { form }: Pick<ScanHeader, 'form'>): boolean {
  if (form === 'webp') {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    return bytes.length >= 12 && view.getUint32(4, true) + 8 <= bytes.length;
  }
  const mark = form === 'png' ? [0x49, 0x45, 0x4e, 0x44] : [0xff, 0xd9];
  for (let at = Math.max(0, bytes.length - TAIL_BYTES); at + mark.length <= bytes.length; at++)
    if (mark.every((byte, i) => bytes[at + i] === byte)) return true;
  return false;
}

const text = (view: DataView, at: number, length: number): string =>
  at + length > view.byteLength
    ? ''
    : String.fromCharCode(...Array.from({ length }, (_, i) => view.getUint8(at + i)));

function pngHeader(view: DataView): ScanHeader | null {
  if (view.byteLength < 33 || view.getUint32(0) !== 0x89504e47 || view.getUint32(4) !== 0x0d0a1a0a)
    return null;
  if (text(view, 12, 4) !== 'IHDR') return null;
  const [width, height, colour] = [view.getUint32(16), view.getUint32(20), view.getUint8(25)];
  let dpi: ScanHeader['dpi'] = null;
  let alpha = colour === 4 || colour === 6;
  // What says something of the pixels stands before them.
  for (let at = 33; at + 8 <= view.byteLength; ) {
    const [length, name] = [view.getUint32(at), text(view, at + 4, 4)];
    if (name === 'IDAT') break;
    if (name === 'tRNS') alpha = true;
    if (name === 'pHYs' && length >= 9 && at + 17 <= view.byteLength && view.getUint8(at + 16) === 1)
      dpi = density(view.getUint32(at + 8), view.getUint32(at + 12), INCH_MM / 1000);
    at += length + 12;
  }
  return { form: 'png', width, height, dpi, alpha };
}

function jpegHeader(view: DataView): ScanHeader | null {
  if (view.byteLength < 4 || view.getUint16(0) !== 0xffd8) return null;
  let dpi: ScanHeader['dpi'] = null;
  for (let at = 2; at + 4 <= view.byteLength; ) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    // Any number of fill bytes may stand before a marker.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const length = view.getUint16(at + 2);
    if (marker === 0xe0 && length >= 14 && text(view, at + 4, 5) === 'JFIF\0' && at + 16 <= view.byteLength) {
      const unit = view.getUint8(at + 11);
      const [x, y] = [view.getUint16(at + 12), view.getUint16(at + 14)];
      if (unit === 1) dpi = density(x, y, 1);
      if (unit === 2) dpi = density(x, y, INCH_MM / 10);
    }
    // Every start of a frame but the tables that share its range.
    if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)) {
      if (at + 9 > view.byteLength) return null;
      return {
        form: 'jpeg',
        width: view.getUint16(at + 7),
        height: view.getUint16(at + 5),
        dpi,
        alpha: false,
      };
    }
    if (length < 2) return null;
    at += length + 2;
  }
  return null;
}

function webpHeader(view: DataView): ScanHeader | null {
  if (text(view, 0, 4) !== 'RIFF' || text(view, 8, 4) !== 'WEBP' || view.byteLength < 30) return null;
  const found = (width: number, height: number, alpha: boolean): ScanHeader => ({
    form: 'webp',
    width,
    height,
    dpi: null,
    alpha,
  });
  switch (text(view, 12, 4)) {
    case 'VP8X': {
      const size = (at: number): number => 1 + view.getUint16(at, true) + view.getUint8(at + 2) * 0x10000;
      return found(size(24), size(27), (view.getUint8(20) & 0x10) !== 0);
    }
    case 'VP8L': {
      const bits = view.getUint32(21, true);
      return found(1 + (bits & 0x3fff), 1 + ((bits >>> 14) & 0x3fff), ((bits >>> 28) & 1) === 1);
    }
    case 'VP8 ':
      return found(view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff, false);
    default:
      return null;
  }
}

/** Less than one or more than 10,000 pixels an inch are no scan, but a field that somebody left empty. */
function density(x: number, y: number, inches: number): ScanHeader['dpi'] {
  const dpi = { x: x * inches, y: y * inches };
  return [dpi.x, dpi.y].every((one) => one >= 1 && one <= 10_000) ? dpi : null;
}
