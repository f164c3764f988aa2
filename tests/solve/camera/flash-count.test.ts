import { describe, expect, it } from 'vitest';
import type { Light } from '../../../src/shot/camera/camera-model.js';
import { changesOf, countFlashes, flashChanges } from '../../../src/solve/camera/flash-count.js';
import { level, span } from './build.js';

const FPS = 24;
const context = { length: 48, levels: [level('BG'), level('L')] };

const fade = (way: 'in' | 'out', from: number, to: number, white = false): Light => ({
  kind: 'fade',
  way,
  white,
  frames: { from, to },
  span: span(),
});
const expose = (from: number, to: number, share: number): Light => ({
  kind: 'expose',
  levels: ['L'],
  from: share,
  to: share,
  frames: { from, to },
  span: span(),
});
const glow = (from: number, to: number): Light => ({
  kind: 'glow',
  levels: ['L'],
  frames: { from, to },
  span: span(),
});
const count = (lights: readonly Light[], flashing: readonly string[] = [], levels = context.levels) =>
  countFlashes(flashChanges(lights, flashing, { ...context, levels }), FPS);

describe('changes of light', () => {
  const frames = (amounts: readonly number[], before: number | null = null) =>
    changesOf(amounts, before, span()).map(({ frame, up }) => (up ? frame : -frame));

  it('begin on the frame after the last that was as dark or as bright', () => {
    expect(frames([0, 0, 1, 1, 0, 0])).toEqual([3, -5]);
    expect(frames([1, 0.5, 0, 0.5, 1])).toEqual([-2, 4]);
  });

  it('are a tenth of the light at least (WCAG 2.2, general flash: 10 % of the maximum relative luminance)', () => {
    expect(frames([0.5, 0.59, 0.5, 0.59])).toEqual([]);
    expect(frames([0.5, 0.6, 0.5, 0.6])).toEqual([2, -3, 4]);
  });

  it('add up where they go on the same way', () => {
    expect(frames([0, 0.05, 0.1, 0.15, 0.2])).toEqual([1 + 1]);
  });

  it('count on the first frame where it is known what was before', () => {
    expect(frames([1, 1, 1], 0)).toEqual([1]);
    expect(frames([1, 1, 1])).toEqual([]);
  });
});

describe('flashes', () => {
  // WCAG 2.2: a flash is a pair of opposing changes, so a dip to black is one as much as a flash of white.
  it('are counted when light falls and rises again', () => {
    const dips = [0, 4, 8, 12].flatMap((at) => [fade('out', at + 1, at + 2), fade('in', at + 3, at + 4)]);
    expect(count(dips)).toMatchObject({ most: 4, from: 2, any: true });
    expect(count(dips.slice(0, 6)).most).toBe(3);
  });

  it('are counted when an exposure alternates', () => {
    const strobe = Array.from({ length: 12 }, (_, i) => expose(2 * i + 1, 2 * i + 2, i % 2));
    expect(count(strobe).most).toBe(6);
  });

  it('are counted for each drawing of a level that flashes', () => {
    const lightning = { ...level('L'), appears: (frame: number) => frame % 6 === 1 };
    expect(count([], ['L'], [level('BG'), lightning])).toMatchObject({ most: 4, from: 1, any: true });
    // On ones there is a new one on each frame.
    const storm = { ...level('L'), appears: () => true };
    expect(count([], ['L'], [storm]).most).toBe(FPS);
  });

  it('are one for a flash of white, and one for each light through', () => {
    expect(count([fade('out', 1, 4, true), fade('in', 5, 10, true)]).most).toBe(1);
    expect(count([glow(1, 2), glow(9, 10), glow(17, 18)]).most).toBe(3);
  });

  it('within another second are other flashes', () => {
    expect(count([glow(1, 2), glow(30, 31)])).toMatchObject({ most: 1, from: 1 });
  });

  it('are none where a cut fades in and out again slowly', () => {
    expect(count([fade('in', 1, 12), fade('out', 37, 48)]).any).toBe(false);
    expect(count([]).most).toBe(0);
  });
});
