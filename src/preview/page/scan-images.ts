/** The scans of the cuts that are played: fetched once, made as large as they are shown. */

import type { Drawing } from '../../picture/frame-painter.js';
import { lightOfInk } from '../../picture/lit-drawing.js';
import { isWholeScan, SCAN_HEADER_BYTES, scanHeader } from '../../picture/scan-header.js';
import type { PlayedDrawing } from '../play-data.js';
import type { LoadedCut } from './played-cuts.js';

interface KnownScan {
  /** Null: it is on its way. */
  drawing: Drawing<ImageBitmap> | null;
  pixels: number;
}

/** Pixels that are held, four bytes each. */
const MOST_PIXELS = 64e6;
/** Scans that are fetched at the same time. */
const AT_ONCE = 3;
const INCH_MM = 25.4;

export class ScanImages {
  /** By what the file is and how large it is shown; the one that was used last stands last. */
  private readonly known = new Map<string, KnownScan>();
  private readonly waiting: (() => Promise<void>)[] = [];
  private running = 0;

  /** `arrived`: a scan is there that was asked for. `pixelsAMm`: of the canvas, at the scale of the standard field. */
  constructor(
    private readonly arrived: () => void,
    private readonly pixelsAMm: (cut: LoadedCut) => number,
  ) {}

  /** What the painter asks for; null: not drawn yet, or not fetched yet. */
  of(loaded: LoadedCut): (level: number, number: number | null) => Drawing<ImageBitmap> | null {
    const { drawings } = loaded.play;
    const byKey = new Map(drawings.map((one) => [`${one.level} ${one.number}`, one]));
    return (level, number) => {
      const found = byKey.get(`${level} ${number}`);
      return found ? this.get(loaded, found).drawing : null;
    };
  }

  /** Fetches what a cut shows, in the order in which it is shown. */
  prepare(loaded: LoadedCut): void {
    for (const drawing of loaded.play.drawings) this.get(loaded, drawing);
  }

  private get(loaded: LoadedCut, drawing: PlayedDrawing): KnownScan {
    const { layers } = loaded.play.picture;
    const own = layers.filter(({ level }) => level === drawing.level);
    const most = Math.max(...own.map(({ matrix: [a, b] }) => Math.hypot(a, b)));
    // Rounded, so that a window that is made a little larger does not fetch everything again.
    const scale = 2 ** (Math.ceil(Math.log2(Math.max(1e-3, most * this.pixelsAMm(loaded))) * 2) / 2);
    const lit = own.some(({ glow, hides }) => glow || hides !== undefined);
    const key = `${drawing.stamp} ${scale} ${lit}`;
    const known = this.known.get(key) ?? this.ask(loaded, drawing, { key, scale, lit });
    this.known.delete(key);
    this.known.set(key, known);
    return known;
  }

  private ask(
    { play }: LoadedCut,
    { level, number, name }: PlayedDrawing,
    { key, scale, lit }: { key: string; scale: number; lit: boolean },
  ): KnownScan {
    const scan: KnownScan = { drawing: null, pixels: 0 };
    this.known.set(key, scan);
    this.waiting.push(async () => {
      const read = await readScan(`scan/${play.id}/${level}.${number ?? ''}`, play.scanDpi, scale, lit);
      scan.drawing = read ?? { kind: 'unreadable', fault: name };
      if (read) scan.pixels = read.image.width * read.image.height * (read.lit ? 2 : 1);
      this.trim();
      this.arrived();
    });
    this.next();
    return scan;
  }

  private next(): void {
    while (this.running < AT_ONCE) {
      const job = this.waiting.shift();
      if (!job) return;
      this.running += 1;
      void job().finally(() => {
        this.running -= 1;
        this.next();
      });
    }
  }

  private trim(): void {
    let held = 0;
    for (const { pixels } of this.known.values()) held += pixels;
    for (const [key, { pixels }] of this.known) {
      if (held <= MOST_PIXELS) return;
      held -= pixels;
      if (pixels > 0) this.known.delete(key);
    }
  }
}

/** Null where the browser cannot read it. */
async function readScan(
  address: string,
  scanDpi: number,
  scale: number,
  asLight: boolean,
): Promise<Extract<Drawing<ImageBitmap>, { kind: 'picture' }> | null> {
  const answer = await fetch(address).catch(() => null);
  const bytes = answer?.ok ? await answer.arrayBuffer() : null;
  const header = bytes && scanHeader(new Uint8Array(bytes, 0, Math.min(SCAN_HEADER_BYTES, bytes.byteLength)));
  // Some browsers show as much as there is of a file that is cut off.
  if (!bytes || !header || !isWholeScan(new Uint8Array(bytes), header)) return null;
  const dpi = header.dpi ?? { x: scanDpi, y: scanDpi };
  const widthMm = (header.width / dpi.x) * INCH_MM;
  const heightMm = (header.height / dpi.y) * INCH_MM;
  const [resizeWidth, resizeHeight] = [widthMm, heightMm].map((mm) => Math.max(1, Math.ceil(mm * scale)));
  const finer = header.width > resizeWidth! * 1.5 && header.height > resizeHeight! * 1.5;
  const blob = new Blob([bytes], { type: `image/${header.form}` });
  const size = finer
    ? { resizeWidth: resizeWidth!, resizeHeight: resizeHeight!, resizeQuality: 'high' as const }
    : {};
  const image = await createImageBitmap(blob, size).catch(() => null);
  if (!image) return null;
  const paper = !header.alpha || leastOpacity(image) > 250;
  const lit = asLight ? (paper ? await light(image) : image) : null;
  return { kind: 'picture', image, widthMm, heightMm, paper, lit };
}

/** Side of the small copy that is looked at. */
const SAMPLE = 64;

function leastOpacity(image: ImageBitmap): number {
  const { data } = pixelsOf(image, SAMPLE, SAMPLE);
  let least = 255;
  for (let i = 3; i < data.length; i += 4) least = Math.min(least, data[i]!);
  return least;
}

function light(image: ImageBitmap): Promise<ImageBitmap> {
  const pixels = pixelsOf(image, image.width, image.height);
  lightOfInk(pixels.data);
  return createImageBitmap(pixels);
}

function pixelsOf(image: ImageBitmap, width: number, height: number): ImageData {
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d')!;
  context.drawImage(image, 0, 0, width, height);
  return context.getImageData(0, 0, width, height);
}
