/** One scan, from its file to what the painter takes. */

import type { Host } from '../host/host.js';
import type { UnreadableScan } from '../language/catalogue/episode-codes.js';
import type { PaintedDrawing } from '../picture/frame-painter.js';
import { lightOfInk } from '../picture/lit-drawing.js';
import {
  isWholeScan,
  LARGEST_SCAN_MILLIONS,
  LONGEST_SCAN_SIDE,
  SCAN_HEADER_BYTES,
  type ScanHeader,
  scanFits,
  scanHeader,
} from '../picture/scan-header.js';
import type { Canvas, CanvasKit, Drawn } from './canvas-kit.js';

export type ScanReading =
  | {
      readonly kind: 'picture';
      readonly drawing: PaintedDrawing<Drawn> /** Held in memory. */;
      readonly pixels: number;
    }
  | { readonly kind: 'unreadable'; readonly reason: UnreadableScan }
  /** There is no such file: it is not drawn yet. */
  | { readonly kind: 'missing' };

export interface ReadingOptions {
  /** Of a file that says nothing of it. */
  readonly dpi: number;
  /** The most pixels a millimetre of the artwork that any frame shows: what is finer is made smaller once. */
  readonly pixelsAMm: number;
  /** Whether it is asked for as light, too: light shines through it on some frame, or it is a mask. */
  readonly asLight: boolean;
}

const LARGEST_FILE_BYTES = 512 * 1024 * 1024;

/** The header is read, and judged, before any pixels are. Never rejects. */
export async function readScan(
  host: Host,
  kit: CanvasKit,
  path: string,
  options: ReadingOptions,
): Promise<ScanReading> {
  const unreadable = (reason: UnreadableScan): ScanReading => ({ kind: 'unreadable', reason });
  const start = host.readPart(path, 0, SCAN_HEADER_BYTES);
  if (!start.ok)
    return host.kind(path) === 'none'
      ? { kind: 'missing' }
      : unreadable({ why: 'machine', reason: start.reason });
  const header = scanHeader(start.value.bytes);
  const { size } = start.value;
  if (!header) return unreadable({ why: 'format' });
  const { width, height } = header;
  const limits = { most: LONGEST_SCAN_SIDE, mostMillions: LARGEST_SCAN_MILLIONS };
  if (!scanFits(header)) return unreadable({ why: 'size', width, height, ...limits });
  const whole = size > SCAN_HEADER_BYTES ? host.readPart(path, 0, Math.min(size, LARGEST_FILE_BYTES)) : start;
  if (!whole.ok) return unreadable({ why: 'machine', reason: whole.reason });
  const image = await decoded(kit, whole.value.bytes, header);
  return image ? prepared(kit, image, header, options) : unreadable({ why: 'broken' });
}

/** Null for what is damaged: the library takes a file that is cut off, and paints a part of it or nothing. */
async function decoded(kit: CanvasKit, bytes: Uint8Array, header: ScanHeader): Promise<Drawn | null> {
  if (!isWholeScan(bytes, header)) return null;
  try {
    const image = await kit.loadImage(bytes);
    if (!isSized(image, header.width, header.height) && !isSized(image, header.height, header.width))
      return null;
    return header.alpha || opacityOf(kit, image).most > 0 ? image : null;
  } catch {
    return null;
  }
}

const isSized = (image: Drawn, width: number, height: number): boolean =>
  image.width === width && image.height === height;

function prepared(
  kit: CanvasKit,
  image: Drawn,
  header: ScanHeader,
  { dpi, pixelsAMm, asLight }: ReadingOptions,
): ScanReading {
  const density = header.dpi ?? { x: dpi, y: dpi };
  // A camera notes in the file how it was held, and the library turns the picture by that.
  const turned = !isSized(image, header.width, header.height);
  const widthMm = (image.width / (turned ? density.y : density.x)) * 25.4;
  const heightMm = (image.height / (turned ? density.x : density.y)) * 25.4;
  const wanted = { width: widthMm * pixelsAMm, height: heightMm * pixelsAMm };
  // So much finer than it is shown it would only cost time on every frame.
  const finer = image.width > wanted.width * 1.5 && image.height > wanted.height * 1.5;
  const shown = finer ? resized(kit, image, wanted.width, wanted.height) : image;
  const paper = !header.alpha || opacityOf(kit, image).least > 250;
  const lit = asLight ? (paper ? light(kit, shown) : shown) : null;
  const pixels = shown.width * shown.height * (lit && lit !== shown ? 2 : 1);
  return {
    kind: 'picture',
    drawing: { kind: 'picture', image: shown, widthMm, heightMm, paper, lit },
    pixels,
  };
}

function resized(kit: CanvasKit, image: Drawn, width: number, height: number): Canvas {
  const canvas = kit.createCanvas(Math.max(1, Math.ceil(width)), Math.max(1, Math.ceil(height)));
  const context = canvas.getContext('2d');
  context.imageSmoothingQuality = 'high';
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas;
}

function light(kit: CanvasKit, image: Drawn): Canvas {
  const canvas = resized(kit, image, image.width, image.height);
  const context = canvas.getContext('2d');
  const pixels = context.getImageData(0, 0, canvas.width, canvas.height);
  lightOfInk(pixels.data);
  context.putImageData(pixels, 0, 0);
  return canvas;
}

/** Side of the small copy that is looked at. */
const SAMPLE = 64;

/** The least and the most opaque of its pixels, 0 … 255, by a small copy. */
function opacityOf(kit: CanvasKit, image: Drawn): { readonly least: number; readonly most: number } {
  const { data } = resized(kit, image, SAMPLE, SAMPLE).getContext('2d').getImageData(0, 0, SAMPLE, SAMPLE);
  let [least, most] = [255, 0];
  for (let i = 3; i < data.length; i += 4) {
    least = Math.min(least, data[i]!);
    most = Math.max(most, data[i]!);
  }
  return { least, most };
}
