/** Paints a frame of a cut on a canvas. Knows the standard Canvas 2D interface only: it runs in a browser and in Node. */

import { after, type Box, boxAfter, inverse } from './affine.js';
import type { Canvas2D } from './canvas-2d.js';
import type { CutPicture, Matrix, PictureFrame, PictureLayer, PictureOpening } from './frame-picture.js';
import { paintPlaceholder } from './placeholder.js';

/** What there is of a drawing, or what is said of its file where that cannot be read. */
export type Drawing<I> = PaintedDrawing<I> | { readonly kind: 'unreadable'; readonly fault: string };

export interface PaintedDrawing<I> {
  readonly kind: 'picture';
  readonly image: I;
  /** Its size on the artwork; its centre lies on the artwork's. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** Nothing of it is transparent: on a level its white is paper, and what lies below shows through. */
  readonly paper: boolean;
  /**
   * The drawing as light (see lit-drawing.ts), where its paint alone is opaque: for frames on which light shines through it, and
   * for masks; null: neither was asked for.
   */
  readonly lit: I | null;
}

export interface PaintOptions<I> {
  /** Of the canvas, pixels. The field stands in its middle, as large as fits; what is left over is black. */
  readonly width: number;
  readonly height: number;
  /** A font that the canvas knows. */
  readonly family: string;
  /** `level`: its place in the stack. Null: nothing is drawn yet. */
  readonly drawing: (level: number, number: number | null) => Drawing<I> | null;
  /** Another canvas of the same size, for as long as one layer is painted: what masks hide is cut out there. */
  readonly scratch: () => { readonly context: Canvas2D<I>; readonly image: I };
  /** In a dissolve the neighbour is painted, too: by the caller (`blend`). Otherwise the cut alone fades. */
  readonly dissolved?: boolean;
}

/** Paints one frame over whatever the canvas holds, and leaves the canvas' state as it was. */
export function paintFrame<I>(
  canvas: Canvas2D<I>,
  cut: CutPicture,
  frame: PictureFrame,
  options: PaintOptions<I>,
): void {
  const { width, height } = options;
  const place = fieldOn(cut, width, height);
  canvas.save();
  plain(canvas);
  canvas.fillStyle = '#000';
  canvas.fillRect(0, 0, width, height);
  canvas.beginPath();
  canvas.rect(place.left, place.top, place.width, place.height);
  canvas.clip();
  canvas.fillStyle = '#fff';
  canvas.fillRect(0, 0, width, height);
  const masks = frame.layers.filter(({ hides }) => hides);
  for (const layer of frame.layers) {
    if (layer.hides) continue;
    const over = masks.filter(({ hides }) => hides!.includes(layer.level));
    if (over.length === 0) paintLayer(canvas, cut, layer, place, options);
    else paintMasked(canvas, cut, layer, over, place, options);
  }
  plain(canvas);
  if (frame.opening) close(canvas, frame.opening, place);
  veil(canvas, '#000', frame.black, options);
  veil(canvas, '#fff', frame.white, options);
  if (!options.dissolved) veil(canvas, '#000', 1 - frame.share, options);
  canvas.restore();
}

/** Black over all but the opening. */
function close<I>(
  canvas: Canvas2D<I>,
  opening: PictureOpening,
  { left, top, width, height, matrix }: ReturnType<typeof fieldOn>,
): void {
  canvas.save();
  canvas.fillStyle = '#000';
  if (opening.form === 'edge') {
    const { from, share } = opening;
    const [open, shut] = [width * share, width * (1 - share)];
    const [openDown, shutDown] = [height * share, height * (1 - share)];
    if (from === 'left') canvas.fillRect(left + open, top, shut, height);
    if (from === 'right') canvas.fillRect(left, top, shut, height);
    if (from === 'top') canvas.fillRect(left, top + openDown, width, shutDown);
    if (from === 'bottom') canvas.fillRect(left, top, width, shutDown);
  } else {
    const [across, , , down, x, y] = matrix;
    canvas.beginPath();
    canvas.rect(left, top, width, height);
    // The other way round, so that it is left out of the rectangle.
    canvas.arc(
      x + across * opening.xMm,
      y + down * opening.yMm,
      across * opening.radiusMm,
      2 * Math.PI,
      0,
      true,
    );
    canvas.fill();
  }
  canvas.restore();
}

/** Paints another picture of the same size over the canvas, of which it gets so much share. */
export function blend<I>(
  canvas: Canvas2D<I>,
  image: I,
  share: number,
  { width, height }: { readonly width: number; readonly height: number },
): void {
  canvas.save();
  plain(canvas);
  canvas.globalAlpha = share;
  canvas.drawImage(image, 0, 0, width, height);
  canvas.restore();
}

/** Where the field stands on a canvas, and the matrix that leads from millimetres of the picture to pixels. */
export function fieldOn(
  { field }: Pick<CutPicture, 'field'>,
  width: number,
  height: number,
): {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly matrix: Matrix;
} {
  // A picture that is a pixel less than the field would make it is rounded, and fills all.
  const [across, down] = [width / field.widthMm, height / field.heightMm];
  const even = Math.abs(across - down) * Math.max(field.widthMm, field.heightMm) < 2;
  const [x, y] = even ? [across, down] : [Math.min(across, down), Math.min(across, down)];
  const [wide, tall] = [field.widthMm * x, field.heightMm * y];
  return {
    left: (width - wide) / 2,
    top: (height - tall) / 2,
    width: wide,
    height: tall,
    matrix: [x, 0, 0, -y, width / 2, height / 2],
  };
}

const FLIP: Matrix = [1, 0, 0, -1, 0, 0];

/** How paint lies on what is below: of all but the lowest background paper is transparent. */
function manner<I>(
  { levels }: CutPicture,
  index: number,
  found: Drawing<I> | null,
  lit: boolean,
): 'multiply' | 'source-over' {
  const ground = index === 0 && levels[index]!.background;
  const paper = found?.kind === 'picture' ? found.paper : true;
  return paper && !ground && !lit ? 'multiply' : 'source-over';
}

/** A layer less what lies under the paint of masks. A mask that is not drawn yet hides nothing. */
function paintMasked<I>(
  canvas: Canvas2D<I>,
  cut: CutPicture,
  layer: PictureLayer,
  masks: readonly PictureLayer[],
  place: ReturnType<typeof fieldOn>,
  options: PaintOptions<I>,
): void {
  const { width, height, drawing } = options;
  const { context, image } = options.scratch();
  context.save();
  plain(context);
  context.clearRect(0, 0, width, height);
  paintLayer(context, cut, layer, place, options);
  for (const mask of masks) {
    const found = drawing(mask.level, mask.number);
    const view = viewOf(cut, mask, place);
    if (found?.kind !== 'picture' || !view) continue;
    context.globalCompositeOperation = 'destination-out';
    context.globalAlpha = 1;
    paintCopies(context, cut, mask, view, found, found.lit ?? found.image);
  }
  context.restore();
  plain(canvas);
  const found = drawing(layer.level, layer.number);
  const lit = layer.glow && found?.kind === 'picture' && found.lit !== null;
  canvas.globalCompositeOperation = manner(cut, layer.level, found, lit);
  canvas.drawImage(image, 0, 0, width, height);
}

function paintLayer<I>(
  canvas: Canvas2D<I>,
  cut: CutPicture,
  layer: PictureLayer,
  place: ReturnType<typeof fieldOn>,
  { drawing, family }: PaintOptions<I>,
): void {
  const { level, number, opacity, glow } = layer;
  const view = viewOf(cut, layer, place);
  if (!view || opacity <= 0) return;
  const found = drawing(level, number);
  canvas.globalAlpha = opacity;
  if (found?.kind !== 'picture') {
    const fault = found?.fault ?? null;
    paintPlaceholder(canvas, cut, { level, number, glow, fault }, { ...view, family });
    return;
  }
  const lit = glow ? found.lit : null;
  canvas.globalCompositeOperation = manner(cut, level, found, lit !== null);
  if (lit) {
    canvas.shadowColor = '#ffb000';
    canvas.shadowBlur = place.width / 60;
  }
  paintCopies(canvas, cut, layer, view, found, lit ?? found.image);
  canvas.shadowBlur = 0;
  canvas.shadowColor = 'transparent';
}

interface LayerView {
  readonly matrix: Matrix;
  readonly seen: Box;
}

/** Where a layer's artwork lies on the canvas, and what of it the field shows; null: nothing, it is seen edge on. */
function viewOf(
  { field: { widthMm, heightMm } }: CutPicture,
  { matrix }: PictureLayer,
  place: ReturnType<typeof fieldOn>,
): LayerView | null {
  const back = inverse(matrix);
  if (!back) return null;
  const field = { left: -widthMm / 2, right: widthMm / 2, bottom: -heightMm / 2, top: heightMm / 2 };
  return { matrix: after(after(place.matrix, matrix), FLIP), seen: boxAfter(back, field) };
}

/** A drawing in its place, once or along its loop. */
function paintCopies<I>(
  canvas: Canvas2D<I>,
  cut: CutPicture,
  { level }: PictureLayer,
  { matrix, seen }: LayerView,
  { widthMm, heightMm }: PaintedDrawing<I>,
  image: I,
): void {
  canvas.setTransform(...matrix);
  for (const { x, y } of copies(cut.levels[level]!.loop, seen, widthMm, heightMm))
    canvas.drawImage(image, x - widthMm / 2, -y - heightMm / 2, widthMm, heightMm);
}

/** A field that is further than this from its loop's painted length is a slip. */
const MOST_COPIES = 100;

/** Where a drawing's centre lies on the artwork: once, or again and again along a loop, as far as is seen. */
function copies(
  loop: CutPicture['levels'][number]['loop'],
  seen: Box,
  widthMm: number,
  heightMm: number,
): { x: number; y: number }[] {
  if (!loop) return [{ x: 0, y: 0 }];
  const along = loop.axis === 'x';
  const half = (along ? widthMm : heightMm) / 2;
  const [from, to] = along ? [seen.left, seen.right] : [seen.bottom, seen.top];
  const first = Math.ceil((from - half) / loop.lengthMm);
  const last = Math.min(Math.floor((to + half) / loop.lengthMm), first + MOST_COPIES);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const at = (first + i) * loop.lengthMm;
    return along ? { x: at, y: 0 } : { x: 0, y: at };
  });
}

function plain<I>(canvas: Canvas2D<I>): void {
  canvas.setTransform(1, 0, 0, 1, 0, 0);
  canvas.globalAlpha = 1;
  canvas.globalCompositeOperation = 'source-over';
  canvas.imageSmoothingEnabled = true;
  // With steps of half the size between; `high` takes three times as long and shows no difference on scans that were made smaller before.
  canvas.imageSmoothingQuality = 'medium';
}

function veil<I>(
  canvas: Canvas2D<I>,
  colour: string,
  share: number,
  { width, height }: { readonly width: number; readonly height: number },
): void {
  if (share <= 0) return;
  canvas.globalAlpha = Math.min(1, share);
  canvas.fillStyle = colour;
  canvas.fillRect(0, 0, width, height);
  canvas.globalAlpha = 1;
}
