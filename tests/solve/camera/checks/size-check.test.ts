import { describe, expect, it } from 'vitest';
import type { Move, Spacing } from '../../../../src/shot/camera/camera-model.js';
import { codes, FULL, field, LINEAR, leg, level, pan, type Scene, said, solved, truck } from '../build.js';

const A = field('A', { xMm: 10 });
const SMALL = field('S', { widthMm: 127 });
const levels = [level('BG'), level('L', { free: true })];
const of = (...moves: Move[]): Scene => ({ levels, moves });

describe('sizes', () => {
  it('stay in a pan and change in a truck; the other word is the fix', () => {
    const panned = pan([leg(FULL, 1, SMALL, 9)]);
    const found = solved(of(panned)).diagnostics.find(({ code }) => code === 'pan-sizes')!;
    expect(found.fix!.edits).toEqual([
      { span: { ...panned.span, end: panned.span.start + 3 }, text: 'truck' },
    ]);
    const trucked = truck([leg(FULL, 1, A, 9)]);
    const other = solved(of(trucked)).diagnostics.find(({ code }) => code === 'truck-one-size')!;
    expect(other.fix!.edits[0]).toMatchObject({ text: 'pan' });
    expect(codes(of(truck([leg(FULL, 1, A, 9), leg(A, 9, SMALL, 20)])))).not.toContain('truck-one-size');
    // 60 % of 254 and 152.4 mm are one size, whatever the digits.
    const percent = field('P', { widthMm: 0.6 * 254 });
    const mm = field('M', { widthMm: 152.4, xMm: 5 });
    expect(codes(of(pan([leg(percent, 1, mm, 20)])))).not.toContain('pan-sizes');
  });
});

describe('speed', () => {
  it('does not jump at a field passed through', () => {
    const legs = (x: number, spacing: Spacing = LINEAR) =>
      pan([leg(FULL, 1, A, 11, spacing), leg(A, 11, field('X', { xMm: 10 + x }), 21, spacing)]);
    expect(codes(of(legs(10)))).not.toContain('speed-jumps');
    expect(said(of(legs(20)), 'speed-jumps')[0]).toContain('1 mm a frame before, 2 after');
    expect(codes(of(legs(-10)))).toContain('speed-jumps');
    expect(codes(of(legs(20, { form: 'ease', leave: 5, arrive: 5 })))).not.toContain('speed-jumps');
  });
});
