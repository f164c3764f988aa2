/** Paints the frames of a film one after the other. */

import type { FilmOrder, FilmPicture } from '../picture/film-order.js';
import { paintFoot, paintGuides } from '../picture/frame-notes.js';
import { blend, paintFrame } from '../picture/frame-painter.js';
import type { CutPicture } from '../picture/frame-picture.js';
import { FRAMES_A_FOOT } from '../shot/settings.js';
import { rowName } from '../shot/time-notation.js';
import type { Canvas, CanvasKit } from './canvas-kit.js';
import type { CutDrawings } from './cut-drawings.js';

export interface FilmCut {
  readonly cut: CutPicture;
  readonly drawings: CutDrawings;
  /** How the foot names it. */
  readonly name: string;
  /** Rows are counted in feet, not in seconds. */
  readonly feet: boolean;
}

export interface FilmLook {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly guides: boolean;
  /** Cut and time at the foot of the picture. */
  readonly foot: boolean;
}

export class FilmPainter {
  private readonly base: Canvas;
  private readonly other: Canvas;
  /** Made where a mask first asks for it. */
  private scratch: Canvas | null = null;
  /** By turns: while one is written the next is painted. */
  private readonly finished: readonly [Canvas, Canvas];
  private turn = 0;
  /** What `base` shows. */
  private last = '';

  /** `open`: a cut by its place; asked again and again for the cuts that are at hand. */
  constructor(
    private readonly kit: CanvasKit,
    private readonly order: FilmOrder,
    private readonly look: FilmLook,
    private readonly open: (cut: number) => FilmCut,
  ) {
    const { width, height } = look;
    this.base = kit.createCanvas(width, height);
    this.other = kit.createCanvas(width, height);
    this.finished = [kit.createCanvas(width, height), kit.createCanvas(width, height)];
  }

  /** The frame of the film, painted; the canvas is painted over when the second frame after it is. */
  async paint(frame: number): Promise<Canvas> {
    const { shown, own, incoming } = this.order.at(frame);
    const picture = this.pictureOf(shown);
    const over = incoming && this.pictureOf(incoming);
    const key = JSON.stringify([
      [shown.cut, { ...picture, frame: 0 }],
      incoming && [incoming.cut, { ...over, frame: 0 }],
    ]);
    // A hold is painted once.
    if (key !== this.last) {
      await this.paintOn(this.base, shown, incoming !== null);
      if (incoming && over) {
        await this.paintOn(this.other, incoming, true);
        blend(this.base.getContext('2d'), this.other, over.share, this.look);
      }
      this.last = key;
    }
    this.turn = 1 - this.turn;
    const canvas = this.finished[this.turn]!;
    const context = canvas.getContext('2d');
    context.globalCompositeOperation = 'copy';
    context.drawImage(this.base, 0, 0);
    context.globalCompositeOperation = 'source-over';
    const { cut, name, feet } = this.open(own.cut);
    if (this.look.guides) paintGuides(context, cut, this.look);
    if (this.look.foot) {
      const time = this.order.parts.length > 1 ? rowName(frame, feet ? FRAMES_A_FOOT : cut.fps, feet) : '';
      const row = `${rowName(own.row, feet ? FRAMES_A_FOOT : cut.fps, feet)}  (${own.row})`;
      paintFoot(context, [name, time, row], { ...this.look, family: this.kit.family });
    }
    return canvas;
  }

  private pictureOf({ cut, row }: FilmPicture): CutPicture['frames'][number] {
    return this.open(cut).cut.frames[row - 1]!;
  }

  private async paintOn(canvas: Canvas, place: FilmPicture, dissolved: boolean): Promise<void> {
    const { cut, drawings } = this.open(place.cut);
    const picture = this.pictureOf(place);
    await drawings.prepare(picture);
    paintFrame(canvas.getContext('2d'), cut, picture, {
      width: this.look.width,
      height: this.look.height,
      family: this.kit.family,
      drawing: drawings.drawing,
      scratch: () => {
        this.scratch ??= this.kit.createCanvas(this.look.width, this.look.height);
        return { context: this.scratch.getContext('2d'), image: this.scratch };
      },
      dissolved,
    });
  }
}
