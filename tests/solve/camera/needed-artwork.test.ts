import { describe, expect, it } from 'vitest';
import { defaults } from '../../../src/shot/settings.js';
import { artworkOf, type Loop, seenOf } from '../../../src/solve/camera/needed-artwork.js';
import type { CameraFrame, PlacementFrame } from '../../../src/solve/camera/solved-camera.js';
import { level } from './build.js';

const camera = (frame: number, more: Partial<CameraFrame> = {}): CameraFrame => ({
  frame,
  x: 0,
  y: 0,
  width: 100,
  percent: 0,
  field: 0,
  rotation: 0,
  ...more,
});
const placed = (more: Partial<PlacementFrame> = {}): PlacementFrame => ({
  x: 0,
  y: 0,
  scale: 1,
  rotation: 0,
  screenX: 0,
  screenY: 0,
  ...more,
});
const HOME = { xMm: 0, yMm: 0 };

describe('what of the artwork a frame shows', () => {
  const here = { x: 10, y: -5 };

  it('is the field, from the centre of the artwork', () => {
    expect(seenOf(camera(1, here), placed(), HOME, 0.5)).toEqual({
      left: -40,
      right: 60,
      bottom: -30,
      top: 20,
    });
    expect(seenOf(camera(1, here), placed({ x: 4 }), { xMm: 6, yMm: 0 }, 0.5)).toMatchObject({
      left: -50,
      right: 50,
    });
  });

  it('is less of one that is scaled up', () => {
    expect(seenOf(camera(1, here), placed({ scale: 2 }), HOME, 0.5)).toEqual({
      left: -20,
      right: 30,
      bottom: -15,
      top: 10,
    });
  });

  it('of a turned field is the upright rectangle around it', () => {
    expect(seenOf(camera(1, { ...here, rotation: 90 }), placed(), HOME, 0.5)).toEqual({
      left: -15,
      right: 35,
      bottom: -55,
      top: 45,
    });
    const { right, top } = seenOf(camera(1, { rotation: 45 }), placed(), HOME, 0.5);
    expect(right).toBeCloseTo(75 * Math.SQRT1_2, 12);
    expect(top).toBeCloseTo(75 * Math.SQRT1_2, 12);
  });

  it('is counted along the axes of a level that is turned itself', () => {
    // Field and level turned alike: the field is upright on the paper, its centre turned back.
    const turned = { rotation: 90 };
    expect(seenOf(camera(1, { ...here, ...turned }), placed(turned), HOME, 0.5)).toEqual({
      left: -45,
      right: 55,
      bottom: -15,
      top: 35,
    });
  });
});

describe('the artwork', () => {
  const settings = { ...defaults, field: { widthMm: 100, heightMm: 50 } };
  const frames = [camera(1), camera(2, { x: 20 }), camera(3, { x: 60 }), camera(4, { x: 30 })];
  const at = frames.map(() => placed());
  const of = (more: Parameters<typeof level>[1], loop: Loop | null = null) =>
    artworkOf(level('BG', more), frames, at, loop, settings);
  const sizeMm = { widthMm: 150, heightMm: 60 };

  it('that is needed holds the field of every frame', () => {
    expect(of({}).needed).toEqual({ width: 160, height: 50, x: 30, y: 0 });
  });

  it('is needed only where the level shows', () => {
    expect(of({ shown: (frame) => frame !== 3 }).needed).toEqual({ width: 130, height: 50, x: 15, y: 0 });
    expect(of({ shown: () => false })).toMatchObject({ needed: null, edge: null });
  });

  it('shows its edge on a first frame, and worst on another', () => {
    expect(of({ sizeMm: { widthMm: 130, heightMm: 60 } }).edge).toEqual({
      frame: 2,
      side: 'right',
      byMm: 5,
      worstMm: 45,
      worstFrame: 3,
    });
    expect(of({ sizeMm: { widthMm: 220, heightMm: 50 } }).edge).toBeNull();
  });

  it('whose edges may show has none to be told of', () => {
    expect(of({ sizeMm, free: true }).edge).toBeNull();
  });

  it('without a size is as large as the paper of the episode where it has a timeline, else of no size', () => {
    expect(of({ timed: true })).toMatchObject({ width: 297, height: 210 });
    expect(of({ timed: false })).toMatchObject({ width: null, height: null, edge: null });
  });

  it('of a loop needs the whole loop and the longest field along it, and has no ends there', () => {
    expect(of({ sizeMm }, { lengthMm: 150, axis: 'x' })).toMatchObject({
      needed: { width: 150, height: 50, x: 0 },
      edge: null,
    });
    expect(of({ sizeMm }, { lengthMm: 90, axis: 'x' })).toMatchObject({ needed: { width: 100 } });
    // Along the other axis the loop has no ends, and the paper is too narrow for the pan.
    expect(of({ sizeMm }, { lengthMm: 60, axis: 'y' })).toMatchObject({
      needed: { width: 160, height: 60, y: 0 },
      edge: { side: 'right', worstMm: 35 },
    });
  });

  it('lies about its home', () => {
    expect(of({ homeMm: { xMm: 30, yMm: -10 } })).toMatchObject({
      homeX: 30,
      homeY: -10,
      needed: { x: 30, y: 0 },
    });
  });
});
