import { describe, expect, it } from 'vitest';
import type { Light } from '../../../src/shot/camera/camera-model.js';
import { solved, span } from './build.js';

const fade = (way: 'in' | 'out', from: number, to: number, white = false): Light => ({
  kind: 'fade',
  way,
  white,
  frames: { from, to },
  span: span(),
});
const glow = (from: number, to: number): Light => ({
  kind: 'glow',
  levels: ['BG'],
  frames: { from, to },
  span: span(),
});
const expose = (from: number, to: number, a: number, b: number): Light => ({
  kind: 'expose',
  levels: ['BG'],
  from,
  to,
  frames: { from: a, to: b },
  span: span(),
});

const shares = (light: Light) => solved({ light: [light] }).solved.light[0]!.shares.map(({ share }) => share);
describe('light', () => {
  it('fades over five frames by 0, .25, .5, .75, 1', () => {
    // flylib 2.98.1.85: first frame 0/100, last 100/0.
    expect(shares(fade('in', 1, 5))).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(shares(fade('out', 44, 48))).toEqual([1, 0.75, 0.5, 0.25, 0]);
  });

  it('dissolves the same way', () => {
    const out: Light = { kind: 'overlap', way: 'out', length: 3, frames: { from: 46, to: 48 }, span: span() };
    expect(shares(out)).toEqual([1, 0.5, 0]);
  });

  it('exposes by shares that run from the first frame to the last', () => {
    expect(shares(expose(0, 1, 1, 5))).toEqual([0, 0.25, 0.5, 0.75, 1]);
    expect(shares(expose(0.5, 0.5, 1, 2))).toEqual([0.5, 0.5]);
  });
  it('of a fade over one frame has arrived there', () => {
    expect(shares(fade('in', 3, 3))).toEqual([1]);
  });

  it('past the end of the sheet stops with its last row', () => {
    expect(shares(fade('in', 45, 51))).toHaveLength(4);
  });

  it('through the artwork is full, and an effect has no share', () => {
    expect(shares(glow(3, 4))).toEqual([1, 1]);
    const effect: Light = {
      kind: 'effect',
      text: 'haze',
      levels: [],
      frames: { from: 1, to: 9 },
      span: span(),
    };
    expect(shares(effect)).toEqual([]);
  });
});
