/**
 * What is seen of a cut on each frame, as plain data: a painter needs nothing else of the cut but its drawings. `JSON.stringify`
 * is its form for a browser: 20 to 45 kB for a cut of five seconds, and the painter 9 kB of script, where the solver would be many times that.
 *
 * Millimetres throughout, x to the right, y up. A point of the artwork is counted from the artwork's centre, a point of the picture
 * from the centre of the picture, at the scale of the standard field: the picture is `field.widthMm` wide whatever the camera sees.
 */

export interface CutPicture {
  /** The cut's number as written. */
  readonly cut: string;
  readonly fps: number;
  /** The standard field, which is the picture's size. */
  readonly field: { readonly widthMm: number; readonly heightMm: number };
  /** Lines of the field chart over the whole field. */
  readonly fields: number;
  /** Rows before and after the cut's own time. */
  readonly handles: { readonly head: number; readonly tail: number };
  /** The stack, bottom to top. */
  readonly levels: readonly PictureLevel[];
  /** One for each row of the sheet, handles too: `frames[f - 1]` is row f. */
  readonly frames: readonly PictureFrame[];
}

export interface PictureLevel {
  readonly name: string;
  readonly title: string;
  /** A background or overlay by its name. */
  readonly background: boolean;
  /** False: it is simply there, and its layers have no number. */
  readonly timed: boolean;
  /** The sheet it is drawn on, in millimetres of the artwork: its centre and its size; where no size is said, as large as is seen. */
  readonly sheet: SheetBox;
  /** The artwork repeats along an axis, each length beginning where the one before ends; or null. */
  readonly loop: { readonly lengthMm: number; readonly axis: 'x' | 'y' } | null;
}

export interface SheetBox {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface PictureFrame {
  /** The row of the sheet, from 1. */
  readonly frame: number;
  /** Bottom to top; a level that shows nothing is not among them. */
  readonly layers: readonly PictureLayer[];
  /** How much of the picture is faded away to black, to white: 0 nothing, 1 all. */
  readonly black: number;
  readonly white: number;
  /** What a wipe or an iris leaves to be seen; null: all of it. Around it is black. */
  readonly opening: PictureOpening | null;
  /** The share of this cut where it is dissolved with a neighbour, the neighbour having the rest; 1 elsewhere. */
  readonly share: number;
}

/** `share` of the picture's width or height, from the side that it names; a circle. mm of the picture, y up. */
export type PictureOpening =
  | { readonly form: 'edge'; readonly from: 'left' | 'right' | 'top' | 'bottom'; readonly share: number }
  | { readonly form: 'circle'; readonly xMm: number; readonly yMm: number; readonly radiusMm: number };

export interface PictureLayer {
  /** The place of its level in `CutPicture.levels`. */
  readonly level: number;
  /** The finished number of the drawing; null for a level that is simply there. */
  readonly number: number | null;
  /** From the artwork to the picture. */
  readonly matrix: Matrix;
  /** 0 … 1: a double exposure has less than 1. */
  readonly opacity: number;
  /** Light shines through it. */
  readonly glow: boolean;
  /** It is a mask: what of these levels, by their places, lies under its paint is not seen, and itself is not seen either. */
  readonly hides?: readonly number[];
}

/** `[a, b, c, d, e, f]`: a point (x, y) comes to (a x + c y + e, b x + d y + f), as on a canvas. */
export type Matrix = readonly [number, number, number, number, number, number];
