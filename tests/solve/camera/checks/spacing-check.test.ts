import { describe, expect, it } from 'vitest';
import type { Move, Spacing } from '../../../../src/shot/camera/camera-model.js';
import { codes, FULL, field, leg, level, pan, type Scene, said, truck } from '../build.js';

const A = field('A', { xMm: 10 });
const SMALL = field('S', { widthMm: 127 });
const levels = [level('BG'), level('L', { free: true })];
const of = (...moves: Move[]): Scene => ({ levels, moves });
const spaced = (spacing: Spacing, end = 24) => pan([leg(FULL, 1, A, end, spacing)]);
const quick = (frame: number, share: number, end = 24) =>
  truck([leg(FULL, 1, SMALL, end, { form: 'fair', mark: 'ア', frame, share })], { quick: true });

describe('spacing', () => {
  it('has ramps that fit into the steps', () => {
    expect(codes(of(spaced({ form: 'ease', leave: 12, arrive: 11 })))).not.toContain('ramps-long');
    expect(said(of(spaced({ form: 'ease', leave: 12, arrive: 12 })), 'ramps-long')[0]).toContain('23 steps');
    expect(codes(of(spaced({ form: 'ease', leave: -1, arrive: 12 })))).toContain('ramps-long');
  });

  it('has curves whose time runs from 0 to 1', () => {
    const curve = (x1: number, y1: number, x2: number, y2: number) =>
      codes(of(spaced({ form: 'curve', x1, y1, x2, y2 })));
    expect(curve(0, -3, 1, 3)).not.toContain('curve-range');
    expect(curve(1.1, 0, 0.5, 1)).toContain('curve-range');
    expect(curve(0.1, 0, -0.1, 1)).toContain('curve-range');
    expect(curve(0.1, Number.POSITIVE_INFINITY, 0.1, 1)).toContain('curve-range');
  });

  it('has as many graduations as steps, that add up within 0.05 mm', () => {
    const steps = (...mm: number[]) =>
      codes(of(spaced({ form: 'steps', mm }, 4))).filter((code) => code.startsWith('steps'));
    expect(steps(2, 3, 5)).toEqual([]);
    expect(steps(2, 3, 5.05)).toEqual([]);
    expect(steps(2, 3, 5.06)).toEqual(['steps-sum']);
    expect(steps(5, 5)).toEqual(['steps-count']);
    expect(codes(of(truck([leg(FULL, 1, SMALL, 3, { form: 'steps', mm: [1, 1] })])))).toContain(
      'steps-without-way',
    );
  });

  it('has a fairing mark inside its move, before which enough is done', () => {
    expect(said(of(quick(24, 0.6)), 'fairing-outside')[0]).toContain('on frame 2 to 23');
    expect(said(of(quick(1, 0.6, 3)), 'fairing-outside')[0]).toMatch(/on frame 2\.$/);
    expect(said(of(quick(2, 0.6, 2)), 'fairing-outside')[0]).toContain(
      'this one arrives on the frame after it leaves: give it more frames',
    );
    expect(codes(of(quick(6, 1)))).toContain('fairing-share');
    expect(codes(of(quick(6, 0)))).toContain('fairing-share');
    // p T = .6 · 23 = 13.8: the mark could be on frame 14, or have 19/23 = 82.6 % done on frame 20.
    expect(said(of(quick(20, 0.6)), 'fairing-slow')[0]).toContain('frame 14 or earlier, or have 82.7 %');
    expect(codes(of(quick(14, 0.6)))).not.toContain('fairing-slow');
    expect(codes(of(quick(15, 0.6)))).toContain('fairing-slow');
    expect(codes(of(quick(20, 0.827)))).not.toContain('fairing-slow');
  });

  it('has a cushion that is no stop', () => {
    // k = .17 · 18/.15 = 20.4; 1 - .005^(1/20.4) = .2287 of 18 frames after frame 6: 10.1.
    expect(said(of(quick(6, 0.85)), 'cushion-short')[0]).toContain(
      'on frame 11, before half of its 18 frames',
    );
    expect(codes(of(quick(6, 0.55)))).not.toContain('cushion-short');
  });
});
