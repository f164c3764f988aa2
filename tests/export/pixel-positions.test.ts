import { describe, expect, test } from 'vitest';
import { pixelsOf } from '../../src/export/pixel-positions.js';
import { defaults } from '../../src/shot/settings.js';
import type { PlacementFrame } from '../../src/solve/camera/solved-camera.js';

const at = (screenX: number, screenY: number): PlacementFrame => ({ screenX, screenY }) as PlacementFrame;
const settings = {
  ...defaults,
  field: { widthMm: 200, heightMm: 100 },
  output: { width: 1920, height: 1080 },
};

describe('millimetres of the field as pixels of the picture', () => {
  test('the edges of the field are the edges of the picture', () => {
    expect(pixelsOf(at(100, 50), settings)).toEqual({ pixelX: 960, pixelY: 540 });
    expect(pixelsOf(at(-100, -50), settings)).toEqual({ pixelX: -960, pixelY: -540 });
  });

  test('the centre is 0, 0', () => {
    expect(pixelsOf(at(0, 0), settings)).toEqual({ pixelX: 0, pixelY: 0 });
  });

  test('fractions are kept', () => {
    expect(pixelsOf(at(0.01, 0.01), settings).pixelX).toBeCloseTo(0.096, 12);
    expect(pixelsOf(at(0.01, 0.01), settings).pixelY).toBeCloseTo(0.108, 12);
  });
});
