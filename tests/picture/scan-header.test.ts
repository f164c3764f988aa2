import { createCanvas } from '@napi-rs/canvas';
import { describe, expect, it, test } from 'vitest';
import { isWholeScan, scanHeader } from '../../src/picture/scan-header.js';
import { withDensity } from './png-density.js';

/** Bytes as another program writes them: the canvas’ own encoders. */
function encoded(
  mime: 'image/png' | 'image/jpeg' | 'image/webp',
  width: number,
  height: number,
  clear = false,
) {
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  context.fillStyle = '#fff';
  if (!clear) context.fillRect(0, 0, width, height);
  return canvas.toBuffer(mime as 'image/png');
}

/** A JPEG that ends with its header, with one JFIF density. */
function jfif(unit: number, x: number, y: number): Uint8Array {
  return Uint8Array.of(
    ...[
      0xff,
      0xd8,
      0xff,
      0xe0,
      0,
      16,
      0x4a,
      0x46,
      0x49,
      0x46,
      0,
      1,
      2,
      unit,
      x >> 8,
      x & 255,
      y >> 8,
      y & 255,
      0,
      0,
    ],
    ...[0xff, 0xff, 0xc2, 0, 11, 8, 0, 90, 0, 160, 1, 1, 0x11, 0],
  );
}

describe('the header of a scan', () => {
  it('says the size of a PNG, of a JPEG and of a WebP', () => {
    expect(scanHeader(encoded('image/png', 160, 90))).toMatchObject({ form: 'png', width: 160, height: 90 });
    expect(scanHeader(encoded('image/jpeg', 160, 90))).toMatchObject({
      form: 'jpeg',
      width: 160,
      height: 90,
    });
    expect(scanHeader(encoded('image/webp', 160, 90))).toMatchObject({
      form: 'webp',
      width: 160,
      height: 90,
    });
  });

  it('reads the other two kinds of WebP', () => {
    const head = (name: string, ...rest: number[]) =>
      Uint8Array.from([
        ...Buffer.from('RIFF\0\0\0\0WEBP'),
        ...Buffer.from(name),
        ...[0, 0, 0, 0],
        ...rest,
        ...Array.from({ length: 30 }, () => 0),
      ]);
    // RFC 9649: extended, with the flag of transparency; 300 × 200, each one less in 24 bits.
    expect(scanHeader(head('VP8X', 0x10, 0, 0, 0, 0x2b, 1, 0, 0xc7, 0, 0))).toMatchObject({
      width: 300,
      height: 200,
      alpha: true,
    });
    // Lossless: 14 bits each after the signature 0x2f; the 29th bit is the one of transparency.
    const bits = (300 - 1) | ((200 - 1) << 14) | (1 << 28);
    const four = [bits & 255, (bits >> 8) & 255, (bits >> 16) & 255, (bits >>> 24) & 255];
    expect(scanHeader(head('VP8L', 0x2f, ...four))).toMatchObject({ width: 300, height: 200, alpha: true });
  });

  it('says the density of a PNG: 7874 pixels a metre are 200 an inch', () => {
    const { dpi } = scanHeader(withDensity(encoded('image/png', 160, 90), 7874))!;
    expect(dpi!.x).toBeCloseTo(200, 2);
    expect(scanHeader(encoded('image/webp', 160, 90))!.dpi).toBeNull();
  });

  test.each([
    [1, 300, 150, { x: 300, y: 150 }],
    [2, 100, 100, { x: 254, y: 254 }],
    [0, 1, 1, null],
    [1, 0, 0, null],
  ] as const)('of a JPEG with unit %i and %i × %i', (unit, x, y, dpi) => {
    expect(scanHeader(jfif(unit, x, y))).toEqual({ form: 'jpeg', width: 160, height: 90, dpi, alpha: false });
  });

  it('says whether there may be something transparent', () => {
    expect(scanHeader(encoded('image/png', 16, 9, true))!.alpha).toBe(true);
    expect(scanHeader(encoded('image/jpeg', 16, 9))!.alpha).toBe(false);
  });

  it('is none of another kind of file, of nothing, or of what is cut off', () => {
    for (const bytes of [
      Buffer.from('GIF89a'),
      Buffer.from('%PDF-1.7 and more than thirty-three bytes'),
      Buffer.alloc(0),
    ])
      expect(scanHeader(bytes)).toBeNull();
    for (const whole of [encoded('image/png', 160, 90), jfif(1, 300, 300), encoded('image/webp', 160, 90)])
      for (let length = 0; length < 20; length++) expect(scanHeader(whole.subarray(0, length))).toBeNull();
  });

  it('is none of a picture without a size', () => {
    const bytes = Buffer.from(encoded('image/png', 160, 90));
    bytes.writeUInt32BE(0, 16);
    expect(scanHeader(bytes)).toBeNull();
  });

  it('comes to an end on any bytes', () => {
    const whole = jfif(1, 300, 300);
    for (let at = 0; at < whole.length; at++)
      for (const value of [0, 1, 0xff]) {
        const bytes = Uint8Array.from(whole);
        bytes[at] = value;
        expect(() => scanHeader(bytes)).not.toThrow();
      }
  });
});

test.each(['image/png', 'image/jpeg', 'image/webp'] as const)(
  'a %s is whole with its last byte, whatever stands behind it, and not without',
  (mime) => {
    const whole = encoded(mime, 160, 90);
    const form = scanHeader(whole)!;
    expect(isWholeScan(whole, form)).toBe(true);
    expect(isWholeScan(Buffer.concat([whole, Buffer.alloc(100)]), form)).toBe(true);
    for (const less of [5, 20, whole.length - 35])
      expect(isWholeScan(whole.subarray(0, whole.length - less), form), `${less} less`).toBe(false);
  },
);
