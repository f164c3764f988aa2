/**
 * Scans with registration marks, made here: discs of pure colours at known places of the artwork. In a painted frame each is found again
 * as the centre of all that has its colour.
 */

import { type Canvas, createCanvas, type SKRSContext2D } from '@napi-rs/canvas';
import type { PaintedDrawing } from '../../src/picture/frame-painter.js';

export const MARK_COLOURS = { red: '#ff0000', green: '#00ff00', blue: '#0000ff' } as const;
export type MarkColour = keyof typeof MARK_COLOURS;

/** Where each mark lies, mm from the artwork's centre, y up. */
export type Marks = Readonly<Partial<Record<MarkColour, { readonly x: number; readonly y: number }>>>;

const RADIUS_MM = 4;

/** A scan of a sheet with marks on it: on white paper, or with nothing but the marks. */
export function registrationScan(
  marks: Marks,
  {
    widthMm = 297,
    heightMm = 210,
    dpi = 100,
    paper = false,
  }: { widthMm?: number; heightMm?: number; dpi?: number; paper?: boolean } = {},
): Canvas {
  const scale = dpi / 25.4;
  const canvas = createCanvas(Math.round(widthMm * scale), Math.round(heightMm * scale));
  const context = canvas.getContext('2d');
  if (paper) {
    context.fillStyle = '#fff';
    context.fillRect(0, 0, canvas.width, canvas.height);
  }
  for (const [colour, at] of Object.entries(marks)) {
    context.fillStyle = MARK_COLOURS[colour as MarkColour];
    context.beginPath();
    context.arc(canvas.width / 2 + at.x * scale, canvas.height / 2 - at.y * scale, RADIUS_MM * scale, 0, 7);
    context.fill();
  }
  return canvas;
}

/** The same as the painter takes it. */
export function registrationDrawing(
  marks: Marks,
  options: Parameters<typeof registrationScan>[1] = {},
): PaintedDrawing<Canvas> {
  const { widthMm = 297, heightMm = 210, paper = false } = options;
  return {
    kind: 'picture',
    image: registrationScan(marks, options),
    widthMm,
    heightMm,
    paper,
    lit: null,
  };
}

/** The centre of a colour in pixels from the left and from the top of the canvas; null where none of it is seen. */
export function findMark(
  context: SKRSContext2D,
  colour: MarkColour,
): { readonly x: number; readonly y: number } | null {
  const { width, height } = context.canvas;
  const { data } = context.getImageData(0, 0, width, height);
  const channel = ['red', 'green', 'blue'].indexOf(colour);
  const [second, third] = [(channel + 1) % 3, (channel + 2) % 3];
  let [sum, alongX, alongY] = [0, 0, 0];
  for (let i = 0; i < data.length; i += 4) {
    const weight = data[i + channel]! - Math.max(data[i + second]!, data[i + third]!);
    if (weight <= 8) continue;
    const pixel = i / 4;
    sum += weight;
    alongX += weight * ((pixel % width) + 0.5);
    alongY += weight * (Math.floor(pixel / width) + 0.5);
  }
  return sum < 255 * 4 ? null : { x: alongX / sum, y: alongY / sum };
}
