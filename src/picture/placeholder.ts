/**
 * What stands for a drawing that does not exist yet: a sheet of the level's own tint with its number. A background has a grid in
 * its place, so that a move of the camera is seen.
 */

import type { Box } from './affine.js';
import type { Canvas2D } from './canvas-2d.js';
import type { CutPicture, Matrix, PictureLevel, SheetBox } from './frame-picture.js';
import { type Tint, tintOf } from './level-tints.js';

export interface Placeholder {
  /** The place of its level in the stack. */
  readonly level: number;
  readonly number: number | null;
  readonly glow: boolean;
  /** What is said of a file that could not be read, or null. */
  readonly fault: string | null;
}

/** Between two lines of a background's grid, and how many of them apart its figures stand. */
const GRID_MM = 25;
const FIGURES = 2;
/** Half the width of a cross. */
const CROSS_MM = 2;
/** More lines than this are no grid but a grey: of a picture seen from very far. */
const MOST_LINES = 200;

/**
 * Paints it in millimetres of the artwork, y downwards: `matrix` leads from there to pixels. `seen`: what of the artwork is in the
 * picture, y upwards.
 */
export function paintPlaceholder<I>(
  canvas: Canvas2D<I>,
  cut: CutPicture,
  { level: index, number, glow, fault }: Placeholder,
  view: { readonly matrix: Matrix; readonly seen: Box; readonly family: string },
): void {
  const level = cut.levels[index]!;
  const tint = tintOf(index);
  const sheet = rectOf(level, view.seen);
  canvas.setTransform(...view.matrix);
  canvas.globalCompositeOperation = 'multiply';
  canvas.fillStyle = tint.pale;
  canvas.fillRect(sheet.left, -sheet.top, sheet.right - sheet.left, sheet.top - sheet.bottom);
  canvas.strokeStyle = tint.line;
  canvas.lineWidth = 0.5;
  canvas.strokeRect(sheet.left, -sheet.top, sheet.right - sheet.left, sheet.top - sheet.bottom);
  if (!level.timed) paintGrid(canvas, level, index === 0, sheet, tint, view);
  paintNumber(canvas, cut, index, number, { glow, tint, ...view });
  if (fault !== null) paintFault(canvas, fault, centreOf(cut, level.sheet), tint, view.family);
}

/** The whole sheet; of a loop as much as is seen along its axis. */
function rectOf({ sheet, loop }: PictureLevel, seen: Box): Box {
  const box = {
    left: sheet.xMm - sheet.widthMm / 2,
    right: sheet.xMm + sheet.widthMm / 2,
    bottom: sheet.yMm - sheet.heightMm / 2,
    top: sheet.yMm + sheet.heightMm / 2,
  };
  if (loop?.axis === 'x') return { ...box, left: seen.left - GRID_MM, right: seen.right + GRID_MM };
  if (loop?.axis === 'y') return { ...box, bottom: seen.bottom - GRID_MM, top: seen.top + GRID_MM };
  return box;
}

/** The lowest one has lines with figures; of the others crosses are enough, which leave what lies below to be seen. */
function paintGrid<I>(
  canvas: Canvas2D<I>,
  { loop }: PictureLevel,
  lowest: boolean,
  sheet: Box,
  tint: Tint,
  { seen, family }: { seen: Box; family: string },
): void {
  const shown = {
    left: Math.max(sheet.left, seen.left),
    right: Math.min(sheet.right, seen.right),
    bottom: Math.max(sheet.bottom, seen.bottom),
    top: Math.min(sheet.top, seen.top),
  };
  const columns = steps(shown.left, shown.right);
  const rows = steps(shown.bottom, shown.top);
  if (columns.length > MOST_LINES || rows.length > MOST_LINES) return;
  canvas.strokeStyle = tint.line;
  if (!lowest) {
    canvas.lineWidth = 0.6;
    for (const x of columns)
      for (const y of rows) {
        stroke(canvas, x - CROSS_MM, -y, x + CROSS_MM, -y);
        stroke(canvas, x, -y - CROSS_MM, x, -y + CROSS_MM);
      }
    return;
  }
  for (const x of columns) {
    canvas.lineWidth = x === 0 ? 0.8 : 0.25;
    stroke(canvas, x, -shown.bottom, x, -shown.top);
  }
  for (const y of rows) {
    canvas.lineWidth = y === 0 ? 0.8 : 0.25;
    stroke(canvas, shown.left, -y, shown.right, -y);
  }
  canvas.fillStyle = tint.line;
  canvas.font = `5px ${family}`;
  canvas.textAlign = 'left';
  canvas.textBaseline = 'bottom';
  const along = (value: number, axis: 'x' | 'y'): number => {
    if (loop?.axis !== axis) return value;
    const rest = value % loop.lengthMm;
    return rest < 0 ? rest + loop.lengthMm : rest;
  };
  for (const x of columns.filter(hasFigure))
    for (const y of rows.filter(hasFigure))
      canvas.fillText(`${figure(along(x, 'x'))}, ${figure(along(y, 'y'))}`, x + 1, -y - 1);
}

const hasFigure = (value: number): boolean => value % (GRID_MM * FIGURES) === 0;

const figure = (value: number): string => String(Math.round(value));

function steps(from: number, to: number): number[] {
  const first = Math.ceil(from / GRID_MM);
  const count = Math.min(MOST_LINES + 1, Math.floor(to / GRID_MM) - first + 1);
  return Array.from({ length: Math.max(0, count) }, (_, i) => (first + i) * GRID_MM);
}

function stroke<I>(canvas: Canvas2D<I>, x1: number, y1: number, x2: number, y2: number): void {
  canvas.beginPath();
  canvas.moveTo(x1, y1);
  canvas.lineTo(x2, y2);
  canvas.stroke();
}

/**
 * As large as fits. Levels lie upon each other, so each has a column of the sheet to itself; names of backgrounds stand at the top
 * of theirs, where they cover nobody.
 */
function paintNumber<I>(
  canvas: Canvas2D<I>,
  cut: CutPicture,
  index: number,
  number: number | null,
  { glow, tint, family }: { glow: boolean; tint: Tint; family: string },
): void {
  const level = cut.levels[index]!;
  const row = cut.levels.filter(({ timed }) => timed === level.timed);
  const place = row.indexOf(level);
  const { xMm, yMm, widthMm, heightMm } = centreOf(cut, level.sheet);
  const column = (widthMm * 0.92) / row.length;
  const x = xMm - (column * row.length) / 2 + column * (place + 0.5);
  const tall = level.timed ? heightMm * 0.55 : heightMm * 0.1;
  const y = level.timed ? yMm : yMm + heightMm * 0.38;
  const text = `${level.name}${number ?? ''}`;
  canvas.font = `bold 100px ${family}`;
  // Capital letters of common fonts are 0.73 of the size high.
  const size = Math.min(tall / 0.73, (column * 0.94 * 100) / Math.max(1, canvas.measureText(text).width));
  canvas.font = `bold ${size.toFixed(2)}px ${family}`;
  canvas.textAlign = 'center';
  canvas.textBaseline = 'alphabetic';
  const base = -y + size * 0.365;
  if (glow) {
    // Light is seen on whatever lies below.
    canvas.globalCompositeOperation = 'source-over';
    canvas.strokeStyle = '#ffb000';
    canvas.lineWidth = size / 12;
    canvas.strokeText(text, x, base);
    canvas.fillStyle = '#fffbe0';
  } else canvas.fillStyle = tint.dark;
  canvas.fillText(text, x, base);
  canvas.globalCompositeOperation = 'multiply';
}

/** What of a sheet the standard field shows at most. */
function centreOf(cut: CutPicture, sheet: SheetBox): SheetBox {
  return {
    xMm: sheet.xMm,
    yMm: sheet.yMm,
    widthMm: Math.min(sheet.widthMm, cut.field.widthMm),
    heightMm: Math.min(sheet.heightMm, cut.field.heightMm),
  };
}

function paintFault<I>(canvas: Canvas2D<I>, fault: string, box: SheetBox, tint: Tint, family: string): void {
  canvas.font = `bold 7px ${family}`;
  const width = Math.max(1, canvas.measureText(fault).width);
  const size = Math.min(7, (7 * box.widthMm * 0.9) / width);
  canvas.font = `bold ${size.toFixed(2)}px ${family}`;
  canvas.textAlign = 'center';
  canvas.textBaseline = 'alphabetic';
  canvas.fillStyle = tint.dark;
  canvas.fillText(fault, box.xMm, -(box.yMm - box.heightMm * 0.38));
}
