/** The drawings of a cut as they are wanted frame by frame: read when they are first shown, kept as long as memory lasts. */

import type { Episode } from '../episode/episode.js';
import { type ScanFile, scanFileOf } from '../episode/scan-files.js';
import type { Host } from '../host/host.js';
import type { UnreadableScan } from '../language/catalogue/episode-codes.js';
import type { Drawing } from '../picture/frame-painter.js';
import type { CutPicture, PictureFrame } from '../picture/frame-picture.js';
import type { SolvedShot } from '../solve/solved-shot.js';
import type { CanvasKit, Drawn } from './canvas-kit.js';
import { readScan, type ScanReading } from './scan-reader.js';

/** Scans that several cuts may have in common, the longest unused ones given up first. */
export class ScanCache {
  private readonly known = new Map<string, Promise<ScanReading>>();
  private readonly sizes = new Map<string, number>();
  private held = 0;

  /** `mostPixels`: held at once, of four bytes each. What one frame needs is held in any case. */
  constructor(
    private readonly host: Host,
    private readonly kit: CanvasKit,
    private readonly mostPixels = 64e6,
  ) {}

  async read(path: string, options: Parameters<typeof readScan>[3]): Promise<ScanReading> {
    const key = JSON.stringify([path, options]);
    const reading = this.known.get(key) ?? readScan(this.host, this.kit, path, options);
    this.known.delete(key);
    this.known.set(key, reading);
    const read = await reading;
    if (!this.sizes.has(key)) {
      const size = read.kind === 'picture' ? read.pixels : 0;
      this.sizes.set(key, size);
      this.held += size;
    }
    return read;
  }

  /** Gives up what is too much, but not the last `needed` that were read. */
  trim(needed: number): void {
    for (const key of [...this.known.keys()].slice(0, Math.max(0, this.known.size - needed))) {
      if (this.held <= this.mostPixels) return;
      this.held -= this.sizes.get(key) ?? 0;
      this.sizes.delete(key);
      this.known.delete(key);
    }
  }
}

export interface UnreadableDrawing {
  /** What messages call its cut. */
  readonly cut: string;
  readonly level: string;
  readonly file: string;
  readonly reason: UnreadableScan;
}

export class CutDrawings {
  /** What cannot be read, each file once. */
  readonly unreadable = new Map<string, UnreadableDrawing>();
  /** Drawings that were asked for, and those of them that are not drawn yet, as `level number`. */
  readonly asked = new Set<string>();
  readonly missing = new Set<string>();
  private readonly shown = new Map<string, Drawing<Drawn> | null>();
  private readonly scales: readonly number[];
  private readonly asLight: ReadonlySet<number>;

  /** `pixelsAMm`: of the picture, at the scale of the standard field. */
  constructor(
    private readonly host: Host,
    private readonly cache: ScanCache,
    private readonly source: {
      readonly cut: CutPicture;
      readonly solved: SolvedShot;
      readonly episode: Episode;
      /** Absolute path of the cut, and what messages call it. */
      readonly place: string;
      readonly file: string;
    },
    pixelsAMm: number,
  ) {
    const { levels, frames } = source.cut;
    const layers = frames.flatMap((frame) => frame.layers);
    this.scales = levels.map((_, level) =>
      layers
        .filter((layer) => layer.level === level)
        .reduce((most, { matrix: [a, b] }) => Math.max(most, Math.hypot(a, b) * pixelsAMm), 0),
    );
    this.asLight = new Set(layers.filter(({ glow, hides }) => glow || hides).map(({ level }) => level));
  }

  /** Reads what a frame shows; then `drawing` has it, until the next frame is prepared. */
  async prepare({ layers }: PictureFrame): Promise<void> {
    this.shown.clear();
    for (const { level, number } of layers)
      this.shown.set(`${level} ${number}`, await this.read(level, number));
    this.cache.trim(layers.length);
  }

  readonly drawing = (level: number, number: number | null): Drawing<Drawn> | null =>
    this.shown.get(`${level} ${number}`) ?? null;

  private async read(level: number, number: number | null): Promise<Drawing<Drawn> | null> {
    const { solved, episode } = this.source;
    const name = `${level} ${number}`;
    this.asked.add(name);
    const file = scanFileOf(this.host, this.source, solved, episode, level, number);
    const reading = file && (await this.cache.read(file.path, this.optionsOf(level)));
    if (!file || reading?.kind === 'missing' || !reading) {
      this.missing.add(name);
      return null;
    }
    if (reading.kind === 'picture') return reading.drawing;
    return this.refused(file, level, reading.reason);
  }

  private refused({ path, name }: ScanFile, level: number, reason: UnreadableScan): Drawing<Drawn> {
    this.unreadable.set(path, {
      cut: this.source.file,
      level: this.source.cut.levels[level]!.name,
      file: name,
      reason,
    });
    return { kind: 'unreadable', fault: name };
  }

  private optionsOf(level: number): Parameters<typeof readScan>[3] {
    const { settings } = this.source.solved.shot;
    // Rounded, so that cuts that show a level nearly alike share what was read.
    const pixelsAMm = 2 ** (Math.ceil(Math.log2(Math.max(1e-3, this.scales[level]!)) * 4) / 4);
    return { dpi: settings.scanDpi, pixelsAMm, asLight: this.asLight.has(level) };
  }
}
