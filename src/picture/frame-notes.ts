/** What is written over a painted frame: which cut and time it is, and the field's guides. */

import type { Canvas2D } from './canvas-2d.js';
import { fieldOn } from './frame-painter.js';
import type { CutPicture } from './frame-picture.js';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Writes at the foot of the picture, white on black so that it is read on everything: left, middle, right. */
export function paintFoot<I>(
  canvas: Canvas2D<I>,
  texts: readonly [string, string, string],
  { width, height, family }: Size & { readonly family: string },
): void {
  const size = Math.max(9, Math.round(height / 30));
  const bar = Math.round(size * 1.5);
  canvas.save();
  canvas.setTransform(1, 0, 0, 1, 0, 0);
  canvas.globalCompositeOperation = 'source-over';
  canvas.globalAlpha = 0.65;
  canvas.fillStyle = '#000';
  canvas.fillRect(0, height - bar, width, bar);
  canvas.globalAlpha = 1;
  canvas.fillStyle = '#fff';
  canvas.textBaseline = 'alphabetic';
  const places = [
    ['left', size / 2],
    ['center', width / 2],
    ['right', width - size / 2],
  ] as const;
  const room = (width / 3) * 0.96;
  places.forEach(([align, x], i) => {
    const text = texts[i]!;
    canvas.font = `bold ${size}px ${family}`;
    const wide = canvas.measureText(text).width;
    if (wide > room) canvas.font = `bold ${((size * room) / wide).toFixed(2)}px ${family}`;
    canvas.textAlign = align;
    canvas.fillText(text, x, height - bar / 2 + size * 0.36);
  });
  canvas.restore();
}

/** Action and title safe areas, shares of each side. Source: SMPTE ST 2046-1 (93 % and 90 %). */
const SAFE = [0.93, 0.9];

/** The fields of the chart, two lines apart, its middle cross, and the safe areas in red. */
export function paintGuides<I>(canvas: Canvas2D<I>, cut: CutPicture, size: Size): void {
  const place = fieldOn(cut, size.width, size.height);
  canvas.save();
  canvas.setTransform(1, 0, 0, 1, size.width / 2, size.height / 2);
  canvas.globalCompositeOperation = 'source-over';
  const thin = Math.max(1, size.width / 1280);
  const box = (share: number): void => {
    const [w, h] = [place.width * share, place.height * share];
    canvas.strokeRect(-w / 2, -h / 2, w, h);
  };
  canvas.globalAlpha = 0.7;
  canvas.lineWidth = thin;
  canvas.strokeStyle = '#0a7ea4';
  for (let field = 2; field < cut.fields; field += 2) box(field / cut.fields);
  for (const [x, y] of [
    [place.width / 2, 0],
    [0, place.height / 2],
  ] as const) {
    canvas.beginPath();
    canvas.moveTo(-x, -y);
    canvas.lineTo(x, y);
    canvas.stroke();
  }
  canvas.strokeStyle = '#c0392b';
  for (const share of SAFE) box(share);
  canvas.restore();
}
