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

describe('edges of the paper', () => {
  const settings = { ...defaults, field: { widthMm: 100, heightMm: 50 } };
  const edgeOf = (
    centres: readonly (readonly [number, number])[],
    size: readonly [number, number],
    loop: Loop | null = null,
  ) => {
    const frames = centres.map(([x, y], i) => camera(i + 1, { x, y }));
    const own = level('BG', { sizeMm: { widthMm: size[0], heightMm: size[1] } });
    const places = frames.map(() => placed());
    return artworkOf(own, frames, places, loop, settings).edge;
  };

  it('show on the side to which the field goes furthest over the paper', () => {
    expect(edgeOf([[12, 0]], [120, 60])).toMatchObject({ side: 'right', byMm: 2 });
    expect(edgeOf([[-12, 0]], [120, 60])).toMatchObject({ side: 'left', byMm: 2 });
    expect(edgeOf([[12, 9]], [120, 60])).toMatchObject({ side: 'top', byMm: 4 });
    expect(edgeOf([[12, -9]], [120, 60])).toMatchObject({ side: 'bottom', byMm: 4 });
  });

  it('show by nothing where the field ends with the paper', () => {
    expect(edgeOf([[10, 5]], [120, 60])).toBeNull();
  });

  it('are worst on the first of several frames that are alike', () => {
    expect(
      edgeOf(
        [
          [0, 0],
          [12, 0],
          [14, 0],
          [11, 0],
          [14, 0],
        ],
        [120, 60],
      ),
    ).toEqual({
      frame: 2,
      side: 'right',
      byMm: 2,
      worstMm: 4,
      worstFrame: 3,
    });
  });

  it('do not show along a loop, only across it', () => {
    expect(edgeOf([[40, 0]], [120, 60], { lengthMm: 120, axis: 'x' })).toBeNull();
    expect(edgeOf([[40, 9]], [120, 60], { lengthMm: 120, axis: 'x' })).toMatchObject({
      side: 'top',
      byMm: 4,
    });
    expect(edgeOf([[0, 40]], [120, 60], { lengthMm: 60, axis: 'y' })).toBeNull();
    expect(edgeOf([[12, 40]], [120, 60], { lengthMm: 60, axis: 'y' })).toMatchObject({
      side: 'right',
      byMm: 2,
    });
  });

  it('of a loop: it is painted as long as it is, or as the field on any frame', () => {
    const frames = [camera(1), camera(2, { width: 140 })];
    const needed = (loop: Loop) =>
      artworkOf(level('BG', { homeMm: { xMm: 3, yMm: 4 } }), frames, [placed(), placed()], loop, settings)
        .needed;
    expect(needed({ lengthMm: 120, axis: 'x' })).toEqual({ width: 140, height: 70, x: 3, y: 0 });
    expect(needed({ lengthMm: 300, axis: 'x' })).toEqual({ width: 300, height: 70, x: 3, y: 0 });
    expect(needed({ lengthMm: 60, axis: 'y' })).toEqual({ width: 140, height: 70, x: 0, y: 4 });
    expect(needed({ lengthMm: 200, axis: 'y' })).toEqual({ width: 140, height: 200, x: 0, y: 4 });
  });
});
