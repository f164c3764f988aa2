/** Registration marks stand in the painted frames where the solver says, for every kind of move. */

import { type Canvas, createCanvas } from '@napi-rs/canvas';
import { expect, test } from 'vitest';
import { applied } from '../../src/picture/affine.js';
import { pictureOf } from '../../src/picture/frame-list.js';
import { type Drawing, fieldOn, paintFrame } from '../../src/picture/frame-painter.js';
import { compileText } from '../compile.js';
import { MOVING_CUTS } from './moving-cuts.js';
import { findMark, type MarkColour, type Marks, registrationDrawing } from './registration-scans.js';
import { scratch } from './scratch-canvas.js';

const SIZE = { width: 960, height: 540 };
/** Further from the edge than a mark is large, so that all of it is in the picture. */
const MARGIN = 60;

/** One mark on the background, one on each of two drawings, so that it also shows which drawing is seen. */
const GROUND: Marks = { green: { x: -38, y: 21 } };
const DRAWINGS: readonly Marks[] = [{ red: { x: 30, y: -12 } }, { blue: { x: -17, y: 25 } }];

const scans: Readonly<Record<string, Drawing<Canvas>>> = {
  '0 null': registrationDrawing(GROUND, { widthMm: 900, heightMm: 700, dpi: 60, paper: true }),
  '1 1': registrationDrawing(DRAWINGS[0]!, { widthMm: 420, heightMm: 300 }),
  '1 2': registrationDrawing(DRAWINGS[1]!, { widthMm: 420, heightMm: 300 }),
};

test.each(MOVING_CUTS)('%s: marks are within half a pixel of where the solver says', (_, text) => {
  const cut = pictureOf(compileText(text).solved!);
  const canvas = createCanvas(SIZE.width, SIZE.height);
  const context = canvas.getContext('2d');
  const field = fieldOn(cut, SIZE.width, SIZE.height).matrix;
  let worst = 0;
  let found = 0;
  for (const frame of cut.frames.filter((_, i) => i % 4 === 0)) {
    paintFrame(context, cut, frame, {
      ...SIZE,
      family: 'sans-serif',
      scratch: scratch(SIZE),
      drawing: (level, number) => scans[`${level} ${number}`] ?? null,
    });
    const expected = frame.layers.flatMap(({ level, number, matrix }) =>
      Object.entries(level === 0 ? GROUND : DRAWINGS[number! - 1]!).map(([colour, place]) => {
        const onField = applied(matrix, place.x, place.y);
        return { colour: colour as MarkColour, ...applied(field, onField.x, onField.y) };
      }),
    );
    // One that lies over another hides a part of it.
    const clear = expected.filter((one) =>
      expected.every((other) => other === one || Math.hypot(other.x - one.x, other.y - one.y) > MARGIN),
    );
    for (const { colour, x, y } of clear) {
      if (x < MARGIN || x > SIZE.width - MARGIN || y < MARGIN || y > SIZE.height - MARGIN) continue;
      const seen = findMark(context, colour);
      expect(seen, `${colour} on frame ${frame.frame}`).not.toBeNull();
      worst = Math.max(worst, Math.hypot(seen!.x - x, seen!.y - y));
      found += 1;
    }
  }
  expect(found).toBeGreaterThanOrEqual(8);
  expect(worst).toBeLessThan(0.5);
});
