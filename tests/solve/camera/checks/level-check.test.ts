import { describe, expect, it } from 'vitest';
import type { Move } from '../../../../src/shot/camera/camera-model.js';
import { codes, FULL, field, follow, leg, level, pan, pull, roll, type Scene, said } from '../build.js';

const A = field('A', { xMm: 10 });
const levels = [level('BG'), level('L', { free: true })];
const of = (...moves: Move[]): Scene => ({ levels, moves });

describe('levels', () => {
  it('fixed to the camera cannot be carried or followed as well', () => {
    const fixed = [level('L', { carry: true })];
    expect(codes({ levels: fixed, moves: [follow(['L'], 'left', 9, 1, 9)] })).toContain('carried-level');
    expect(codes({ levels: fixed, moves: [pan([leg(FULL, 1, A, 9)], { carry: ['L'] })] })).toContain(
      'carried-level',
    );
    expect(codes({ levels: fixed, moves: [pull(['L'], 'left', 9, 1, 9)] })).not.toContain('carried-level');
  });

  it('pulled twice along one line at once are hinted at', () => {
    expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'right', 3, 9, 12)))).toContain('pulls-along');
    expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'up', 3, 9, 12)))).not.toContain('pulls-along');
    expect(codes(of(pull(['L'], 'left', 9, 1, 9), pull(['L'], 'left', 3, 10, 12)))).not.toContain(
      'pulls-along',
    );
  });

  it('sway back to rest', () => {
    expect(said(of(roll(['L'], 5, 1, 30, 24)), 'sway-unrest')[0]).toContain('36 frames');
    expect(codes(of(roll(['L'], 5, 1, 36, 24)))).not.toContain('sway-unrest');
  });
});
