import { createCanvas } from '@napi-rs/canvas';
import { describe, expect, it, test } from 'vitest';
import { memoryHost } from '../../src/host/memory-host.js';
import { openCanvas } from '../../src/shoot/canvas-kit.js';
import { readScan, type ScanReading } from '../../src/shoot/scan-reader.js';
import { withDensity } from '../picture/png-density.js';

const OPTIONS = { dpi: 100, pixelsAMm: 100, asLight: false };
type Options = typeof OPTIONS;

/** A PNG or another picture: white, with a black half; or with nothing behind the half. */
function encoded(mime: string, { width = 100, height = 50, clear = false } = {}): Buffer {
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  context.fillStyle = '#fff';
  if (!clear) context.fillRect(0, 0, width, height);
  context.fillStyle = '#000';
  context.fillRect(0, 0, width / 2, height);
  return canvas.toBuffer(mime as 'image/png');
}

function read(bytes: Uint8Array, options: Partial<Options> = {}): Promise<ScanReading> {
  const host = memoryHost({ 'a.png': bytes });
  return readScan(host, openCanvas(host)!, '/work/a.png', { ...OPTIONS, ...options });
}

const drawingOf = (reading: ScanReading) => {
  if (reading.kind !== 'picture') throw new Error(JSON.stringify(reading));
  return reading.drawing;
};

describe('a scan', () => {
  test.each(['image/png', 'image/jpeg', 'image/webp'])('is read from %s', async (mime) => {
    const { image, widthMm, heightMm } = drawingOf(await read(encoded(mime)));
    expect([image.width, image.height]).toEqual([100, 50]);
    expect(widthMm).toBeCloseTo(mime === 'image/jpeg' ? widthMm : 25.4, 9);
    expect(widthMm / heightMm).toBeCloseTo(2, 9);
  });

  it('has the size that its own density says, or else the episode’s', async () => {
    const own = drawingOf(await read(withDensity(encoded('image/png'), 7874)));
    expect(own.widthMm).toBeCloseTo(12.7, 3);
    const episode = drawingOf(await read(encoded('image/png'), { dpi: 50 }));
    expect(episode.widthMm).toBeCloseTo(50.8, 9);
  });

  it('is paper where nothing of it is transparent, though its file could say so', async () => {
    expect(drawingOf(await read(encoded('image/png'))).paper).toBe(true);
    expect(drawingOf(await read(encoded('image/png', { clear: true }))).paper).toBe(false);
    expect(drawingOf(await read(encoded('image/jpeg'))).paper).toBe(true);
  });

  it('that is much finer than it is shown is made smaller once', async () => {
    const bytes = encoded('image/png', { width: 400, height: 200 });
    const shown = drawingOf(await read(bytes, { dpi: 254, pixelsAMm: 2 }));
    expect([shown.image.width, shown.image.height]).toEqual([80, 40]);
    expect(shown.widthMm).toBeCloseTo(40, 9);
    expect(drawingOf(await read(bytes, { dpi: 254, pixelsAMm: 8 })).image.width).toBe(400);
  });

  it('stands as the camera was held that took it: Exif 2.3, orientation 6', async () => {
    const jpeg = encoded('image/jpeg');
    const exif = Buffer.from([
      ...[0xff, 0xe1, 0, 34, ...Buffer.from('Exif\0\0MM\0*', 'latin1'), 0, 0, 0, 8],
      ...[0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0],
    ]);
    const turned = Buffer.concat([jpeg.subarray(0, 2), exif, jpeg.subarray(2)]);
    const { image, widthMm, heightMm } = drawingOf(await read(turned));
    expect([image.width, image.height]).toEqual([50, 100]);
    expect(heightMm / widthMm).toBeCloseTo(2, 9);
  });

  it('has its light where light shines through it: ink is bright, paper dark', async () => {
    const { lit } = drawingOf(await read(encoded('image/png'), { asLight: true }));
    const canvas = createCanvas(100, 50);
    const context = canvas.getContext('2d');
    context.drawImage(lit!, 0, 0);
    expect([...context.getImageData(20, 25, 1, 1).data]).toEqual([255, 243, 200, 255]);
    expect(context.getImageData(80, 25, 1, 1).data[3]).toBe(0);
    expect(drawingOf(await read(encoded('image/png'))).lit).toBeNull();
  });
});

describe('what is no scan', () => {
  const reasonOf = async (bytes: Uint8Array) => {
    const reading = await read(bytes);
    return reading.kind === 'unreadable' ? reading.reason : reading.kind;
  };

  test.each(['image/png', 'image/jpeg', 'image/webp'])('a %s that is cut off is broken', async (mime) => {
    const canvas = createCanvas(300, 200);
    const context = canvas.getContext('2d');
    for (let i = 0; i < 300; i++) {
      context.fillStyle = `hsl(${i * 7}, 80%, ${(i * 13) % 100}%)`;
      context.fillRect((i * 37) % 290, (i * 53) % 190, 30, 30);
    }
    const whole = canvas.toBuffer(mime as 'image/png');
    for (const share of [0.3, 0.6, 0.9])
      expect(await reasonOf(whole.subarray(0, Math.floor(whole.length * share)))).toEqual({ why: 'broken' });
  });

  it('is of another form, or empty', async () => {
    expect(await reasonOf(Buffer.from('GIF89a'))).toEqual({ why: 'format' });
    expect(await reasonOf(Buffer.alloc(0))).toEqual({ why: 'format' });
  });

  it('is refused by its header when it is too large, before its pixels are looked at', async () => {
    const bytes = encoded('image/png');
    bytes.writeUInt32BE(20_000, 16);
    expect(await reasonOf(bytes)).toMatchObject({ why: 'size', width: 20_000, height: 50 });
    bytes.writeUInt32BE(16_000, 16);
    bytes.writeUInt32BE(16_000, 20);
    expect(await reasonOf(bytes)).toMatchObject({ why: 'size', width: 16_000, mostMillions: 128 });
  });

  it('is missing where there is no file; a folder or a locked file is not', async () => {
    const host = memoryHost({ 'scans/x/y.png': '', 'locked.png': encoded('image/png') });
    host.locked.add('/work/locked.png');
    const kit = openCanvas(host)!;
    const at = (path: string) => readScan(host, kit, `/work/${path}`, OPTIONS);
    expect(await at('a.png')).toEqual({ kind: 'missing' });
    expect(await at('scans/x')).toEqual({
      kind: 'unreadable',
      reason: { why: 'machine', reason: 'is a folder' },
    });
    expect(await at('locked.png')).toMatchObject({ reason: { reason: 'permission denied' } });
  });
});
