import { describe, expect, it } from 'vitest';
import { FULL, field, leg, level, pull, shake, solved, truck, W } from './build.js';

describe('the camera', () => {
  it('is told in mm, in percent and in lines of the chart, shake included', () => {
    const rest = field('R', { xMm: 5, widthMm: 127, turnDeg: 30 });
    const { frames } = solved({ length: 2, rest, moves: [shake(3, 3, 2, 2)] }).solved;
    expect(frames[0]).toEqual({ frame: 1, x: 5, y: 0, width: 127, percent: 50, field: 6, rotation: 30 });
    expect(Math.hypot(frames[1]!.x - 5, frames[1]!.y)).toBeCloseTo(3, 12);
  });
});

describe('a level', () => {
  it('is seen from the camera in mm on the standard field, turned back', () => {
    const rest = field('R', { xMm: 10, yMm: 20, widthMm: 127, turnDeg: 90 });
    const { placement } = solved({ length: 1, rest, moves: [] }).solved;
    // Home is 10 left and 20 below the centre; a camera turned clockwise sees below on its right, left on its bottom; twice as large.
    expect(placement.get('BG')![0]).toEqual({
      frame: 1,
      x: 0,
      y: 0,
      scale: 1,
      rotation: 0,
      screenX: 40,
      screenY: -20,
    });
  });

  it('fixed to the camera move in the picture, whatever the camera does', () => {
    const B = level('B', { carry: true, homeMm: { xMm: 20, yMm: 10 } });
    const view = field('V', { xMm: 100, widthMm: 127, turnDeg: 90 });
    const scene = {
      length: 4,
      levels: [B],
      rest: FULL,
      moves: [truck([leg(FULL, 1, view, 2)]), pull(['B'], 'right', 8, 1, 4), shake(3, 3, 1, 4)],
    };
    const { solved: s } = solved(scene);
    s.placement.get('B')!.forEach((p, i) => {
      const f = s.frames[i]!;
      const r = (f.rotation * Math.PI) / 180;
      const dx = 20 + p.x - f.x;
      const dy = 10 + p.y - f.y;
      const zoom = W / f.width;
      expect(zoom * (Math.cos(r) * dx - Math.sin(r) * dy)).toBeCloseTo(20 + 2 * (i + 1), 10);
      expect(zoom * (Math.sin(r) * dx + Math.cos(r) * dy)).toBeCloseTo(10, 10);
      expect(p.scale * zoom).toBeCloseTo(1, 12);
    });
    expect(s.artwork.get('B')!.needed!.width).toBeCloseTo(W + 6, 9);
  });
});
