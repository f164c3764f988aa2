/** Paints the frames of a film on the player's canvas. */

import type { FilmPicture } from '../../picture/film-order.js';
import { blend, paintFrame } from '../../picture/frame-painter.js';
import type { Film } from '../player/film.js';
import type { LoadedCut, PlayedCuts } from './played-cuts.js';
import { ScanImages } from './scan-images.js';

/** The longest side of the canvas, pixels: more is not seen at a player's size, and takes time on every frame. */
const LONGEST = 1280;

export class FilmCanvas {
  private readonly scans: ScanImages;
  private readonly other = document.createElement('canvas');
  private readonly scratch = document.createElement('canvas');
  /** What is painted; '' where that has to be painted anew in any case. */
  private painted = '';
  private asked: { readonly film: Film; readonly frame: number } | null = null;

  constructor(
    private readonly canvas: HTMLCanvasElement,
    private readonly cuts: PlayedCuts,
  ) {
    this.scans = new ScanImages(
      () => this.again(),
      ({ cut }) => this.canvas.width / cut.field.widthMm,
    );
    new ResizeObserver(() => this.again()).observe(canvas);
    // Numbers are written in the font of the sheet, once that is there.
    void document.fonts.load('bold 20px sheet').then(() => this.again());
  }

  /** Paints what is at hand of a frame; false: its cut is not, and what was painted stays. */
  show(film: Film, frame: number): boolean {
    this.asked = { film, frame };
    return this.paint();
  }

  /** Nothing is shown any more. */
  clear(): void {
    this.asked = null;
    this.painted = '';
    this.canvas.getContext('2d')!.clearRect(0, 0, this.canvas.width, this.canvas.height);
  }

  prepare(loaded: LoadedCut): void {
    this.scans.prepare(loaded);
  }

  /** The same again: of a scan that has come, in another size. */
  private again(): void {
    this.painted = '';
    this.paint();
  }

  private paint(): boolean {
    if (!this.asked) return false;
    const { film, frame } = this.asked;
    const { shown, incoming } = film.order.at(frame);
    const base = this.cuts.at(film.ids[shown.cut]!);
    const over = incoming && this.cuts.at(film.ids[incoming.cut]!);
    if (!base || (incoming && !over)) return false;
    this.resize(base);
    const key = [base, over].map((one, i) => {
      const row = (i === 0 ? shown : incoming)?.row ?? 0;
      return one ? `${one.play.id} ${one.play.version} ${one.places[row - 1]}` : '';
    });
    const picture = key.join('/');
    if (picture === this.painted) return true;
    this.paintOn(this.canvas, base, shown, incoming !== null);
    if (incoming && over) {
      const { width, height } = this.canvas;
      Object.assign(this.other, { width, height });
      this.paintOn(this.other, over, incoming, true);
      const { share } = over.cut.frames[incoming.row - 1]!;
      blend(this.canvas.getContext('2d')!, this.other, share, { width, height });
    }
    this.painted = picture;
    return true;
  }

  private paintOn(
    canvas: HTMLCanvasElement,
    loaded: LoadedCut,
    { row }: FilmPicture,
    dissolved: boolean,
  ): void {
    const frame = loaded.cut.frames[row - 1];
    if (!frame) return;
    paintFrame<CanvasImageSource>(canvas.getContext('2d') as never, loaded.cut, frame, {
      width: canvas.width,
      height: canvas.height,
      family: 'sheet, sans-serif',
      drawing: this.scans.of(loaded),
      scratch: () => {
        const { width, height } = canvas;
        Object.assign(this.scratch, { width, height });
        return { context: this.scratch.getContext('2d') as never, image: this.scratch };
      },
      dissolved,
    });
  }

  /** As many pixels as the screen shows, in the shape of the field. */
  private resize({ cut }: LoadedCut): void {
    const { widthMm, heightMm } = cut.field;
    this.canvas.style.aspectRatio = `${widthMm} / ${heightMm}`;
    const wide = Math.round((this.canvas.clientWidth || 320) * devicePixelRatio);
    const width = Math.max(16, Math.min(LONGEST, wide));
    const height = Math.round((width * heightMm) / widthMm);
    if (this.canvas.width === width && this.canvas.height === height) return;
    Object.assign(this.canvas, { width, height });
    this.painted = '';
  }
}
