import { describe, expect, it } from 'vitest';
import type { CameraStatement } from '../../../src/language/tree-camera.js';
import { handleOf } from '../../../src/shot/camera/bind-light.js';
import { withLines } from '../bind.js';
import { bound, during, length, number, state, words } from './nodes.js';

const overlap = (way: 'in' | 'out', frames: number): CameraStatement =>
  state({ kind: 'overlap', way, length: length(frames) });

describe('light', () => {
  it('has its shares from percents', () => {
    const expose = (from: number, last: number | null): CameraStatement =>
      state({
        kind: 'expose',
        levels: words('A'),
        from: number(from),
        to: last === null ? null : number(last),
        range: during(1, 24),
      });
    expect(bound([expose(0, 100)]).camera.light[0]).toMatchObject({ from: 0, to: 1 });
    expect(bound([expose(50, null)]).camera.light[0]).toMatchObject({ from: 0.5, to: 0.5 });
    expect(bound([expose(120, null)]).codes).toContain('exposure-range');
  });
});

describe('overlaps', () => {
  it('make the sheets of 4+00 and 3+00 with 1+00 between them 4+12 and 3+12', () => {
    // Handles of half the overlap: common practice; the sum of both times stays 168 frames.
    const out = bound([overlap('out', 24)], { text: 'cut 1\ntime 4+0\nA: 1..\n' }).shot;
    const into = bound([overlap('in', 24)], { text: 'cut 2\ntime 3+0\nA: 1..\n' }).shot;
    expect([out.length, out.handles]).toEqual([4 * 24 + 12, { head: 0, tail: 12 }]);
    expect([into.length, into.handles]).toEqual([3 * 24 + 12, { head: 12, tail: 0 }]);
    expect(out.time + into.time).toBe(168);
    expect(out.camera.light[0]).toMatchObject({ frames: { from: 85, to: 108 } });
    expect(into.camera.light[0]).toMatchObject({ frames: { from: 1, to: 24 } });
  });

  it('of an odd length give the outgoing cut the smaller half', () => {
    expect([handleOf('out', 9, 'half'), handleOf('in', 9, 'half')]).toEqual([4, 5]);
  });

  it('in full add nothing: both times contain them', () => {
    // 96 + 72 - 24 = 144: common practice.
    const { shot } = bound([overlap('out', 24)], { settings: { overlap: 'full' } });
    expect([shot.length, shot.handles]).toEqual([48, { head: 0, tail: 0 }]);
  });

  it('last from two frames to the whole sheet, one at each end', () => {
    expect(bound([overlap('out', 1)]).codes).toContain('overlap-short');
    expect(bound([overlap('out', 97)]).codes).toContain('overlap-long');
    expect(bound([overlap('out', 1e12)]).codes).toContain('overlap-long');
    expect(bound([overlap('out', 12), overlap('in', 12)]).codes).not.toContain('statement-twice');
    expect(bound([overlap('out', 12), overlap('out', 12)]).codes).toContain('statement-twice');
  });
});

describe('light of each kind', () => {
  it('is bound with its levels and frames', () => {
    const { shot, codes } = withLines(
      'fade out 97.. white',
      'glow A 1..9',
      'effect "haze" A,BG 3..',
      'effect "rain" 1..9',
    );
    expect(codes).toEqual([]);
    expect(shot!.camera.light).toMatchObject([
      { kind: 'glow', levels: ['A'], frames: { from: 1, to: 9 } },
      { kind: 'effect', text: 'rain', levels: [], frames: { from: 1, to: 9 } },
      { kind: 'effect', text: 'haze', levels: ['A', 'BG'], frames: { from: 3, to: 120 } },
      { kind: 'fade', way: 'out', white: true, frames: { from: 97, to: 120 } },
    ]);
  });

  it('wipes and opens', () => {
    const { shot, codes } = withLines('wipe in up 1..9', 'iris out 97.. at 40,-10', 'iris in 20..30');
    expect(codes).toEqual([]);
    expect(shot!.camera.light).toMatchObject([
      { kind: 'wipe', way: 'in', towards: 'up', frames: { from: 1, to: 9 } },
      { kind: 'iris', way: 'in', xMm: 0, yMm: 0, frames: { from: 20, to: 30 } },
      { kind: 'iris', way: 'out', xMm: 40, yMm: -10, frames: { from: 97, to: 120 } },
    ]);
  });

  it('warns of an iris whose centre is not in the picture', () => {
    expect(withLines('iris in 1..9 at 127,71').codes).toEqual([]);
    expect(withLines('iris in 1..9 at 128,0').codes).toEqual(['warning iris-outside']);
    expect(withLines('iris in 1..9 at 0,-72').codes).toEqual(['warning iris-outside']);
  });

  it('of no level that is there is left out', () => {
    expect(withLines('glow Q 1..9').shot!.camera.light).toEqual([]);
    expect(withLines('expose Q 50% 1..9').shot!.camera.light).toEqual([]);
  });
});
